/** Which words a slip is put right to and which stay as they are, from all the reader knows. Mends nothing. */
import type { StandingAnswer } from '../answers.ts';
import { unitWords } from '../amounts/measures.ts';
import { ordinals } from '../acts.ts';
import { numberWords } from '../amounts/numbers.ts';
import type { ReadingWords } from '../reading-words.ts';
import type { SlipWords } from './slips.ts';

export interface SlipSources {
  readonly words: ReadingWords;
  /** Words of the names of teas. */
  readonly names: readonly string[];
  /** Everyday words that are never a misspelt name. */
  readonly ordinary: ReadonlySet<string>;
  readonly answers: readonly Pick<StandingAnswer, 'kind' | 'words' | 'questions'>[];
}

/** Shorter words of cues are too near to others. */
const shortestOfCues = 6;
const shortestName = 5;
const shortestPerson = 5;
/** What is measured and counted, and a tea and its pot, are told by short words too. */
const shortestTelling = 4;

export function slipWordsOf({ words, names, ordinary, answers }: SlipSources): SlipWords {
  const careful = wholeWords(
    [
      ...[...words.worlds.warning].flatMap((subject) => words.subjects[subject] ?? []),
      ...answers.filter(({ kind }) => kind === 'safety').flatMap((answer) => answer.words),
    ].filter((text) => !text.includes(' ')),
  );
  const measured = [...numberWords, ...ordinals, ...unitWords];
  const things = wholeWords(words.vessels.flatMap((vessel) => vessel.words));
  const people = wholeWords(Object.values(words.people).flat());
  const cued = wholeWords(Object.values(words.cues).flat());
  const talkedOf = wholeWords([
    ...Object.values(words.subjects).flat(),
    ...answers.flatMap((answer) => [...answer.words, ...answer.questions.en]),
  ]);
  const name = names.filter((one) => one.length >= shortestName && !ordinary.has(one));
  return {
    meant: [
      ...words.common,
      ...[...measured, ...things].filter((one) => one.length >= shortestTelling),
      ...people.filter((one) => one.length >= shortestPerson),
      ...name,
      ...careful.filter((one) => one.length >= shortestName),
      ...[...cued, ...talkedOf].filter((one) => one.length >= shortestOfCues),
    ],
    careful: new Set(careful),
    names: new Set(name.filter((one) => !words.common.includes(one))),
    known: new Set([
      ...words.noSlips,
      ...ordinary,
      ...words.common,
      ...measured,
      ...things,
      ...people,
      ...names,
      ...careful,
    ]),
    listed: new Set([
      ...cued,
      ...talkedOf,
      ...wholeWords(words.notVessels),
      ...wholeWords(Object.values(words.courtesies).flat()),
      ...wholeWords(words.places.places.flatMap((place) => place.names)),
    ]),
    stems: new Set(
      [
        ...Object.values(words.subjects).flat(),
        ...Object.values(words.cues).flat(),
        ...answers.flatMap((answer) => answer.words),
      ].flatMap(stemsIn),
    ),
  };
}

/** Words written to their end: "stor*" and the beginning of "col(our|or)" are none. */
const wholeWords = (texts: readonly string[]): string[] => texts.flatMap((text) => spelt(text).flatMap(wordsIn));

const wordsIn = (text: string): string[] =>
  text.toLowerCase().match(/(?<![a-z0-9'\\)\]*])[a-z]{2,}(?![a-z0-9'*([?+])/g) ?? [];

/** With what may be left out, and without it. */
const spelt = (text: string): string[] =>
  text.includes('?') ? [text.replace(/([a-z'])\?/g, '$1'), text.replace(/[a-z']\?/g, '')] : [text];

const stemsIn = (text: string): string[] => text.toLowerCase().match(/(?<![a-z])[a-z]{3,}(?=\*)/g) ?? [];
