/**
 * The tea finder beside two search libraries used as they come, on the same names and the same labelled sentences:
 * how many teas each gets right, how many it takes for another, and milliseconds of CPU a sentence.
 */
import Fuse from 'fuse.js';
import MiniSearch from 'minisearch';
import { makeTeaFinder } from '../../src/core/teas/find.ts';
import { readSentences } from '../reading/accuracy.ts';
import { names, teas } from '../reading/content.ts';

type Finder = (text: string) => string | null;

const rows = teas.flatMap((tea) =>
  [...Object.values(tea.names), ...tea.aliases].map((name) => ({ name, tea: tea.id })),
);

/** Words of Latin script, pairs of Han characters. */
function terms(text: string): string[] {
  const han = (text.match(/\p{Script=Han}+/gu) ?? []).flatMap((run) =>
    Array.from({ length: Math.max(1, run.length - 1) }, (_, i) => run.slice(i, i + 2)),
  );
  return [...(text.toLowerCase().match(/[a-z]+/g) ?? []), ...han];
}

function withMiniSearch(): Finder {
  const search = new MiniSearch({ fields: ['name'], storeFields: ['tea'], tokenize: terms });
  search.addAll(rows.map((row, id) => ({ id, ...row })));
  return (text) => (search.search(text, { fuzzy: 0.2 })[0]?.['tea'] as string | undefined) ?? null;
}

function withFuse(): Finder {
  const fuse = new Fuse(rows, { keys: ['name'], ignoreLocation: true, threshold: 0.4 });
  // A whole sentence is too long a pattern for it: each run of one to three words is looked up, the best hit counts.
  return (text) => {
    const words = terms(text);
    const windows = words.flatMap((_, i) => [1, 2, 3].map((n) => words.slice(i, i + n).join(' ')));
    const hits = [...new Set(windows)].flatMap((window) => fuse.search(window, { limit: 1 }));
    const [best] = hits.toSorted((a, b) => (a.score ?? 1) - (b.score ?? 1));
    return best?.item.tea ?? null;
  };
}

function withOurs(): Finder {
  const finder = makeTeaFinder(teas, names);
  return (text) => finder.find(text).best?.id ?? null;
}

/** Of every so many-th labelled sentence; the finder was tuned on those of sentences.txt. */
export function compareFinders(every: number): string[] {
  const all = [...readSentences('sentences.txt'), ...readSentences('fresh.txt')];
  const sentences = all.filter((_, i) => i % every === 0);
  return Object.entries({ ours: withOurs(), minisearch: withMiniSearch(), 'fuse.js': withFuse() }).map(
    ([name, find]) => {
      const before = process.cpuUsage();
      const found = sentences.map((sentence) => ({ tea: sentence.facts.tea ?? null, found: find(sentence.text) }));
      const { user, system } = process.cpuUsage(before);
      const right = found.filter((one) => one.tea === one.found).length;
      const wrong = found.filter((one) => one.found !== null && one.tea !== one.found).length;
      const ms = (user + system) / 1000 / found.length;
      return `${name}: ${right} of ${found.length} right, ${wrong} taken for another, ${ms.toFixed(3)} ms a sentence`;
    },
  );
}
