/** One commit: the conversation moves on, the event is closed, and every change is written; or nothing of it. */
import type { Change, Commit, Owed, PersonId, Room } from '../contract.ts';
import type { Instant } from '../../core/units.ts';
import { applyDeskChange } from './desk-changes.ts';
import { applyLessonChange, leaveAll } from './lesson-changes.ts';
import { applyShopChange } from './shop-changes.ts';
import type { Rows } from './store.ts';
import type { Taken } from './straight-away.ts';

/** Rolls a commit back whose ground has moved. */
class Moved extends Error {}

export function movedOrThrow(error: unknown): 'moved' {
  if (error instanceof Moved) return 'moved';
  throw error;
}

export function advance(rows: Rows, commit: Commit): 'done' {
  if (!rows.conversations.advance(commit) || !close(rows, commit)) throw new Moved();
  for (const change of commit.changes) apply(rows, commit, change);
  return 'done';
}

/** The same for what arrived in this transaction; what was taken for sending with it, if anything was. */
export function advanceAtOnce(rows: Rows, commit: Commit, room: Room): Owed | null {
  if (!rows.conversations.advance(commit)) throw new Moved();
  const { person, address, language, now } = commit;
  const first = firstSaid(commit);
  const takeFirst = ({ saying, priority, due }: Said): Taken | null =>
    rows.straightAway.take({ person, address, language, saying, priority, due, now }, room);
  const taken = commit.changes.map((change) => {
    const straight = change === first ? takeFirst(first) : null;
    if (straight === null) apply(rows, commit, change);
    return straight;
  });
  const straight = taken.find((one) => one !== null);
  return straight ? rows.straightAway.owed(straight) : null;
}

/** What is said now and goes first; undefined where that is for the rows to tell. */
function firstSaid({ changes, now }: Commit): Said | undefined {
  const said = changes.filter((change): change is Said => change.do === 'say' && change.due <= now);
  return said.length === 1 || said.every(({ saying }) => saying.slot === undefined) ? said[0] : undefined;
}

type Said = Extract<Change, { do: 'say' }>;

function close({ inbox, wakes }: Rows, { person, event, outcome }: Commit): boolean {
  return event.kind === 'incoming' ? inbox.close(event.seq, outcome) : wakes.drop(person, event.name);
}

function apply(rows: Rows, commit: Commit, change: Change): void {
  const { person, address, language, now } = commit;
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
    case 'forget':
      forget(rows, person, now);
      return rows.outbox.add({ person: null, address, language, saying: change.farewell, due: now, priority: 'reply' });
    case 'ask':
    case 'tell-keepers':
    case 'answer':
    case 'correct-answer':
    case 'keep-answer':
    case 'drop-answer':
    case 'use-code':
      if (!applyShopChange(rows, commit, change)) throw new Moved();
      return;
    case 'enrol':
    case 'booking':
    case 'reseat':
    case 'tick-off':
    case 'add-lessons':
    case 'change-lesson':
    case 'move-lesson':
    case 'cancel-lesson':
    case 'cancel-lessons':
    case 'resume-lessons':
    case 'write-to-lesson':
    case 'write-to-lessons':
      if (!applyLessonChange(rows, commit, change)) throw new Moved();
      return;
    case 'count':
    case 'enrol-guest':
    case 'release-guest':
    case 'put-back-guest':
    case 'reseat-guest':
    case 'transfer-guest':
    case 'write-to-guest':
    case 'offer-code':
    case 'seen-undelivered':
      if (!applyDeskChange(rows, commit, change)) throw new Moved();
  }
}

export function forgetsSomeone({ changes }: Commit): boolean {
  return changes.some((change) => change.do === 'forget');
}

/** Their seats go on to others. */
export function forget(rows: Rows, person: PersonId, now: Instant): void {
  leaveAll(rows, person, now);
  rows.privacy.forget(person);
  rows.questions.lookAgain();
  rows.news.tell();
}
