/** What was left behind: places of this conversation, and conversations left for another subject; how much is kept, and what goes along. */
import type { FlowBook, Flow } from './book.ts';
import type { Facts, Parked, Spot } from './flow.ts';

const mostParked = 3;
const longestTrail = 20;

/** The way back, with one more place on it. */
const trailWith = (trail: readonly Spot[], spot: Spot): readonly Spot[] => [...trail, spot].slice(-longestTrail);

interface Here {
  readonly spot: Spot;
  readonly book: FlowBook;
}

/** … once the talk has moved on from a place that is still there; `from` null is no step of the way. */
export function trailOn(trail: readonly Spot[], from: Spot | null, { spot, book }: Here): readonly Spot[] {
  if (from === null || !(from.place in (book.flows[from.flow]?.places ?? {}))) return trail;
  return from.flow === spot.flow && from.place === spot.place ? trail : trailWith(trail, from);
}

/** The way back once a spot that was left is taken up again: what was only passed through since is no step of it, nor what is asked `anew`. */
export function trailBefore(
  trail: readonly Spot[],
  { spot, isAnew: asksAnew, book: { flows } }: Here & { readonly isAnew: boolean },
): readonly Spot[] {
  const anew = asksAnew ? spot : null;
  const last = trail.findLastIndex(({ flow }) => flow === spot.flow || !(flows[flow]?.passing ?? false));
  const isAnew = trail[last]?.flow === anew?.flow && trail[last]?.place === anew?.place;
  return trail.slice(0, isAnew ? last : last + 1);
}

interface Moving {
  readonly leaving: Flow;
  /** Null where there is no place to come back to. */
  readonly left: Parked | null;
  readonly next: Flow;
}

/** The parked after leaving one flow for another; a passing flow is kept for what is said aside, and no longer; the front never. */
export function parkedAfter(
  parked: readonly Parked[],
  { leaving, left, next }: Moving,
  { flows }: Pick<FlowBook, 'flows'>,
): readonly Parked[] {
  const isKept = ({ flow }: Parked): boolean => next.aside || !(flows[flow]?.passing ?? false);
  const others = parked.filter((one) => one.flow !== next.name && one.flow !== leaving.name && isKept(one));
  const isLeft = left !== null && !leaving.front && !leaving.aside && isKept(left);
  return (isLeft ? [...others, left] : others).slice(-mostParked);
}

/** What is left at `spot`, with the place where it is taken up again; null where there is none. */
export function leftAt(
  trail: readonly Spot[],
  spot: Spot,
  { flow, facts, book }: { readonly flow: Flow; readonly facts: Facts; readonly book: Pick<FlowBook, 'flows'> },
): Parked | null {
  const place = restingPlace(trail, spot, book);
  return place === null ? null : { flow: flow.name, hash: flow.hash, place, facts };
}

/** There, or where the flow stood before a place that is only passed; null for a flow with no such place. */
function restingPlace(
  trail: readonly Spot[],
  { flow, place }: Spot,
  { flows }: Pick<FlowBook, 'flows'>,
): string | null {
  const isPassing = (name: string): boolean => flows[flow]?.places[name]?.passing ?? false;
  if (!isPassing(place)) return place;
  const left = trail.findLastIndex((spot) => spot.flow !== flow);
  return trail.slice(left + 1).findLast((spot) => !isPassing(spot.place))?.place ?? null;
}

/** Whether there is anything to do where a flow was left; a place that only led on from it is none to come back to. */
export function mayStay({ flow, place }: Parked, { flows }: Pick<FlowBook, 'flows'>): boolean {
  const left = flows[flow]?.places[place];
  return left === undefined || left.asks !== null || left.choices.length > 0 || left.hears.length > 0;
}

interface Leaving {
  readonly flow: Flow;
  readonly facts: Facts;
  /** The next flow begins at its start. */
  readonly isAnew: boolean;
}

/**
 * What a flow was left with, and what it takes from the one left now. When it begins anew, it lets go of what only the
 * other one listens for and no longer knows: five grams said of one tea are not meant for the next. Through a flow that
 * is only passed, the one before it hands on.
 */
export function factsFor(next: Flow, parked: readonly Parked[], { flow, facts, isAnew }: Leaving): Facts {
  const before = flow.passing ? (parked.at(-1)?.facts ?? {}) : {};
  const taken = Object.fromEntries(
    Object.entries({ ...before, ...facts }).filter(([name]) => next.takes.includes(name)),
  );
  const own = parked.find((one) => one.flow === next.name)?.facts ?? {};
  const isStale = (name: string): boolean =>
    next.takes.includes(name) && name in flow.listens.facts && !(name in next.listens.facts);
  const kept = isAnew ? Object.fromEntries(Object.entries(own).filter(([name]) => !isStale(name))) : own;
  return { ...kept, ...taken };
}
