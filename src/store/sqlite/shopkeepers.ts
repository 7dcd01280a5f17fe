/** Who is shopkeeper, and the one-time code that makes one. */
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type { Database } from 'better-sqlite3';
import type { Instant } from '../../core/units.ts';
import type { Address, Keeper, PersonId } from '../contract.ts';
import type { Desk } from '../desk-contract.ts';
import { codeIn } from '../shop-code.ts';

export interface Shopkeepers {
  /** Those the house has met, each with where they are told something. */
  met(): readonly (Address & { readonly person: PersonId })[];
  has(person: PersonId): boolean;
  appoint(keepers: readonly Keeper[], now: Instant): void;
  offerCode(code: string, until: Instant): boolean;
  /** Whoever is shopkeeper already. */
  openCode(code: string, until: Instant): void;
  /** Whether the text holds a code, and whether it is the open one. */
  judge(text: string, now: Instant): Desk['code'];
  /** False when another try came between. */
  useCode(
    by: PersonId,
    at: Address,
    use: { readonly right: boolean; readonly tries: number; readonly now: Instant },
  ): boolean;
}

/** So many wrong codes, from whomever, and the open one is worth nothing. */
const mostTries = 10;

interface CodeRow {
  readonly salt: Buffer;
  readonly digest: Buffer;
  readonly expiresAt: Instant;
  readonly tries: number;
  readonly used: 0 | 1;
}

export function makeShopkeepers(db: Database): Shopkeepers {
  // Asked for every event: the few shopkeepers first, not everybody who was ever met (CROSS JOIN keeps SQLite to this order).
  const met = db.prepare<[], Address & { person: PersonId }>(
    `SELECT h.person, h.channel, h.chat FROM shopkeeper s
     CROSS JOIN handle h ON h.channel = s.channel AND h.sender = s.sender
     ORDER BY s.channel, s.sender`,
  );
  const has = db.prepare<[PersonId], { one: 1 }>(
    'SELECT 1 AS one FROM handle h JOIN shopkeeper s USING (channel, sender) WHERE h.person = ?',
  );
  const dismiss = db.prepare(`DELETE FROM shopkeeper WHERE by = 'settings'`);
  const appoint = db.prepare(
    `INSERT INTO shopkeeper (channel, sender, by, since) VALUES (@channel, @from, 'settings', @now) ON CONFLICT DO NOTHING`,
  );
  const anyone = db.prepare<[], { one: 1 }>('SELECT 1 AS one FROM shopkeeper LIMIT 1');
  const offer = db.prepare<[Buffer, Buffer, Instant]>(
    'INSERT OR REPLACE INTO shop_code (id, salt, digest, expires_at) VALUES (1, ?, ?, ?)',
  );
  const open = db.prepare<[], CodeRow>(
    'SELECT salt, digest, expires_at AS expiresAt, tries, used FROM shop_code WHERE id = 1',
  );
  const use = db.prepare(
    `UPDATE shop_code SET used = 1 WHERE tries = @tries AND tries < ${mostTries} AND used = 0 AND expires_at > @now`,
  );
  const miss = db.prepare(`UPDATE shop_code SET tries = tries + 1 WHERE tries < ${mostTries}`);
  const enter = db.prepare(
    `INSERT INTO shopkeeper (channel, sender, by, since) SELECT channel, sender, 'code', @now FROM handle
     WHERE person = @by AND channel = @channel AND chat = @chat ON CONFLICT DO NOTHING`,
  );

  const openCode = (code: string, until: Instant): void => {
    const salt = randomBytes(16);
    offer.run(salt, digestOf(salt, codeIn(code) ?? ''), until);
  };
  return {
    met: () => met.all(),
    has: (person) => has.get(person) !== undefined,
    appoint(keepers, now) {
      dismiss.run();
      for (const keeper of keepers) appoint.run({ ...keeper, now });
    },
    offerCode(code, until) {
      if (anyone.get()) return false;
      openCode(code, until);
      return true;
    },
    openCode,
    judge(text, now) {
      const code = codeIn(text);
      if (code === null) return null;
      const row = open.get();
      if (!row) return { right: false, tries: null };
      const isOpen = row.used === 0 && row.expiresAt > now && row.tries < mostTries;
      return { right: isOpen && timingSafeEqual(digestOf(row.salt, code), row.digest), tries: row.tries };
    },
    useCode(by, { channel, chat }, { right, tries, now }) {
      // A wrong one stays wrong, whoever else tries; only the right one depends on how often was tried.
      if (!right) return miss.run().changes >= 0;
      return use.run({ tries, now }).changes === 1 && enter.run({ by, channel, chat, now }).changes === 1;
    },
  };
}

const digestOf = (salt: Buffer, code: string): Buffer => createHash('sha256').update(salt).update(code).digest();
