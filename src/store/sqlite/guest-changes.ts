/** What a shopkeeper does with one person on a list: other seats, another lesson, a word to them alone. Judged on the rows as they are. */
import { changeSeats, enrol, giveBack } from '../../core/lessons/seats.ts';
import { reseatedTidings, transferredTidings, writtenToOneTidings, type Tidings } from '../../core/lessons/tidings.ts';
import type { Booking, Roster } from '../../core/lessons/roster.ts';
import type { DeskChange } from '../desk-contract.ts';
import { keepTurn, rosterOf } from './rosters.ts';
import { tell, type RosterRows } from './telling.ts';

type Do<Name extends DeskChange['do']> = Extract<DeskChange, { readonly do: Name }>;

/** False when the ground has moved. */
export function reseatGuest(rows: RosterRows, wish: Do<'reseat-guest'>, now: number): boolean {
  const { booked, before } = standingOf(rows, wish.booking);
  if (!before || booked?.booking.seats !== wish.was) return false;
  const turn = changeSeats(before, { id: wish.booking, seats: wish.seats, byShop: true }, wish.at);
  if ('mistakes' in turn || !keepTurn(rows, turn, { before, now })) return false;
  const one = turn.roster.bookings.find(({ id }) => id === wish.booking);
  if (one) tellWhomOneCan(rows, one, { tidings: reseatedTidings(before.lesson, one, wish.was), now });
  return true;
}

export function transferGuest(rows: RosterRows, wish: Do<'transfer-guest'>, now: number): boolean {
  const { booked, before } = standingOf(rows, wish.booking);
  const there = rosterOf(rows, wish.lesson);
  if (!booked || !before || !there || there.lesson.id === before.lesson.id) return false;
  const { person, seats } = booked.booking;
  const taken = enrol(there, { id: wish.id, person, seats }, wish.at);
  const made = 'mistakes' in taken ? undefined : taken.roster.bookings.at(-1);
  if (made?.standing !== 'seated') return false;
  if (!keepTurn(rows, taken, { before: there, now, address: booked.address })) return false;
  if (!keepTurn(rows, giveBack(before, wish.booking, wish.at), { before, now })) return false;
  tellWhomOneCan(rows, made, { tidings: transferredTidings(there.lesson, before.lesson, made), now });
  return true;
}

/** Whom nothing reaches any more is a task for the shop. */
export function writeToGuest(rows: RosterRows, { booking, text }: Do<'write-to-guest'>, now: number): boolean {
  const { booked, before } = standingOf(rows, booking);
  if (!booked || !before) return false;
  tell(rows, booked.booking, { tidings: writtenToOneTidings(before.lesson, text), now });
  return true;
}

interface Standing {
  readonly booked: ReturnType<RosterRows['bookings']['of']>;
  readonly before?: Roster | undefined;
}

function standingOf(rows: RosterRows, id: string): Standing {
  const booked = rows.bookings.of(id);
  if (!booked || booked.booking.standing === 'left') return { booked: undefined };
  return { booked, before: rosterOf(rows, booked.lesson) };
}

/** Whom nothing reaches the shop has been told of where it was asked. */
function tellWhomOneCan(
  rows: RosterRows,
  one: Booking,
  told: { readonly tidings: Tidings; readonly now: number },
): void {
  const lesson = rows.bookings.of(one.id)?.lesson;
  if (lesson !== undefined && rows.bookings.reachOfLesson(lesson)(one.id) !== 'none') tell(rows, one, told);
}
