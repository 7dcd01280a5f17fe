/** For whom a lesson is, as a shopkeeper or a student says it. */
import type { Level } from '../lesson.ts';
import { firstSaid, type Sentence } from './sentence.ts';

/** The first that fits; "no beginners" is for the others. Each is a cue of the same name. */
const hardestFirst = ['advanced', 'intermediate', 'beginner'] as const satisfies readonly Level[];

export const readLevel = (words: Sentence): Level | undefined => firstSaid(words, hardestFirst);

/** For whom a student wants a lesson to be. */
export const levelWished = (sentence: Sentence): Level | undefined =>
  sentence.says('says-level') ? readLevel(sentence) : undefined;
