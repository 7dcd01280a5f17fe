/** People who wrote themselves down on paper, as a table of bookings: some by an address, some without. */
import type { BookingDraft } from '../../../src/core/lessons/booking-draft.ts';
import type { Roster } from '../../../src/core/lessons/roster.ts';
import type { Instant } from '../../../src/core/units.ts';
import type { Store } from '../../../src/store/contract.ts';
import type { Dice } from './dice.ts';

/** What is wrong with how the house took it; null when nothing is. */
export async function takeTable(store: Store, dice: Dice, roster: Roster, now: Instant): Promise<string | null> {
  const { id } = roster.lesson;
  const rows = Array.from({ length: dice.whole(1, 4) }, () => rowFor(id, dice));
  const size = async (): Promise<number> => (await store.bookings(now)).filter(({ lesson }) => lesson === id).length;
  const before = await size();
  const wrong = await store.putBookings(rows, 'en', now);
  const added = (await size()) - before;
  const expected = wrong.length === 0 ? rows.length : 0;
  return added === expected ? null : `a table of ${rows.length} for ${id} added ${added}: ${JSON.stringify(wrong)}`;
}

function rowFor(lesson: string, dice: Dice): BookingDraft {
  const n = dice.whole(1, 9_999);
  return {
    booking: null,
    lesson,
    name: `Guest ${n}`,
    mail: dice.chance() < 0.5 ? `guest-${n}@example.org` : null,
    seats: dice.whole(0, 3),
    standing: dice.of(['seated', 'waiting']) ?? 'seated',
  };
}

/** They have no chat: what they are told goes out by mail, or by word of mouth. */
export const isOfTable = ({ id }: { readonly id: string }): boolean => id.startsWith('t');
