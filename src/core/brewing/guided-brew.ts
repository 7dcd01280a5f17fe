/** A brew in somebody's hands: what they did, and when, moves the session on. It holds no clock and says nothing. */
import type { Instant, Mistake, Seconds } from '../units.ts';
import type { BrewingData, LeafProfile } from './brewing-data.ts';
import type { BrewRequest, PlannedInfusion } from './plan.ts';
import { isMistake, mistakeIn } from './request.ts';
import { aimedAnew, beginBrew, pour, replan, skip, type Session } from './session.ts';
import type { TasteChange } from './taste.ts';

/** Survives a JSON round trip. */
export interface GuidedBrew {
  readonly request: BrewRequest;
  readonly session: Session;
  readonly coming: readonly PlannedInfusion[];
  /** When the last infusion was poured off. */
  readonly pouredAt: Instant | null;
  readonly hold: Hold | null;
}

/** Water on the leaf, from the tap that said so. */
export interface Hold {
  readonly filledAt: Instant;
  readonly endsAt: Instant;
}

/** The data and the leaf a guided brew stands on. */
export interface Ground {
  readonly data: BrewingData;
  readonly leaf: LeafProfile;
}

/** A poured infusion beside what was asked for it. */
export interface Poured {
  readonly n: number;
  readonly heldS: Seconds;
  readonly askedS: Seconds;
  /** Of the next infusion: asked for before this one was poured, and now; null when there is none. */
  readonly nextBeforeS: Seconds | null;
  readonly nextS: Seconds | null;
}

/** Shorter holds are counted by the person: a message would take as long as the hold (design: about ten seconds). */
export const countedBelowS = 10;

export function startGuided(ground: Ground, request: BrewRequest): GuidedBrew | Mistake {
  const session = beginBrew({ ...ground, request });
  if (isMistake(session)) return session;
  return replanned(ground, { request, session, coming: [], pouredAt: null, hold: null });
}

export function filled(brew: GuidedBrew, now: Instant): GuidedBrew {
  const seconds = brew.coming[0]?.seconds ?? 0;
  return { ...brew, hold: { filledAt: now, endsAt: now + seconds * 1000 } };
}

/** Called then instead: what is asked of this infusion is its time until then. */
export function heldUntil(brew: GuidedBrew, endsAt: Instant): GuidedBrew {
  return brew.hold ? { ...brew, hold: { ...brew.hold, endsAt } } : brew;
}

/** This infusion draws so long, whatever was reckoned; those after it are reckoned once it is poured. */
export function drawnFor(brew: GuidedBrew, seconds: Seconds, now: Instant): GuidedBrew {
  const [next, ...later] = brew.coming;
  const asked = next ? { ...brew, coming: [{ ...next, seconds }, ...later] } : brew;
  return brew.hold ? heldUntil(asked, Math.max(now, brew.hold.filledAt + seconds * 1000)) : asked;
}

/** Poured off now; a counted infusion, of which only this is known, went as asked unless `heldS` says otherwise. */
export function pouredOff(
  ground: Ground,
  brew: GuidedBrew,
  { now, heldS }: { readonly now: Instant; readonly heldS: Seconds | null },
): { readonly brew: GuidedBrew; readonly poured: Poured } {
  const { request, session, coming, pouredAt } = brew;
  const askedS = brew.hold ? (brew.hold.endsAt - brew.hold.filledAt) / 1000 : (coming[0]?.seconds ?? 0);
  const seconds = heldS ?? (brew.hold ? Math.max(0, (now - brew.hold.filledAt) / 1000) : askedS);
  const filledAt = brew.hold?.filledAt ?? now - seconds * 1000;
  const rest = pouredAt === null ? {} : { restedS: Math.max(0, (filledAt - pouredAt) / 1000) };
  const after = pour({ ...ground, request }, session, { seconds, ...rest });
  const next = replanned(ground, { ...brew, session: after, pouredAt: filledAt + seconds * 1000, hold: null });
  const nextBeforeS = coming[1]?.seconds ?? null;
  const nextS = next.coming[0]?.seconds ?? null;
  return { brew: next, poured: { n: session.next, heldS: seconds, askedS, nextBeforeS, nextS } };
}

export function leftOut(ground: Ground, brew: GuidedBrew): GuidedBrew {
  return replanned(ground, { ...brew, session: skip(brew.session), hold: null });
}

/** Other water, more guests: what is still to come is solved anew. A hold under way keeps its end. */
export function changed(ground: Ground, brew: GuidedBrew, change: Partial<BrewRequest>): GuidedBrew | Mistake {
  const request = { ...brew.request, ...change };
  return mistakeIn({ ...ground, request }) ?? replanned(ground, { ...brew, request });
}

/** This brew follows what was said of its taste; leaf that is in the pot stays in it. */
export function tasted(ground: Ground, brew: GuidedBrew, change: TasteChange, waterC: number): GuidedBrew {
  const { field, from, to } = change;
  if (field === 'leaf') return brew;
  if (field === 'strength') {
    const next = replanned(ground, { ...brew, session: aimedAnew(brew.session, to / from) });
    // Thin is no reason to end what was to come: it is drunk as strong as it gets.
    return next.coming.length === 0 ? { ...next, coming: brew.coming } : next;
  }
  const changedBrew = changed(ground, brew, { waterC: waterC + to - from });
  return isMistake(changedBrew) ? brew : changedBrew;
}

/**
 * Stronger or lighter from now on by this factor, which is longer or shorter with the leaf as it is; a hold under way
 * ends accordingly, at once if it has had its time, unless the next one is meant. Null where leaf or patience allow no
 * other time.
 */
export function paced(
  ground: Ground,
  brew: GuidedBrew,
  { factor, now, ofNext = false }: { readonly factor: number; readonly now: Instant; readonly ofNext?: boolean },
): GuidedBrew | null {
  const session = aimedAnew(brew.session, factor);
  if (ofNext && brew.hold !== null) return pacedNext(ground, { ...brew, session }, factor);
  const next = replanned(ground, { ...brew, session });
  if (!isPaced(brew.coming[0], next.coming[0], factor)) return null;
  return brew.hold ? heldUntil(next, Math.max(now, brew.hold.filledAt + (next.coming[0]?.seconds ?? 0) * 1000)) : next;
}

/** This one draws as long as it was to; those behind it are reckoned from that. */
function pacedNext(ground: Ground, brew: GuidedBrew, factor: number): GuidedBrew | null {
  const [now, next] = brew.coming;
  if (now === undefined) return null;
  const { request } = brew;
  const later = replan({ ...ground, request }, pour({ ...ground, request }, brew.session, { seconds: now.seconds }));
  return isPaced(next, later[0], factor) ? { ...brew, coming: [now, ...later] } : null;
}

function isPaced(before: PlannedInfusion | undefined, after: PlannedInfusion | undefined, factor: number): boolean {
  const [was, is] = [before?.seconds ?? 0, after?.seconds ?? 0];
  return is !== 0 && Math.sign(is - was) === Math.sign(factor - 1);
}

function replanned(ground: Ground, brew: GuidedBrew): GuidedBrew {
  return { ...brew, coming: replan({ ...ground, request: brew.request }, brew.session) };
}
