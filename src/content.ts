/** Reads flows and data once, at the start, and refuses them with every mistake at once when anything is wrong. */
import { readAllFlows } from './content/book.ts';
import { readBrewingData } from './content/brewing-data.ts';
import { readTeaNames, readTeas } from './content/tea-data.ts';
import { readWordFiles } from './content/words.ts';
import { ContentMistake } from './content/yaml-file.ts';
import type { BrewingData } from './core/brewing/brewing-data.ts';
import type { FlowBook } from './core/flow/book.ts';
import { makeCalls, type ReadMessage } from './core/functions.ts';
import { makeTeaFinder, type TeaFinder } from './core/teas/find.ts';
import type { Tea } from './core/teas/tea.ts';
import type { Language } from './core/units.ts';
import { makeWords, type Words } from './core/words/words.ts';

export interface ContentFolders {
  readonly flowsDir: string;
  readonly dataDir: string;
  readonly shopDir?: string;
}

export interface Content {
  readonly teas: readonly Tea[];
  readonly finder: TeaFinder;
  readonly brewing: BrewingData;
  readonly words: Words;
  readonly book: FlowBook;
  readonly read: ReadMessage;
}

export { ContentMistake };

/** Throws one ContentMistake with the mistakes of all files, one a line. */
export function readContent({ flowsDir, dataDir }: ContentFolders): Content {
  const mistakes: string[] = [];
  const attempt = <T>(read: () => T): T | null => {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof ContentMistake)) throw error;
      mistakes.push(error.message);
      return null;
    }
  };
  const teas = attempt(() => readTeas(dataDir));
  const names = attempt(() => readTeaNames(dataDir));
  const brewing = attempt(() => readBrewingData(dataDir));
  const wordFiles = readWordFiles(flowsDir);
  mistakes.push(...wordFiles.problems);
  const words =
    wordFiles.problems.length === 0
      ? makeWords(wordFiles.sources, (kind, id, l) => nameOf(teas ?? [], kind, id, l))
      : null;
  if (!teas || !names || !brewing || !words) throw new ContentMistake(mistakes.join('\n'));
  const finder = makeTeaFinder(teas, names);
  const read = plainReader(finder);
  const calls = makeCalls({ teas, brewing, read });
  const book = attempt(() => readAllFlows(flowsDir, { calls, words }));
  if (!book || mistakes.length > 0) throw new ContentMistake(mistakes.join('\n'));
  return { teas, finder, brewing, words, book, read };
}

/** Names that the data holds; all others are sentences "<kind>-<id>". */
function nameOf(teas: readonly Tea[], kind: string, id: string, language: Language): string | null {
  return kind === 'tea' ? (teas.find((tea) => tea.id === id)?.names[language] ?? null) : null;
}

/** Until core/reading reads whole sentences: the tea, a vessel's id and millilitres, nothing else. */
function plainReader(finder: TeaFinder): ReadMessage {
  return (text, { language, asked }) => {
    const found = finder.find(text);
    const volume = /(\d+)\s*(?:ml|毫升)/i.exec(text) ?? (asked === 'volumeMl' ? /(\d+)/.exec(text) : null);
    const vessel = /gaiwan|mug|thermos|蓋碗|盖碗/.exec(text)?.[0] ?? null;
    return {
      language: language ?? 'en',
      languageSure: false,
      kind: found.best || found.family || volume || vessel ? 'brew' : 'offtopic',
      tea: found.best?.id ?? null,
      teas: found.candidates.map((tea) => tea.id),
      family: found.family,
      vessel: vessel && /碗/.test(vessel) ? 'gaiwan' : vessel,
      volumeMl: volume ? Number(volume[1]) : null,
      noThermometer: false,
      noScale: false,
      mistakes: [],
    };
  };
}
