/** Reads flows and data once, at the start, and refuses them with every mistake at once when anything is wrong. */
import { existsSync } from 'node:fs';
import { disagreements } from './content/agreement.ts';
import { makeBook, readFlows } from './content/book.ts';
import { readAnswers } from './content/answers.ts';
import { readBrewingData } from './content/brewing-data.ts';
import type { Ids } from './content/flow-ids.ts';
import { readLessonCues } from './content/cue-file.ts';
import { readReadingWords } from './content/reading-words.ts';
import { readTalkPhrases } from './content/talk-phrases.ts';
import { readTeaNames, readTeas } from './content/tea-data.ts';
import { readLessons, type LessonData } from './content/lesson-data.ts';
import { readShelf, shelfFile } from './content/shelf.ts';
import { readShop, type Shop } from './content/shop-data.ts';
import { wrongUse } from './content/used-words.ts';
import { readWordFiles } from './content/words.ts';
import { ContentMistake } from './content/yaml-file.ts';
import type { BrewingData } from './core/brewing/brewing-data.ts';
import { styles } from './core/brewing/plan.ts';
import type { FlowBook } from './core/flow/book.ts';
import { makeCalls } from './core/functions.ts';
import { makeListen } from './core/functions/listen.ts';
import { keepingCalls, usualKeeping, type Keeping } from './core/functions/keeping.ts';
import type { StandingAnswer } from './core/reading/answers.ts';
import { makeSeatChange, type Kin } from './core/lessons/spoken/seat-change.ts';
import { makeWithoutCourtesies } from './core/reading/typed/courtesies.ts';
import { makeReader, type Reader } from './core/reading/reading.ts';
import type { PeopleWords } from './core/reading/reading-words.ts';
import { makeTalkCues } from './core/talk/talk-cues.ts';
import { makeTeaFinder, type TeaFinder } from './core/teas/find.ts';
import { plainText } from './core/teas/plain-text.ts';
import type { Tea } from './core/teas/tea.ts';
import type { Language } from './core/units.ts';
import { makeWords, type Words } from './core/words/words.ts';

export interface ContentFolders {
  readonly flowsDir: string;
  readonly dataDir: string;
  readonly shopDir: string;
  readonly keeping?: Keeping;
}

export interface Content {
  readonly teas: readonly Tea[];
  readonly finder: TeaFinder;
  readonly brewing: BrewingData;
  readonly words: Words;
  readonly book: FlowBook;
  readonly read: Reader;
  readonly answers: readonly StandingAnswer[];
  readonly shop: Shop;
  readonly lessons: LessonData;
}

export { ContentMistake };

/** Throws one ContentMistake with the mistakes of all files, one a line. */
export function readContent({ flowsDir, dataDir, shopDir, keeping = usualKeeping }: ContentFolders): Content {
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
  const readingWords = attempt(() => readReadingWords(dataDir));
  const lessonCues = attempt(() => readLessonCues(dataDir));
  const talkPhrases = attempt(() => readTalkPhrases(dataDir));
  const answers = attempt(() => readAnswers(dataDir, shopDir));
  const shop = attempt(() => readShop(shopDir));
  const lessons = attempt(() => readLessons(shopDir, teas && new Set(teas.map(({ id }) => id))));
  if (teas && existsSync(shelfFile(shopDir))) attempt(() => readShelf(shopDir, teas));
  if (teas && names && brewing && readingWords && shop) {
    mistakes.push(...disagreements({ dataDir, shopDir, teas, names, brewing, readingWords, shop }));
  }
  const wordFiles = readWordFiles(flowsDir);
  const { flows, problems } = readFlows(flowsDir, wordFiles, teas && brewing ? idsOf(teas, brewing) : {});
  mistakes.push(...wordFiles.problems, ...problems);
  if (brewing && mistakes.length === 0) mistakes.push(...wrongUse({ files: wordFiles, flows, brewing }));
  if (
    !teas ||
    !names ||
    !brewing ||
    !readingWords ||
    !lessonCues ||
    !talkPhrases ||
    !answers ||
    !shop ||
    !lessons ||
    mistakes.length > 0
  ) {
    throw new ContentMistake(mistakes.join('\n'));
  }
  const words = makeWords(wordFiles.sources, (kind, id, language) => nameOf({ teas, answers }, { kind, id, language }));
  const finder = makeTeaFinder(teas, names);
  const read = makeReader({ finder, words: readingWords, ordinary: names.ordinary, answers });
  const withoutCourtesies = makeWithoutCourtesies(readingWords.courtesies);
  const seatChange = makeSeatChange(kinOf(readingWords.people));
  const listen = makeListen(lessonCues);
  const talkCues = makeTalkCues(talkPhrases);
  const calls = {
    ...makeCalls({ teas, brewing, read, withoutCourtesies, zone: shop.zone, seatChange, listen, talkCues }),
    ...keepingCalls(keeping),
  };
  const book = makeBook(flows, calls, words);
  return { teas, finder, brewing, words, book, read, answers, shop, lessons };
}

const idsOf = (teas: readonly Tea[], { vessels, families }: BrewingData): Ids => ({
  tea: teas.map(({ id }) => id),
  vessel: Object.keys(vessels),
  family: Object.keys(families),
  style: styles,
});

type Named = { readonly teas: readonly Tea[]; readonly answers: readonly StandingAnswer[] };

const inBoth = (words: readonly string[]): readonly string[] => [
  ...words,
  ...words.map((word) => plainText(word).plain),
];

/** In both scripts, as people write either. */
function kinOf({ one, two, many }: PeopleWords): Kin {
  return { one: inBoth(one), two: inBoth(two), many: inBoth(many) };
}

/** Names and texts that the data holds; all others are sentences "<kind>-<id>". */
function nameOf(
  { teas, answers }: Named,
  { kind, id, language }: { kind: string; id: string; language: Language },
): string | null {
  if (kind === 'tea') return teas.find((tea) => tea.id === id)?.names[language] ?? null;
  return kind === 'answer' ? (answers.find((answer) => answer.id === id)?.text[language] ?? null) : null;
}
