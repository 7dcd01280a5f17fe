/** What changed in a guided brew, in few words: each a phrase, or null when nothing is worth saying. */
import type { GuidedBrew, Poured } from '../../brewing/guided-brew.ts';
import { isMistake, planBrew } from '../../brewing/schedule.ts';
import type { TasteChange } from '../../brewing/taste.ts';
import type { Around } from '../../flow/book.ts';
import type { Json } from '../../flow/flow.ts';
import type { CoreContent } from '../core-content.ts';
import { phrase } from '../values.ts';
import { groundOf, type Board } from './board.ts';

/** Nobody pours to the second: judgement. */
const noticedS = (askedS: number): number => Math.max(2, askedS * 0.1);

export function changeOfPour({ heldS, askedS, nextBeforeS, nextS }: Poured): Json {
  const off = Math.round(heldS - askedS);
  const next = nextOf(nextBeforeS, nextS);
  if (Math.abs(off) >= noticedS(askedS)) {
    return phrase(off > 0 ? 'guide-told-late' : 'guide-told-early', { seconds: Math.abs(off), next });
  }
  const by = (nextS ?? 0) - (nextBeforeS ?? 0);
  if (nextS === null || nextBeforeS === null || Math.abs(by) < noticedS(nextS)) return null;
  return phrase(by > 0 ? 'guide-told-rest-more' : 'guide-told-rest-less', { seconds: Math.abs(by) });
}

/** "so 3 s less now", as a phrase within another; empty words when the next infusion stays or there is none. */
function nextOf(before: number | null, after: number | null): Json {
  if (after === null) return phrase('guide-told-next-none');
  if (before === null || before === after) return phrase('guide-told-next-same');
  const seconds = Math.abs(after - before);
  return phrase(after > before ? 'guide-told-next-more' : 'guide-told-next-less', { seconds });
}

/** After other water or more guests. */
export function moreOfRequest(
  board: Board,
  brew: GuidedBrew,
  { before, unit }: { readonly before: number | null; readonly unit: Json },
): Json {
  const next = nextOf(before, brew.coming[0]?.seconds ?? null);
  const guests = brew.request.guests ?? 1;
  if (guests !== (board.brew.request.guests ?? 1)) {
    return sharedAmong(guests, brew.coming[0]?.pouredMl ?? 0, brew.coming.length > 1);
  }
  return phrase('guide-told-water', { waterC: brew.request.waterC ?? board.waterC, unit, next });
}

/** After "longer" or "shorter". */
export function changeOfPace(isLonger: boolean, before: GuidedBrew, after: GuidedBrew): Json {
  const next = nextOf(before.coming[0]?.seconds ?? null, after.coming[0]?.seconds ?? null);
  return phrase(isLonger ? 'guide-told-longer' : 'guide-told-shorter', { next });
}

/** Common practice, no source: less than this is no sip. */
const smallestCupMl = 20;

/** How much of a pouring each gets; two are put together where one is too little and another comes. */
export function sharedAmong(guests: number, pouredMl: number, hasAnother: boolean): Json {
  const cupMl = Math.round(pouredMl / guests);
  const isTwo = cupMl < smallestCupMl && hasAnother;
  return phrase(isTwo ? 'guide-told-guests-two' : 'guide-told-guests', { guests, cupMl });
}

/** Where the brew stands, for whoever asks; `n`: of an infusion to come. */
export function now(content: CoreContent, brew: GuidedBrew, { memory, nowMs }: Around, n: number | null = null): Json {
  const ground = groundOf(content, brew);
  const plan = planBrew(ground.data, ground.leaf, brew.request);
  const next = brew.coming[0];
  if (!next || isMistake(plan)) return phrase('guide-told-spent');
  const { leafG, waterC } = plan;
  const ends = brew.coming.at(-1)?.n ?? next.n;
  if (plan.style === 'whisked')
    return phrase('guide-told-whisk', {
      leafG,
      waterMl: plan.waterMl,
      waterC,
      unit: memory['unit'] ?? null,
      seconds: plan.infusions[0]?.seconds ?? 0,
    });
  const later = brew.coming.slice(1).find((one) => one.n === n);
  if (later) return phrase('guide-told-later', { n: later.n, seconds: later.seconds });
  const known = { n: next.n, ends, waterC, unit: memory['unit'] ?? null, leafG };
  const leftS = brew.hold ? Math.round((brew.hold.endsAt - nowMs) / 1000) : 0;
  if (leftS > 0) return phrase('guide-told-left', { ...known, seconds: leftS });
  return phrase('guide-told-now', { ...known, seconds: next.seconds });
}

interface TasteSaid {
  readonly said: string;
  readonly change: TasteChange | null;
  readonly waterC: number;
  readonly unit: Json;
  /** Nothing more is poured of this leaf. */
  readonly isOver: boolean;
}

function changeOfNextTime(
  { field, from, to }: TasteChange,
  { waterC, unit }: Pick<TasteSaid, 'waterC' | 'unit'>,
): Json {
  if (field === 'strength') return phrase(`guide-told-taste-next-${to > from ? 'stronger' : 'lighter'}`);
  return phrase('guide-told-taste-next-water', { waterC: waterC + to - from, unit });
}

export function changeOfTaste(
  { said, change, waterC, unit, isOver }: TasteSaid,
  before: GuidedBrew,
  after: GuidedBrew,
): Json {
  if (!change) return phrase(said === 'right' ? 'guide-told-taste-right' : 'guide-told-taste-far');
  const { field, from, to } = change;
  if (field === 'leaf') return phrase(to > from ? 'guide-told-taste-more-leaf' : 'guide-told-taste-less-leaf');
  if (after.coming.length === 0 || isOver) return changeOfNextTime(change, { waterC, unit });
  const next = nextOf(before.coming[0]?.seconds ?? null, after.coming[0]?.seconds ?? null);
  if (field === 'strength')
    return phrase(to > from ? 'guide-told-taste-stronger' : 'guide-told-taste-lighter', { next });
  return phrase('guide-told-taste-water', { waterC: waterC + to - from, unit, next });
}
