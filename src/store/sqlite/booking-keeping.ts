/** A table of bookings: each row judged on the rows as they are then, those before it in the table among them. */
import {
  knownMistakes,
  newcomerMistakes,
  noSuchBooking,
  noSuchLesson,
  type BookingDraft,
} from '../../core/lessons/booking-draft.ts';
import { enrol } from '../../core/lessons/seats.ts';
import { enrolledTidings } from '../../core/lessons/tidings.ts';
import type { Instant, Language, Mistake } from '../../core/units.ts';
import type { WrongRow } from '../lesson-contract.ts';
import type { makeGuests } from './guests.ts';
import { keepTurn, rosterOf } from './rosters.ts';
import { nowhere, tell, type RosterRows } from './telling.ts';

export interface GuestRows {
  readonly guests: ReturnType<typeof makeGuests>;
}

interface Circumstances {
  readonly language: Language;
  readonly now: Instant;
}

type Rows = RosterRows & GuestRows;
type Row = BookingDraft & Pick<WrongRow, 'n'>;

/** Nothing is undone here: whoever calls it drops everything when anything is wrong. */
export function putBookings(
  rows: Rows,
  drafts: readonly BookingDraft[],
  circumstances: Circumstances,
): readonly WrongRow[] {
  return drafts
    .map((draft, n) => ({ n, mistakes: put(rows, { ...draft, n }, circumstances) }))
    .filter(({ mistakes }) => mistakes.length > 0);
}

function put(rows: Rows, draft: Row, circumstances: Circumstances): readonly Mistake[] {
  if (draft.booking === null) return add(rows, draft, circumstances);
  const kept = rows.bookings.of(draft.booking.id);
  if (!kept) return [noSuchBooking(draft.booking.id)];
  return knownMistakes(kept.booking, kept.lesson, draft);
}

function add(rows: Rows, draft: Row, { language, now }: Circumstances): readonly Mistake[] {
  const before = rosterOf(rows, draft.lesson);
  if (!before) return [noSuchLesson(draft.lesson)];
  const hindered = newcomerMistakes({ roster: before, there: rows.bookings.namedOfLesson(draft.lesson) }, draft, now);
  if (hindered.length > 0) return hindered;
  const { name, seats, n } = draft;
  const mail = draft.mail ?? nowhere;
  const id = freshId(rows, now, n + 1);
  const person = String(rows.guests.add({ booking: id, name, mail, language, now }));
  const turn = enrol(before, { id, person, seats }, now);
  if ('mistakes' in turn) return turn.mistakes;
  keepTurn(rows, turn, { before, now, address: { channel: 'mail', chat: mail } });
  const booking = turn.roster.bookings.at(-1)!;
  // Who left no address is there when they are written down.
  if (draft.mail !== null) tell(rows, booking, { tidings: enrolledTidings(turn.roster.lesson, booking), now });
  return [];
}

/** Bookings made in a conversation are called by a number: none is called so. Two tables may come at one instant. */
function freshId(rows: Rows, now: Instant, n: number): string {
  const id = `t${now.toString(36)}-${n}`;
  // The number stays that of the row: a refused one before it has taken its own.
  return rows.bookings.of(id) ? freshId(rows, now + 1, n) : id;
}
