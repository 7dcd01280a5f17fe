// Given to node as --import: the program gets the watched library where it asks for the database library.
import { register } from 'node:module';

const watched = new URL('watched-sqlite.mjs', import.meta.url).href;
const hook = `export const resolve = (name, around, next) =>
  name === 'better-sqlite3' && around.parentURL !== '${watched}' ? { url: '${watched}', shortCircuit: true } : next(name, around);`;
register(`data:text/javascript,${encodeURIComponent(hook)}`);
