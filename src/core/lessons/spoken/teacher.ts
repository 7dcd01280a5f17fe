/** Who teaches, as a shopkeeper says it beside what is taught. Knows no names: it goes by how they stand there. */
import { cut, mark } from './cut.ts';
import type { Sentence } from './sentence.ts';

const name = "\\p{Lu}[\\p{L}'’.-]*";
const patterns: readonly RegExp[] = [
  new RegExp(`\\b(?:with|taught by|teacher:?)\\s+(?<who>${name}(?:\\s+${name}){1,2})`, 'u'),
  // One word alone may be a thing to eat; as a piece of its own it is a person.
  new RegExp(`(?<=^|[,;${mark}]\\s*)(?:with|taught by|teacher:?)\\s+(?<who>${name})(?=\\s*(?:[,;${mark}]|$))`, 'u'),
  /(?:由|请|請)(?<who>\p{Script=Han}{1,4}(?:[老導导][師师])?)(?:[教帶带講讲]|授[課课]|主[講讲持]|[帶带]領|带领)[課课]?/u,
  /(?<who>\p{Script=Han}{1,3}老[師师])(?:[教帶带講讲]|授[課课]|主[講讲持])?[課课]?/u,
];

export function readTeacher({ text, part }: Sentence): { readonly teacher?: string; readonly rest: string } {
  for (const pattern of patterns) {
    const found = cut(text, pattern);
    const who = found?.groups['who'];
    if (found && who !== undefined && !part(who).says('served')) return { teacher: who.trim(), rest: found.rest };
  }
  return { rest: text };
}
