/** The lessons and bookings a turn sees, as flows are given them. */
import type { Facts, Json } from '../../flow/flow.ts';
import type { Lesson } from '../../lessons/lesson.ts';
import { leaveUntil, type Booking, type ListedLesson, type OwnBooking } from '../../lessons/roster.ts';

export interface InHouse {
  readonly house?: Facts | undefined;
}

export const upcomingIn = ({ house }: InHouse): readonly ListedLesson[] =>
  (house?.['lessons'] ?? []) as unknown as readonly ListedLesson[];
/** Those nobody can book any more. */
export const goneIn = ({ house }: InHouse): readonly ListedLesson[] =>
  (house?.['gone'] ?? []) as unknown as readonly ListedLesson[];
export const ownIn = ({ house }: InHouse): readonly OwnBooking[] =>
  (house?.['bookings'] ?? []) as unknown as readonly OwnBooking[];
export const stands = ({ standing }: Booking): boolean => standing !== 'left';

export function ownBooking(lesson: string, inHouse: InHouse): OwnBooking | undefined {
  return ownIn(inHouse).find((one) => one.lesson.id === lesson && stands(one));
}

export const isAhead = (one: OwnBooking, nowMs: number): boolean => stands(one) && one.lesson.endsAt > nowMs;

/** Too late to give it back as one likes; that they don't come can still be said. */
export const isLateFor = (own: OwnBooking | undefined, nowMs: number): boolean =>
  own?.standing === 'seated' && nowMs >= leaveUntil(own.lesson, own) && nowMs < own.lesson.startsAt;

/** Where lessons are shown, what was on the list a while ago can be named as well. */
export const shownIn = (inHouse: InHouse): readonly Lesson[] => [...upcomingIn(inHouse), ...goneIn(inHouse)];

/** The first to begin. */
export const nextOf = (lessons: readonly Lesson[]): Lesson | undefined =>
  lessons.toSorted((a, b) => a.startsAt - b.startsAt)[0];

/** "Put me down for the next one", under a list of the evenings: the first of those. */
export function nextAmong(meant: readonly Lesson[], ids: Json): Lesson | undefined {
  const listed = Array.isArray(ids) ? meant.filter(({ id }) => ids.includes(id)) : [];
  return nextOf(listed.length > 0 ? listed : meant);
}

/** 兩個人 12號的, beside one that is shown: that one, on another day. */
export const isLike =
  ({ title }: Lesson) =>
  (other: Lesson): boolean =>
    Object.entries(title).every(([language, name]) => other.title[language as keyof typeof title] === name);

export const isCancelled = ({ lesson }: OwnBooking): boolean => lesson.status === 'cancelled';

export const zoneOf = (lessons: readonly Lesson[]): string => lessons[0]?.zone ?? 'UTC';

/** The evening before, "can you come?" is asked. */
const askedBeforeMs = 26 * 3_600_000;

/** A seat is offered, or a reminder asked and nothing was answered yet. */
export const isAsked = ({ standing, answer, lesson }: OwnBooking, nowMs: number): boolean =>
  lesson.startsAt > nowMs &&
  (standing === 'offered' || (standing === 'seated' && answer === null && lesson.startsAt - nowMs <= askedBeforeMs));
