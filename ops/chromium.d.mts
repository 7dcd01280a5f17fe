/** The path of a Chromium for the tests of the page, or null. */
export function chromium(): string | null;
