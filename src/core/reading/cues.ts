/** Turns the patterns of data/reading/cues.yaml into one test a cue, each bounded in what it may cost. Knows no cue by name. */
import { plainText } from '../teas/plain-text.ts';
import type { CueName, ReadingWords } from './reading-words.ts';

export interface Cues {
  has(cue: CueName, text: string): boolean;
  /** Whether the whole text is this cue, give or take a particle. */
  is(cue: CueName, text: string): boolean;
  /** The text without any of this cue. */
  without(cue: CueName, text: string): string;
}

/** Plain text as cues are written: no apostrophes, a space for a hyphen, single spaces. */
export function cueText(plain: string): string {
  return plain
    .replace(/'/g, '')
    .replace(/[-_/]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

const particles = '(?: please| pls| plz| now| then|呀|啊|啦|吧|喇|嘅|的|了|先|哦|喔|喎|呢|嗎|吗|下| )*';

export function makeCues(cues: ReadingWords['cues']): Cues {
  const compiled = new Map(Object.entries(cues).map(([cue, patterns]) => [cue, patterns.map(sourceOf).join('|')]));
  const anywhere = new Map([...compiled].map(([cue, source]) => [cue, new RegExp(source)]));
  const whole = new Map(
    [...compiled].map(([cue, source]) => [
      cue,
      new RegExp(`^[\\s\\p{P}\\p{S}]*(?:${source})${particles}[\\s\\p{P}\\p{S}]*$`, 'u'),
    ]),
  );
  const every = new Map([...compiled].map(([cue, source]) => [cue, new RegExp(source, 'g')]));
  return {
    has: (cue, text) => anywhere.get(cue)?.test(text) ?? false,
    is: (cue, text) => text.length <= 40 && (whole.get(cue)?.test(text) ?? false),
    without: (cue, text) => text.replace(every.get(cue) ?? /$^/, ' '),
  };
}

/** Throws SyntaxError for a pattern that is none; the loader tells where it stands. */
export function sourceOf(pattern: string): string {
  const plain = plainText(pattern).plain;
  const latin = !/\p{Script=Han}/u.test(plain);
  const gap = latin ? ' (?:[^ .!?]+ ){0,6}?' : '[^.!?。!?\\n]{0,14}?';
  const source = plain
    .replace(/\((?!\?)/g, '(?:')
    .replace(/(?<![\])?])\*/g, '[a-z]*')
    .replaceAll(latin ? ' ~ ' : / ?~ ?/g, gap);
  return latin ? `(?<![a-z0-9])(?:${source})(?![a-z0-9])` : `(?:${source})`;
}
