/** One turn of a conversation while it is worked out: what is known, what will be said and done. Lives only within one step. */
import type { Around, CallLine, Flow, FlowBook, Line, Move, Place, SayPart, Target, Values } from './book.ts';
import { openChoices, member, type OpenChoice } from './choices.ts';
import { evaluate, factsOf, holds, isKnown, isSame, valueOf, type Lookup } from './evaluate.ts';
import type { Effect, Facts, FlowState, Json, Parked, Phrase, Spot } from './flow.ts';

const longestTrail = 20;
const mostParked = 3;
/** More places in one turn than any flow has: a circle without a question. */
const mostPlaces = 60;

export class Turn {
  readonly book: FlowBook;
  readonly #around: Around;
  readonly #effects: Effect[] = [];
  readonly #phrases: Phrase[] = [];
  readonly #began: Spot;
  #memory: Facts;
  #flow: string;
  #place: string;
  #facts: Facts;
  #trail: readonly Spot[];
  #parked: readonly Parked[];
  #show: Facts | null = null;
  #entered = false;
  #wentBack = false;
  #places = 0;
  #filled = false;
  heard: Facts = {};
  timer: Facts = {};

  constructor(book: FlowBook, state: FlowState, around: Around) {
    this.book = book;
    this.#around = around;
    this.#memory = around.memory;
    this.#flow = state.flow;
    this.#place = state.place;
    this.#facts = state.facts;
    this.#trail = state.trail;
    this.#parked = state.parked;
    this.#began = { flow: state.flow, place: state.place };
  }

  get flow(): Flow {
    return this.#flowNamed(this.#flow);
  }

  get place(): Place {
    return this.#placeOf(this.flow, this.#place);
  }

  get spot(): Spot {
    return { flow: this.#flow, place: this.#place };
  }

  get facts(): Facts {
    return this.#facts;
  }

  get parked(): readonly Parked[] {
    return this.#parked;
  }

  readonly lookup: Lookup = ([head = '', ...rest]) => member(this.#named(head), rest);

  #named(head: string): Json {
    switch (head) {
      case 'heard':
        return this.heard;
      case 'memory':
        return this.#memory;
      case 'language':
        return this.#around.language;
      case 'now':
        return this.#around.nowMs;
      case 'timer':
        return this.timer;
      case 'flow':
        return this.#flow;
      case 'place':
        return this.#place;
      case 'parked':
        return this.#parked.map((p) => p.flow);
      case 'asked':
        return this.place.asks;
      case 'answered':
        return this.place.asks !== null && isKnown(this.heard[this.place.asks]);
      default:
        return member(this.#facts, [head]);
    }
  }

  call(name: string, given: Facts): ReturnType<FlowBook['calls'][string]> {
    const call = this.book.calls[name];
    if (!call) throw new Error(`no function is called "${name}"`);
    return call(given, { ...this.#around, memory: this.#memory });
  }

  /** Says a sentence of the words; its values are facts of the same name, a dash reading into a fact. */
  say(key: string, values: Values = {}): void {
    this.#phrases.push(this.#phrase(key, values, this.lookup));
  }

  readonly #phrase = (key: string, values: Values, lookup: Lookup): Phrase => {
    const given = factsOf(values, lookup);
    const valueNamed = (name: string): Json => (name in given ? (given[name] ?? null) : lookup(name.split('-')));
    return { key, values: Object.fromEntries(this.book.words.variables(key).map((v) => [v, valueNamed(v)])) };
  };

  #spoken(part: SayPart, values: Values): readonly Phrase[] {
    if ('key' in part) return [this.#phrase(part.key, values, this.lookup)];
    const found = evaluate(part.computed, this.lookup);
    const phrases = (Array.isArray(found) ? found : [found]) as readonly (Phrase | null)[];
    return phrases.flatMap((p) => (p === null ? [] : [this.#phrase(p.key, literal(p.values), this.lookup)]));
  }

  /** Does the lines in order; true when one of them led elsewhere. */
  perform(lines: readonly Line[]): boolean {
    return lines.some((line) => holds(line.when, this.lookup) && this.#do(line));
  }

  /** Does the first line that fits; the conversation stays where it is unless the line leads on. */
  performFirst(lines: readonly Line[]): boolean {
    const line = lines.find((l) => holds(l.when, this.lookup));
    if (line) this.#do(line);
    return line !== undefined;
  }

  #do(line: Line): boolean {
    if (line.set) this.#setFacts(factsOf(line.set, this.lookup));
    if (line.call && this.#performCall(line.call)) return true;
    for (const part of line.say) this.#phrases.push(...this.#spoken(part, line.with));
    if (line.show) this.#show = factsOf(line.show, this.lookup);
    this.#remember(line.remember);
    if (line.tellShop) {
      this.#effects.push({ do: 'task', task: line.tellShop.task, values: factsOf(line.tellShop.values, this.lookup) });
    }
    this.#schedule(line);
    if (this.perform(line.lines)) return true;
    if (line.go) this.go(line.go);
    return line.go !== null;
  }

  #performCall(line: CallLine): boolean {
    const outcome = this.call(line.name, factsOf(line.with, this.lookup));
    if ('gives' in outcome) {
      if (line.keep !== null) this.#setFacts({ [line.keep]: outcome.gives });
      return false;
    }
    const { wrong, field, values } = outcome;
    const target = line.wrong[wrong] ?? line.wrong['any'];
    if (!target) throw new Error(`${this.#flow}/${this.#place}: ${line.name} answers "${wrong}", which leads nowhere`);
    this.#setFacts({ mistake: { code: wrong, field, key: `mistake-${wrong}`, values } });
    this.go(target);
    return true;
  }

  #remember(values: Values | null): void {
    if (!values) return;
    for (const [name, value] of Object.entries(factsOf(values, this.lookup))) {
      if (isSame(this.#memory[name] ?? null, value)) continue;
      this.#memory = { ...this.#memory, [name]: value };
      this.#effects.push({ do: 'remember', name, value });
    }
  }

  /** Names of timers and later sayings carry their flow, so that a parked flow is found by them. */
  #schedule(line: Line): void {
    for (const name of line.withdraw) this.#effects.push({ do: 'withdraw', name: `${this.#flow}/${name}` });
    if (line.wake) {
      const atMs = this.#instant(valueOf(line.wake.at, this.lookup), line.wake.name);
      this.#effects.push({ do: 'wake', name: `${this.#flow}/${line.wake.name}`, atMs });
    }
    if (line.later) {
      const phrases = line.later.say.flatMap((part) => this.#spoken(part, line.with));
      const atMs = this.#instant(valueOf(line.later.at, this.lookup), line.later.name);
      const later = { name: `${this.#flow}/${line.later.name}`, atMs };
      this.#effects.push({ do: 'say', saying: { phrases, choices: [], later } });
    }
  }

  #instant(value: Json, name: string): number {
    if (typeof value !== 'number')
      throw new Error(`${this.#flow}/${this.#place}: the time of "${name}" is not a number`);
    return Math.round(value);
  }

  /** Null forgets a fact. */
  #setFacts(facts: Facts): void {
    const kept = Object.entries({ ...this.#facts, ...facts }).filter(([, value]) => isKnown(value));
    this.#facts = Object.fromEntries(kept);
  }

  /** Takes in facts; one that changes clears what hung on it, unless that was told in the same breath. */
  learn(told: Facts): void {
    const changed = Object.keys(told).filter((name) => !isSame(told[name] ?? null, this.#facts[name] ?? null));
    const fallen = changed.flatMap((name) => this.flow.listens.facts[name]?.clears ?? []);
    this.#setFacts({ ...Object.fromEntries(fallen.map((name) => [name, null])), ...told });
  }

  /** Learns what the message holds for this flow, if the flow is listening; true when it held anything. */
  fill(): boolean {
    const { when, facts } = this.flow.listens;
    if (!holds(when, this.lookup)) return false;
    const told = Object.fromEntries(Object.entries(this.heard).filter(([name, v]) => name in facts && isKnown(v)));
    this.learn(told);
    this.#filled = Object.keys(told).length > 0;
    return this.#filled;
  }

  /** Where an answer leads. */
  goOn(): void {
    this.go(this.place.leads ?? { flow: null, place: this.flow.news });
  }

  go(target: Target): void {
    if ('move' in target) return this.#move(target.move);
    if (target.flow !== null && target.flow !== this.#flow) this.#changeFlow(target.flow);
    this.#enter(target.place ?? this.flow.starts);
  }

  #move(move: Move): void {
    switch (move) {
      case 'back':
        return this.#goBack();
      case 'start':
        return this.#startOver();
      case 'again':
        return this.#enter(this.#place, true);
      case 'resume':
        return this.#resume();
      case 'on':
        return this.#filled ? this.goOn() : this.#enter(this.#place, true);
      case 'stay':
        return;
    }
  }

  #enter(name: string, repeated = false): void {
    if (++this.#places > mostPlaces) throw new Error(`${this.#flow}/${name}: a circle of places without a question`);
    this.#place = name;
    const { needs, lines, repeats } = this.place;
    const missing = needs.find(({ fact }) => !isKnown(this.#facts[fact]));
    if (missing) return this.#enter(missing.place);
    this.#entered = true;
    this.perform(repeated && repeats ? repeats : lines);
  }

  #goBack(): void {
    const spot = this.#trail.at(-1);
    if (!spot || !this.book.flows[spot.flow]) {
      this.say(this.sentences.nothingBefore);
      return this.#enter(this.#place, true);
    }
    this.#trail = this.#trail.slice(0, -1);
    this.#wentBack = true;
    if (spot.flow !== this.#flow) this.#changeFlow(spot.flow);
    this.#enter(spot.place in this.flow.places ? spot.place : this.flow.starts, true);
  }

  #startOver(): void {
    const front = this.#flowNamed(this.book.front);
    this.#flow = front.name;
    this.#facts = {};
    this.#trail = [];
    this.#parked = [];
    this.#wentBack = true;
    this.#enter(front.starts);
  }

  /** Takes up what was left; an open question is asked again, anything else just lies where it was. */
  #resume(): void {
    const left = this.#parked.at(-1);
    if (!left) return this.go({ flow: this.book.front, place: this.#flowNamed(this.book.front).news });
    this.takeUp(left);
    if (this.place.asks !== null) this.#enter(this.#place, true);
  }

  /** Goes back into a parked flow, leaving this one aside. */
  takeUp(left: Parked): void {
    this.#changeFlow(left.flow);
    this.#place = left.place in this.flow.places ? left.place : this.flow.starts;
    this.#entered = false;
  }

  #changeFlow(name: string): void {
    const next = this.#flowNamed(name);
    const leaving = this.flow;
    const carried = Object.fromEntries(Object.entries(this.#facts).filter(([fact]) => next.takes.includes(fact)));
    const found = this.#parked.find((p) => p.flow === name);
    const kept = this.#parked.filter((p) => p.flow !== name && p.flow !== leaving.name);
    const left: Parked = { flow: leaving.name, hash: leaving.hash, place: this.#place, facts: this.#facts };
    this.#parked = (leaving.passing || leaving.front ? kept : [...kept, left]).slice(-mostParked);
    this.#flow = name;
    this.#place = next.starts;
    this.#facts = { ...found?.facts, ...carried };
    this.fill();
  }

  get sentences(): NonNullable<Flow['front']>['sentences'] {
    return this.frontRules.sentences;
  }

  get frontRules(): NonNullable<Flow['front']> {
    const { front } = this.#flowNamed(this.book.front);
    if (!front) throw new Error(`"${this.book.front}" has no front rules`);
    return front;
  }

  openChoices(): readonly OpenChoice[] {
    return openChoices(this.place, this.spot, this.lookup, this.#phrase);
  }

  /** The new state, and everything said in this turn as one message with the choices of where it came to rest. */
  finish(): { state: FlowState; effects: readonly Effect[] } {
    const { flow, place } = this.#began;
    const moved = (flow !== this.#flow || place !== this.#place) && !this.#wentBack;
    const trail = moved && place in (this.book.flows[flow]?.places ?? {}) ? [...this.#trail, this.#began] : this.#trail;
    const state: FlowState = {
      flow: this.#flow,
      hash: this.flow.hash,
      place: this.#place,
      facts: this.#facts,
      trail: trail.slice(-longestTrail),
      parked: this.#parked,
    };
    return { state, effects: this.#phrases.length > 0 ? [...this.#effects, this.#saying()] : this.#effects };
  }

  #saying(): Effect {
    const { slot } = this.place;
    const saying = {
      phrases: this.#phrases,
      choices: this.openChoices().map(({ choice }) => choice),
      ...(this.#show ? { show: this.#show } : {}),
      ...(slot !== null && this.#entered ? { slot: `${this.#flow}/${slot}` } : {}),
    };
    return { do: 'say', saying };
  }

  #flowNamed(name: string): Flow {
    const flow = this.book.flows[name];
    if (!flow) throw new Error(`no flow is called "${name}"`);
    return flow;
  }

  #placeOf(flow: Flow, name: string): Place {
    const place = flow.places[name];
    if (!place) throw new Error(`${flow.name} has no place "${name}"`);
    return place;
  }
}

const literal = (facts: Facts): Values => Object.fromEntries(Object.entries(facts).map(([name, is]) => [name, { is }]));
