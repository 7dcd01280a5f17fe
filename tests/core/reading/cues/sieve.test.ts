/** What a text lacks shuts out a search; nothing that a search would find is ever shut out. */
import { describe, expect, test } from 'vitest';
import { readLessonCues } from '../../../../src/content/cue-file.ts';
import { readExamples, readReadingWords } from '../../../../src/content/reading-words.ts';
import { readTalkPhrases } from '../../../../src/content/talk-phrases.ts';
import { cueText } from '../../../../src/core/reading/cues/cues.ts';
import { framed, sourceOf, type CueSource } from '../../../../src/core/reading/cues/cue-set.ts';
import { neededBy } from '../../../../src/core/reading/cues/needed.ts';
import { makeSieve } from '../../../../src/core/reading/cues/sieve.ts';
import { phraseSource, wordsOfPlain } from '../../../../src/core/talk/talk-cues.ts';
import { plainText } from '../../../../src/core/teas/plain-text.ts';

describe('what a pattern needs', () => {
  test.each([
    ['brew', ['brew']],
    ['brew(?:ing|ed)?', ['brew']],
    ['brews?', ['brew']],
    ['(?:how|why) long', ['how long', 'why long']],
    ['too (?:very )?bitter', ['too bitter', 'too very bitter']],
    ['泡[久長]', ['泡久', '泡長']],
    ['泡[^.!?]{0,14}?苦', ['泡']],
    ['a(?: [a-z]+)? gaiwan', [' gaiwan']],
    ['(?<![a-z])cold(?! water)', ['cold']],
    ['^thanks\\b', ['thanks']],
    ['(?:very ){1,3}hot', ['very ']],
    ['3\\.5 ?g', ['3.5g', '3.5 g']],
  ])('%s', (source, needed) => expect(neededBy([source])).toEqual(needed));

  test.each(['\\d+', '(?:hot|)', '[a-z]{1,12}', 'x*', '[^茶]'])('of %s nothing can be told', (source) => {
    expect(neededBy([source])).toBeNull();
  });

  test('what is held by another is told once', () =>
    expect(neededBy(['tea', 'green tea', 'pot'])).toEqual(['tea', 'pot']));
});

/** Every list of cues, as it is compared with texts. */
const lists: readonly (readonly CueSource[])[] = [
  ...Object.values(readReadingWords('data').cues),
  ...Object.values(readLessonCues('data')),
].map((patterns) => patterns.map(sourceOf));
const talkLists = Object.values(readTalkPhrases('data')).flatMap((places) =>
  Object.values(places).map((phrases) => (phrases ?? []).map(phraseSource)),
);
const plain = Object.values(readExamples('data')).flatMap((all) => all.map((text) => plainText(text).plain));

/** How many texts hold one, and how many of those are shut out. */
function sifted(sources: readonly (readonly CueSource[])[], texts: readonly string[]) {
  const sieve = makeSieve();
  const tests = sources.flatMap((list) =>
    [true, false].flatMap((latin) => {
      const alike = list.filter((one) => one.latin === latin).map(({ source }) => source);
      if (alike.length === 0) return [];
      return [{ mayHold: sieve.add(alike), pattern: new RegExp(framed({ latin, source: alike.join('|') })) }];
    }),
  );
  let [found, open] = [0, 0];
  const shut: string[] = [];
  for (const text of texts) {
    for (const { mayHold, pattern } of tests) {
      const may = mayHold(text);
      if (may) open++;
      if (!pattern.test(text)) continue;
      found++;
      if (!may) shut.push(`${text}: ${pattern.source.slice(0, 60)}`);
    }
  }
  return { found, shut, open: open / texts.length / tests.length };
}

test('no labelled sentence is shut out from a cue it holds, and few are searched in vain', () => {
  const cues = sifted(lists, plain.map(cueText));
  const phrases = sifted(talkLists, plain.map(wordsOfPlain));
  expect([...cues.shut, ...phrases.shut]).toEqual([]);
  expect(cues.found).toBeGreaterThan(20_000);
  expect(phrases.found).toBeGreaterThan(5_000);
  expect(cues.open).toBeLessThan(0.1);
  expect(phrases.open).toBeLessThan(0.1);
});

test('a pattern that comes later is found in a text that was asked of before', () => {
  const sieve = makeSieve();
  const tea = sieve.add(['tea']);
  expect([tea('green tea'), tea('cold water')]).toEqual([true, false]);
  const green = sieve.add(['green']);
  expect([green('green tea'), green('cold water'), tea('green tea')]).toEqual([true, false, true]);
});
