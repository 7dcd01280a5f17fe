/** Lessons written down as data/shop/lessons.yaml holds them, to be read by `readLessonFile` again. */
import { stringify } from 'yaml';
import type { LessonDraft } from '../core/lessons/lesson.ts';

/** The lessons one by one: a series stands here as the lessons that follow from it. What is not said is not written. */
export function writeLessonYaml(drafts: readonly LessonDraft[]): string {
  return stringify(drafts.map((draft) => withoutUnsaid({ ...draft, series: '' })));
}

function withoutUnsaid(draft: object): object {
  return Object.fromEntries(Object.entries(draft).filter(([, value]) => !isUnsaid(value)));
}

const isUnsaid = (value: unknown): boolean =>
  value === '' || (typeof value === 'object' && value !== null && 'en' in value && value.en === '');
