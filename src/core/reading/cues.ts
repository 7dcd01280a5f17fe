/** Turns the patterns of data/reading/cues.yaml into one test a cue, each bounded in what it may cost. Knows no cue by name. */
import { plainText } from '../teas/plain-text.ts';
import { editDistance, withOneLeftOut } from '../teas/spelling.ts';
import type { CueName, ReadingWords } from './reading-words.ts';

export interface Cues {
  has(cue: CueName, text: string): boolean;
  /** Whether the whole text is this cue, give or take a particle. */
  is(cue: CueName, text: string): boolean;
  /** The text without any of this cue. */
  without(cue: CueName, text: string): string;
  /** The text with the words that are a letter away from a cue's word put right. */
  mended(text: string): string;
}

/** Shorter words are too near to others to be mended. */
const shortestMended = 6;
/** So many characters a repeated class of a pattern takes at most. */
const longestRun = 12;

/** Plain text as cues are written: no apostrophes, a space for a hyphen, single spaces. */
export function cueText(plain: string): string {
  return plain
    .replace(/'/g, '')
    .replace(/([a-z])\1{2,}/g, '$1$1')
    .replace(/[-_/]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

const particles = '(?: please| pls| plz| now| then|呀|啊|啦|吧|喇|嘅|的|了|先|哦|喔|喎|呢|嗎|吗|下| )*';

/** `known` are words that stay as they are. */
export function makeCues(cues: ReadingWords['cues'], known: ReadonlySet<string>): Cues {
  const stems = stemsOf(cues);
  const near = new Map<string, string>();
  for (const stem of stems) for (const form of withOneLeftOut(stem)) if (!near.has(form)) near.set(form, stem);
  const isKnown = (word: string): boolean =>
    known.has(word) || stems.has(word) || beginnings(word).some((b) => stems.has(b));
  const mend = (word: string): string => {
    if (isKnown(word)) return word;
    for (const form of withOneLeftOut(word)) {
      const stem = near.get(form);
      if (stem?.charAt(0) === word.charAt(0) && editDistance(word, stem, 1) <= 1) return stem;
    }
    return word;
  };
  const compiled = new Map(Object.entries(cues).map(([cue, patterns]) => [cue, patterns.map(sourceOf)]));
  const anywhere = new Map([...compiled].map(([cue, sources]) => [cue, testOf(sources)]));
  const whole = new Map([...compiled].map(([cue, sources]) => [cue, wholeOf(sources)]));
  const every = new Map([...compiled].map(([cue, sources]) => [cue, new RegExp(sources.map(framed).join('|'), 'g')]));
  return {
    has: (cue, text) => anywhere.get(cue)?.(text) ?? false,
    is: (cue, text) => text.length <= 40 && (whole.get(cue)?.test(text) ?? false),
    mended: (text) => text.replace(/[a-z]{6,14}/g, mend),
    without: (cue, text) => text.replace(every.get(cue) ?? /$^/, ' '),
  };
}

function wholeOf(sources: readonly CueSource[]): RegExp {
  const edge = '[\\s\\p{P}\\p{S}]*';
  return new RegExp(`^${edge}(?:${sources.map(framed).join('|')})${particles}${edge}$`, 'u');
}

/** Patterns of one script are tried together, and only in a text that holds it: most places fail at their first character. */
function testOf(sources: readonly CueSource[]): (text: string) => boolean {
  const together = (some: readonly CueSource[], latin: boolean): RegExp | null =>
    some.length === 0 ? null : new RegExp(framed({ latin, source: some.map((one) => one.source).join('|') }));
  const latin = together(
    sources.filter((one) => one.latin),
    true,
  );
  const others = sources.filter((one) => !one.latin);
  const han = together(others, false);
  const needsHan = !others.some(({ source }) => /[a-z]/.test(source));
  return (text) => (latin?.test(text) ?? false) || (han !== null && (!needsHan || hasHan(text)) && han.test(text));
}

const hasHan = (text: string): boolean => /[\u3400-\u9fff]/.test(text);

function stemsOf(cues: ReadingWords['cues']): Set<string> {
  const words = Object.values(cues)
    .flat()
    .flatMap((pattern) => pattern.match(/[a-z]+/g) ?? []);
  return new Set(words.filter((word) => word.length >= shortestMended));
}

/** "storing" begins with "stor": a word that goes on from a cue's word is known. */
function beginnings(word: string): string[] {
  return Array.from({ length: Math.max(0, word.length - shortestMended) }, (_, i) => word.slice(0, shortestMended + i));
}

export interface CueSource {
  readonly latin: boolean;
  readonly source: string;
}

/** Throws SyntaxError for a pattern that is none; the loader tells where it stands. */
export function sourceOf(pattern: string): CueSource {
  const plain = plainText(pattern).plain;
  const latin = !/\p{Script=Han}/u.test(plain);
  const gap = latin ? ' (?:[^ .!?]+ ){0,6}?' : '[^.!?。!?\\n]{0,14}?';
  const source = plain
    // However long a run of digits in a text, at each place of it little is tried.
    .replace(/\]\+/g, `]{1,${longestRun}}`)
    .replace(/\]\*/g, `]{0,${longestRun}}`)
    .replace(/\((?!\?)/g, '(?:')
    .replace(/(?<![)?])\*/g, '[a-z]*')
    .replaceAll(latin ? ' ~ ' : / ?~ ?/g, gap);
  return { latin, source };
}

function framed({ latin, source }: CueSource): string {
  return latin ? `(?<![a-z0-9])(?:${source})(?![a-z0-9])` : `(?:${source})`;
}
