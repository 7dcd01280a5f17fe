/** A few of the steps between which the house may be killed; `node tests/channels/telegram/kill-steps.mjs` tries them all, often. */
import { expect, it } from 'vitest';
import { dice } from '../../faults/counts.ts';
import { killAt, steps } from './kill-steps.ts';

it('killed between two steps, loses nothing and says nothing a third time', { timeout: 600_000 }, async () => {
  const { seed, below } = dice();
  const from = below(steps.length);
  const chosen = [0, 8, 16].map((further) => steps[(from + further) % steps.length]!);
  const killed = await Promise.all(chosen.map((step, n) => killAt(step, 200_000, n)));
  expect(
    killed.filter(({ wrong }) => wrong.length > 0),
    `seed ${seed}`,
  ).toEqual([]);
});
