/** The part of a commit that is about the shopkeeper's own side; rights and seats are looked up again in the same transaction. */
import { enrol, giveBack } from '../../core/lessons/seats.ts';
import { putBack } from '../../core/lessons/put-back.ts';
import { enrolledTidings, givenBackTidings, putBackTidings } from '../../core/lessons/tidings.ts';
import type { Commit } from '../contract.ts';
import type { DeskChange } from '../desk-contract.ts';
import { reseatGuest, transferGuest, writeToGuest } from './guest-changes.ts';
import type { makeGuests } from './guests.ts';
import { keepTurn, rosterOf } from './rosters.ts';
import { nowhere, tell, type RosterRows } from './telling.ts';
import type { Shopkeepers } from './shopkeepers.ts';
import type { Tallies } from './tallies.ts';
import type { Tasks } from './tasks.ts';

export interface DeskRows extends RosterRows {
  readonly shopkeepers: Shopkeepers;
  readonly tallies: Tallies;
  readonly tasks: Tasks;
  readonly guests: ReturnType<typeof makeGuests>;
}

/** False when the ground has moved. */
export function applyDeskChange(rows: DeskRows, { person, now }: Commit, change: DeskChange): boolean {
  if (change.do === 'count') {
    rows.tallies.count(change.what, change.item, now);
    return true;
  }
  if (!rows.shopkeepers.has(person)) return false;
  switch (change.do) {
    case 'enrol-guest':
      return enrolGuest(rows, change, now);
    case 'release-guest':
      return releaseGuest(rows, change, now);
    case 'put-back-guest':
      return putBackGuest(rows, change, now);
    case 'reseat-guest':
      return reseatGuest(rows, change, now);
    case 'transfer-guest':
      return transferGuest(rows, change, now);
    case 'write-to-guest':
      return writeToGuest(rows, change, now);
    case 'offer-code':
      rows.shopkeepers.openCode(change.code, change.until);
      return true;
    case 'seen-undelivered':
      rows.tasks.closeUndelivered(change.upTo);
      return true;
    default:
      return change satisfies never;
  }
}

/** A guest with an address is told by mail, with the day for their calendar: they were not there when it was put down. */
function enrolGuest(
  rows: RosterRows & Pick<DeskRows, 'guests'>,
  wish: Omit<Extract<DeskChange, { readonly do: 'enrol-guest' }>, 'do'>,
  now: number,
): boolean {
  const before = rosterOf(rows, wish.lesson);
  if (!before) return false;
  const mail = wish.mail ?? nowhere;
  if (mail === nowhere && wish.to === 'waiting') return false;
  const guest = String(rows.guests.add({ ...wish, mail, now }));
  const turn = enrol(before, { id: wish.booking, person: guest, seats: wish.seats }, wish.at);
  if ('mistakes' in turn || turn.roster.bookings.at(-1)?.standing !== wish.to) return false;
  if (!keepTurn(rows, turn, { before, now, address: { channel: 'mail', chat: mail } })) return false;
  const booking = turn.roster.bookings.at(-1)!;
  if (mail !== nowhere) tell(rows, booking, { tidings: enrolledTidings(turn.roster.lesson, booking), now });
  return true;
}

function releaseGuest(
  rows: RosterRows,
  { booking: id, at }: Extract<DeskChange, { readonly do: 'release-guest' }>,
  now: number,
): boolean {
  const booked = rows.bookings.of(id);
  const before = booked && rosterOf(rows, booked.lesson);
  const reach = booked && rows.bookings.reachOfLesson(booked.lesson)(id);
  if (!before) return false;
  const turn = giveBack(before, id, at);
  if ('mistakes' in turn || !keepTurn(rows, turn, { before, now })) return false;
  const gone = turn.roster.bookings.find((one) => one.id === id);
  if (gone && reach !== 'none') {
    const key = reach === 'chat' ? 'taken-off' : 'did-leave';
    const hadSeat = booked.booking.standing === 'seated';
    tell(rows, gone, { tidings: givenBackTidings(before.lesson, gone, { key, hadSeat }), now });
  }
  return true;
}

function putBackGuest(
  rows: RosterRows,
  { at, ...wish }: Omit<Extract<DeskChange, { readonly do: 'put-back-guest' }>, 'do'>,
  now: number,
): boolean {
  const booked = rows.bookings.of(wish.booking);
  const before = booked && rosterOf(rows, booked.lesson);
  if (!before) return false;
  const turn = putBack(before, wish, at);
  if ('mistakes' in turn || !keepTurn(rows, turn, { before, now, address: booked.address })) return false;
  const back = turn.roster.bookings.find(({ id }) => id === (wish.to === 'seated' ? wish.id : wish.booking));
  // Who was offered a seat thereby hears of that.
  const isTold = back && back.standing === wish.to && booked.address.chat !== nowhere;
  if (isTold) tell(rows, back, { tidings: putBackTidings(before.lesson, back), now });
  return true;
}
