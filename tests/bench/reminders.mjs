// How late reminders are: so many that fall due within one minute, in a channel without limits and in one that may send 25
// a second; and how soon those that fell due while the house was down are sent. Times are in milliseconds, of this
// process's clock. node tests/bench/reminders.mjs [reminders] [reminders in the limited channel]; 0 leaves one out
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { makeApp } from '../../dist/app.js';
import { contentOf, sayIn, stepIn } from '../../dist/own-content.js';
import { systemClock } from '../../dist/clock.js';
import { readConfig } from '../../dist/config.js';
import { instantOf, wallAt } from '../../dist/core/lessons/calendar.js';
import { makeLog } from '../../dist/log.js';
import { openSqliteStore } from '../../dist/store/sqlite/store.js';

const content = contentOf(readConfig({}));
const minute = 60_000;
const day = 24 * 60 * minute;

/** Where it is about noon now: at night nobody is reminded. */
const hours = 12 - new Date().getUTCHours();
const zone = hours === 0 ? 'Etc/UTC' : `Etc/GMT${hours > 0 ? '-' : '+'}${Math.abs(hours)}`;

const wording = (text) => ({ en: text, 'zh-Hant': text, 'zh-Hans': text });

/** A lesson a dozen, each of its students due to be reminded at `dueOf(n)`; the lesson is in two days. */
function fill(file, { count, channel, dueOf }) {
  const db = new Database(file);
  const starts = wallAt(Date.now() + 2 * day, zone);
  const nothing = {
    level: 'beginner',
    buildsOn: [],
    teacher: 'Odalys Wren',
    teas: [],
    cancelHours: 24,
    offerMinutes: 120,
  };
  const words = {
    ...nothing,
    title: wording('White tea'),
    place: wording('here'),
    price: wording(''),
    bring: wording(''),
  };
  const startsAt = instantOf(starts, zone);
  const lesson = db.prepare(
    `INSERT INTO lesson VALUES (@id, NULL, @starts, @zone, 90, @startsAt, @endsAt, @tz, 12, 'planned', '', 0, 0, @words)`,
  );
  const person = db.prepare('INSERT INTO person (id, created_at) VALUES (@n, 0)');
  const handle = db.prepare(`INSERT INTO handle (channel, sender, person, chat) VALUES (@channel, @chat, @n, @chat)`);
  const conversation = db.prepare(`INSERT INTO conversation VALUES (@n, 1, NULL, 'en', @channel, @chat, 0)`);
  const booking = db.prepare(
    `INSERT INTO booking (id, lesson, person, channel, chat, seats, standing, enrolled_at, moves, revision)
     VALUES (@id, @lesson, @n, @channel, @chat, 1, 'seated', 0, 0, 0)`,
  );
  const reminder = db.prepare(`INSERT INTO reminder VALUES (@id, @lesson, 'evening-before', @n, 0, @due, 'planned')`);
  const rest = {
    zone,
    tz: process.versions.tz,
    startsAt,
    endsAt: startsAt + 90 * minute,
    starts,
    words: JSON.stringify(words),
  };
  db.transaction(() => {
    for (let n = 1; n <= count; n++) {
      const id = `lesson-${Math.floor((n - 1) / 12)}`;
      if (n % 12 === 1) lesson.run({ id, ...rest });
      const row = { n, channel, chat: `c${n}`, id: `b${n}`, lesson: id, due: dueOf(n) };
      for (const insert of [person, handle, conversation, booking, reminder]) insert.run(row);
    }
  })();
  db.close();
}

async function run({ count, channel, dueOf }) {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-reminders-'));
  const file = join(folder, 'shop.sqlite');
  await openSqliteStore(file).close();
  fill(file, { count, channel, dueOf });
  const sentAt = new Map();
  let all;
  const done = new Promise((resolve) => (all = resolve));
  const fake = {
    name: channel,
    start: async () => {},
    send: async ({ id, chat }) => {
      if (sentAt.has(chat)) throw new Error(`${chat} was reminded twice`);
      sentAt.set(chat, Date.now());
      if (sentAt.size === count) all();
      return { outcome: 'sent', ref: id };
    },
    stop: async () => {},
  };
  const app = makeApp({
    store: openSqliteStore(file),
    step: stepIn(content),
    say: sayIn(content),
    channels: [fake],
    clock: systemClock,
    log: makeLog('warn'),
    keepDays: 90,
  });
  const began = Date.now();
  await app.start();
  await done;
  await app.settled();
  await app.stop();
  const db = new Database(file, { readonly: true });
  const handed = db
    .prepare(
      `SELECT o.due - r.due_at AS late FROM reminder r JOIN outbox o ON o.name = 'reminder/' || r.booking || '/evening-before'`,
    )
    .pluck()
    .all();
  const unsent = db.prepare(`SELECT count(*) FROM outbox WHERE status <> 'sent'`).pluck().get();
  db.close();
  rmSync(folder, { recursive: true });
  const sent = Array.from({ length: count }, (_, i) => sentAt.get(`c${i + 1}`) - dueOf(i + 1));
  const [firstAfterStart, lastAfterStart] = [Math.min, Math.max].map((pick) => pick(...sentAt.values()) - began);
  return { handed, sent, unsent, firstAfterStart, lastAfterStart };
}

function figures(values) {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
  return { median: at(0.5), p99: at(0.99), worst: at(1), earliest: sorted[0] };
}

const tell = (what) => process.stdout.write(`${JSON.stringify(what)}\n`);

for (const [channel, count] of [
  ['web', Number(process.argv[2] ?? 10_000)],
  ['telegram', Number(process.argv[3] ?? 1_000)],
]) {
  if (count === 0) continue;
  const first = Date.now() + 3_000 + count / 2;
  const dueOf = (n) => first + Math.floor((n * minute) / count);
  const { handed, sent, unsent } = await run({ count, channel, dueOf });
  tell({ channel, reminders: count, within: '1 min', handedOver: figures(handed), sent: figures(sent), unsent });
}
for (const [name, down] of Object.entries({
  '1 s': 1_000,
  '1 min': minute,
  '1 h': 60 * minute,
  '1 day': day,
  '8 days': 8 * day,
})) {
  const due = Date.now() - down;
  const { firstAfterStart, lastAfterStart, unsent } = await run({ count: 500, channel: 'web', dueOf: () => due });
  tell({
    down: name,
    overdue: 500,
    firstSentAfterStartMs: firstAfterStart,
    lastSentAfterStartMs: lastAfterStart,
    unsent,
  });
}
