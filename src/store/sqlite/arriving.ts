/** What arrives: kept, and where that is asked for, handled in the same transaction. */
import type { Incoming } from '../../messages.ts';
import type { AtOnce, Recorded } from '../contract.ts';
import { advance, forgetsSomeone } from './advance.ts';
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

interface Kept extends Recorded {
  /** Null when it was seen before. */
  readonly seq: number | null;
}

function keep({ inbox, people, outbox }: Rows, incoming: Incoming): Kept {
  const key = updateKey(incoming);
  const seen = inbox.seen(key);
  if (seen) return { outcome: 'seen', person: seen.person, handled: null, seq: null };
  const { person, moved } = people.meet(incoming);
  const seq = inbox.add(person, key, incoming);
  if (moved === 'gone') outbox.hold(incoming);
  if (moved === 'back') outbox.release(incoming, incoming.receivedAt);
  return { outcome: 'new', person, handled: null, seq };
}

interface Arriving {
  readonly turns: Turns;
  readonly incoming: Incoming;
  readonly atOnce: AtOnce;
}

function keepAndHandle(rows: Rows, { turns, incoming, atOnce }: Arriving): Recorded {
  const kept = keep(rows, incoming);
  if (kept.person === null || kept.seq === null) return kept;
  const turn = turns.load(kept.person, atOnce.now);
  const isNext = turn !== null && turn.event.kind !== 'wake' && turn.event.seq === kept.seq;
  const handled = isNext ? atOnce.decide(turn) : null;
  if (handled) advance(rows, handled);
  return { ...kept, handled };
}
