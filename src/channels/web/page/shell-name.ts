/** The name under which a browser keeps the page; its second part changes with the shape of what is kept. */
export const shellCache = 'sheet-1';
