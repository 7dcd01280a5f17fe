/** F10: the clock of the machine jumps, trembles, or the process is stopped and goes on. */
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { EchoWorld, stop, tell } from './echo-world.ts';
import { comesTrue, quantile, sideBySide, Tally, unlike, type Fault, type Trial } from './fault.ts';

const second = 1_000;
const hour = 3_600 * second;

interface Disturbance {
  readonly name: string;
  /** Where the clock stands, after each jump, against the true one. */
  readonly stepsMs: readonly number[];
  /** For how long the process is stopped. */
  readonly stoppedMs: number;
}

const disturbances: readonly Disturbance[] = [
  { name: 'an hour back', stepsMs: [-hour], stoppedMs: 0 },
  { name: 'an hour ahead', stepsMs: [hour], stoppedMs: 0 },
  { name: 'a day ahead', stepsMs: [24 * hour], stoppedMs: 0 },
  { name: 'a year ahead', stepsMs: [365 * 24 * hour], stoppedMs: 0 },
  {
    name: 'a second back, again and again',
    stepsMs: Array.from({ length: 100 }, (_, i) => (i % 2 === 0 ? -second : 0)),
    stoppedMs: 0,
  },
  { name: 'stopped and let go on', stepsMs: [], stoppedMs: 3 * second },
];

/** A clock that jumps is noticed within so long. */
const noticedWithinMs = 2 * second;

export const steppedClocks: Fault = {
  id: 'F10',
  title: 'a clock that jumps, and a process that is stopped for a while',
  unit: 'timers',
  counts: { few: 12, usual: 60, long: 1_000 },
  seconds: 30,
  async run(trial) {
    const tally = new Tally();
    const each = Math.ceil(trial.count / disturbances.length);
    const lateness = await sideBySide(disturbances.length, 6, (n) =>
      disturb(disturbances[n]!, { ...trial, count: each }, tally),
    );
    return tally.found({
      'latest, ms': Math.round(Math.max(...lateness.flat())),
      'median, ms': Math.round(quantile(lateness.flat(), 0.5)),
    });
  },
};

/** How late each was said by the clock of the house, beyond what a jump or a stop made late at once. */
async function disturb(
  { name, stepsMs, stoppedMs }: Disturbance,
  { count, folder, dice, slack }: Trial,
  tally: Tally,
): Promise<readonly number[]> {
  const world = new EchoWorld(join(folder, `${name.replaceAll(/\W/g, '-')}.sqlite`), 'web', count);
  const service = world.live();
  await service.ready;
  const shift = stepsMs.at(-1) ?? 0;
  const begin = async (howMany: number, standsAt: number): Promise<readonly number[]> => {
    const dues = Array.from({ length: howMany }, () => Date.now() + standsAt + 1_500 + dice.below(1_500));
    for (const [i, at] of dues.entries()) tell(service, world.write(`${i % 2 === 0 ? 'at' : 'wake'} ${at}`));
    await comesTrue(() => world.unkept.size === 0, 10_000 * slack);
    return dues;
  };
  const half = Math.ceil(count / 2);
  const before = await begin(half, 0);
  const jumpedAt = Date.now();
  for (const stepMs of stepsMs) {
    tell(service, JSON.stringify({ stepMs }));
    if (stepsMs.length > 1) await pause(20);
  }
  const due = [...before, ...(await begin(count - half, shift))];
  // Set back, the clock has the former still before it, but for one that rang already.
  const fewest = due.map((_, i) => (shift < 0 && i < half ? 0 : 1));
  if (stoppedMs > 0) {
    service.child.kill('SIGSTOP');
    await pause(stoppedMs);
    service.child.kill('SIGCONT');
  }
  const ringsOf = (i: number): readonly number[] =>
    [...world.said.values()]
      .filter(({ chat, text }) => chat === `c${i}` && (text.includes(' at ') || text.endsWith('timer')))
      .map((said) => said.at);
  await comesTrue(() => fewest.every((rings, i) => ringsOf(i).length >= rings), (5_000 + stoppedMs) * slack, 50);
  // Whatever would ring twice has the time to.
  await pause(300);
  const { code } = await stop(service);
  const resumedAt = jumpedAt + shift + stoppedMs;
  const lateness = due.map((at, i) => (ringsOf(i)[0] ?? at) - Math.max(at, resumedAt));
  for (const [i, at] of due.entries()) {
    const rings = ringsOf(i);
    tally.add(
      (rings.length < fewest[i]! || rings.length > 1) && `${name}: rang ${rings.length} times`,
      (rings[0] ?? at) < at - 1 && `${name}: ${at - (rings[0] ?? 0)} ms early`,
      lateness[i]! > noticedWithinMs * slack && `${name}: ${lateness[i]} ms late`,
    );
  }
  tally.wrong(unlike(`${name}: exit`, code, 0));
  return lateness;
}
