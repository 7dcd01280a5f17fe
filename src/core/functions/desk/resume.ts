/** Lessons that were called off and take place after all: which a shopkeeper means, and who will be told. Changes nothing. */
import type { Around, Calls } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import type { Door } from '../../lessons/door-list.ts';
import type { Series } from '../../lessons/series.ts';
import type { Listen } from '../../lessons/spoken/sentence.ts';
import type { CoreContent } from '../core-content.ts';
import { doorsIn } from './board.ts';
import { doorLines, doorsSeen, namedDoors, oneByOne, reachOfAll } from './named.ts';
import { phrase, textOf } from '../values.ts';

export const deskResumeCallNames = ['deskResume'] as const;

export const deskResumeCalls = ({
  listen,
  zone,
}: Pick<CoreContent, 'listen' | 'zone'>): {
  readonly [name in (typeof deskResumeCallNames)[number]]: Calls[string];
} => ({ deskResume: (given, around) => ({ gives: resumed(given, { around, listen, zone }) }) });

interface Ground {
  readonly around: Around;
  readonly listen: Listen;
  readonly zone: string;
}

/** Cancelled, and still to come. */
export const calledOffIn = (around: Around): readonly Door[] =>
  doorsIn(around).filter(({ lesson }) => lesson.status === 'cancelled' && lesson.startsAt > around.nowMs);

/** `off`: what was called off in this talk a moment ago. `only`: one of those shown. */
function resumed({ text = null, off = null, only = null }: Facts, { around, listen, zone }: Ground): Facts {
  const there = calledOffIn(around);
  if (only !== null) return factsOf(there.filter(({ lesson }) => lesson.id === only));
  const found = text === null ? null : namedDoors(listen(textOf(text)), there, { now: around.nowMs, zone });
  if (found) return factsOf(found);
  const last = off as Off | null;
  const undone = there.filter(({ lesson }) => last?.lessons.includes(lesson.id));
  return last === null || undone.length < last.lessons.length
    ? factsOf(there)
    : factsOf(undone, last.series, last.days ?? null);
}

interface Off {
  readonly lessons: readonly string[];
  /** As they were before. */
  readonly series: readonly Series[];
  readonly days?: Json;
}

function factsOf(doors: readonly Door[], series: readonly Series[] = [], days: Json = null): Facts {
  const { reached, unreached } = reachOfAll(doors);
  return {
    isNothing: doors.length === 0 && series.length === 0,
    count: doors.length,
    booked: reached + unreached,
    unreached,
    lessons: doorsSeen(doors),
    series: series as unknown as Json,
    days,
    groups: oneByOne(doors),
    lines: doorLines(doors),
    told: [
      ...doorLines(doors),
      ...series.map(({ draft }) => phrase('desk-told-series-back', { title: { ...draft.title } })),
      ...(doors.length > 0 ? [phrase('desk-told-reach', { reached, unreached })] : []),
    ],
  };
}
