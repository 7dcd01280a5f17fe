/** The mail side of the whole house: students without a chat, written down by the shop while the house lives and dies, and their letters. */
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { openPostOffice } from '../channels/mail/post-office.ts';
import { draft } from '../core/lessons/lesson-drafts.ts';
import type { Side } from './sides.ts';

const monthMs = 30 * 24 * 60 * 60 * 1000;

export async function mailSide(file: string): Promise<Side> {
  const office = await openPostOffice();
  const guests: string[] = [];
  let lessons = 0;
  const lettersTo = (guest: string): number => office.kept.filter(({ to }) => to.includes(guest)).length;
  return {
    name: 'mail',
    env: { NINTHPOUR_SMTP_URL: `smtp://127.0.0.1:${office.port}`, NINTHPOUR_SMTP_FROM: 'shop@example.org' },
    // From a table, as `npm run lessons` does: by another process, which outlives the one that writes the letters.
    async write(_, people) {
      const store = openSqliteStore(file);
      const now = Date.now();
      const id = `lesson-${lessons++}`;
      const starts = new Date(now + monthMs).toISOString().slice(0, 16);
      const some = Array.from({ length: people }, (_one, n) => `guest-${guests.length + n}@example.org`);
      const drafts = some.map((mail) => ({
        booking: null,
        lesson: id,
        name: mail,
        mail,
        seats: 1,
        standing: 'seated' as const,
      }));
      await store.planLessons({ lessons: [{ ...draft, id, zone: 'UTC', starts, seats: people }], series: [] }, now);
      const wrong = await store.putBookings(drafts, 'en', now);
      await store.close();
      if (wrong.length > 0) throw new Error(`not written down: ${JSON.stringify(wrong)}`);
      guests.push(...some);
    },
    // What was written down is written down.
    again: () => Promise.resolve(),
    unanswered: () => Promise.resolve(guests.filter((guest) => lettersTo(guest) === 0)),
    count: () => guests.length,
    copies() {
      const all = guests.map(lettersTo);
      return Promise.resolve({ most: Math.max(0, ...all), doubled: all.filter((n) => n > 1).length });
    },
    end: () => void office.close(),
  };
}
