/** What goes on in a flow that was left, a pot that draws: its own words reach it wherever the talk has wandered. */
import { choiceByLabel, type OpenChoice } from './choices.ts';
import type { Parked } from './flow.ts';
import { aroundLabels, foldedText, typedWays } from './label-names.ts';
import { holds } from './evaluate.ts';
import { frontRules } from './lookup.ts';
import { scopeOfLeft, underWayIn } from './scope.ts';
import type { Turn } from './turn.ts';

/** The sentences whose other words may answer anything: "ok", "done", "next". */
const looseWords = [aroundLabels, 'said-at-any-step'];

export interface Reached {
  readonly left: Parked;
  readonly choice: OpenChoice;
}

/** Null where nothing is under way, or what is written says nothing of it; `sure` leaves aside what any place may have asked for. */
export function reachedBy(turn: Turn, text: string, { sure }: { readonly sure: boolean }): Reached | null {
  for (const { left, within } of underWayIn(turn)) {
    const places = turn.book.flows[left.flow]?.places ?? {};
    if (!(left.place in places)) continue;
    const spot = { flow: left.flow, place: left.place };
    const choice = choiceByLabel(turn.openChoices(spot, within), text, turn.book.words);
    if (choice && !(sure && isLoose(turn, text))) return { left, choice };
  }
  return null;
}

/** Where something is under way that has an answer to what was heard; null where there is none, or it is not to be handed on. */
export function hearerUnderWay(turn: Turn): Parked | null {
  const { handsOn } = frontRules(turn.book);
  if (handsOn === null || !holds(handsOn, turn.lookup)) return null;
  for (const { left } of underWayIn(turn)) {
    const flow = turn.book.flows[left.flow];
    const place = flow?.places[left.place];
    if (!flow || !place) continue;
    const within = scopeOfLeft(turn, left);
    if ([...place.hears, ...flow.hears].some(({ when }) => holds(when, within))) return left;
  }
  return null;
}

/** A number may be an answer to anything as well. */
function isLoose({ book: { words } }: Turn, text: string): boolean {
  const told = words.languages.flatMap((language) => looseWords.flatMap((key) => words.typed(language, key)));
  const loose = new Set(told.map(foldedText));
  return /\d/.test(text) || typedWays(words, text).every((way) => loose.has(way));
}
