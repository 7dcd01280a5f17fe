/** Lessons written down as data/shop/lessons.yaml holds them, to be read by `readLessonFile` again. */
import { stringify } from 'yaml';
import type { LessonDraft } from '../core/lessons/lesson.ts';

/** The lessons one by one: a series stands here as the lessons that follow from it. */
export function writeLessonYaml(drafts: readonly LessonDraft[]): string {
  return stringify(drafts.map((draft) => ({ ...draft, series: undefined })));
}
