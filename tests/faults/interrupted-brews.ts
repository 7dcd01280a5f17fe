/** F15: thousands of brews under way, and the house killed in the middle of them. */
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { die, EchoWorld, stop, tell } from './echo-world.ts';
import { comesTrue, quantile, Tally, type Fault, type Trial } from './fault.ts';

const brews = { few: 400, usual: 10_000 } as const;
const overdueWithinMs = 2_000;
const allBeginWithinMs = 120_000;

export const interruptedBrews: Fault = {
  id: 'F15',
  title: 'brews under way by the thousand, killed half-way',
  unit: 'kills',
  counts: { few: 1, usual: 3, long: 50 },
  seconds: 150,
  async run(trial) {
    const tally = new Tally();
    const lateness: number[] = [];
    let slowest = 0;
    for (let i = 0; i < trial.count; i++) {
      const found = await interrupt(i, trial.count === 1 ? brews.few : brews.usual, trial, tally);
      lateness.push(...found.undisturbed);
      slowest = Math.max(slowest, found.overdueMs);
    }
    return tally.found({
      brews: trial.count === 1 ? brews.few : brews.usual,
      'undisturbed, late p99, ms': quantile(lateness, 0.99),
      'undisturbed, late most, ms': quantile(lateness, 1),
      'overdue ones out after the start within, ms': Math.round(slowest),
    });
  },
};

interface Found {
  /** How late, of those that fell due while the first life went on. */
  readonly undisturbed: readonly number[];
  /** How long after the second start the last of the overdue ones was out. */
  readonly overdueMs: number;
}

async function interrupt(n: number, count: number, { folder, slack }: Trial, tally: Tally): Promise<Found> {
  const world = new EchoWorld(join(folder, `${n}.sqlite`), 'web', count);
  const first = world.live();
  await first.ready;
  const spanMs = Math.max(2_000, 3 * count);
  const beginMs = 1_000 + 0.5 * count * Math.min(slack, 3);
  const start = Date.now() + beginMs;
  const dues = Array.from({ length: count }, (_, i) => Math.round(start + (spanMs * i) / count));
  for (const [i, due] of dues.entries()) {
    tell(first, world.write(`at ${due}`));
    if (i % 200 === 199) await pause(1);
  }
  if (!(await comesTrue(() => world.unkept.size === 0, allBeginWithinMs)))
    throw new Error('the brews could not be begun');
  await pause(Math.max(0, start + spanMs / 2 - Date.now()));
  await die(first);
  const undisturbed = [...world.said.values()].map(lateBy);
  const again = world.live();
  await again.ready;
  const startedAt = Date.now();
  await comesTrue(() => world.said.size === count, (spanMs + 10_000) * slack, 50);
  await pause(200);
  await stop(again);
  const overdue = [...world.said.values()].filter(({ text, at }) => dueOf(text) <= startedAt && at >= startedAt);
  const overdueMs = Math.max(0, ...overdue.map(({ at }) => at - startedAt));
  const early = [...world.said.values()].filter((said) => lateBy(said) < -1).length;
  tally.add(
    world.said.size !== count && `${count - world.said.size} brews were never called`,
    early > 0 && `${early} were called early`,
    overdueMs > overdueWithinMs * slack && `the overdue ones took ${Math.round(overdueMs)} ms`,
  );
  return { undisturbed, overdueMs };
}

const dueOf = (text: string): number => Number(text.split(' ')[2]);
const lateBy = ({ text, at }: { readonly text: string; readonly at: number }): number => at - dueOf(text);
