/** The store in one SQLite file: composes the kinds of rows into the contract's operations. */
import type { Database } from 'better-sqlite3';
import type { EventRef, PersonId, Recovered, Settlement, Store } from '../contract.ts';
import type { Instant, Json } from '../../core/units.ts';
import type { ChannelName } from '../../messages.ts';
import { advance, forget, forgetsSomeone, movedOrThrow } from './advance.ts';
import { makeArriving } from './arriving.ts';
import { makeBookingRows } from './booking-rows.ts';
import { makeClaims } from './claims.ts';
import { makeCommits } from './commits.ts';
import { makeConversations } from './conversations.ts';
import { openDatabase, wasLeftOpen } from './database.ts';
import { makeGuests } from './guests.ts';
import { makeIdle } from './idle.ts';
import { makeInbox } from './inbox.ts';
import { makeLessonBoard } from './lesson-board.ts';
import { makeLessonRows } from './lesson-rows.ts';
import { makeLessons } from './lesson-store.ts';
import { makeTags } from './message-id.ts';
import { makeMornings } from './mornings.ts';
import { makeNews } from './news.ts';
import { makeOutbox, type GivenUp } from './outbox.ts';
import { makePeople } from './people.ts';
import { makePrivacy } from './privacy.ts';
import { makeQuestions } from './questions.ts';
import { makeReminderRows } from './reminder-rows.ts';
import { makeShopkeepers } from './shopkeepers.ts';
import { makeStraightAway } from './straight-away.ts';
import { makeTallies } from './tallies.ts';
import { makeTasks } from './tasks.ts';
import { makeTurns } from './turns.ts';
import { makeVitals } from './vitals.ts';
import { makeWakes } from './wakes.ts';
import { makeWiping } from './wiping.ts';

/** Throws StoreMistake, in words made to be read, when the file cannot be used. */
export function openSqliteStore(file: string, tzVersion?: string): Store {
  const isWary = wasLeftOpen(file);
  return makeSqliteStore(openDatabase(file), { tzVersion, isWary });
}

interface Circumstances {
  /** Of the rules times are worked out by; those this program runs with, unless told. */
  readonly tzVersion?: string | undefined;
  readonly isWary?: boolean;
}

export function makeSqliteStore(db: Database, { tzVersion = ownTz, isWary = false }: Circumstances = {}): Store {
  const commits = makeCommits(db, () => {
    rows.questions.lookAgain();
    rows.news.tell();
  });
  const { write, writeLast, note } = commits;
  const rows = makeRows(db, tzVersion);
  const turns = makeTurns(db, rows);
  const wiping = makeWiping(commits, rows.privacy);
  const vitals = makeVitals(db);
  const mornings = makeMornings(db, { ...rows, doors: (now) => rows.board(nobody, true, now).doors });
  const idle = makeIdle(db);

  return {
    isWary,
    record: makeArriving(rows, { ...commits, turns, wiping }),
    synced: () => commits.synced(),
    async recover(channels, harmless, now) {
      const found = await write(() => recover(rows, { channels, harmless, now }));
      await commits.drained();
      wiping.rest();
      return found;
    },
    awaiting: async (channels, now, limit) => turns.awaiting(JSON.stringify(channels), now, limit),
    load: async (person, now) => turns.load(person, now),
    async commit(commit) {
      const outcome = await write(() => advance(rows, commit)).catch(movedOrThrow);
      if (outcome === 'done' && forgetsSomeone(commit)) await wiping.soon();
      return outcome;
    },
    tried: (person, event) => note(() => tried(rows, person, event)),
    claim: async (claim) =>
      commits.isQuiet() && !rows.claims.isAnyDue(claim.now) ? [] : writeLast(() => rows.claims.claim(claim)),
    begin: (id) => write(() => rows.outbox.begin(id)),
    async settle(id, settlement, now) {
      // Lost with the machine, it is in doubt, as anything that was under way.
      const keep = settlement.kind === 'sent' && !settlement.wordless ? note : write;
      const wasLastWord = await keep(() => settle(rows, { id, settlement, now }));
      if (wasLastWord) await wiping.soon();
    },
    nextDue: async (channels, after) => turns.nextDue(JSON.stringify(channels), after),
    history: async (address, after) => rows.claims.history(address, after),
    ...makeLessons(rows, write, tzVersion),
    tellMorning: (day, letters, now) => write(() => mornings.tell(day, letters, now)),
    find: async (channel, from) => rows.people.find(channel, from),
    async heard(channel, from, after) {
      const person = rows.people.find(channel, from);
      return person === null ? [] : rows.inbox.heard(person, channel, after);
    },
    appoint: (keepers, now) => write(() => rows.shopkeepers.appoint(keepers, now)),
    offerCode: (code, until) => write(() => rows.shopkeepers.offerCode(code, until)),
    exportOf: async (person) => rows.privacy.exportOf(person),
    async forget(person, now) {
      await write(() => forget(rows, person, now));
      await wiping.now();
    },
    prune(before) {
      wiping.rest();
      return write(() => prune(rows, before));
    },
    idle: async (walk) => idle(walk),
    vitals: async (channels, now) => vitals(JSON.stringify(channels), now),
    async close() {
      await commits.drained();
      await commits.synced();
      db.close();
    },
  };
}

const ownTz = process.versions['tz'] ?? 'unknown';

/** No person is ever called so. */
const nobody: PersonId = 0;

export type Rows = ReturnType<typeof makeRows>;

function makeRows(db: Database, tzVersion: string) {
  const questions = makeQuestions(db);
  const privacy = makePrivacy(db);
  const news = makeNews(db);
  const lessons = makeLessonRows(db, news);
  const bookings = makeBookingRows(db, news);
  const sources = { ...questions, ...privacy };
  const tags = makeTags();
  return {
    people: makePeople(db, news),
    inbox: makeInbox(db),
    conversations: makeConversations(db),
    wakes: makeWakes(db),
    outbox: makeOutbox(db, tags),
    claims: makeClaims(db, sources),
    straightAway: makeStraightAway(db, tags, sources),
    questions,
    shopkeepers: makeShopkeepers(db),
    tasks: makeTasks(db),
    tallies: makeTallies(db),
    guests: makeGuests(db),
    privacy,
    lessons,
    bookings,
    reminders: makeReminderRows(db),
    board: makeLessonBoard({ lessons, bookings, news, tzVersion }),
    news,
    tzVersion,
  };
}

interface Recovery {
  readonly channels: readonly ChannelName[];
  readonly harmless: readonly ChannelName[];
  readonly now: Instant;
}

function recover(rows: Rows, { channels, harmless, now }: Recovery): Recovered {
  const names = JSON.stringify(channels);
  const again = rows.outbox.waitAgain({
    channels: names,
    harmless: JSON.stringify(channels.filter((name) => harmless.includes(name))),
  });
  const { count, givenUp } = rows.outbox.doubtCutOff(names, now);
  tellShop(rows, givenUp, now);
  rows.outbox.dropLastWords();
  return { doubtful: again + count, waiting: rows.inbox.suspect(names) };
}

function prune({ inbox, outbox, tasks, questions, tallies }: Rows, before: Instant): number {
  const parts = [inbox, outbox, tasks, questions, tallies];
  return parts.reduce((sum, part) => sum + part.prune(before), 0);
}

function tried({ inbox, wakes }: Rows, person: PersonId, event: EventRef): void {
  if (event.kind === 'incoming') inbox.tried(event.seq);
  else wakes.tried(person, event.name);
}

/** True when it was a last word, which is gone with this. */
function settle(
  rows: Rows,
  { id, settlement, now }: { readonly id: string; readonly settlement: Settlement; readonly now: Instant },
): boolean {
  if (settlement.kind === 'sent' && !settlement.wordless && rows.outbox.sent(id, settlement.ref, now)) return false;
  if (settlement.kind === 'sent' && settlement.wordless) tellShop(rows, rows.outbox.wordlessOf(id), now);
  tellShop(rows, rows.outbox.settle(id, settlement, now), now);
  const address = settlement.kind === 'unreachable' ? rows.outbox.addressOf(id) : undefined;
  if (address) {
    rows.people.markUnreachable(address.channel, address.chat);
    rows.outbox.hold(address);
  }
  return rows.outbox.dropLastWord(id);
}

function tellShop({ tasks }: Rows, givenUp: readonly GivenUp[], now: Instant): void {
  for (const { person, why, about } of givenUp) {
    const facts = { why, about: about === null ? null : (JSON.parse(about) as Json) };
    if (person !== null) tasks.add({ person, task: 'undelivered', facts, now });
  }
}
