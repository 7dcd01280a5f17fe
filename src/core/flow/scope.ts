/** What the names in a flow file stand for during a turn. */
import { member } from './choices.ts';
import type { Value } from './book.ts';
import { holds, isKnown, valueOf, type Lookup } from './evaluate.ts';
import type { Facts, Json, Parked } from './flow.ts';
import type { Turn } from './turn.ts';

/** Names the engine tells; every other name is a fact of the flow. */
const told: ReadonlyMap<string, (turn: Turn) => Json> = new Map(
  Object.entries<(turn: Turn) => Json>({
    heard: (turn) => turn.heard,
    memory: (turn) => turn.memory,
    language: (turn) => turn.around.language,
    now: (turn) => turn.around.nowMs,
    house: (turn) => turn.around.house ?? {},
    deliveryMs: (turn) => turn.around.deliveryMs ?? 0,
    timer: (turn) => turn.timer,
    flow: (turn) => turn.spot.flow,
    place: (turn) => turn.spot.place,
    parked: (turn) => turn.parked.map((left) => left.flow),
    underWay: (turn) => underWayIn(turn).map(({ left }) => left.flow),
    asked: (turn) => turn.place.asks,
    answered: (turn) => turn.place.asks !== null && isKnown(member(turn.heard, [turn.place.asks])),
  }),
);

export const toldNames: readonly string[] = [...told.keys()];

/** With the facts of the flow the turn is in, unless those of another are given. */
export function scopeOf(turn: Turn, facts?: Facts): Lookup {
  return (path) => {
    const tell = told.get(path[0] ?? '');
    return tell ? member(tell(turn), path, 1) : member(facts ?? turn.facts, path);
  };
}

/** As in the place that was left. */
export function scopeOfLeft(turn: Turn, { flow, place, facts }: Parked): Lookup {
  const there = scopeOf(turn, facts);
  const asks = turn.book.flows[flow]?.places[place]?.asks ?? null;
  const own: Facts = { flow, place, asked: asks, answered: asks !== null && isKnown(member(turn.heard, [asks])) };
  return (path) => (Object.hasOwn(own, path[0] ?? '') ? member(own, path) : there(path));
}

interface UnderWay {
  readonly left: Parked;
  readonly within: Lookup;
}

/** The flows left in which something is under way, the latest first. */
export function underWayIn(turn: Turn): readonly UnderWay[] {
  const all = turn.parked.toReversed().map((left) => ({ left, within: scopeOf(turn, left.facts) }));
  return all.filter(({ left, within }) => {
    const condition = turn.book.flows[left.flow]?.underWay ?? null;
    return condition !== null && holds(condition, within);
  });
}

/** Slots carry their flow; a slot that is not known is none. */
export function slotted(turn: Turn, slot: Value | null): { readonly slot?: string } {
  const name = slot && valueOf(slot, turn.lookup);
  return typeof name === 'string' ? { slot: `${turn.spot.flow}/${name}` } : {};
}

/** The slot of the place the turn is at. */
export const slotOf = (turn: Turn): string | null => slotted(turn, turn.place.slot).slot ?? null;
