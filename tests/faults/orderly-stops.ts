/** F24: told to stop under load: soon gone, nothing lost, nothing said twice. */
import { join } from 'node:path';
import { Tally, unlike, type Fault } from './fault.ts';
import { booksOf, EchoWorld, stop } from './echo-world.ts';

const longestStopMs = 5_000;

export const orderlyStops: Fault = {
  id: 'F24',
  title: 'told to stop under load',
  unit: 'stops',
  counts: { few: 2, usual: 50, long: 500 },
  seconds: 34,
  async run({ count, dice, folder }) {
    const tally = new Tally();
    const world = new EchoWorld(join(folder, 'stop.sqlite'), 'web', 16);
    let longest = 0;
    for (let i = 0; i < count; i++) {
      const service = world.live();
      await service.ready;
      await world.load(service, 50 + dice.below(150));
      const { code, tookMs } = await stop(service);
      longest = Math.max(longest, tookMs);
      const late = tookMs > longestStopMs && `took ${Math.round(tookMs)} ms`;
      tally.add(unlike('exit', code, 0), late, unlike('integrity', booksOf(world.file).integrity, 'ok'));
    }
    const last = world.live();
    await last.ready;
    await world.load(last, 0);
    await world.settled();
    await stop(last);
    const doubled = [...world.copies.values()].filter((n) => n > 1).length;
    const mixed = Array.from({ length: world.chats }, (_, c) =>
      unlike(`chat ${c}`, world.answersOf(`c${c}`), world.textsOf(c)),
    );
    tally.wrong(unlike('said twice', doubled, 0), ...mixed);
    return tally.found({ messages: world.kept.size, 'longest stop, ms': Math.round(longest) });
  },
};
