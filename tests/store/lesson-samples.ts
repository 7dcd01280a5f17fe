/** A shop with lessons, students and a shopkeeper, to test a store with. */
import { instantOf } from '../../src/core/lessons/calendar.ts';
import type { LessonDraft } from '../../src/core/lessons/lesson.ts';
import type { BookingAct } from '../../src/core/lessons/seats.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Change, Owed, Store, Turn } from '../../src/store/contract.ts';
import type { LessonBoard } from '../../src/store/lesson-contract.ts';
import { draft } from '../core/lessons/lesson-drafts.ts';
import { claimAt, commitOf, incoming } from './samples.ts';

export const denverAt = (wall: string): Instant => instantOf(wall, 'America/Denver');

/** A day in November; the lesson is on Saturday, 5 December, at 19:00. */
export const day = denverAt('2026-11-20T12:00');
export const starts = denverAt('2026-12-05T19:00');

export const lessonOf = (more: Partial<LessonDraft> = {}): LessonDraft => ({ ...draft, seats: 3, ...more });

export async function withLesson(store: Store, more: Partial<LessonDraft> = {}, now = day): Promise<void> {
  await store.planLessons({ lessons: [lessonOf(more)], series: [] }, now);
}

/** Someone writes; the turn as it was loaded. */
export async function turnOf(store: Store, from: string, now = day): Promise<Turn> {
  const { person } = await store.record(incoming(from, 'hello', { receivedAt: now }));
  const turn = await store.load(person ?? 0, now);
  if (!turn) throw new Error('nothing to handle');
  return turn;
}

/** Someone does something; whether it came about, and the booking it would have made. */
export async function does(
  store: Store,
  from: string,
  change: (turn: Turn) => Change,
  now = day,
): Promise<{ readonly outcome: 'done' | 'moved'; readonly booking: string }> {
  const turn = await turnOf(store, from, now);
  const outcome = await store.commit(commitOf(turn, [change(turn)], { now }));
  // What has moved is put aside, so that the next message is heard.
  if (outcome === 'moved') await store.commit(commitOf(turn, [], { now }));
  return { outcome, booking: bookingOf(turn) };
}

export function bookingOf({ event }: Turn): string {
  return event.kind === 'wake' ? '' : String(event.seq);
}

export interface Enrolment {
  readonly seats?: number;
  readonly to?: 'seated' | 'waiting';
  readonly lesson?: string;
  readonly now?: Instant;
}

export async function enrols(
  store: Store,
  from: string,
  { seats = 1, to = 'seated', lesson = 'white-evening', now = day }: Enrolment = {},
): Promise<string> {
  const made = await does(store, from, (turn) => enrolment(turn, { lesson, seats, to, now }), now);
  if (made.outcome !== 'done') throw new Error(`${from} could not be ${to}`);
  return made.booking;
}

export function enrolment(
  turn: Turn,
  { seats = 1, to = 'seated', lesson = 'white-evening', now = day }: Enrolment = {},
): Change {
  return { do: 'enrol', booking: bookingOf(turn), lesson, seats, to, at: now };
}

export const act = (booking: string, what: BookingAct, at = day): Change => ({ do: 'booking', booking, act: what, at });

export async function boardOf(store: Store, from: string, now = day): Promise<LessonBoard> {
  const turn = await turnOf(store, from, now);
  await store.commit(commitOf(turn, [], { now }));
  return turn.lessons;
}

/** Everything that is due, sent. */
export async function sent(store: Store, now: Instant): Promise<readonly Owed[]> {
  const all: Owed[] = [];
  for (;;) {
    const owed = await store.claim(claimAt(now));
    if (owed.length === 0) return all;
    for (const one of owed) await store.settle(one.id, { kind: 'sent', ref: one.id }, now);
    all.push(...owed);
  }
}

/** What is told to whom: "ann offer", in the order it was sent. */
export const told = (owed: readonly Owed[]): readonly string[] =>
  owed.map(({ address, saying }) => {
    const key = saying.phrases[0]?.key ?? '';
    return `${address.chat.replace('chat-of-', '')} ${key.replace('lesson-told-', '')}`;
  });

export async function tendAll(store: Store, now: Instant): Promise<void> {
  while ((await store.tend(now, 64)) === 64);
}
