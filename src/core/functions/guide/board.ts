/** What a flow knows of a guided brew: the brew itself, the message it is written on, and what sentences tell of it. */
import { countedBelowS, type Ground, type GuidedBrew, type Hold } from '../../brewing/guided-brew.ts';
import { caffeineSpread } from '../../brewing/cautions.ts';
import type { LeafProfile } from '../../brewing/brewing-data.ts';
import type { Plan } from '../../brewing/plan.ts';
import { isMistake, planBrew } from '../../brewing/schedule.ts';
import { spoonsOf } from '../../brewing/spoons.ts';
import type { Around } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { afterQuiet } from '../../lessons/quiet.ts';
import { wallAt } from '../../lessons/calendar.ts';
import type { Instant } from '../../units.ts';
import { leafFor } from '../brew/asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { asFacts, phrase } from '../values.ts';

export interface Board {
  readonly brew: GuidedBrew;
  readonly startedAtMs: number;
  /** Counts what was done: a tap that belongs to an earlier count is an old one. */
  readonly steps: number;
  /** Counts the messages the brew was written on. */
  readonly board: number;
  /** Names the message written on now. */
  readonly slot: string;
  /** When a line last moved the brew to another message; one event moves it once. */
  readonly movedAtMs: number | null;
  readonly callAtMs: number | null;
  /** The call of this hold has come, and was seen to have come. */
  readonly isCalled: boolean;
  /** When this hold would have ended, had its end not been moved out of the night. */
  readonly movedFromMs: number | null;
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
  /** As it stood before the last was poured, for whoever takes back how long that stood; no more of `coming` than that needs. */
  readonly beforePour: GuidedBrew | null;
}

export function groundOf(content: CoreContent, { request }: GuidedBrew): Ground {
  return { data: content.brewing, leaf: leafOf(content, request) };
}

const leafOf = (content: CoreContent, { tea, family, bags }: GuidedBrew['request']): LeafProfile =>
  leafFor(content, { tea, family, bags: bags ?? null });

export function beginning(brew: GuidedBrew, nowMs: number): Board {
  return {
    brew,
    startedAtMs: nowMs,
    steps: 0,
    board: 0,
    slot: slotOf(nowMs, 0),
    movedAtMs: null,
    callAtMs: null,
    isCalled: false,
    movedFromMs: null,
    lastN: null,
    lastS: null,
    tastedN: null,
    said: [],
    change: null,
    tastes: null,
    waterC: 0,
    isOver: false,
    beforePour: null,
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
  const call = callOf(before, old, around);
  const isTyped = typeof given['typed'] === 'string' && before.movedAtMs !== around.nowMs;
  const count = before.board + Number(isTyped);
  const board: Board = {
    ...before,
    steps: before.steps + 1,
    board: count,
    slot: isTyped ? slotOf(before.startedAtMs, count) : (call.cameIn ?? before.slot),
    movedAtMs: isTyped ? around.nowMs : before.movedAtMs,
    callAtMs: call.atMs,
    isCalled: call.isCalled,
    waterC: before.waterC || plan.waterC,
  };
  const { brew } = board;
  const { hold } = brew;
  const next = brew.coming[0];
  const guests = brew.request.guests ?? 1;
  const turned = old !== undefined && old['slot'] !== board.slot;
  const isSpent = next === undefined;
  return {
    ...asFacts(setOut(content, plan, brew)),
    kept: asFacts(board),
    step: `${board.slot}-${board.steps}`,
    slot: board.slot,
    callSlot: hold ? callSlotOf(hold) : null,
    closes: turned ? (old['slot'] ?? null) : null,
    closesCall: isTyped ? call.cameIn : null,
    closing: closingOf(board, before.lastN !== (old?.['lastN'] ?? null)),
    n: next?.n ?? brew.session.next,
    seconds: secondsOf(plan, brew),
    ends: brew.coming.at(-1)?.n ?? board.lastN,
    isCounted: (next?.seconds ?? 0) < countedBelowS,
    isSpent,
    name: phrase(brew.request.tea === null ? 'guide-told-family' : 'guide-told-tea', {
      tea: brew.request.tea,
      family: brew.request.family,
    }),
    isUnderWay: board.isOver ? null : true,
    hold: hold ? holdFacts(board, hold, content.zone) : null,
    toldAtMs: around.nowMs,
    asksAgainAtMs: asksAgainAt(hold, { nowMs: around.nowMs, isCold: plan.style === 'cold', zone: content.zone }),
    isDry: plan.rinse === null && brew.pouredAt === null,
    lastN: board.lastN,
    lastS: board.lastS,
    pouredAtMs: brew.pouredAt,
    pastAtMs: pastAt(board, plan.style === 'cold'),
    amendsUntilMs: amendsUntil(board),
    change: board.change,
    tastes: board.tastes,
    asksTaste:
      (asksAfter.includes(board.lastN) || (isSpent && board.lastN !== null) || board.isOver) &&
      board.tastedN !== board.lastN,
    guests,
    cupMl: Math.round((next?.pouredMl ?? plan.waterMl) / guests),
    poured: brew.session.poured.map(({ n, seconds, strengthMgPerMl }) => ({ n, seconds, strengthMgPerMl })),
    caffeine: caffeineSoFar(brew),
    record: recordOf(board),
  };
}

/** In what was poured, as leaves differ; null where there is none. */
function caffeineSoFar({ session }: GuidedBrew): Json {
  const mg = session.poured.reduce((sum, { caffeineMg }) => sum + caffeineMg, 0);
  return mg > 0 ? { mg, leastMg: mg * caffeineSpread.least, mostMg: mg * caffeineSpread.most } : null;
}

/** Powder is whisked as long as its plan says; it draws in nothing. */
function secondsOf({ style, infusions }: Plan, { hold, coming }: GuidedBrew): number {
  if (style === 'whisked') return infusions[0]?.seconds ?? 0;
  return hold ? (hold.endsAt - hold.filledAt) / 1000 : (coming[0]?.seconds ?? 0);
}

const hourMs = 3_600_000;

/** So long a word on a late pour is of the last one. Judgement: the next counted one takes longer than the first of these. */
const amendsMs = { counted: 20_000, called: 600_000 } as const;

function amendsUntil({ brew, beforePour }: Board): Instant {
  if (beforePour === null || brew.hold || brew.pouredAt === null) return 0;
  const isCounted = (brew.coming[0]?.seconds ?? 0) < countedBelowS;
  return brew.pouredAt + (isCounted ? amendsMs.counted : amendsMs.called);
}

/** Who has gone silent is asked after an hour, after three when the leaf stands in the cold, and never at night. */
function asksAgainAt(
  hold: Hold | null,
  { nowMs, isCold, zone }: { readonly nowMs: Instant; readonly isCold: boolean; readonly zone: string },
): Instant {
  return afterQuiet(Math.max(nowMs, hold?.endsAt ?? 0) + (isCold ? 3 : 1) * hourMs, zone);
}

/** From then on nobody goes on with it of themselves: wet leaf keeps four hours (as in guide.yaml), a cold infusion a day. */
const keepsHours = { warm: 4, cold: 24 } as const;
const pastAt = ({ brew: { hold, pouredAt }, startedAtMs }: Board, isCold: boolean): Instant =>
  (hold?.endsAt ?? pouredAt ?? startedAtMs) + (isCold ? keepsHours.cold : keepsHours.warm) * hourMs;

function holdFacts({ callAtMs, movedFromMs }: Board, { filledAt, endsAt }: Hold, zone: string): Facts {
  const clock = (instantMs: Instant) =>
    phrase('guide-told-clock', { wall: wallAt(instantMs, zone), instantMs, shows: 'time' });
  const moved = movedFromMs === null ? null : { fromMs: movedFromMs, from: clock(movedFromMs), to: clock(endsAt) };
  return { filledAtMs: filledAt, endsAtMs: endsAt, callAtMs, moved, at: clock(endsAt) };
}

const slotOf = (startedAtMs: number, n: number): string => `${startedAtMs.toString(36)}-${n}`;
const callSlotOf = ({ filledAt }: Hold): string => `call-${filledAt.toString(36)}`;

interface Call {
  /** The message it came in, if it came since the last step. */
  readonly cameIn: string | null;
  readonly atMs: number | null;
  readonly isCalled: boolean;
}

/** A hold is called once, whatever the usual delay becomes meanwhile. */
function callOf({ brew: { hold } }: Board, old: Facts | undefined, { nowMs, deliveryMs }: Around): Call {
  const had = old === undefined ? null : boardOf(old);
  const hadHold = had?.brew.hold ?? null;
  const came = had !== null && hadHold !== null && had.callAtMs !== null && nowMs >= had.callAtMs && !had.isCalled;
  const cameIn = came ? callSlotOf(hadHold) : null;
  if (!hold) return { cameIn, atMs: null, isCalled: false };
  if (hold.filledAt === hadHold?.filledAt && hold.endsAt === hadHold.endsAt)
    return { cameIn, atMs: had!.callAtMs, isCalled: came || had!.isCalled };
  return { cameIn, atMs: Math.max(hold.filledAt, hold.endsAt - (deliveryMs ?? 0)), isCalled: false };
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
    bags: request.bags ?? null,
    spoons: spoonsOf(content.brewing, leafOf(content, request), plan.leafG),
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
