/** Part of F20: two shopkeepers move the same lesson in the same instant. */
import { LessonHouse } from '../lessons/lesson-house.ts';
import { unlike } from './fault.ts';

const keepers = ['mei', 'tom'] as const;
const steps = ['Lessons, behind the counter', 'white tea', 'Move it'];
const hours = { mei: ['8 pm', '20:00'], tom: ['6 pm', '18:00'] } as const;

/** What is wrong after one such race. */
export async function raceToMove(first: (typeof keepers)[number]): Promise<readonly (string | null)[]> {
  const house = await LessonHouse.with({}, ...keepers);
  await house.books('ann');
  for (const who of keepers) for (const line of [...steps, hours[who][0]]) await house.does(who, line);
  const before = house.sent.length;
  await Promise.all(keepers.toSorted((who) => (who === first ? -1 : 1)).map((who) => house.tap(who, 'Yes, move it')));
  await house.app.settled();
  const told = (who: string, words: RegExp): number => (house.told(who, before).match(words) ?? []).length;
  const winner = keepers.filter((who) => told(who, /^Moved/gm) === 1);
  const losers = keepers.filter((who) => told(who, /^Somebody has just changed this lesson/gm) === 1);
  const [roster] = await house.store.rosters(0);
  const [hour = ''] = winner.map((who) => hours[who][1]);
  const found = [
    unlike('told that it is moved', winner.length, 1),
    unlike('told that somebody was faster', losers.length, keepers.length - 1),
    unlike('moves', roster?.lesson.moves, 1),
    unlike('begins at', roster?.lesson.starts.slice(11), hour),
    unlike('told to who booked', told('ann', /has been moved/g), 1),
  ];
  await house.end();
  return found;
}
