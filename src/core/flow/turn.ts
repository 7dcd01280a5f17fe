/** One turn of a conversation while it is worked out: what is known, what will be said and done. Lives only within one step. */
import type { Around, Flow, FlowBook, Move, Outcome, Place, SayPart, Target, Values } from './book.ts';
import { callNamed, flowNamed, frontRules, placeNamed } from './lookup.ts';
import { openChoices, shownChoices, type OpenChoice } from './choices.ts';
import { holds, isKnown, isSame, type Lookup } from './evaluate.ts';
import type { Effect, Facts, FlowState, Json, Parked, Phrase, Saying, Spot } from './flow.ts';
import { learned, toldOf, withFacts } from './learning.ts';
import { timersOf } from './outline.ts';
import { factsFor, leftAt, mayStay, parkedAfter, trailBefore, trailOn } from './parking.ts';
import { perform } from './perform.ts';
import { sayingOf, spoken, withoutTwins } from './phrases.ts';
import { scopeOf, slotOf } from './scope.ts';

/** More places in one turn than any flow has: a circle without a question. */
const mostPlaces = 60;

export class Turn {
  readonly book: FlowBook;
  readonly lookup: Lookup;
  readonly around: Around;
  readonly #effects: Effect[] = [];
  readonly #phrases: Phrase[] = [];
  #ofFirstAnswer = 0;
  #began: Spot;
  readonly #beganSlot: string | null;
  readonly #wasAside: boolean;
  /** What is written is answered below it. */
  isWritten = false;
  #flow: Flow;
  #place: Place;
  #facts: Facts;
  #trail: readonly Spot[];
  #parked: readonly Parked[];
  #entered = false;
  #wentBack = false;
  #places = 0;
  #filled = false;
  /** What is drawn with what is said. */
  show: Facts | null = null;
  heard: Facts = {};
  timer: Facts = {};
  memory: Facts;

  constructor(book: FlowBook, state: FlowState, around: Around) {
    this.book = book;
    this.around = around;
    this.lookup = scopeOf(this);
    this.memory = around.memory;
    this.#flow = flowNamed(book, state.flow);
    this.#place = placeNamed(this.#flow, state.place);
    this.#facts = state.facts;
    this.#trail = state.trail;
    this.#parked = state.parked;
    this.#began = { flow: state.flow, place: state.place };
    this.#wasAside = state.aside ?? false;
    this.#beganSlot = slotOf(this);
  }

  get flow(): Flow {
    return this.#flow;
  }

  get place(): Place {
    return this.#place;
  }

  get spot(): Spot {
    return { flow: this.#flow.name, place: this.#place.name };
  }

  /** The message this place is written on has others below it. */
  get isAside(): boolean {
    return this.#wasAside && this.#beganSlot !== null;
  }

  get facts(): Facts {
    return this.#facts;
  }

  get trail(): readonly Spot[] {
    return this.#trail;
  }

  get parked(): readonly Parked[] {
    return this.#parked;
  }

  call(name: string, given: Facts): Outcome {
    const { around, memory } = this;
    return callNamed(this.book, name)(given, around.memory === memory ? around : { ...around, memory });
  }

  say(part: SayPart, values: Values = {}): void {
    this.#phrases.push(...spoken(this.book.words, part, values, this.lookup));
  }

  add(effect: Effect): void {
    this.#effects.push(effect);
  }

  /** Only what is news is remembered. */
  remember(name: string, value: Json): void {
    if (isSame(this.memory[name] ?? null, value)) return;
    this.memory = { ...this.memory, [name]: value };
    this.add({ do: 'remember', name, value });
  }

  setFacts(facts: Facts): void {
    this.#facts = withFacts(this.#facts, facts);
  }

  learn(told: Facts): void {
    this.#facts = learned(this.#facts, told, { listens: this.flow.listens.facts, asked: this.place.asks });
  }

  /** Learns what the message holds for this flow, if the flow is listening; true when it held anything. */
  fill(): boolean {
    const { when, facts } = this.flow.listens;
    if (!holds(when, this.lookup)) return false;
    const told = toldOf(this.heard, facts);
    this.learn(told);
    return (this.#filled = Object.keys(told).length > 0);
  }

  goOn(): void {
    this.go(this.place.leads ?? { flow: null, place: this.flow.news });
  }

  go(target: Target): void {
    if ('move' in target) return this.#move(target.move);
    if (target.flow !== null && target.flow !== this.#flow.name) this.#changeFlow(target.flow, target.place === null);
    this.#enter(target.place ?? this.flow.starts);
  }

  #move(move: Move): void {
    switch (move) {
      case 'back':
        return this.#goBack();
      case 'start':
        return this.#startOver();
      case 'again':
        return this.#enter(this.#place.name, true);
      case 'resume':
        return this.#resume();
      case 'on':
        return this.#filled ? this.goOn() : this.#enter(this.#place.name, true);
      case 'stay':
        return;
    }
  }

  #enter(name: string, repeated = false): void {
    if (++this.#places > mostPlaces) throw new Error(`${this.flow.name}/${name}: a circle of places, and no question`);
    this.#place = placeNamed(this.#flow, name);
    const { needs, lines, repeats } = this.place;
    const missing = needs.find(({ fact }) => !isKnown(this.#facts[fact]));
    if (missing) return this.#enter(missing.place);
    this.#entered = true;
    perform(this, repeated && repeats ? repeats : lines);
  }

  #goBack(): void {
    const spot = this.#trail.at(-1);
    if (!spot || !this.book.flows[spot.flow]) {
      this.say({ key: frontRules(this.book).sentences.nothingBefore });
      return this.#enter(this.#place.name, true);
    }
    this.#trail = this.#trail.slice(0, -1);
    this.#wentBack = true;
    if (spot.flow !== this.#flow.name) this.#changeFlow(spot.flow);
    if (this.flow.noWayBack && holds(this.flow.noWayBack, this.lookup)) return this.#goBack();
    this.#enter(spot.place in this.flow.places ? spot.place : this.flow.starts, true);
  }

  /** Nothing is kept, and nothing that was to be said later is said. */
  #startOver(): void {
    const left = [this.#flow, ...this.#parked.map(({ flow }) => flowNamed(this.book, flow))];
    for (const name of left.flatMap(timersOf)) this.add({ do: 'withdraw', name });
    this.#flow = flowNamed(this.book, this.book.front);
    this.#facts = {};
    this.#trail = [];
    this.#parked = [];
    this.#wentBack = true;
    this.#enter(this.flow.starts);
  }

  /** Takes up what was left; an open question is asked again, anything else just lies where it was, one step back. */
  #resume(): void {
    const left = this.#parked.findLast((one) => mayStay(one, this.book));
    if (!left) return this.go({ flow: this.book.front, place: flowNamed(this.book, this.book.front).news });
    this.takeUp(left);
    this.#wentBack ||= this.book.flows[this.#began.flow]?.passing ?? false;
    this.#trail = trailBefore(this.#trail, { spot: this.spot, isAnew: this.place.asks !== null, book: this.book });
    if (this.place.asks !== null) this.#enter(this.#place.name, true);
  }

  /** Goes on with a flow that was left, where it was left. */
  takeUp(left: Parked): void {
    this.#changeFlow(left.flow);
    this.#place = placeNamed(this.#flow, left.place in this.#flow.places ? left.place : this.#flow.starts);
    this.#entered = false;
  }

  /** What is left is parked; the other flow has the facts it had, unless it begins anew. */
  #changeFlow(name: string, isAnew = false): void {
    const next = flowNamed(this.book, name);
    const left = leftAt(this.#trail, this.spot, { flow: this.#flow, facts: this.#facts, book: this.book });
    this.#facts = factsFor(next, this.#parked, { flow: this.flow, facts: this.#facts, isAnew });
    this.#parked = parkedAfter(this.#parked, { leaving: this.flow, left, next }, this.book);
    this.#flow = next;
    this.#place = placeNamed(next, next.starts);
    this.fill();
  }

  /** One thing is answered and another comes: where the first came to rest is a step to go back to. */
  restHere(): void {
    this.#trail = trailOn(this.#trail, this.#wentBack ? null : this.#began, this);
    this.#began = this.spot;
    this.#wentBack = false;
    this.#ofFirstAnswer = this.#phrases.length;
  }

  /** The choices of a place, of the present one unless told. */
  openChoices(from: Spot = this.spot, lookup: Lookup = this.lookup): readonly OpenChoice[] {
    return openChoices(placeNamed(flowNamed(this.book, from.flow), from.place), from, lookup, this.book.words);
  }

  /** The new state, and everything said in this turn as one message with the choices of where it came to rest. */
  finish(): { state: FlowState; effects: readonly Effect[] } {
    const saying = this.#phrases.length > 0 ? this.#saying() : null;
    if (saying) this.add({ do: 'say', saying });
    const isAside = (saying ? saying.slot === undefined : this.#wasAside) && slotOf(this) !== null;
    const state: FlowState = {
      flow: this.#flow.name,
      hash: this.#flow.hash,
      place: this.#place.name,
      facts: this.#facts,
      trail: trailOn(this.#trail, this.#wentBack ? null : this.#began, this),
      parked: this.#parked,
    };
    return { state: isAside ? { ...state, aside: true } : state, effects: this.#effects };
  }

  #saying(): Saying {
    const own = this.#entered ? slotOf(this) : null;
    const slot = this.isWritten && own === this.#beganSlot ? null : own;
    const phrases = withoutTwins(this.#phrases, this.#ofFirstAnswer);
    return sayingOf(phrases, { choices: shownChoices(this.openChoices()), show: this.show, slot });
  }
}
