/** F20: a hundred people want what only one can have, and two shopkeepers move one lesson. */
import { randomBytes } from 'node:crypto';
import { makeShopCode } from '../../src/store/shop-code.ts';
import { ShopHouse } from '../conversation/shop-house.ts';
import { incoming } from '../store/samples.ts';
import { Tally, unlike, type Fault } from './fault.ts';
import { raceForSeat } from './last-seat.ts';
import { raceToMove } from './two-movers.ts';

const runners = 100;

export const oneWinner: Fault = {
  id: 'F20',
  title: `one one-time code, and one last seat, ${runners} people in the same instant; one lesson, two who move it`,
  unit: 'races',
  counts: { few: 1, usual: 50, long: 1_000 },
  seconds: 150,
  async run({ count, dice }) {
    const tally = new Tally();
    for (let i = 0; i < count; i++) {
      const people = Array.from({ length: runners }, (_, n) => `person-${n}`).toSorted(() => dice.roll() - 0.5);
      tally.add(...(await raceForSeat(people)));
      tally.add(...(await raceToMove(dice.pick(['mei', 'tom']))));
      const house = await new ShopHouse().open();
      const code = makeShopCode(randomBytes);
      await house.store.offerCode(code, house.clock.now() + 600_000);
      await Promise.all(people.map((from) => house.web.take(incoming(from, code))));
      await house.app.settled();
      const winners = people.filter((from) => house.told(from).includes('You are a shopkeeper now'));
      const losers = people.filter((from) => house.told(from).includes('opens nothing'));
      await house.end();
      tally.add(unlike('winners', winners.length, 1), unlike('told that it opens nothing', losers.length, runners - 1));
    }
    return tally.found();
  },
};
