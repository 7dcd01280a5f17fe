/** What a flow is while it runs: its state, what can happen to it, and what it asks the world to do. Knows nothing of tea. */

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
export type Facts = { readonly [name: string]: Json };

/** A sentence before it is in words. */
export interface Phrase {
  readonly key: string;
  readonly values: Facts;
}

/** Where a person is in a conversation. A plain value: it survives a JSON round trip. */
export interface FlowState {
  readonly flow: string;
  /** The content hash of the flow the person is in; a changed flow carries over by a stated rule. */
  readonly hash: string;
  readonly place: string;
  readonly facts: Facts;
  /** The way back, oldest first, bounded. */
  readonly trail: readonly Spot[];
  /** Conversations left for another subject, to be taken up again, bounded. */
  readonly parked: readonly Parked[];
  /** Something was said below the message that this place is written on. */
  readonly aside?: true;
}

export interface Spot {
  readonly flow: string;
  readonly place: string;
}

export interface Parked {
  readonly flow: string;
  readonly hash: string;
  readonly place: string;
  readonly facts: Facts;
}

export type FlowEvent =
  | { readonly kind: 'text'; readonly text: string; readonly language: string }
  /** `choice` as the engine named it in the saying; `from` is where that saying was said. */
  | { readonly kind: 'chosen'; readonly choice: string; readonly from: Spot; readonly gives: Facts }
  | { readonly kind: 'opened'; readonly payload: string }
  | { readonly kind: 'timer'; readonly name: string; readonly dueAtMs: number };

export type Effect =
  | { readonly do: 'say'; readonly saying: Saying }
  /** Withdraws what was to be said later under this name, and any timer of this name. */
  | { readonly do: 'withdraw'; readonly name: string }
  /** Wakes the flow with a timer event. A second one of the same name replaces the first. */
  | { readonly do: 'wake'; readonly name: string; readonly atMs: number }
  /** Keeps something of the person across conversations: vessels, taste, language. Null forgets it. */
  | { readonly do: 'remember'; readonly name: string; readonly value: Json }
  /** Passes a question or a piece of work to the shop. */
  | { readonly do: 'task'; readonly task: string; readonly values: Facts };

/** One message to one person, before it is in words. */
export interface Saying {
  readonly phrases: readonly Phrase[];
  readonly choices: readonly SayingChoice[];
  /** What it is about in a few words, for a channel that writes that above a message. */
  readonly subject?: Phrase;
  /** What comes with the words: { kind: 'ladder', … }, { kind: 'countdown', … }, { kind: 'file', … }. */
  readonly show?: Facts;
  /** A message with a slot replaces, in place, the last one of the same slot. */
  readonly slot?: string;
  /** Said later, unless withdrawn by name. */
  readonly later?: { readonly name: string; readonly atMs: number };
}

export interface SayingChoice {
  readonly id: string;
  readonly label: Phrase;
  /** Facts this choice stands for. */
  readonly gives: Facts;
  readonly from: Spot;
}
