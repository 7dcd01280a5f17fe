/**
 * What one machine holds of one operator's shops, reckoned from the figures var/bench.json keeps and from what a shop is assumed to be.
 * Prints a table for ops/scale.md.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { number, type Measured } from './told.ts';

/** Assumed, not measured: a busy small shop. */
const shop = {
  activeADay: 40,
  updatesOfEach: 12,
  /** Share of a day's updates in its busiest hour. */
  busiestHour: 0.2,
  brewsADay: 25,
  /** A guided brew is under way so long. */
  brewMinutes: 15,
  keptDays: 90,
} as const;

/** Assumed: a rented machine of the middle size, and how full anyone should let it get. */
const machine = { memoryGb: 16, diskGb: 320, busy: 0.5 } as const;

interface Costs {
  readonly updatesPerSecond: number;
  readonly kilobytesAnUpdate: number;
  readonly processMb: number;
}

function costsFrom(rows: readonly Measured[]): Costs {
  const found = (row: string, what: RegExp): number => {
    const figure = rows.find(({ name }) => name === row)?.figures.find((one) => what.test(one.what));
    if (!figure)
      throw new Error(`var/bench.json tells nothing of "${row}" that fits ${what}: npm run bench measures all rows`);
    return figure.ours;
  };
  return {
    updatesPerSecond: 1e6 / found('growth', /^an update with 100,000/),
    kilobytesAnUpdate: found('growth', /^kept on disk/),
    processMb: found('lateness', /^memory/),
  };
}

interface Need {
  readonly shops: number;
  readonly peakPerSecond: number;
  readonly liveBrews: number;
  readonly memoryGbApart: number;
  readonly diskGb: number;
  /** Shares of one machine: 1 is full. */
  readonly load: number;
}

function needOf(shops: number, costs: Costs): Need {
  const updatesADay = shops * shop.activeADay * shop.updatesOfEach;
  const peakPerSecond = (updatesADay * shop.busiestHour) / 3600;
  return {
    shops,
    peakPerSecond,
    liveBrews: (shops * shop.brewsADay * shop.busiestHour * shop.brewMinutes) / 60,
    memoryGbApart: (shops * costs.processMb) / 1024,
    diskGb: (updatesADay * shop.keptDays * costs.kilobytesAnUpdate) / 2 ** 20,
    load: peakPerSecond / (costs.updatesPerSecond * machine.busy),
  };
}

/** How many shops fill one machine, by each of its parts. */
function limits(costs: Costs): readonly string[] {
  const one = needOf(1, costs);
  const shops = {
    'memory, a process a shop': (machine.memoryGb * machine.busy) / one.memoryGbApart,
    'disk, all in files of one machine': (machine.diskGb * machine.busy) / one.diskGb,
    'updates in the busiest hour, one process': 1 / one.load,
  };
  return Object.entries(shops)
    .toSorted(([, a], [, b]) => a - b)
    .map(([what, most]) => `| ${what} | ${number(Math.floor(most))} |`);
}

const file = process.argv[2] ?? fileURLToPath(new URL('../../../../var/bench.json', import.meta.url));
const { about, rows } = JSON.parse(readFileSync(file, 'utf8')) as { about: string; rows: readonly Measured[] };
const costs = costsFrom(rows);
const table = [10, 1_000, 100_000]
  .map((shops) => needOf(shops, costs))
  .map((need) => {
    const cells = [need.shops, need.peakPerSecond, need.liveBrews, need.memoryGbApart, need.diskGb, need.load * 100];
    return `| ${cells.map(number).join(' | ')} |`;
  });
const told = [
  `Measured ${about}.`,
  '',
  '| shops | updates/s, busiest hour | brews under way | memory, a process each, GB | disk, GB | of one process, % |',
  '| --- | --- | --- | --- | --- | --- |',
  ...table,
  '',
  '| what fills first | shops |',
  '| --- | --- |',
  ...limits(costs),
];
process.stdout.write(`${told.join('\n')}\n`);
