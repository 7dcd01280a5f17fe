/** F3: killed at random under load, and again while it is getting up. */
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { Tally, unlike, type Fault, type Trial } from './fault.ts';
import { booksOf, die, EchoWorld, stop } from './echo-world.ts';

/** Where a repeat does no harm nothing is ever given up; where it does, nothing is said thrice. Many chats, so that none is paced for long. */
const rooms = [
  { channel: 'web', chats: 8, mostCopies: Infinity },
  { channel: 'telegram', chats: 64, mostCopies: 2 },
] as const;

type Room = (typeof rooms)[number];

export const doubleKills: Fault = {
  id: 'F3',
  title: 'killed again while it is getting up from a kill',
  unit: 'double kills',
  counts: { few: 4, usual: 100, long: 2_000 },
  seconds: 200,
  async run(trial) {
    const tally = new Tally();
    const figures: Record<string, number> = {};
    for (const room of rooms) figures[`${room.channel}: said twice`] = await inRoom(room, trial, tally);
    return tally.found(figures);
  },
};

async function inRoom(
  { channel, chats, mostCopies }: Room,
  { count, dice, folder }: Trial,
  tally: Tally,
): Promise<number> {
  const world = new EchoWorld(join(folder, `${channel}.sqlite`), channel, chats);
  const deaths = Math.ceil(count / rooms.length);
  for (let i = 0; i < deaths; i++) {
    const service = world.live();
    await service.ready;
    await world.load(service, dice.below(300));
    await die(service);
    const gettingUp = world.live();
    await pause(dice.below(400));
    await die(gettingUp);
    tally.add();
  }
  const last = world.live();
  await last.ready;
  await world.load(last, 50);
  await world.settled();
  const { code } = await stop(last);
  const books = booksOf(world.file);
  const copies = [...world.copies.values()];
  const doubled = copies.filter((n) => n > 1).length;
  const missing = world.missing().length;
  tally.wrong(
    unlike('exit', code, 0),
    unlike('integrity', books.integrity, 'ok'),
    unlike('unhandled', books.waiting, 0),
    unlike('unsent', books.open, 0),
    unlike('given up without a task', books.givenUp, books.tasks),
    mostCopies === Infinity && unlike('given up', books.givenUp, 0),
    Math.max(...copies) > mostCopies && `${Math.max(...copies)} copies of one message`,
    doubled > 2 * deaths * chats && `${doubled} said twice in ${2 * deaths} deaths`,
    // What is not seen was twice cut off, and the shop has been told.
    missing > books.givenUp && `${missing} acknowledged messages are without an answer`,
  );
  return doubled;
}
