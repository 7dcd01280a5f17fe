/** Who teaches, as a shopkeeper says it beside what is taught. Knows no names: it goes by how they stand there. */
import { cut, mark } from './cut.ts';

const name = "\\p{Lu}[\\p{L}'’.-]*";
const patterns: readonly RegExp[] = [
  new RegExp(`\\b(?:with|taught by|teacher:?)\\s+(?<who>${name}(?:\\s+${name}){1,2})`, 'u'),
  // One word alone may be a thing to eat; as a piece of its own it is a person.
  new RegExp(`(?<=^|[,;${mark}]\\s*)(?:with|taught by|teacher:?)\\s+(?<who>${name})(?=\\s*(?:[,;${mark}]|$))`, 'u'),
  /(?:由|请|請)(?<who>\p{Script=Han}{1,4}(?:[老導导][師师])?)(?:[教帶带講讲]|授[課课]|主[講讲持]|[帶带]領|带领)[課课]?/u,
  /(?<who>\p{Script=Han}{1,3}老[師师])(?:[教帶带講讲]|授[課课]|主[講讲持])?[課课]?/u,
];

/** "Oolong with Cheese and Cake" is what is served. */
const things = /\b(?:teas?|oolongs?|puer|matcha|gaiwan|milk|cheese|chocolate|cakes?|lunch|dinner|music)\b/iu;

export function readTeacher(text: string): { readonly teacher?: string; readonly rest: string } {
  for (const pattern of patterns) {
    const found = cut(text, pattern);
    const who = found?.groups['who'];
    if (found && who !== undefined && !things.test(who)) return { teacher: who.trim(), rest: found.rest };
  }
  return { rest: text };
}
