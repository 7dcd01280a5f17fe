/** Handles what arrives and what waits: one event of a person after another, different people side by side, each event one commit. */
import type { Clock } from '../clock.ts';
import type { Instant } from '../core/units.ts';
import { makeInTurn, type InTurn } from '../in-turn.ts';
import type { ChannelName, Incoming } from '../messages.ts';
import type { Address, Change, Commit, Owed, PersonId, Recorded, Room, Store, Turn } from '../store/contract.ts';
import { answer, eventRef, failure, type Step } from './answer.ts';
import type { Means } from './house-facts.ts';

export interface Handling {
  /** Keeps what arrived and, unless the last process died or this person is being handled, handles it with that; else afterwards. */
  readonly receive: (incoming: Incoming) => Promise<Recorded>;
  /** Handles all that waits of this person; resolves when nothing is left. */
  readonly take: (person: PersonId) => Promise<void>;
  /** Resolves when nobody is being handled. */
  idle(): Promise<void>;
}

interface Received extends Recorded {
  /** How often the step has failed. */
  readonly stumbles: number;
  /** Something of this person waits to be handled. */
  readonly isMore: boolean;
}

export interface HandlingParts {
  readonly store: Store;
  readonly step: Step;
  readonly clock: Clock;
  readonly means: Means;
  /** How long a message of this channel takes to arrive. */
  readonly deliveryMs: (channel: ChannelName) => number;
  /** Room for one message, which is sent when it is given back with it. */
  readonly reserve: (address: Address) => { readonly room: Room; readonly use: (taken: Owed | null) => void };
  /** Something is owed now. */
  readonly owed: (due: Instant) => void;
  /** Something is owed, to be woken or to be looked for at this instant. */
  readonly later: (due: Instant) => void;
  /** The step failed, for the how-manieth time. */
  readonly stumbled: (error: unknown, tries: number) => void;
  /** Handling could not go on; what was kept is taken up again later. */
  readonly troubled: (error: unknown) => void;
  /** Resolves when a message is handled as fast as it ever will be. */
  readonly warm?: Promise<unknown>;
}

/** After so many failed steps an event is put aside … */
const mostStumbles = 3;
/** … and after so many deaths of the process since it was first begun: nearly all of them are no fault of its own. */
const mostDeaths = 20;
/** Others move the ground now and then; a step that never fits it is a mistake. */
const mostMoves = 20;

export function makeHandling(house: HandlingParts): Handling {
  const parts: Parts = { ...house, suspects: makeInTurn(house.warm) };
  const underWay = new Map<PersonId, Promise<void>>();
  const receiving = new Set<Promise<unknown>>();
  const askedAgain = new Set<PersonId>();

  const drain = async (person: PersonId, stumbles: number): Promise<void> => {
    try {
      await handleAll(parts, person, stumbles);
      while (askedAgain.delete(person)) await handleAll(parts, person, 0);
    } finally {
      underWay.delete(person);
      askedAgain.delete(person);
    }
  };
  const take = (person: PersonId, stumbles = 0): Promise<void> => {
    const running = underWay.get(person);
    if (running) {
      askedAgain.add(person);
      return running;
    }
    const run = drain(person, stumbles);
    underWay.set(person, run);
    return run;
  };
  return {
    receive(incoming) {
      const run = receive(parts, incoming, (person) => underWay.has(person)).then((received) => {
        const { person, stumbles, isMore } = received;
        if (person !== null && isMore) take(person, stumbles).catch(parts.troubled);
        return received;
      });
      receiving.add(run);
      return run.finally(() => receiving.delete(run));
    },
    take: (person) => take(person),
    async idle() {
      while (underWay.size + receiving.size > 0) await Promise.allSettled([...underWay.values(), ...receiving]);
    },
  };
}

async function receive(parts: Parts, incoming: Incoming, isUnderWay: (person: PersonId) => boolean): Promise<Received> {
  const { store, clock } = parts;
  if (store.isWary) {
    const recorded = await store.record(incoming);
    return { ...recorded, stumbles: 0, isMore: recorded.outcome === 'new' };
  }
  const now = clock.now();
  let stumbles = 0;
  const decideOnce = (turn: Turn): Commit | null => {
    if (stumbles > 0 || isUnderWay(turn.person)) return null;
    const commit = decideAt(parts, turn, { now, stumbles });
    if (!commit) stumbles += 1;
    return commit;
  };
  // What may go at once is taken for sending in the same transaction.
  const reserved = parts.reserve(incoming);
  const recorded = await store
    .record(incoming, { now, decide: decideOnce, room: reserved.room })
    .catch((error: unknown) => {
      reserved.use(null);
      throw error;
    });
  const { outcome, person, handled, taken } = recorded;
  reserved.use(taken);
  // Whoever writes has what failed before tried now.
  if (!taken) parts.owed(now);
  if (handled) for (const due of duesOf(handled, taken)) (due > now ? parts.later : parts.owed)(due);
  const isMore = outcome === 'new' && (handled === null || isRinging(handled));
  return { outcome, person, handled, taken, stumbles, isMore };
}

interface Parts extends HandlingParts {
  /**
   * What was begun when the process died goes one at a time: then a death tells which it was. Sixty at once were all blamed
   * for each, and innocent ones given up in a night of deaths. And not before the house is warm: a first answer takes thirty
   * times as long as the next, and was blamed for each death of a house killed again and again as it rose.
   */
  readonly suspects: InTurn;
}

async function handleAll(parts: Parts, person: PersonId, stumbledBefore: number): Promise<void> {
  const { store, clock, suspects } = parts;
  let moves = 0;
  let stumbles = stumbledBefore;
  for (;;) {
    const turn = await store.load(person, clock.now());
    if (!turn) return;
    const handled = (): ReturnType<typeof handleOne> => handleOne(parts, turn, stumbles);
    const outcome = await (turn.tries > 0 ? suspects(handled) : handled());
    // When the ground moved, it is loaded and stepped again, but not for ever.
    moves = outcome === 'moved' ? moves + 1 : 0;
    if (outcome === 'done') stumbles = 0;
    else if (outcome === 'failed' || moves > mostMoves) stumbles += 1;
  }
}

async function handleOne(parts: HandlingParts, turn: Turn, stumbles: number): Promise<'done' | 'moved' | 'failed'> {
  const commit = await decide(parts, turn, stumbles);
  if (!commit) return 'failed';
  const dues = duesOf(commit);
  const outcome = parts.store.commit(commit);
  // What may go at once is taken for sending in the same transaction; when it comes to nothing, nothing is found.
  for (const due of dues) if (due <= commit.now) parts.owed(due);
  // It may have passed meanwhile.
  if ((await outcome) === 'done') for (const due of dues) if (due > commit.now) parts.later(due);
  return outcome;
}

/** Null when the step failed and is to be tried again. */
async function decide(parts: HandlingParts, turn: Turn, stumbles: number): Promise<Commit | null> {
  const now = parts.clock.now();
  if (stumbles >= mostStumbles || turn.tries >= mostDeaths) return failure(turn, now);
  // What may have taken the process down before is counted before it is begun.
  if (turn.tries > 0 && stumbles === 0) await parts.store.tried(turn.person, eventRef(turn));
  return decideAt(parts, turn, { now: parts.clock.now(), stumbles });
}

function decideAt(
  { step, means, deliveryMs, stumbled }: HandlingParts,
  turn: Turn,
  { now, stumbles }: { readonly now: Instant; readonly stumbles: number },
): Commit | null {
  try {
    return answer(step, turn, { now, deliveryMs: deliveryMs(turn.address.channel), means });
  } catch (error) {
    stumbled(error, stumbles + 1);
    return null;
  }
}

/** These fall due when they say so, or not at all; all others may tell someone at once. */
const quiet: ReadonlySet<Change['do']> = new Set([
  'withdraw',
  'remember',
  'task',
  'ask',
  'keep-answer',
  'drop-answer',
  'use-code',
  'count',
  'tick-off',
  'add-lessons',
  'offer-code',
  'seen-undelivered',
]);
/** What follows from them later, an offer's end or a reminder, only the store knows: it is asked again. */
const followed: ReadonlySet<Change['do']> = new Set([
  'enrol',
  'enrol-guest',
  'release-guest',
  'put-back-guest',
  'reseat',
  'booking',
  'change-lesson',
  'move-lesson',
  'cancel-lesson',
  'cancel-lessons',
  'resume-lessons',
  'forget',
]);

/** It set a timer that is due already. */
function isRinging({ changes, now }: Commit): boolean {
  return changes.some((change) => change.do === 'wake' && change.at <= now);
}

/** When something is to be told or done because of it, apart from what is being told. */
function duesOf({ changes, now }: Commit, taken: Owed | null = null): ReadonlySet<Instant> {
  const told = taken && changes.find((change) => change.do === 'say' && change.due <= now);
  const dues = changes.flatMap((change) => {
    if (change === told) return [];
    if (change.do === 'say') return [change.due];
    if (change.do === 'wake') return [change.at];
    return [...(quiet.has(change.do) ? [] : [now]), ...(followed.has(change.do) ? [now + 1] : [])];
  });
  return new Set(dues);
}
