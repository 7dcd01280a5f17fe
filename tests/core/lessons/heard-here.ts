/** Sentences as this house hears them, by the turns of phrase of its data. */
import { readLessonCues } from '../../../src/content/lesson-cues.ts';
import { makeListen } from '../../../src/core/functions/listen.ts';

export const listen = makeListen(readLessonCues('data'));
