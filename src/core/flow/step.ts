/** One event moves one person's conversation on by one step. Pure: no clock, no store, no knowledge of what it talks about. */
import type { Around, FlowBook, FlowWords } from './book.ts';
import { choiceByLabel, choiceByNumber, choiceByOrdinal, choiceLine, type OpenChoice } from './choices.ts';
import { isSame } from './evaluate.ts';
import type { Effect, Facts, FlowEvent, FlowState, Spot } from './flow.ts';
import { inParts, type Parts } from './in-parts.ts';
import { flowNamed, frontRules } from './lookup.ts';
import { perform, performFirst } from './perform.ts';
import { Turn } from './turn.ts';
import { hearerUnderWay, reachedBy } from './under-way.ts';

export interface Stepped {
  readonly state: FlowState;
  readonly effects: readonly Effect[];
}

/** So many places back a label still means its choice. */
const olderPlaces = 3;

type EventOf<Kind extends FlowEvent['kind']> = Extract<FlowEvent, { kind: Kind }>;

/** `state` null is a person never met. */
export function step(book: FlowBook, state: FlowState | null, event: FlowEvent, around: Around): Stepped {
  const { carried, changed } = carryOver(book, state);
  const begun = (): Turn => {
    const turn = new Turn(book, carried, around);
    turn.isWritten = event.kind === 'text' || event.kind === 'opened';
    if (changed && event.kind !== 'timer') turn.say({ key: frontRules(turn.book).sentences.flowChanged });
    return turn;
  };
  const turn = begun();
  switch (event.kind) {
    case 'text':
      return onText(turn, event, begun).finish();
    case 'chosen':
      onChosen(turn, event);
      break;
    case 'opened':
      hear(turn, frontRules(turn.book).opens, { payload: event.payload });
      perform(turn, frontRules(turn.book).notices);
      if (!route(turn)) performFirst(turn, frontRules(turn.book).otherwise);
      break;
    case 'timer':
      onTimer(turn, event, around.nowMs);
      break;
  }
  return turn.finish();
}

/**
 * A conversation whose flow file changed goes on where it was if that place still exists, else at the flow's start with
 * all its facts; only when the flow itself is gone does it come in by the front again.
 */
function carryOver(book: FlowBook, state: FlowState | null): { carried: FlowState; changed: boolean } {
  const front = flowNamed(book, book.front);
  const entrance = { flow: front.name, hash: front.hash, place: front.starts, facts: {}, trail: [], parked: [] };
  if (!state) return { carried: entrance, changed: false };
  if (isAsLeft(book, state)) return { carried: state, changed: false };
  const trail = state.trail.filter((spot) => book.flows[spot.flow]?.places[spot.place]);
  const parked = state.parked.filter((left) => book.flows[left.flow]);
  const flow = book.flows[state.flow];
  if (!flow) return { carried: { ...entrance, trail, parked }, changed: true };
  if (flow.places[state.place]) return { carried: { ...state, hash: flow.hash, trail, parked }, changed: false };
  return { carried: { ...state, hash: flow.hash, place: flow.starts, trail, parked }, changed: true };
}

/** Nothing of where someone is and was has changed: mostly so. */
function isAsLeft(book: FlowBook, { flow, hash, place, trail, parked }: FlowState): boolean {
  const isThere = (spot: Spot): boolean => book.flows[spot.flow]?.places[spot.place] !== undefined;
  const isKept = book.flows[flow]?.hash === hash && isThere({ flow, place });
  return isKept && trail.every(isThere) && parked.every((left) => book.flows[left.flow]);
}

function hear(turn: Turn, reader: string, given: Facts): void {
  const outcome = turn.call(reader, given);
  if (!('gives' in outcome)) throw new Error(`${reader} must answer with what it heard`);
  turn.heard = { ...(outcome.gives as Facts), text: given['text'] ?? null };
}

/**
 * A label typed is a tap. Then: what always works, what is under way elsewhere, what the place waits for, facts the flow
 * listens for, a choice's number, what the flow, what goes on beside it and the front answer to.
 */
function onText(turn: Turn, { text, language }: EventOf<'text'>, begun: () => Turn): Turn {
  const open = turn.openChoices();
  const labelled = choiceByLabel(open, text, turn.book.words) ?? choiceByOrdinal(open, text, turn.book.words);
  const olderOpen = olderChoices(turn);
  const older = labelled ? null : olderChoice(olderOpen, text, turn.book.words);
  hearText(turn, text, language);
  // Words we gave tell nothing of who repeats them, but the language when it is another than ours.
  if (!choiceByLabel([...open, ...olderOpen], text, turn.book.words, { by: 'labels', languages: [language] }))
    perform(turn, frontRules(turn.book).notices);
  const parts = labelled || older ? null : partsOf(turn, text, language);
  if (parts) return inParts(parts, begun, (again, part) => answerPart(again, part, language));
  if (labelled || older) turn.heard = { text };
  if (labelled) take(turn, labelled);
  else if (older) onChosen(turn, older);
  else answer(turn, text);
  return turn;
}

const aboutText = (turn: Turn, text: string, language: string): Facts => ({
  text,
  language,
  asked: turn.place.asks,
  flow: turn.spot.flow,
  about: aboutFlow(turn),
});

/** What is talked of: what is asked aside, and may be passed on, leaves that as it was. */
const aboutFlow = ({ flow, place, parked }: Turn): string =>
  flow.aside && place.asks === null ? (parked.at(-1)?.flow ?? flow.name) : flow.name;

const hearText = (turn: Turn, text: string, language: string): void =>
  hear(turn, frontRules(turn.book).reads, aboutText(turn, text, language));

function partsOf(turn: Turn, text: string, language: string): Parts | null {
  const { parts } = frontRules(turn.book);
  const outcome = parts === null ? null : turn.call(parts, aboutText(turn, text, language));
  return outcome && 'gives' in outcome ? (outcome.gives as Parts | null) : null;
}

/** Each part asks or is a choice; neither answers what was asked before. */
function answerPart(turn: Turn, part: string, language: string): void {
  const labelled = choiceByLabel(turn.openChoices(), part, turn.book.words);
  hear(turn, frontRules(turn.book).reads, { ...aboutText(turn, part, language), asked: null });
  perform(turn, frontRules(turn.book).notices);
  if (!labelled) return answer(turn, part);
  turn.heard = { text: part };
  take(turn, labelled);
}

function answer(turn: Turn, text: string): void {
  const byNumber = (): boolean => {
    const numbered = choiceByNumber(turn.openChoices(), text);
    if (numbered) take(turn, numbered);
    return numbered !== null;
  };
  if (!route(turn, { text, byNumber })) performFirst(turn, frontRules(turn.book).otherwise);
}

/** The label of a choice further up, or of one of the front's, typed: the same as a tap on it, which can be made as well. */
function olderChoice(older: readonly OpenChoice[], text: string, words: FlowWords): EventOf<'chosen'> | null {
  const found = choiceByLabel(older, text, words, { by: 'labels' });
  return found && { kind: 'chosen', choice: found.choice.id, from: found.choice.from, gives: found.choice.gives };
}

/** The nearest first. */
function olderChoices(turn: Turn): readonly OpenChoice[] {
  const { flow } = turn.spot;
  const spots = turn.trail.filter((spot) => spot.flow === flow).slice(-olderPlaces);
  const front = flowNamed(turn.book, turn.book.front);
  const older: OpenChoice[] = [];
  for (const spot of spots.toReversed()) older.push(...turn.openChoices(spot));
  older.push(...turn.openChoices({ flow: front.name, place: front.starts }));
  return older;
}

interface Written {
  readonly text: string;
  readonly byNumber: () => boolean;
}

function route(turn: Turn, written?: Written): boolean {
  const front = turn.book.flows[turn.book.front];
  const reaches = (sure: boolean): boolean => written !== undefined && reach(turn, written.text, sure);
  return (
    performFirst(turn, frontRules(turn.book).always) ||
    reaches(true) ||
    performFirst(turn, turn.place.hears) ||
    goOnFilled(turn) ||
    (written?.byNumber() ?? false) ||
    performFirst(turn, turn.flow.hears) ||
    reaches(false) ||
    (written !== undefined && hearLeft(turn)) ||
    (turn.flow !== front && performFirst(turn, front?.hears ?? []))
  );
}

/** Takes up what is under way elsewhere, when its own words are written. */
function reach(turn: Turn, text: string, sure: boolean): boolean {
  const reached = reachedBy(turn, text, { sure });
  if (!reached) return false;
  turn.heard = { text };
  turn.takeUp(reached.left);
  take(turn, reached.choice);
  return true;
}

/** What was said in passing to something else, and is of what goes on. */
function hearLeft(turn: Turn): boolean {
  const left = hearerUnderWay(turn);
  if (left === null) return false;
  turn.takeUp(left);
  return performFirst(turn, turn.place.hears) || goOnFilled(turn) || performFirst(turn, turn.flow.hears);
}

function goOnFilled(turn: Turn): boolean {
  const filled = turn.fill();
  if (filled) turn.goOn();
  return filled;
}

function take(turn: Turn, { choice, line }: OpenChoice): void {
  turn.learn(choice.gives);
  if (!perform(turn, [line.line])) turn.goOn();
}

/** A tap on an older message still counts while its flow is under way, except where the file says once. */
function onChosen(turn: Turn, event: EventOf<'chosen'>): void {
  const { from, gives } = event;
  const place = turn.book.flows[from.flow]?.places[from.place];
  const line = place ? choiceLine(place, event.choice) : null;
  const isHere = isSame({ ...from }, { ...turn.spot });
  const underWay = from.flow === turn.flow.name || from.flow === turn.book.front;
  const left = turn.parked.find((p) => p.flow === from.flow);
  const isForged = Object.keys(gives).some((name) => !line || !(name in line.gives));
  if (!place || !line || isForged || (!isHere && (place.once || !(underWay || left)))) {
    return turn.say({ key: frontRules(turn.book).sentences.staleTap });
  }
  // What was said below the message of this place is answered below it, as a written line is.
  if (turn.isAside) turn.heard = { text: '' };
  if (!isHere && left && from.flow !== turn.flow.name) turn.takeUp(left);
  const facts = Object.entries(gives);
  if (!isHere && facts.length > 0 && facts.every(([name, value]) => isSame(value, turn.facts[name] ?? null))) {
    return turn.say({ key: frontRules(turn.book).sentences.alreadySo });
  }
  turn.learn(gives);
  if (!perform(turn, [line.line])) {
    if (place.leads) turn.go(place.leads);
    else turn.goOn();
  }
}

/** A timer finds its own flow, even a parked one: what is due there comes first. */
function onTimer(turn: Turn, { name, dueAtMs }: EventOf<'timer'>, nowMs: number): void {
  const [flow = '', timer = ''] = name.split('/');
  const left = turn.parked.find((p) => p.flow === flow);
  if (turn.flow.name !== flow && !left) return;
  const where = turn.flow.name === flow ? turn.spot.place : (left?.place ?? '');
  const source = turn.book.flows[flow];
  const lines = source?.places[where]?.wakes[timer] ?? source?.wakes[timer];
  if (!lines) return;
  if (turn.flow.name !== flow && left) turn.takeUp(left);
  turn.timer = { name: timer, dueAtMs, lateS: Math.max(0, (nowMs - dueAtMs) / 1000) };
  perform(turn, lines);
}
