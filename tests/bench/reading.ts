/** Reading a whole message – tea, vessel, numbers, what kind of question – beside two search libraries that look for names alone. */
import { makeReader } from '../../src/core/reading/reading.ts';
import { makeTeaFinder } from '../../src/core/teas/find.ts';
import type { Tea } from '../../src/core/teas/tea.ts';
import { readSentences } from '../reading/accuracy.ts';
import { answers, names, words } from '../reading/content.ts';
import { catalogueOf } from './catalogue.ts';
import { less, more, type Figure, type Row, type Size } from './figure.ts';
import { compareFinders, everySentence, withFuse, withMiniSearch, withOurs } from './finders.ts';
import { inTurns, median } from './rounds.ts';

type Look = (text: string) => unknown;

function withReader(teas: readonly Tea[]): Look {
  const finder = makeTeaFinder(teas, names);
  const read = makeReader({ finder, words, ordinary: names.ordinary, answers });
  return (text) => read(text, { language: null, asked: null });
}

/** Messages of others, none of them measured: after these, all is built that is built once. */
const firstMessages = readSentences('customers.txt').map(({ text }) => text);

interface Heard {
  readonly first?: readonly string[];
  readonly texts: readonly string[];
}

/** Milliseconds a message, by one that has not seen it: what it may keep of earlier ones is no help. */
function freshTime(look: Look, { first = firstMessages, texts }: Heard): number {
  for (const text of first) look(text);
  const began = performance.now();
  for (const text of texts) look(text);
  return (performance.now() - began) / texts.length;
}

async function among(size: number, { quick }: Size): Promise<readonly Figure[]> {
  const teas = catalogueOf(size);
  const texts = everySentence(quick ? 100 : 4).map(({ text }) => text);
  // fuse.js walks through every name for every run of words: it gets as few as time allows.
  const fewer = { first: firstMessages.slice(0, 1), texts: texts.slice(0, Math.max(2, Math.round(800 / teas.length))) };
  const times = await inTurns(quick ? 1 : 3, {
    finder: () => freshTime(withOurs(teas), { texts }),
    ours: () => freshTime(withReader(teas), { texts }),
    minisearch: () => freshTime(withMiniSearch(teas), { texts }),
    fuse: () => freshTime(withFuse(teas), fewer),
  });
  const others = { 'minisearch, names alone': median(times.minisearch), 'fuse.js, names alone': median(times.fuse) };
  const ours = { 'the tea in': median(times.finder), 'all of': median(times.ours) };
  return Object.entries(ours).flatMap(([what, time]) =>
    Object.entries(others).map(([who, theirs]) =>
      less({ what: `${what} a message, ${teas.length} teas`, unit: 'ms', ours: time, who, theirs, atLeast: 1 }),
    ),
  );
}

function accuracy({ quick }: Size): readonly Figure[] {
  const { ours, ...others } = compareFinders(quick ? 100 : 8);
  return Object.entries(others).map(([who, theirs]) =>
    more({
      what: `the right tea, ${ours.of} sentences`,
      unit: '%',
      ours: (100 * ours.right) / ours.of,
      who,
      theirs: (100 * theirs.right) / theirs.of,
      atLeast: 1,
    }),
  );
}

export const reading: Row = {
  name: 'reading',
  about: 'reading a message',
  async measure(size) {
    const sizes = size.quick ? [0] : [0, 500, 5000];
    const figures: Figure[] = [];
    for (const count of sizes) figures.push(...(await among(count, size)));
    return [...figures, ...accuracy(size)];
  },
};
