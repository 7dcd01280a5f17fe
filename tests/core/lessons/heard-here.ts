/** Sentences as this house hears them, by the turns of phrase of its data, and lessons planned by them. */
import { readLessonCues } from '../../../src/content/lesson-cues.ts';
import { makeListen } from '../../../src/core/functions/listen.ts';
import { planLesson, type Planned, type Today } from '../../../src/core/lessons/lesson.ts';
import type { Sentence } from '../../../src/core/lessons/spoken/sentence.ts';
import { hearLesson, spokenDraft, type HouseLesson } from '../../../src/core/lessons/spoken/spoken.ts';

export const listen = makeListen(readLessonCues('data'));

export function planSpoken(sentence: Sentence, house: HouseLesson, today: Today): Planned {
  const spoken = spokenDraft(hearLesson(sentence, today.now, house.zone), house);
  return 'mistakes' in spoken ? spoken : planLesson(spoken.draft, today);
}
