/** The tea finder beside two search libraries used as they come, on the same names: each takes a sentence and names a tea, or none. */
import Fuse from 'fuse.js';
import MiniSearch from 'minisearch';
import { makeTeaFinder } from '../../src/core/teas/find.ts';
import type { Tea } from '../../src/core/teas/tea.ts';
import { readSentences, type Sentence } from '../reading/accuracy.ts';
import { names } from '../reading/content.ts';
import { catalogueOf } from './catalogue.ts';

export type Finder = (text: string) => string | null;

const rowsOf = (teas: readonly Tea[]): readonly { readonly name: string; readonly tea: string }[] =>
  teas.flatMap((tea) => [...Object.values(tea.names), ...tea.aliases].map((name) => ({ name, tea: tea.id })));

/** Words of Latin script, pairs of Han characters. */
function terms(text: string): string[] {
  const pairs = (text.match(/\p{Script=Han}+/gu) ?? []).flatMap((run) =>
    Array.from({ length: Math.max(1, run.length - 1) }, (_, i) => run.slice(i, i + 2)),
  );
  return [...(text.toLowerCase().match(/[a-z]+/g) ?? []), ...pairs];
}

export function withMiniSearch(teas: readonly Tea[]): Finder {
  const search = new MiniSearch({ fields: ['name'], storeFields: ['tea'], tokenize: terms });
  search.addAll(rowsOf(teas).map((row, id) => ({ id, ...row })));
  return (text) => (search.search(text, { fuzzy: 0.2 })[0]?.['tea'] as string | undefined) ?? null;
}

export function withFuse(teas: readonly Tea[]): Finder {
  const fuse = new Fuse(rowsOf(teas), { keys: ['name'], ignoreLocation: true, threshold: 0.4 });
  // A whole sentence is too long a pattern for it: each run of one to three words is looked up, the best hit counts.
  return (text) => {
    const words = terms(text);
    const windows = words.flatMap((_, i) => [1, 2, 3].map((n) => words.slice(i, i + n).join(' ')));
    const hits = [...new Set(windows)].flatMap((window) => fuse.search(window, { limit: 1 }));
    const [best] = hits.toSorted((a, b) => (a.score ?? 1) - (b.score ?? 1));
    return best?.item.tea ?? null;
  };
}

export function withOurs(teas: readonly Tea[]): Finder {
  const finder = makeTeaFinder(teas, names);
  return (text) => finder.find(text).best?.id ?? null;
}

/** Every so many-th labelled sentence; the finder was tuned on those of sentences.txt. */
export function everySentence(step: number): readonly Sentence[] {
  const all = [...readSentences('sentences.txt'), ...readSentences('fresh.txt')];
  return all.filter((_, i) => i % step === 0);
}

export interface Accuracy {
  readonly right: number;
  /** Took a tea for another, or saw one where there is none. */
  readonly wrong: number;
  readonly of: number;
}

export function accuracyOf(find: Finder, sentences: readonly Sentence[]): Accuracy {
  const found = sentences.map((sentence) => ({ tea: sentence.facts.tea ?? null, found: find(sentence.text) }));
  return {
    right: found.filter((one) => one.tea === one.found).length,
    wrong: found.filter((one) => one.found !== null && one.tea !== one.found).length,
    of: found.length,
  };
}

/** Of the real teas. */
export function compareFinders(step: number): { readonly [who in 'ours' | 'minisearch' | 'fuse.js']: Accuracy } {
  const teas = catalogueOf(0);
  const sentences = everySentence(step);
  const accuracy = (find: Finder): Accuracy => accuracyOf(find, sentences);
  return {
    ours: accuracy(withOurs(teas)),
    minisearch: accuracy(withMiniSearch(teas)),
    'fuse.js': accuracy(withFuse(teas)),
  };
}
