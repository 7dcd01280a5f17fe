/** The lessons and bookings a turn sees, as flows are given them. */
import type { Facts } from '../flow/flow.ts';
import type { Booking, ListedLesson, OwnBooking } from '../lessons/roster.ts';

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
