/** What speaks for a kind in a text: its words, pairs of words, pieces of words, and the cues it holds. Weighs nothing. */
import { cueText } from '../cues/cues.ts';
import { namedIn, type Named, type Observation } from '../observation.ts';
import { oneChinese } from '../typed/one-chinese.ts';
import type { CueName } from '../cues/cue-names.ts';
import type { SubjectFinder } from './subjects.ts';

const telling = [
  'safety',
  'safety-weak',
  'overnight',
  'lesson',
  'care-strong',
  'care-weak',
  'shop',
  'shop-weak',
  'offtopic',
  'brew',
  'asks-brewing',
  'how-much',
  'buying',
  'keeping',
  'has-tea',
  'bitter',
  'weak',
  'sour',
  'flat',
  'lost-scent',
  'right',
  'complaint',
  'prefer',
  'cold',
  'fridge',
  'hello',
  'thanks',
] as const satisfies readonly CueName[];

/** Longer texts are told by their beginning; it bounds the cost. */
const longestWeighed = 300;
const mostSubjects = 6;

/** Subjects by whose talk they are; all others are the shop's. */
export interface Worlds {
  /** Those a tea shop has nothing to do with. */
  readonly elsewhere: ReadonlySet<string>;
  /** Those that tell nothing of it: anyone talks of them. */
  readonly common: ReadonlySet<string>;
  /** What a doctor is asked. */
  readonly warning: ReadonlySet<string>;
  /** Words, and pairs of Han characters, that talk of the shop's own matters often holds; looked up when first needed. */
  readonly shopTalk: () => ReadonlySet<string>;
}

export type EvidenceFinder = (seen: Observation) => string[];

export function makeEvidenceFinder(subjectsOf: SubjectFinder, worlds: Worlds): EvidenceFinder {
  return (seen) => {
    const { cues, act, plain } = seen;
    const words = plain.length > longestWeighed ? cues.mended(cueText(plain.slice(0, longestWeighed))) : seen.words;
    const text = oneChinese(seen.mended(cueText(masked(plain.slice(0, longestWeighed), namedIn(seen)))));
    const units = unitsOf(text);
    const found = new Set<string>([`size ${Math.min(4, Math.floor(Math.log2(units.length + 1)))}`]);
    if (seen.strangeTea !== null) found.add('strange tea');
    if (act !== null) found.add(`act ${act}`);
    for (const cue of telling) if (cues.has(cue, words)) found.add(`cue ${cue}`);
    const about = subjectsOf(text);
    addSubjects(found, about.slice(0, mostSubjects));
    addUnits(found, units);
    const names = units.includes('TEA') || units.includes('POT') || seen.strangeTea !== null;
    found.add(worldsOf(about, worlds) + (names ? ' named' : ''));
    found.add(
      `${unheardOf(units, worlds.shopTalk(), (word) => isHome(subjectsOf(word), worlds))}${names ? ' named' : ''}`,
    );
    return [...found];
  };
}

/** How much of a text is of other worlds and how much of the shop's: a word nobody gave an example with tells so much at least. */
function worldsOf(about: readonly string[], { elsewhere, common }: Worlds): string {
  const away = about.filter((subject) => elsewhere.has(subject)).length;
  const home = about.filter((subject) => !elsewhere.has(subject) && !common.has(subject)).length;
  return `away ${Math.min(away, 2)} home ${Math.min(home, 2)}`;
}

function addSubjects(found: Set<string>, subjects: readonly string[]): void {
  for (const [i, subject] of subjects.entries()) {
    found.add(about(subject));
    for (const other of subjects.slice(i + 1)) found.add(about([subject, other].toSorted().join(' and ')));
  }
}

function addUnits(found: Set<string>, units: readonly string[]): void {
  for (const [i, unit] of units.entries()) {
    found.add(unit);
    found.add(`${units[i - 1] ?? '^'} ${unit}`);
    for (const piece of piecesOf(unit)) found.add(piece);
  }
  found.add(`${units.at(-1) ?? '^'} $`);
}

function masked(plain: string, named: readonly Named[]): string {
  let text = '';
  let at = 0;
  for (const { start, end, token } of named.toSorted((a, b) => a.start - b.start || b.end - a.end)) {
    if (start < at || end > plain.length) continue;
    text += `${plain.slice(at, start)} ${token} `;
    at = end;
  }
  return text + plain.slice(at);
}

/** Words of Latin script, single Han characters, numbers as one sign, and the marks that tell something. */
function unitsOf(text: string): string[] {
  const units = text.match(/[A-Z]+|[a-z]+|[0-9]+|\p{Script=Han}|[?$]/gu) ?? [];
  return units.map((unit) => (/^[0-9]/.test(unit) ? '#' : unit));
}

/** Three letters at a time, so that a slip leaves most of a word as it was. */
function piecesOf(unit: string): string[] {
  if (!/^[a-z]{4,}$/.test(unit)) return [];
  const framed = `<${unit}>`;
  return Array.from({ length: framed.length - 2 }, (_, i) => `~${framed.slice(i, i + 3)}`);
}

const isHome = (about: readonly string[], { elsewhere }: Worlds): boolean =>
  about.some((subject) => !elsewhere.has(subject));

/** How much of a text the shop has never heard. */
function unheardOf(units: readonly string[], shopTalk: ReadonlySet<string>, known: (word: string) => boolean): string {
  const told = talkOf(units);
  const unheard = told.filter((piece) => !shopTalk.has(piece) && !known(piece.replace(' ', ''))).length;
  return `unheard ${Math.min(unheard, 4)} of ${told.length === 0 ? 0 : Math.ceil((unheard / told.length) * 4)}`;
}

/** A word of three letters and more, or two Han characters. */
export const isTalk = (piece: string): boolean => /^(?:[a-z]{3,}|\p{Script=Han} \p{Script=Han})$/u.test(piece);

const talkOf = (units: readonly string[]): string[] =>
  units.flatMap((unit, i) => [unit, `${units[i - 1] ?? ''} ${unit}`]).filter(isTalk);

const about = (subject: string): string => `about ${subject}`;

/** Whether the evidence tells of any of these subjects. */
export const tellsOf = (evidence: readonly string[], subjects: ReadonlySet<string>): boolean =>
  [...subjects].some((subject) => evidence.includes(about(subject)));
