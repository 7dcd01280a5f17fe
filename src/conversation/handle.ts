/** Handles what waits: one event of a person after another, different people side by side, each event one commit. */
import type { Clock } from '../clock.ts';
import type { Instant } from '../core/units.ts';
import type { ChannelName } from '../messages.ts';
import type { Commit, PersonId, Store, Turn } from '../store/contract.ts';
import { answer, eventRef, failure, type Step } from './answer.ts';

export interface Handling {
  /** Handles all that waits of this person; resolves when nothing is left. */
  readonly take: (person: PersonId) => Promise<void>;
  /** Resolves when nobody is being handled. */
  idle(): Promise<void>;
}

export interface HandlingParts {
  readonly store: Store;
  readonly step: Step;
  readonly clock: Clock;
  /** How long a message of this channel takes to arrive. */
  readonly deliveryMs: (channel: ChannelName) => number;
  /** Something is owed, or to be woken, at this instant. */
  readonly owed: (due: Instant) => void;
  /** The step failed, for the how-manieth time. */
  readonly stumbled: (error: unknown, tries: number) => void;
}

/** After so many tries an event is put aside. */
const mostTries = 3;

export function makeHandling(parts: HandlingParts): Handling {
  const underWay = new Map<PersonId, Promise<void>>();
  const askedAgain = new Set<PersonId>();

  const drain = async (person: PersonId): Promise<void> => {
    try {
      do {
        askedAgain.delete(person);
        while (await handleNext(parts, person));
      } while (askedAgain.has(person));
    } finally {
      underWay.delete(person);
      askedAgain.delete(person);
    }
  };
  return {
    take(person) {
      const running = underWay.get(person);
      if (running) {
        askedAgain.add(person);
        return running;
      }
      const run = drain(person);
      underWay.set(person, run);
      return run;
    },
    async idle() {
      while (underWay.size > 0) await Promise.allSettled(underWay.values());
    },
  };
}

/** False when there was nothing to handle. */
async function handleNext(parts: HandlingParts, person: PersonId): Promise<boolean> {
  const { store, clock } = parts;
  const turn = await store.load(person, clock.now());
  if (!turn) return false;
  const commit = await decide(parts, turn);
  // When the ground moved, the loop loads and steps again.
  if (commit && (await store.commit(commit)) === 'done') announce(parts, commit);
  return true;
}

/** Null when the step failed and is to be tried again. */
async function decide({ store, step, clock, deliveryMs, stumbled }: HandlingParts, turn: Turn): Promise<Commit | null> {
  if (turn.tries >= mostTries) return failure(turn, clock.now());
  // What may have taken the process down before is counted before it is begun.
  if (turn.tries > 0) await store.tried(turn.person, eventRef(turn));
  try {
    return answer(step, turn, { now: clock.now(), deliveryMs: deliveryMs(turn.address.channel) });
  } catch (error) {
    stumbled(error, turn.tries + 1);
    if (turn.tries === 0) await store.tried(turn.person, eventRef(turn));
    return null;
  }
}

function announce({ owed }: HandlingParts, { changes }: Commit): void {
  const dues = changes.flatMap((change) =>
    change.do === 'say' ? [change.due] : change.do === 'wake' ? [change.at] : [],
  );
  for (const due of new Set(dues)) owed(due);
}
