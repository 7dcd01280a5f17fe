/** A letter to everybody who is coming to more than one lesson: which lessons are meant, how many it reaches, and whom not. Sends nothing. */
import type { Around, Calls } from '../../flow/book.ts';
import type { Facts } from '../../flow/flow.ts';
import { lettersTo, type Door } from '../../lessons/door-list.ts';
import { statusAt } from '../../lessons/lesson.ts';
import type { Listen } from '../../lessons/spoken/sentence.ts';
import type { CoreContent } from '../core-content.ts';
import { doorsIn } from './board.ts';
import { doorLines, namedDoors, oneByOne, untoldNames } from './named.ts';
import { textOf } from '../values.ts';

export const deskWriteAllCallNames = ['deskWriteAll'] as const;

export const deskWriteAllCalls = ({
  listen,
  zone,
}: Pick<CoreContent, 'listen' | 'zone'>): {
  readonly [name in (typeof deskWriteAllCallNames)[number]]: Calls[string];
} => ({ deskWriteAll: (given, around) => ({ gives: writtenTo(given, { around, listen, zone }) }) });

interface Ground {
  readonly around: Around;
  readonly listen: Listen;
  readonly zone: string;
}

/** `text`: the order without the letter itself, whose days are not those of the lessons. `only`: one of those shown. */
function writtenTo({ text, only = null }: Facts, { around, listen, zone }: Ground): Facts {
  const there = doorsIn(around).filter((door) => isToCome(door, around.nowMs) && seatedIn(door).length > 0);
  const named = namedDoors(listen(textOf(text)), there, { now: around.nowMs, zone });
  const doors = only === null ? (named ?? there) : there.filter(({ lesson }) => lesson.id === only);
  const letters = lettersTo(doors.map(seatedIn));
  const untold = letters.filter(({ reach }) => reach === 'none');
  return {
    isNothing: letters.length === 0,
    count: doors.length,
    lessons: doors.map(({ lesson }) => lesson.id),
    reached: letters.length - untold.length,
    unreached: untold.length,
    untold: untoldNames(untold),
    groups: oneByOne(doors),
    told: doorLines(doors),
  };
}

const isToCome = ({ lesson }: Door, now: number): boolean => !['cancelled', 'over'].includes(statusAt(lesson, now));
const seatedIn = ({ bookings }: Door): Door['bookings'] => bookings.filter(({ standing }) => standing === 'seated');
