/** What arrives: kept, and where that is asked for, handled in the same transaction. */
import type { Incoming } from '../../messages.ts';
import type { AtOnce, PersonId, Recorded } from '../contract.ts';
import { advanceAtOnce, forgetsSomeone } from './advance.ts';
import type { Commits } from './commits.ts';
import { updateKey } from './inbox.ts';
import type { Rows } from './store.ts';
import type { Turns } from './turns.ts';
import type { Wiping } from './wiping.ts';

export interface ArrivingParts extends Pick<Commits, 'note' | 'write'> {
  readonly turns: Turns;
  readonly wiping: Wiping;
}

export function makeArriving(rows: Rows, { note, write, turns, wiping }: ArrivingParts) {
  const keepOnly = (incoming: Incoming): Promise<Recorded> => note(() => keep(rows, incoming));
  return async (incoming: Incoming, atOnce?: AtOnce): Promise<Recorded> => {
    if (!atOnce) return keepOnly(incoming);
    // Whatever went wrong with handling it, it is kept; what went wrong with keeping it goes wrong again.
    const recorded = await write(() => keepAndHandle(rows, { turns, incoming, atOnce })).catch(() => null);
    if (recorded === null) return keepOnly(incoming);
    if (recorded.handled && forgetsSomeone(recorded.handled)) await wiping.soon();
    return recorded;
  };
}

/** Null when it was seen before. */
interface Met {
  readonly person: PersonId;
  readonly key: Buffer;
}

function meet({ inbox, people, outbox }: Rows, incoming: Incoming): Met | Recorded {
  const key = updateKey(incoming);
  const known = people.known(incoming);
  const seen = inbox.seen(key, known?.person ?? null);
  if (seen) return { outcome: 'seen', person: seen.person, ...nothing };
  const { person, moved } = people.meet(incoming, known);
  if (moved === 'gone') outbox.hold(incoming);
  if (moved === 'back') outbox.release(incoming, incoming.receivedAt);
  return { person, key };
}

const nothing = { handled: null, taken: null } as const;

function keep(rows: Rows, incoming: Incoming): Recorded {
  const met = meet(rows, incoming);
  if ('outcome' in met) return met;
  // Coming and going is kept with the handle; there is nothing to answer.
  const isReach = incoming.what.kind === 'reach';
  rows.inbox.add(met.person, met.key, incoming, isReach ? 'handled' : 'waiting');
  if (!isReach) rows.outbox.hurry(incoming, incoming.receivedAt);
  return { outcome: 'new', person: met.person, ...nothing };
}

interface Arriving {
  readonly turns: Turns;
  readonly incoming: Incoming;
  readonly atOnce: AtOnce;
}

function keepAndHandle(rows: Rows, { turns, incoming, atOnce }: Arriving): Recorded {
  if (incoming.what.kind === 'reach') return keep(rows, incoming);
  const met = meet(rows, incoming);
  if ('outcome' in met) return met;
  const { person, key } = met;
  const { now, decide, room } = atOnce;
  const isNext = turns.isNext(person, incoming.receivedAt, now);
  const seq = rows.inbox.add(person, key, incoming, isNext ? 'handled' : 'waiting');
  const handled = isNext ? decide(turns.of(person, { ...incoming, seq, tries: 0 }, now)) : null;
  if (isNext && handled?.outcome !== 'handled') rows.inbox.putBack(seq, handled?.outcome ?? 'waiting');
  const taken = handled && advanceAtOnce(rows, handled, room);
  // What failed before stood in the way.
  if (!taken) rows.outbox.hurry(incoming, now);
  return { outcome: 'new', person, handled, taken };
}
