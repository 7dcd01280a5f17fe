/** F25: the house at work for a long time: what it needs must not grow. */
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { booksOf, EchoWorld, stop, tell } from './echo-world.ts';
import { comesTrue, Tally, unlike, type Fault, type Trial } from './fault.ts';

const perSecond = 200;
const timers = 10_000;
const largestLogBytes = 16 * 1024 * 1024;
const mb = 1024 * 1024;

export const soak: Fault = {
  id: 'F25',
  title: `${perSecond} messages a second and ${timers} timers, for a long time`,
  unit: 'seconds',
  counts: { few: 5, usual: 180, long: 7_200 },
  seconds: 220,
  async run(trial) {
    const tally = new Tally();
    const world = new EchoWorld(join(trial.folder, 'soak.sqlite'), 'web', 5_000);
    const service = world.live({ node: ['--expose-gc'] });
    await service.ready;
    const far = Date.now() + 10 * 3_600_000;
    const set = trial.count < 60 ? 200 : timers;
    for (let i = 0; i < set; i++) {
      tell(service, world.write(`at ${far + i}`));
      if (i % 200 === 199) await pause(5);
    }
    await comesTrue(() => world.unkept.size === 0, 120_000);
    const samples = await work(world, (line) => tell(service, line), trial);
    const behind = world.written - world.kept.size;
    // However far behind a busy machine is, it comes to rest.
    await world.settled(2_000);
    const atRest = (await memoryOf(world, (line) => tell(service, line)))?.heapUsed ?? 0;
    const growthMb = atRest / mb - Math.min(...samples.heap.slice(0, 10).map((point) => point.mb));
    const { code } = await stop(service);
    const books = booksOf(world.file);
    tally.tried = trial.count;
    // Each third message of a chat sets a timer, which is answered too; those far off are still owed.
    tally.wrong(
      unlike('exit', code, 0),
      unlike('unhandled', books.waiting, 0),
      unlike('still owed', books.open, set),
      unlike('said twice', [...world.copies.values()].filter((n) => n > 1).length, 0),
      samples.logBytes > largestLogBytes && `the log grew to ${Math.round(samples.logBytes / mb)} MB`,
      growthMb > 8 && `the heap grew by ${growthMb.toFixed(1)} MB after warming up`,
    );
    return tally.found({ ...figuresOf(samples, world), 'not yet kept at the end': behind });
  },
};

interface Samples {
  readonly heap: readonly Point[];
  readonly rss: readonly Point[];
  readonly logBytes: number;
}

interface Point {
  readonly atS: number;
  readonly mb: number;
}

/** Written at an even pace. */
async function work(world: EchoWorld, send: (line: string) => void, { count }: Trial): Promise<Samples> {
  const heap: Point[] = [];
  const rss: Point[] = [];
  let logBytes = 0;
  const began = performance.now();
  const first = world.written;
  const warmUpS = Math.min(60, count / 3);
  let nextSampleS = warmUpS;
  for (;;) {
    const atS = (performance.now() - began) / 1000;
    if (atS >= count) break;
    for (let owed = Math.floor(atS * perSecond) - (world.written - first); owed > 0; owed--) send(world.write());
    if (atS >= nextSampleS) {
      nextSampleS += Math.max(1, count / 60);
      const found = await memoryOf(world, send);
      if (found) {
        heap.push({ atS, mb: found.heapUsed / mb });
        rss.push({ atS, mb: found.rss / mb });
      }
      logBytes = Math.max(logBytes, statSync(`${world.file}-wal`, { throwIfNoEntry: false })?.size ?? 0);
    }
    await pause(10);
  }
  return { heap, rss, logBytes };
}

async function memoryOf(world: EchoWorld, send: (line: string) => void): Promise<EchoWorld['memory']> {
  world.memory = null;
  send(JSON.stringify({ tell: 'memory' }));
  await comesTrue(() => world.memory !== null, 10_000);
  return world.memory;
}

function figuresOf({ heap, rss, logBytes }: Samples, world: EchoWorld): Record<string, number | string> {
  const [heapSlope, rssSlope] = [slopeOf(heap), slopeOf(rss)];
  return {
    messages: world.written,
    'heap at the end, MB': Math.round(heap.at(-1)?.mb ?? 0),
    'resident at the end, MB': Math.round(rss.at(-1)?.mb ?? 0),
    'heap slope, MB/h': `${heapSlope.perHour.toFixed(1)} ± ${heapSlope.error.toFixed(1)}`,
    'resident slope, MB/h': `${rssSlope.perHour.toFixed(1)} ± ${rssSlope.error.toFixed(1)}`,
    'largest log, MB': Math.round((logBytes / mb) * 10) / 10,
  };
}

/** Least squares; the error is twice the standard one. */
function slopeOf(points: readonly Point[]): { readonly perHour: number; readonly error: number } {
  const n = points.length;
  if (n < 3) return { perHour: 0, error: Infinity };
  const meanX = points.reduce((sum, { atS }) => sum + atS, 0) / n;
  const meanY = points.reduce((sum, one) => sum + one.mb, 0) / n;
  const spread = points.reduce((sum, { atS }) => sum + (atS - meanX) ** 2, 0);
  const slope = points.reduce((sum, one) => sum + (one.atS - meanX) * (one.mb - meanY), 0) / spread;
  const left = points.reduce((sum, one) => sum + (one.mb - meanY - slope * (one.atS - meanX)) ** 2, 0);
  return { perHour: slope * 3600, error: 2 * Math.sqrt(left / (n - 2) / spread) * 3600 };
}
