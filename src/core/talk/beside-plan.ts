/** What is said of a plan that stands: that it shall be as it was, and how many cups of it. It plans nothing. */
import type { Json } from '../flow/flow.ts';
import { isTold, says, type Scene } from './scene.ts';

/** "-3 min ago" is no time. */
export const belowZero = /(?<![^\s(])[-−]\s?\d[\d.,]*/g;

/** "Go back to how it was", beside a plan that was changed. */
export function undoesThePlan(scene: Scene): boolean {
  const { flow, asked = null } = scene;
  return flow === 'brew' && asked === null && (says('undo')(scene) || says('as-it-was')(scene));
}

/** "Something like da hong pao, but lighter": another tea, and in which way it shall be another. */
export function likeAnother(scene: Scene): 'alike' | 'lighter' | 'darker' | null {
  const { heard } = scene;
  const mayBe = !careful.has(heard['kind'] ?? null) && !isTold(heard, 'vessel') && !isTold(heard, 'volumeMl');
  if (!mayBe || !says('like-another')(scene)) return null;
  if (says('but-lighter')(scene)) return 'lighter';
  return says('but-darker')(scene) ? 'darker' : 'alike';
}
/** "Alishan or dong ding, what's the difference?" */
export const comparesTeas = (scene: Scene): boolean =>
  !careful.has(scene.heard['kind'] ?? null) && says('compares')(scene);

const careful: ReadonlySet<Json> = new Set(['safety', 'lesson']);

/** "Is five cups of that ok?" */
export function manyCups({ words, cues }: Scene): number | null {
  const cups = cues.says('so-many-cups', words) ? cues.numberIn('so-many-cups', words) : null;
  return cups === null || cups < 1 ? null : cups;
}
