/** Turns lists of patterns, as data/reading/cues.yaml tells their small language, into one test a cue, each bounded in what it may cost. */
import { lazily } from '../../lazily.ts';
import { plainText } from '../../teas/plain-text.ts';
import { makeSieve, type Sieve } from './sieve.ts';

/** Of texts as `cueText` makes them. */
export interface CueSet<Name extends string> {
  has(cue: Name, text: string): boolean;
  /** Whether the whole text is this cue, give or take a particle. */
  is(cue: Name, text: string): boolean;
  /** The text without any of this cue. */
  without(cue: Name, text: string): string;
}

/** So many characters a repeated class of a pattern takes at most. */
const longestRun = 12;

const particles = '(?: please| pls| plz| now| then|呀|啊|啦|吧|喇|嘅|的|了|先|哦|喔|喎|呢|嗎|吗|下| )*';

/** Whoever asks several sets of one text gives them one sieve: then it is gone through once. */
export function makeCueSet<Name extends string>(
  cues: { readonly [cue in Name]: readonly string[] },
  sieve = makeSieve(),
): CueSet<Name> {
  const named = Object.entries<readonly string[]>(cues);
  const compiled = new Map(named.map(([cue, patterns]) => [cue, lazily(() => compiledFrom(patterns, sieve))]));
  return {
    has: (cue, text) => compiled.get(cue)?.().isIn(text) ?? false,
    is: (cue, text) => text.length <= 40 && (compiled.get(cue)?.().isWhole(text) ?? false),
    without: (cue, text) => text.replace(compiled.get(cue)?.().every() ?? /$^/, ' '),
  };
}

interface Compiled {
  isIn(text: string): boolean;
  isWhole(text: string): boolean;
  every(): RegExp;
}

/** Each when it is first asked for: of most cues no more than one is, and of some none. */
function compiledFrom(patterns: readonly string[], sieve: Sieve): Compiled {
  const sources = patterns.map(sourceOf);
  const isWhole = lazily(() => sieve.search(textsOf(sources), () => wholeOf(sources)));
  return {
    isIn: testOf(sources, sieve),
    isWhole: (text) => isWhole()(text),
    every: lazily(() => new RegExp(sources.map(framed).join('|'), 'g')),
  };
}

function wholeOf(sources: readonly CueSource[]): RegExp {
  const edge = '[\\s\\p{P}\\p{S}]*';
  return new RegExp(`^${edge}(?:${sources.map(framed).join('|')})${particles}${edge}$`, 'u');
}

/** Patterns of one script are tried together, and only in a text that may hold one. */
export function testOf(sources: readonly CueSource[], sieve: Sieve): (text: string) => boolean {
  const tests = [true, false].flatMap((latin) => {
    const alike = textsOf(sources.filter((one) => one.latin === latin));
    if (alike.length === 0) return [];
    return [sieve.search(alike, () => new RegExp(framed({ latin, source: alike.join('|') })))];
  });
  return (text) => tests.some((isFound) => isFound(text));
}

export const textsOf = (sources: readonly CueSource[]): readonly string[] => sources.map(({ source }) => source);

/** "does not" and "doesnt" are read as one. */
export function contracted(plain: string): string {
  return plain
    .replace(/\b(do|does|did|is|are|was|were|has|have|had|would|could|should|need) not\b/g, '$1nt')
    .replace(/\bcan ?not\b/g, 'cant')
    .replace(/\bwill not\b/g, 'wont');
}

export interface CueSource {
  readonly latin: boolean;
  readonly source: string;
}

/** Throws SyntaxError for a pattern that is none; the loader tells where it stands. */
export function sourceOf(pattern: string): CueSource {
  const plain = contracted(plainText(pattern).plain);
  const latin = !/\p{Script=Han}/u.test(plain);
  const gap = latin ? ' (?:[^ .!?]+ ){0,6}?' : '[^.!?。!?\\n]{0,14}?';
  const gapUpTo = latin ? '[,;:]? (?:[^ .!?]+ ){0,$1}?' : '[^.!?。\\n]{0,$1}?';
  const source = plain
    // However long a run of digits in a text, at each place of it little is tried.
    .replace(/\]\+/g, `]{1,${longestRun}}`)
    .replace(/\]\*/g, `]{0,${longestRun}}`)
    .replace(/\((?!\?)/g, '(?:')
    .replace(/(?<![)?])\*/g, '[a-z]*')
    .replace(latin ? / ~(\d+) /g : / ?~(\d+) ?/g, gapUpTo)
    .replaceAll(latin ? ' ~ ' : / ?~ ?/g, gap);
  if (repeatsGap(source)) throw new SyntaxError('a gap within what may come several times');
  return { latin, source };
}

/** What stands in a gap can be parted in so many ways among its repeats that a text is never done with. */
function repeatsGap(source: string): boolean {
  const begun: number[] = [];
  for (const { 0: sign, index } of source.matchAll(/\\.|\((?:\?(?:<?[=!]|:))?|\)[*+]?/g)) {
    if (sign.startsWith('(')) begun.push(index);
    if (!sign.startsWith(')')) continue;
    const start = begun.pop() ?? 0;
    if (sign.length > 1 && anyGap.test(source.slice(start, index))) return true;
  }
  return false;
}
const anyGap = /\{0,\d+\}\?/;

/** A word of Latin letters ends where they end. */
export function framed({ latin, source }: CueSource): string {
  return latin ? `(?<![a-z0-9])(?:${source})(?![a-z0-9])` : `(?:${source})`;
}
