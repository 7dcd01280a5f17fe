/** Part of F20: a hundred people want the last seat of a lesson in the same instant. */
import { LessonHouse } from '../lessons/lesson-house.ts';
import { incoming } from '../store/samples.ts';
import { unlike } from './fault.ts';

/** What is wrong after one such race. */
export async function raceForSeat(people: readonly string[]): Promise<readonly (string | null)[]> {
  const house = await LessonHouse.with({ seats: 1 });
  const receivedAt = house.clock.now();
  await Promise.all(people.map((from) => house.web.take(incoming(from, 'book 1 seat in white tea', { receivedAt }))));
  await house.app.settled();
  const told = people.map((from) => house.told(from));
  const [roster] = await house.store.rosters(receivedAt);
  await house.end();
  return [
    unlike('seats given', roster?.bookings.filter(({ standing }) => standing === 'seated').length, 1),
    unlike('told of a seat', told.filter((words) => words.includes('You have a seat')).length, 1),
    unlike('told that it is full', told.filter((words) => words.includes('is full')).length, people.length - 1),
  ];
}
