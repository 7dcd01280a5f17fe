/** What a flow knows of a guided brew: the brew itself, the message it is written on, and what sentences tell of it. */
import { countedBelowS, type Ground, type GuidedBrew } from '../brewing/guided-brew.ts';
import type { Plan } from '../brewing/plan.ts';
import { isMistake, planBrew } from '../brewing/schedule.ts';
import { spoonsOf } from '../brewing/spoons.ts';
import type { Around } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import { asFacts, leafFor, phrase, type CoreContent } from './asked-brew.ts';

export interface Board {
  readonly brew: GuidedBrew;
  readonly startedAtMs: number;
  /** Counts what was done: a tap that belongs to an earlier count is an old one. */
  readonly steps: number;
  /** Counts the messages the brew was written on. */
  readonly board: number;
  /** When a line last moved the brew to another message; one event moves it once. */
  readonly movedAtMs: number | null;
  readonly callAtMs: number | null;
  /** The call of this hold has come, and its message is the one written on now. */
  readonly isOnCall: boolean;
  readonly lastN: number | null;
  readonly lastS: number | null;
  /** The last infusion whose taste was told, and all that was said. */
  readonly tastedN: number | null;
  readonly said: readonly string[];
  readonly change: Json;
  readonly tastes: Json;
  /** As the brew was begun. */
  readonly waterC: number;
  readonly isOver: boolean;
}

export function groundOf(content: CoreContent, { request }: GuidedBrew): Ground {
  return { data: content.brewing, leaf: leafFor(content, { tea: request.tea, family: request.family }) };
}

export function beginning(brew: GuidedBrew, nowMs: number): Board {
  return {
    brew,
    startedAtMs: nowMs,
    steps: 0,
    board: 0,
    movedAtMs: null,
    callAtMs: null,
    isOnCall: false,
    lastN: null,
    lastS: null,
    tastedN: null,
    said: [],
    change: null,
    tastes: null,
    waterC: 0,
    isOver: false,
  };
}

export const boardOf = (fact: Facts): Board => fact['kept'] as unknown as Board;

/** After these the flow asks how it tasted, and at the end. */
const asksAfter: readonly (number | null)[] = [1, 3];

/**
 * One step further, with everything the sentences want. A written line moves the brew to a message below it, and so does
 * a call that has come since.
 */
export function told(content: CoreContent, before: Board, given: Facts, around: Around): Facts {
  const { leaf } = groundOf(content, before.brew);
  const plan = planBrew(content.brewing, leaf, before.brew.request);
  if (isMistake(plan)) throw new Error(`a brew under way can't be planned: ${plan.code}`);
  const old = given['brew'] as Facts | undefined;
  const calls = callsOf(before, old, around);
  const isTyped = typeof given['typed'] === 'string' && before.movedAtMs !== around.nowMs;
  const board: Board = {
    ...before,
    steps: before.steps + 1,
    board: before.board + Number(calls.came) + Number(isTyped),
    movedAtMs: isTyped ? around.nowMs : before.movedAtMs,
    callAtMs: calls.callAtMs,
    isOnCall: calls.isOnCall,
    waterC: before.waterC || plan.waterC,
  };
  const { brew } = board;
  const { hold } = brew;
  const next = brew.coming[0];
  const guests = brew.request.guests ?? 1;
  const slotOf = (n: number): string => `${board.startedAtMs.toString(36)}-${n}`;
  const turned = old !== undefined && old['slot'] !== slotOf(board.board);
  const isSpent = next === undefined;
  return {
    ...asFacts(setOut(content, plan, brew)),
    kept: asFacts(board),
    step: `${slotOf(board.board)}-${board.steps}`,
    slot: slotOf(board.board),
    nextSlot: slotOf(board.board + 1),
    closes: turned ? (old['slot'] ?? null) : null,
    closesCall: calls.came && isTyped ? slotOf(before.board + 1) : null,
    closing: closingOf(board, before.lastN !== (old?.['lastN'] ?? null)),
    n: next?.n ?? brew.session.next,
    seconds: next?.seconds ?? 0,
    ends: brew.coming.at(-1)?.n ?? board.lastN,
    isCounted: (next?.seconds ?? 0) < countedBelowS,
    isSpent,
    name: phrase(brew.request.tea === null ? 'guide-told-family' : 'guide-told-tea', {
      tea: brew.request.tea,
      family: brew.request.family,
    }),
    isUnderWay: board.isOver ? null : true,
    hold: hold ? { filledAtMs: hold.filledAt, endsAtMs: hold.endsAt, callAtMs: board.callAtMs } : null,
    lastN: board.lastN,
    lastS: board.lastS,
    pouredAtMs: brew.pouredAt,
    change: board.change,
    tastes: board.tastes,
    asksTaste:
      (asksAfter.includes(board.lastN) || (isSpent && board.lastN !== null) || board.isOver) &&
      board.tastedN !== board.lastN,
    guests,
    cupMl: Math.round((next?.pouredMl ?? plan.waterMl) / guests),
    poured: brew.session.poured.map(({ n, seconds, strengthMgPerMl }) => ({ n, seconds, strengthMgPerMl })),
    record: recordOf(board),
  };
}

interface CallOfHold {
  /** Since the last step. */
  readonly came: boolean;
  readonly callAtMs: number | null;
  readonly isOnCall: boolean;
}

/** A hold is called once, whatever the usual delay becomes meanwhile. */
function callsOf({ brew: { hold } }: Board, old: Facts | undefined, { nowMs, deliveryMs }: Around): CallOfHold {
  const had = old === undefined ? null : boardOf(old);
  const hadCallAtMs = had?.brew.hold ? had.callAtMs : null;
  const came = had !== null && hadCallAtMs !== null && nowMs >= hadCallAtMs && !had.isOnCall;
  if (!hold) return { came, callAtMs: null, isOnCall: false };
  if (hold.filledAt === had?.brew.hold?.filledAt) {
    return { came, callAtMs: hadCallAtMs, isOnCall: came || had.isOnCall };
  }
  return { came, callAtMs: Math.max(hold.filledAt, hold.endsAt - (deliveryMs ?? 0)), isOnCall: false };
}

const closingOf = (board: Board, hasPoured: boolean): Json =>
  hasPoured ? phrase('guide-told-poured', { n: board.lastN, seconds: board.lastS }) : phrase('guide-told-below');

/** What is laid out, warmed and heated for this brew. */
function setOut(content: CoreContent, plan: Plan, { request, coming }: GuidedBrew): object {
  const vessel = content.brewing.vessels[request.vessel];
  return {
    tea: request.tea,
    family: request.family,
    vessel: request.vessel,
    volumeMl: request.volumeMl,
    style: plan.style,
    leafG: plan.leafG,
    spoons: spoonsOf(content.brewing, leafFor(content, { tea: request.tea, family: request.family }), plan.leafG),
    waterMl: plan.waterMl,
    waterC: plan.waterC,
    boilsAtC: plan.boilsAtC,
    kettleMl: plan.kettleMl,
    warm: plan.warm,
    rinseS: plan.rinse?.seconds ?? null,
    isPowder: plan.style === 'whisked',
    isGlass: vessel?.glass ?? false,
    isClay: vessel?.material === 'unglazed clay',
    isHot: plan.waterC >= 45,
    first: coming[0]?.n ?? null,
  };
}

/** What "my brews" keeps. */
function recordOf({ brew, startedAtMs, said }: Board): Facts {
  const { tea, family, vessel, volumeMl } = brew.request;
  const times = brew.session.poured.map(({ seconds }) => Math.round(seconds));
  return { atMs: startedAtMs, tea, family, vessel, volumeMl, times, taste: said.at(-1) ?? null };
}
