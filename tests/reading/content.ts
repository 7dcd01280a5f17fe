/** The reader and the finder with the real data, for tests. */
import { join } from 'node:path';
import { readAnswers } from '../../src/content/answers.ts';
import { readReadingWords } from '../../src/content/reading-words.ts';
import { readTalkPhrases } from '../../src/content/talk-phrases.ts';
import { readTeaNames, readTeas } from '../../src/content/tea-data.ts';
import { makeReader } from '../../src/core/reading/reading.ts';
import { makeTalkCues } from '../../src/core/talk/talk-cues.ts';
import { makeTeaFinder } from '../../src/core/teas/find.ts';

const dataDir = join(import.meta.dirname, '..', '..', 'data');

export const teas = readTeas(dataDir);
export const names = readTeaNames(dataDir);
export const words = readReadingWords(dataDir);
export const answers = readAnswers(dataDir);
export const finder = makeTeaFinder(teas, names);
export const read = makeReader({ finder, words, ordinary: names.ordinary, answers });
export const talkCues = makeTalkCues(readTalkPhrases(dataDir));
