/** The flows as the engine runs them: read from their files, checked, with every expression parsed. Plain data but for the calls. */
import type { Expression } from './expression.ts';
import type { Facts, Json, Phrase } from './flow.ts';

export interface FlowBook {
  readonly flows: { readonly [name: string]: Flow };
  /** The flow every conversation comes in by. */
  readonly front: string;
  readonly calls: Calls;
  readonly words: FlowWords;
}

/** The part of the words the engine needs: to match typed labels and to know a sentence's values. */
export interface FlowWords {
  readonly languages: readonly string[];
  say(language: string, phrase: Phrase): string;
  typed(language: string, key: string): readonly string[];
  variables(key: string): readonly string[];
}

export interface Around {
  readonly nowMs: number;
  readonly language: string;
  /** What is remembered of the person across conversations. */
  readonly memory: Facts;
  /** How long a message takes to reach the person; none told is at once. */
  readonly deliveryMs?: number;
  /** What the house tells: read as `house.`. */
  readonly house?: Facts;
}

export type Outcome =
  | { readonly gives: Json }
  /** What the person got wrong; its sentence is "mistake-<code>". */
  | { readonly wrong: string; readonly field: string; readonly values: Facts };

/** The functions a flow file may call. They are pure. */
export type Calls = { readonly [name: string]: (given: Facts, around: Around) => Outcome };

export interface Flow {
  readonly name: string;
  readonly about: string;
  readonly hash: string;
  readonly starts: string;
  /** Where to go when a message brought facts. */
  readonly news: string;
  /** A passing flow is left without being kept for later, except for what is said aside. */
  readonly passing: boolean;
  /** Passing, and within any other subject: what was left for it is taken up again. */
  readonly aside: boolean;
  /** While this holds in a flow that was left, the words of its choices reach it from everywhere. */
  readonly underWay: Expression | null;
  /** While this holds, "back" passes its places over: what they speak of is gone. */
  readonly noWayBack: Expression | null;
  /** Facts taken along from the flow the person comes from. */
  readonly takes: readonly string[];
  readonly listens: Listening;
  readonly hears: readonly Line[];
  readonly wakes: { readonly [timer: string]: readonly Line[] };
  readonly places: { readonly [name: string]: Place };
  readonly front: FrontRules | null;
}

/** What only the front flow has. */
export interface FrontRules {
  /** The call that reads every text, and the one that reads what was opened. */
  readonly reads: string;
  readonly opens: string;
  /** The call that tells two things asked in one message apart: both texts, or null. */
  readonly parts: string | null;
  /** When what no place here answers is heard by what is under way in a flow that was left; never unless told. */
  readonly handsOn: Expression | null;
  readonly notices: readonly Line[];
  /** Before anything else, in every place. */
  readonly always: readonly Line[];
  readonly otherwise: readonly Line[];
  readonly sentences: EngineSentences;
}

export interface EngineSentences {
  readonly staleTap: string;
  readonly alreadySo: string;
  readonly nothingBefore: string;
  readonly flowChanged: string;
  /** Of two things that both ask back, one waits: `{ $rest }`. */
  readonly oneAtATime: string;
}

export interface Listening {
  readonly when: Expression | null;
  /** Each fact that a message may fill, and the facts that fall with it when it changes. */
  readonly facts: { readonly [name: string]: { readonly clears: readonly string[] } };
}

export interface Place {
  readonly name: string;
  readonly asks: string | null;
  readonly needs: readonly { readonly fact: string; readonly place: string }[];
  readonly lines: readonly Line[];
  /** What is said instead of `lines` when the place is only repeated. */
  readonly repeats: readonly Line[] | null;
  readonly choices: readonly ChoiceLine[];
  readonly hears: readonly Line[];
  readonly wakes: { readonly [timer: string]: readonly Line[] };
  /** Where an answer leads; the flow's news when absent. */
  readonly leads: Target | null;
  /** The message of this place replaces the last of the same slot. */
  readonly slot: Value | null;
  /** Its choices mean nothing any more once the conversation has moved on. */
  readonly once: boolean;
  /** Not come back to: what was left here is taken up where it stood before. */
  readonly passing: boolean;
}

export type Target =
  | { readonly move: Move }
  /** `flow` null: the same flow; `place` null: where that flow starts. */
  | { readonly flow: string | null; readonly place: string | null };

export const moves = ['back', 'start', 'again', 'resume', 'on', 'stay'] as const;
export type Move = (typeof moves)[number];

/** One line of a flow: done in this order of its parts, when its condition holds. */
export interface Line {
  readonly when: Expression | null;
  readonly set: Values | null;
  readonly call: CallLine | null;
  readonly say: readonly SayPart[];
  /** Values of the sentences that are not facts of the same name. */
  readonly with: Values;
  readonly show: Values | null;
  readonly remember: Values | null;
  readonly tellShop: { readonly task: string; readonly values: Values } | null;
  readonly withdraw: readonly string[];
  readonly wake: { readonly name: string; readonly at: Value } | null;
  readonly later: LaterLine | null;
  readonly lines: readonly Line[];
  readonly go: Target | null;
}

export interface LaterLine {
  readonly name: string;
  readonly at: Value;
  readonly say: readonly SayPart[];
  /** It replaces the last message of this slot, when it is said. */
  readonly slot: Value | null;
  /** It comes with the choices of the place, as they are now. */
  readonly offers: boolean;
}

export interface CallLine {
  readonly name: string;
  readonly with: Values;
  readonly keep: string | null;
  /** Where each mistake leads, by its code; "any" for the rest. */
  readonly wrong: { readonly [code: string]: Target };
}

/** A key of the words, or an expression that gives a phrase or a list of them. */
export type SayPart = { readonly key: string } | { readonly computed: Expression };

export interface ChoiceLine {
  readonly id: string;
  readonly label: string;
  readonly with: Values;
  readonly when: Expression | null;
  /** One choice for each item of this list, called `item`. */
  readonly each: Expression | null;
  readonly gives: Values;
  /** Not shown, but taken when its label or one of its other words is written. */
  readonly isUnseen: boolean;
  readonly line: Line;
}

export type Value =
  | { readonly is: Json }
  | { readonly computed: Expression }
  | { readonly list: readonly Value[] }
  | { readonly map: Values };
export type Values = { readonly [name: string]: Value };
