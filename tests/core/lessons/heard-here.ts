/** Sentences as this house hears them, by the turns of phrase of its data, and a lesson as a shopkeeper tells of it. */
import { readLessonCues } from '../../../src/content/cue-file.ts';
import { deskPlanCalls } from '../../../src/core/functions/desk/plan.ts';
import { makeListen } from '../../../src/core/functions/listen.ts';
import type { Facts } from '../../../src/core/flow/flow.ts';
import type { Instant } from '../../../src/core/units.ts';

export const listen = makeListen(readLessonCues('data'));

/** What is planned by one sentence, or the first thing that is wrong with it or missing. */
export function planned(text: string, zone: string, nowMs: Instant): Facts {
  const around = { nowMs, language: 'en', memory: {}, house: { tzVersion: '2025c', event: '9' } };
  const outcome = deskPlanCalls({ zone, listen }).planning({ text }, around);
  return 'gives' in outcome ? (outcome.gives as Facts) : {};
}
