/** What a label that was opened names: a tea, a lesson, or nothing but the shop. */
import type { Facts } from '../flow/flow.ts';
import type { Tea } from '../teas/tea.ts';

/** A label names its tea or its lesson: "tea-tieguanyin", "lesson-first-cup-2026-12-05". Anything else is a bare start. */
export function heardLabel(teas: readonly Tea[], payload: string): Facts {
  const tea = teas.find(({ id }) => payload === `tea-${id}`);
  if (tea) return { kind: 'brew', tea: tea.id, family: tea.family };
  const [, lesson] = /^lesson-([A-Za-z0-9._-]{1,40})$/.exec(payload) ?? [];
  return lesson === undefined ? { kind: 'greeting' } : { kind: 'lesson', lesson };
}
