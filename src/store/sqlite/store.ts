/** The store in one SQLite file: composes the kinds of rows into the contract's operations. */
import type { Database } from 'better-sqlite3';
import {
  StoreMistake,
  type Change,
  type Commit,
  type EventRef,
  type PersonId,
  type Recorded,
  type Recovered,
  type Settlement,
  type Store,
} from '../contract.ts';
import type { Instant } from '../../core/units.ts';
import type { ChannelName, Incoming } from '../../messages.ts';
import { makeClaims } from './claims.ts';
import { makeCommits, type Commits } from './commits.ts';
import { makeConversations } from './conversations.ts';
import { openDatabase } from './database.ts';
import { makeInbox } from './inbox.ts';
import { makeOutbox, type GivenUp } from './outbox.ts';
import { makePeople } from './people.ts';
import { makePrivacy } from './privacy.ts';
import { makeTasks } from './tasks.ts';
import { makeTurns } from './turns.ts';
import { makeWakes } from './wakes.ts';

const wipeTries = 20;
const betweenWipesMs = 100;

/** Throws StoreMistake, in words made to be read, when the file cannot be used. */
export function openSqliteStore(file: string): Store {
  return makeSqliteStore(openDatabase(file));
}

export function makeSqliteStore(db: Database): Store {
  const commits = makeCommits(db);
  const { write } = commits;
  const rows = makeRows(db);
  const turns = makeTurns(db, rows);

  return {
    record: (incoming) => write(() => record(rows, incoming)),
    recover: (channels, harmless, now) => write(() => recover(rows, { channels, harmless, now })),
    awaiting: async (channels, now, limit) => turns.awaiting(JSON.stringify(channels), now, limit),
    load: async (person, now) => turns.load(person, now),
    commit: (commit) => write(() => advance(rows, commit)).catch(movedOrThrow),
    tried: (person, event) => write(() => tried(rows, person, event)),
    claim: (claim) => write(() => rows.claims.claim(claim)),
    settle: (id, settlement, now) => write(() => settle(rows, { id, settlement, now })),
    nextDue: async (channels, after) => turns.nextDue(JSON.stringify(channels), after),
    history: async (address, after) => rows.claims.history(address, after),
    find: async (channel, from) => rows.people.find(channel, from),
    exportOf: async (person) => rows.privacy.exportOf(person),
    async forget(person) {
      await write(() => rows.privacy.forget(person));
      await wiped(rows, commits);
    },
    prune: (before) => write(() => rows.inbox.prune(before) + rows.outbox.prune(before) + rows.tasks.prune(before)),
    async close() {
      await commits.drained();
      db.close();
    },
  };
}

/** Another program that reads keeps the log from being cut; it is asked again, and the forgetting is not done before. */
async function wiped({ privacy }: Rows, commits: Commits): Promise<void> {
  for (let tries = 0; tries < wipeTries; tries++) {
    await commits.drained();
    if (privacy.wipeLog()) return;
    await new Promise((resolve) => setTimeout(resolve, betweenWipesMs));
  }
  throw new StoreMistake('a person is forgotten, but another program keeps the log file from being emptied');
}

export type Rows = ReturnType<typeof makeRows>;

function makeRows(db: Database) {
  return {
    people: makePeople(db),
    inbox: makeInbox(db),
    conversations: makeConversations(db),
    wakes: makeWakes(db),
    outbox: makeOutbox(db),
    claims: makeClaims(db),
    tasks: makeTasks(db),
    privacy: makePrivacy(db),
  };
}

/** Rolls a commit back whose ground has moved. */
class Moved extends Error {}

function movedOrThrow(error: unknown): 'moved' {
  if (error instanceof Moved) return 'moved';
  throw error;
}

function record({ inbox, people, outbox }: Rows, incoming: Incoming): Recorded {
  const seen = inbox.seen(incoming);
  if (seen) return { outcome: 'seen', person: seen.person };
  const { person, moved } = people.meet(incoming);
  inbox.add(person, incoming);
  if (moved === 'gone') outbox.hold(incoming);
  if (moved === 'back') outbox.release(incoming, incoming.receivedAt);
  return { outcome: 'new', person };
}

interface Recovery {
  readonly channels: readonly ChannelName[];
  readonly harmless: readonly ChannelName[];
  readonly now: Instant;
}

function recover(rows: Rows, { channels, harmless, now }: Recovery): Recovered {
  const again = rows.outbox.waitAgain(JSON.stringify(channels.filter((name) => harmless.includes(name))));
  const names = JSON.stringify(channels);
  const { count, givenUp } = rows.outbox.doubtCutOff(names, now);
  tellShop(rows, givenUp, now);
  return { doubtful: again + count, waiting: rows.inbox.suspect(names) };
}

function advance(rows: Rows, commit: Commit): 'done' {
  if (!rows.conversations.advance(commit) || !close(rows, commit)) throw new Moved();
  for (const change of commit.changes) apply(rows, commit, change);
  return 'done';
}

function close({ inbox, wakes }: Rows, { person, event, outcome }: Commit): boolean {
  return event.kind === 'incoming' ? inbox.close(event.seq, outcome) : wakes.drop(person, event.name);
}

function apply(rows: Rows, { person, address, now }: Commit, change: Change): void {
  switch (change.do) {
    case 'say':
      return rows.outbox.add({ person, address, ...change });
    case 'withdraw':
      rows.wakes.drop(person, change.name);
      return rows.outbox.withdraw(person, change.name);
    case 'wake':
      return rows.wakes.set(person, change.name, change.at);
    case 'remember':
      return rows.conversations.remember(person, change.name, change.value);
    case 'task':
      return rows.tasks.add({ person, task: change.task, facts: change.values, now });
  }
}

function tried({ inbox, wakes }: Rows, person: PersonId, event: EventRef): void {
  if (event.kind === 'incoming') inbox.tried(event.seq);
  else wakes.tried(person, event.name);
}

function settle(
  rows: Rows,
  { id, settlement, now }: { readonly id: string; readonly settlement: Settlement; readonly now: Instant },
): void {
  tellShop(rows, rows.outbox.settle(id, settlement, now), now);
  if (settlement.kind !== 'unreachable') return;
  const address = rows.outbox.addressOf(id);
  if (!address) return;
  rows.people.markUnreachable(address.channel, address.chat);
  rows.outbox.hold(address);
}

function tellShop({ tasks }: Rows, givenUp: readonly GivenUp[], now: Instant): void {
  for (const { person, why } of givenUp) tasks.add({ person, task: 'undelivered', facts: { why }, now });
}
