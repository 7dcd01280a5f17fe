/** Small values the store's tests are made of. */
import type { FlowState, Saying } from '../../src/core/flow/flow.ts';
import type { Incoming, What } from '../../src/messages.ts';
import type { Change, Claim, Commit, EventRef, Store, Turn } from '../../src/store/contract.ts';

export const noon = Date.UTC(2026, 5, 1, 12);

let made = 0;

export function incoming(from: string, what: string | What, more: Partial<Incoming> = {}): Incoming {
  made += 1;
  return {
    channel: 'web',
    updateId: `update-${made}`,
    from,
    chat: `chat-of-${from}`,
    receivedAt: noon,
    what: typeof what === 'string' ? { kind: 'text', text: what } : what,
    ...more,
  };
}

export function stateAt(place: string): FlowState {
  return { flow: 'tea', hash: 'h', place, facts: {}, trail: [], parked: [] };
}

export function saying(key: string, more: Partial<Saying> = {}): Saying {
  return { phrases: [{ key, values: {} }], choices: [], ...more };
}

export function say(key: string, more: Partial<Saying> = {}, due = noon): Change {
  return { do: 'say', saying: saying(key, more), due: more.later?.atMs ?? due, priority: 'reply' };
}

export function refOf({ event }: Turn): EventRef {
  return event.kind === 'wake' ? { kind: 'wake', name: event.name } : { kind: 'incoming', seq: event.seq };
}

export function commitOf(turn: Turn, changes: readonly Change[], more: Partial<Commit> = {}): Commit {
  return {
    person: turn.person,
    version: turn.version,
    event: refOf(turn),
    outcome: 'handled',
    state: stateAt('somewhere'),
    language: 'en',
    address: turn.address,
    changes,
    now: noon,
    ...more,
  };
}

export function claimAt(now: number, more: Partial<Claim> = {}): Claim {
  return { channels: ['web', 'terminal'], now, limit: 64, held: new Set(), bulkRoom: new Map(), ...more };
}

/** Someone writes and is answered with these changes; gives back the person. */
export async function exchange(store: Store, from: string, changes: readonly Change[]): Promise<number> {
  const { person } = await store.record(incoming(from, 'hello'));
  if (person === null) throw new Error('recorded under nobody');
  const turn = await loaded(store, person);
  const outcome = await store.commit(commitOf(turn, changes));
  if (outcome !== 'done') throw new Error('the ground moved under a lonely commit');
  return person;
}

export async function loaded(store: Store, person: number, now = noon): Promise<Turn> {
  const turn = await store.load(person, now);
  if (!turn) throw new Error('nothing to handle');
  return turn;
}

export const keysOf = (owed: readonly { readonly saying: Saying }[]): readonly (string | undefined)[] =>
  owed.map(({ saying: { phrases } }) => phrases[0]?.key);
