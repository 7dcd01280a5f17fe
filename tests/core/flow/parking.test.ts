/** What a flow takes along from the one left: also from the one before a flow that is only passed through. */
import { expect, test } from 'vitest';
import type { Flow } from '../../../src/core/flow/book.ts';
import type { Parked } from '../../../src/core/flow/flow.ts';
import { factsFor } from '../../../src/core/flow/parking.ts';

const flow = (name: string, passing: boolean, takes: readonly string[]): Flow =>
  ({ name, passing, aside: false, takes, listens: { when: null, facts: {} } }) as unknown as Flow;
const brew: Parked = { flow: 'brew', hash: '', place: 'plan', facts: { tea: 'longjing', plan: { count: 3 } } };

test.each([
  ['left for good', false, {}],
  ['only passed through', true, { tea: 'longjing' }],
])('from a flow %s', (_, passing, taken) => {
  const next = flow('taste', false, ['tea']);
  expect(factsFor(next, [brew], { flow: flow('answers', passing, []), facts: {}, isAnew: true })).toEqual(taken);
});
