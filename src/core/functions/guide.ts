/** The functions of the guided brew: each takes what is known of it and gives it one step further. Keeps no state. */
import {
  changed,
  drawnFor,
  filled,
  heldUntil,
  leftOut,
  paced,
  pouredOff,
  startGuided,
  tasted,
  type Ground,
  type GuidedBrew,
} from '../brewing/guided-brew.ts';
import { planBrew } from '../brewing/schedule.ts';
import { adjust, usualTaste } from '../brewing/taste.ts';
import type { Around, Calls } from '../flow/book.ts';
import type { Facts } from '../flow/flow.ts';
import { brewOf, complaintOf, tastesOf } from './brew/asked-brew.ts';
import type { CoreContent } from './core-content.ts';
import { asFacts, numberOf, phrase, refused, textOf } from './values.ts';
import { isMistake } from '../brewing/schedule.ts';
import { beginning, boardOf, groundOf, told, type Board } from './guide/board.ts';
import { kindHour } from './brew/kind-hour.ts';
import { changeOfPace, changeOfPour, changeOfTaste, moreOfRequest, now as nowPhrase } from './guide/phrases.ts';

export const guideCallNames = [
  'beginGuide',
  'noteGuide',
  'fillGuide',
  'atNightGuide',
  'pourGuide',
  'amendGuide',
  'skipGuide',
  'changeGuide',
  'paceGuide',
  'drawGuide',
  'tasteGuide',
  'nowGuide',
  'endGuide',
] as const;

type GuideCall = Calls[string];

export function guideCalls(content: CoreContent): { readonly [name in (typeof guideCallNames)[number]]: GuideCall } {
  const moving =
    (move: (board: Board, given: Facts, around: Around) => Board): GuideCall =>
    (given, around) => ({ gives: told(content, move(boardOf(given['brew'] as Facts), given, around), given, around) });
  return {
    beginGuide: (given, around) => {
      const asked = brewOf(content, given, around);
      if (isMistake(asked)) return refused(asked);
      const started = startGuided({ data: content.brewing, leaf: asked.leaf }, asked.request);
      if (isMistake(started)) return refused(started);
      return { gives: told(content, beginning(started, around.nowMs), {}, around) };
    },
    noteGuide: moving((board) => ({ ...board, change: null })),
    fillGuide: moving((board, given, { nowMs }) => filledNow(board, given, { nowMs, zone: content.zone })),
    atNightGuide: moving((board) => ({
      ...board,
      brew: heldUntil(board.brew, board.movedFromMs ?? board.brew.hold?.endsAt ?? 0),
      movedFromMs: null,
      change: null,
    })),
    pourGuide: moving((board, given, around) => poured(content, board, given, around)),
    amendGuide: moving((board, given) => amended(content, board, given)),
    skipGuide: moving((board, given) => ({
      ...board,
      brew: leftOutUntil(groundOf(content, board.brew), board.brew, numberOf(given['to'])),
      change: null,
    })),
    changeGuide: moving((board, given, around) => heldAnew(otherwise(content, board, given, around), given, around)),
    paceGuide: moving((board, given, { nowMs }) => pacedNow(content, board, given, { nowMs, zone: content.zone })),
    drawGuide: moving((board, given, { nowMs }) => drawnNow(board, numberOf(given['seconds']) ?? 0, nowMs)),
    tasteGuide: moving((board, given, around) => tastedNow(content, board, given, around)),
    nowGuide: moving((board, { n = null }, around) => ({
      ...board,
      change: nowPhrase(content, board.brew, around, numberOf(n)),
    })),
    endGuide: moving((board) => ({
      ...board,
      isOver: true,
      change: board.brew.coming.length === 0 ? board.change : null,
    })),
  };
}

const isCold = (given: Facts): boolean => (given['brew'] as Facts)['style'] === 'cold';

interface HereAndNow {
  readonly nowMs: number;
  readonly zone: string;
}

function filledNow(board: Board, given: Facts, { nowMs, zone }: HereAndNow): Board {
  return { ...board, ...heldKindly(filled(board.brew, nowMs), given, zone), change: null };
}

/** A cold infusion's end is moved out of the night. */
function heldKindly(brew: GuidedBrew, given: Facts, zone: string): Pick<Board, 'brew' | 'movedFromMs'> {
  const endsAt = brew.hold?.endsAt ?? 0;
  const kindAt = brew.hold && isCold(given) ? kindHour(brew.hold, zone) : endsAt;
  return { brew: heldUntil(brew, kindAt), movedFromMs: kindAt === endsAt ? null : endsAt };
}

/** Judgement: enough to taste, small enough to go back on; said again, it goes on from there. */
const paceStep = 1.15;

/** Longer or shorter from this infusion on, also while it draws. */
function pacedNow(content: CoreContent, board: Board, given: Facts, { nowMs, zone }: HereAndNow): Board {
  const isLonger = given['pace'] === 'longer' || given['pace'] === 'stronger';
  const brew = paced(groundOf(content, board.brew), board.brew, {
    factor: isLonger ? paceStep : 1 / paceStep,
    now: nowMs,
    ofNext: given['ofNext'] === true,
  });
  if (brew === null) return { ...board, change: phrase('guide-told-pace-end') };
  const seconds = brew.coming[1]?.seconds;
  if (given['ofNext'] === true && brew.hold && seconds !== undefined)
    return { ...board, brew, change: phrase('guide-told-next-paced', { seconds }) };
  return { ...board, ...heldKindly(brew, given, zone), change: changeOfPace(isLonger, board.brew, brew) };
}

const drawnNow = (board: Board, seconds: number, nowMs: number): Board => ({
  ...board,
  brew: drawnFor(board.brew, seconds, nowMs),
  change: phrase('guide-told-drawn', { seconds }),
});

/** Nobody's pot stands longer; the taps of days later are no holds. */
const longestHeldS = 86_400;

function poured(content: CoreContent, board: Board, given: Facts, { nowMs }: Around): Board {
  const heldS = numberOf(given['heldS']);
  const ground = groundOf(content, board.brew);
  const now = { now: nowMs, heldS: heldS === null ? null : Math.min(Math.max(heldS, 0), longestHeldS) };
  const done = pouredOff(ground, board.brew, now);
  return {
    ...board,
    beforePour: { ...board.brew, coming: board.brew.coming.slice(0, 2) },
    brew: done.brew,
    lastN: done.poured.n,
    lastS: done.poured.heldS,
    tastedN: board.tastedN,
    // Hours more or less say nothing of a leaf that gives one cup.
    change: isCold(given) && done.poured.nextS === null ? null : changeOfPour(done.poured),
  };
}

/** What was poured last stood `heldS`, or `lateS` longer than was asked; the leaf is counted anew from there. */
function amended(content: CoreContent, board: Board, given: Facts): Board {
  const before = board.beforePour;
  if (before === null) return board;
  const askedS = before.coming[0]?.seconds ?? 0;
  const heldS = numberOf(given['heldS']) ?? askedS + (numberOf(given['lateS']) ?? 0);
  const now = board.brew.pouredAt ?? 0;
  const { brew, poured: last } = pouredOff(groundOf(content, before), before, {
    now,
    heldS: Math.min(Math.max(heldS, 0), longestHeldS),
  });
  return { ...board, brew, lastS: last.heldS, change: changeOfPour(last) };
}

/** The next one, or all until that one, as long as there are any. */
function leftOutUntil(ground: Ground, brew: GuidedBrew, to: number | null): GuidedBrew {
  const once = leftOut(ground, brew);
  const next = once.coming[0]?.n ?? null;
  return to !== null && next !== null && next < to && once.coming.length > 1 ? leftOutUntil(ground, once, to) : once;
}

function otherwise(content: CoreContent, board: Board, given: Facts, { memory }: Around): Board {
  const [tempC, guests] = [numberOf(given['tempC']), numberOf(given['guests'])];
  const ground = groundOf(content, board.brew);
  const change = { ...(tempC === null ? {} : { waterC: tempC }), ...(guests === null ? {} : { guests }) };
  const brew = changed(ground, board.brew, given['fresh'] === true ? { waterC: board.waterC } : change);
  // A number that can't be is said so, and the brew goes on as it was.
  if (isMistake(brew)) return { ...board, change: phrase(`mistake-${brew.code}`, brew.values) };
  const before = board.brew.coming[0]?.seconds ?? null;
  return { ...board, brew, change: moreOfRequest(board, brew, { before, unit: memory['unit'] ?? null }) };
}

/** Of the water that is on the leaf already. */
const heldAnew = (board: Board, given: Facts, { nowMs }: Around): Board =>
  given['isOnIt'] === true ? { ...board, brew: heldAsReckoned(board.brew, nowMs) } : board;

/** A hold ends as the times are now, at once if it has had them. */
function heldAsReckoned(brew: GuidedBrew, nowMs: number): GuidedBrew {
  const seconds = brew.coming[0]?.seconds ?? null;
  if (!brew.hold || seconds === null) return brew;
  return heldUntil(brew, Math.max(nowMs, brew.hold.filledAt + seconds * 1000));
}

/** Moves this brew and the taste remembered for its family, by the smallest step. */
function tastedNow(content: CoreContent, board: Board, given: Facts, { memory, nowMs }: Around): Board {
  const said = textOf(given['taste']);
  const ground = groundOf(content, board.brew);
  const plan = planBrew(ground.data, ground.leaf, board.brew.request);
  const waterC = isMistake(plan) ? board.waterC : plan.waterC;
  const context = { family: ground.leaf.family, waterC, boilsAtC: isMistake(plan) ? 100 : plan.boilsAtC };
  const tastes = tastesOf(memory);
  const complaint = complaintOf(said, isCold(given));
  const { taste, change } = adjust(tastes[context.family] ?? usualTaste, complaint, context);
  const mended: GuidedBrew = change ? tasted(ground, board.brew, change, waterC) : board.brew;
  // What draws now has the water it has, and what has drawn its time is done.
  const isSameWater = mended.request.waterC === board.brew.request.waterC;
  const stillDraws = nowMs < (board.brew.hold?.endsAt ?? 0);
  const brew = change && stillDraws && isSameWater && !isCold(given) ? heldAsReckoned(mended, nowMs) : mended;
  return {
    ...board,
    brew,
    tastedN: board.lastN,
    said: [...board.said, said],
    tastes: { ...asFacts(tastes), [context.family]: asFacts(taste) },
    change: changeOfTaste(
      { said, change, waterC, unit: memory['unit'] ?? null, isOver: board.isOver },
      board.brew,
      brew,
    ),
  };
}
