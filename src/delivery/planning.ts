/** Keeps the lessons to come planned: at the start, and a few times a day, for series go on and time-zone rules change. */
import type { Clock } from '../clock.ts';
import { errorFields, type Log } from '../log.ts';
import type { Store } from '../store/contract.ts';
import type { LessonPlan } from '../store/lesson-contract.ts';

const everyMs = 6 * 60 * 60_000;

export interface PlanningParts {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly plan: LessonPlan;
}

export function makePlanning({ store, clock, log, plan }: PlanningParts) {
  let cancel: (() => void) | null = null;
  const arm = (): void => {
    cancel = clock.wakeAt(clock.now() + everyMs, again);
  };
  const again = (): void => {
    arm();
    store
      .planLessons(plan, clock.now())
      .catch((error: unknown) => log.error('lessons could not be planned', errorFields(error)));
  };
  return {
    async start() {
      await store.planLessons(plan, clock.now());
      arm();
    },
    stop: () => cancel?.(),
  };
}
