/** F1: the whole program killed at random while people come from every side at once. */
import { mkdirSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { join } from 'node:path';
import { startService, type Service } from '../app/service.ts';
import { comesTrue, sideBySide, Tally, unlike, type Fault, type Figures, type Findings, type Trial } from './fault.ts';
import { booksOf, closeProperly, die, stop } from './echo-world.ts';
import { mailSide } from './mail-side.ts';
import { pageSide, telegramSide, type Side } from './sides.ts';

export const wholeKills: Fault = {
  id: 'F1',
  title: 'the whole program killed at random, Telegram, the page and mail at once',
  unit: 'kills',
  counts: { few: 6, usual: 300, long: 5_000 },
  seconds: 300,
  // Most of a life is getting up: two houses side by side, unless there is little to do.
  async run(trial) {
    const houses = trial.count < 100 ? 1 : 2;
    const found = await sideBySide(houses, houses, (n) =>
      inOneHouse(trial, Math.ceil(trial.count / houses), String(n)),
    );
    return found.reduce(together);
  },
};

async function inOneHouse(trial: Trial, count: number, name: string): Promise<Findings> {
  const folder = join(trial.folder, name);
  mkdirSync(folder);
  const sides = [await telegramSide(), pageSide(), await mailSide(databaseIn(folder))];
  try {
    return await killAgainAndAgain(sides, { ...trial, count, folder });
  } finally {
    for (const side of sides) side.end();
  }
}

function together(one: Findings, other: Findings): Findings {
  const figures = Object.entries(one.figures ?? {}).map(([name, value]) => [
    name,
    Number(value) + Number(other.figures?.[name] ?? 0),
  ]);
  return {
    tried: one.tried + other.tried,
    broken: [...one.broken, ...other.broken],
    figures: Object.fromEntries(figures) as Figures,
  };
}

/** Who is still open once enough are answered, or nobody more was for so long. */
async function openAtLast(
  ask: () => Promise<readonly string[]>,
  isEnough: (open: readonly string[]) => boolean,
  patienceMs: number,
): Promise<readonly string[]> {
  let open = await ask();
  for (let fewest = Infinity; !isEnough(open) && open.length < fewest;) {
    fewest = open.length;
    await comesTrue(async () => (open = await ask()).length < fewest, patienceMs, 500);
  }
  return open;
}

const databaseIn = (folder: string): string => join(folder, 'ninthpour.sqlite');

async function killAgainAndAgain(sides: readonly Side[], { count, dice, folder, slack }: Trial) {
  const tally = new Tally();
  const live = (): Service =>
    startService({
      env: { NINTHPOUR_FOLDER: folder, ...Object.assign({}, ...sides.map(({ env }) => env)) },
    });
  const everywhere = (work: (side: Side) => Promise<void>): Promise<unknown> => Promise.all(sides.map(work));
  for (let i = 0; i < count; i++) {
    // Half the lives follow a command that closed the file: then what comes is handled as it is kept.
    if (i % 2 === 1) closeProperly(databaseIn(folder));
    const service = live();
    // Every fourth dies while it is still getting up: the second death of a double.
    if (i % 4 === 3) await pause(dice.below(500));
    else {
      const address = await service.ready;
      const atWork = everywhere((side) => side.again(address).then(() => side.write(address, 3)));
      await pause(dice.below(300));
      await Promise.all([die(service), atWork]);
    }
    await die(service);
    tally.add();
  }
  const file = databaseIn(folder);
  // Cut off twice while it was sent, an answer may have come twice: it ends with the shop, which is told.
  const givenUpOn = ({ name }: Side): number => booksOf(file, name).givenUp;
  const last = live();
  const address = await last.ready;
  await everywhere((side) => side.again(address).then(() => side.write(address, 3)));
  for (const side of sides) {
    // Whoever is told to come more slowly comes again, as a page does.
    const ask = async (): Promise<readonly string[]> => {
      await side.again(address);
      return side.unanswered(address);
    };
    const open = await openAtLast(ask, ({ length }) => length <= givenUpOn(side), 30_000 * slack);
    const { most } = await side.copies(address);
    const given = givenUpOn(side);
    tally.wrong(
      open.length > given && `${side.name}: ${open.length} unanswered, ${given} given up: ${open.slice(0, 9).join()} …`,
      most > 2 && `${side.name}: ${most} copies of one answer`,
    );
  }
  const figures: Record<string, number> = {};
  for (const side of sides) {
    figures[`${side.name}: messages`] = side.count();
    figures[`${side.name}: answered twice`] = (await side.copies(address)).doubled;
  }
  const { code } = await stop(last);
  const { integrity, waiting, givenUp } = booksOf(file);
  tally.wrong(unlike('exit', code, 0), unlike('integrity', integrity, 'ok'), unlike('unhandled', waiting, 0));
  return tally.found({ ...figures, 'given up and told': givenUp });
}
