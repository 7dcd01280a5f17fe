/** The turns of phrase of data/reading/talk, each tested where in a message it must stand. Each is made ready when it is first asked for. */
import { lazily } from '../lazily.ts';
import { cueText } from '../reading/cues/cues.ts';
import { framed, sourceOf, testOf, textsOf, type CueSource } from '../reading/cues/cue-set.ts';
import { oneChinese } from '../reading/typed/one-chinese.ts';
import { makeSieve, type Sieve } from '../reading/cues/sieve.ts';
import { plainText } from '../teas/plain-text.ts';
import { numberPattern, readCount } from './count.ts';
import type { TalkCueName } from './talk-cue-names.ts';

/** By where in a message its phrases must stand; data/reading/talk/small-words.yaml tells what each means. */
export const cuePlaces = ['anywhere', 'opening', 'ending', 'alone', 'mainly', 'only', 'unless'] as const;
type CuePlace = (typeof cuePlaces)[number];
type Phrases = { readonly [place in CuePlace]?: readonly string[] | undefined };
export type TalkPhrases = { readonly [cue in TalkCueName]: Phrases };

export interface Span {
  readonly start: number;
  readonly end: number;
}

/** `words` are a text as talkWords has it. */
export interface TalkCues {
  readonly says: (cue: TalkCueName, words: string) => boolean;
  /** The number that is told by the {n} of a phrase, whatever stands around it. */
  readonly numberIn: (cue: TalkCueName, words: string) => number | null;
  /** Where in a plain text it stands, in order. */
  readonly spans: (cue: TalkCueName, plain: string) => readonly Span[];
  /** How many characters of a plain text are nothing but this, with spaces and commas, until something else is said. */
  readonly ahead: (cue: TalkCueName, plain: string) => number;
}

/** A plain text as the phrases are compared with it. */
export const wordsOfPlain = (plain: string): string => oneChinese(cueText(plain)).replace(donePart, '了');
/** 倒好啦 tells of the same as 倒好了; phrases are read so too. */
const donePart = /[啦喇]/g;
export const talkWords = (text: string): string => wordsOfPlain(plainText(text).plain);

type Test = (words: string) => boolean;

export function makeTalkCues(phrases: TalkPhrases): TalkCues {
  const sieve = makeSieve();
  const said = (cue: TalkCueName): string => anyOf(sourcesOf(phrases[cue].anywhere));
  const small = lazily((): SmallWords => ({ ahead: said('said-ahead'), after: said('said-after') }));
  const tests = once((cue: TalkCueName) => testFor(phrases[cue], small, sieve));
  const numbers = once((cue: TalkCueName) => numbered(phrases[cue]));
  const written = (cue: TalkCueName): string => anyOf((phrases[cue].anywhere ?? []).map(asWritten));
  const places = once((cue: TalkCueName) => new RegExp(written(cue), 'g'));
  const runs = once((cue: TalkCueName) => new RegExp(`^(?:[\\s,、]|${written(cue)})*`));
  return {
    says: (cue, words) => tests(cue)(words),
    numberIn: (cue, words) => firstNumber(numbers(cue), words),
    spans: (cue, plain) => spansOf(places(cue), plain),
    ahead: (cue, plain) => runs(cue).exec(plain)?.[0].length ?? 0,
  };
}

/** Most texts have none, and are done after one look. */
function spansOf(pattern: RegExp, plain: string): readonly Span[] {
  const found: Span[] = [];
  pattern.lastIndex = 0;
  for (let m = pattern.exec(plain); m !== null; m = pattern.exec(plain)) {
    found.push({ start: m.index, end: m.index + m[0].length });
  }
  return found;
}

function once<K, T>(make: (key: K) => T): (key: K) => T {
  const made = new Map<K, T>();
  return (key) => {
    const before = made.get(key);
    if (before !== undefined) return before;
    const fresh = make(key);
    made.set(key, fresh);
    return fresh;
  };
}

const withNumbers = ({ latin, source }: CueSource): CueSource => ({
  latin,
  source: source.replaceAll('{n}', `(?:${numberPattern})`),
});
/** Throws SyntaxError for a phrase that is none. */
export const phraseSource = (phrase: string): CueSource => withNumbers(sourceOf(talkWords(phrase)));
const asWritten = (phrase: string): CueSource => withNumbers(sourceOf(phrase));
const sourcesOf = (phrases: readonly string[] = []): readonly CueSource[] => phrases.map(phraseSource);
const anyOf = (sources: readonly CueSource[]): string => sources.map(framed).join('|');

interface SmallWords {
  readonly ahead: string;
  readonly after: string;
}

/** Neither a letter nor a figure; pictures too. */
const mark = '[\\s!-/:-@~…·。、“”「」\\ud83c-\\ud83e\\udc00-\\udfff]*';

function testFor(phrases: Phrases, small: () => SmallWords, sieve: Sieve): Test {
  const frames: { readonly [place in Exclude<CuePlace, 'anywhere' | 'unless'>]: (source: string) => string } = {
    opening: (source) => `^(?:${source})`,
    ending: (source) => `(?:${source})${mark}$`,
    alone: (source) => `^(?:${source})${mark}$`,
    mainly: (source) => `^(?:(?:${small().ahead})${mark})*(?:${source})(?:${mark}(?:${small().after}))*${mark}$`,
    only: (source) => `^(?:(?:${source})${mark})+$`,
  };
  const framedTests = (['opening', 'ending', 'alone', 'mainly', 'only'] as const).flatMap((place) => {
    const sources = sourcesOf(phrases[place]);
    if (sources.length === 0) return [];
    return [sieve.search(textsOf(sources), () => new RegExp(frames[place](anyOf(sources))))];
  });
  const anywhere = somewhere(phrases.anywhere, sieve);
  const unless = somewhere(phrases.unless, sieve);
  return (words) => (anywhere(words) || framedTests.some((isFound) => isFound(words))) && !unless(words);
}

const somewhere = (phrases: readonly string[] = [], sieve: Sieve): Test =>
  phrases.length === 0 ? () => false : testOf(sourcesOf(phrases), sieve);

/** One pattern a phrase: each names the number in its own place. */
const numbered = ({ anywhere = [], ending = [], alone = [], mainly = [] }: Phrases): readonly RegExp[] =>
  [...anywhere, ...ending, ...alone, ...mainly]
    .filter((phrase) => phrase.includes('{n}'))
    .map((phrase) => sourceOf(talkWords(phrase)))
    .map(({ latin, source }) => new RegExp(framed({ latin, source: source.replace('{n}', `(?<n>${numberPattern})`) })));

function firstNumber(patterns: readonly RegExp[], words: string): number | null {
  for (const pattern of patterns) {
    const told = pattern.exec(words)?.groups?.['n'];
    if (told !== undefined) return readCount(told);
  }
  return null;
}
