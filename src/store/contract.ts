/** What the house asks of its memory: a dozen operations, each whole or not at all, none holding a transaction open. */
import type { Facts, FlowState, Json, Saying, SayingChoice } from '../core/flow/flow.ts';
import type { Instant, Language } from '../core/units.ts';
import type { ChannelName, Incoming } from '../messages.ts';
import type { Desk, DeskChange, Mornings, QuestionId } from './desk-contract.ts';
import type { Idle } from './idle-contract.ts';
import type { LessonBoard, LessonChange, Lessons } from './lesson-contract.ts';
import type { Vitals } from './vitals.ts';

/** A person, whichever channels they come by. Never given twice, even after they are forgotten. */
export type PersonId = number;

/** Where something can be said. */
export interface Address {
  readonly channel: ChannelName;
  readonly chat: string;
}

export interface Store extends Lessons, Mornings, Idle {
  /**
   * Keeps what arrived, once, and the person it came from. A repeat changes nothing. Resolved means that it outlives the
   * process; only once `synced` resolves may anyone be told that it is kept. With `atOnce` it is also handled in the same
   * transaction, if it is what is next of this person, and is then on the disk.
   */
  record(incoming: Incoming, atOnce?: AtOnce): Promise<Recorded>;
  /** The last process over this file did not close it: what arrives is better kept before it is handled. */
  readonly isWary: boolean;
  /** Resolves when all that was written before is on the disk: shares the sync of what is written meanwhile. */
  synced(): Promise<void>;
  /**
   * At start: sendings cut off half-way become doubtful, or simply wait again where they had not begun or a repeat does no
   * harm; and what waits unhandled is marked as tried once.
   */
  recover(channels: readonly ChannelName[], harmless: readonly ChannelName[], now: Instant): Promise<Recovered>;
  /** People of these channels with something to handle: unhandled incomings, and wakes that are due. */
  awaiting(channels: readonly ChannelName[], now: Instant, limit: number): Promise<readonly PersonId[]>;
  /** The next thing to handle of a person, with all that handling needs; null when there is none. */
  load(person: PersonId, now: Instant): Promise<Turn | null>;
  /** These changes if the version still holds and the event is still unhandled; else nothing, and 'moved'. */
  commit(commit: Commit): Promise<'done' | 'moved'>;
  /** Counts one more try of this event, before or after one that went wrong. */
  tried(person: PersonId, event: EventRef): Promise<void>;
  /**
   * Takes what may be sent now and marks it as sending: at most one a chat, none of a chat with one under way, and,
   * timers apart, none of a chat where one waits to be tried again.
   */
  claim(claim: Claim): Promise<readonly Owed[]>;
  /** From here on the sending may have arrived. Resolved means durable. */
  begin(id: string): Promise<void>;
  /** Writes down what became of a sending. */
  settle(id: string, settlement: Settlement, now: Instant): Promise<void>;
  /** When the next row or wake falls due, strictly after `after`; null when none will. */
  nextDue(channels: readonly ChannelName[], after: Instant): Promise<Instant | null>;
  /** What was sent to this chat after the message with this id, oldest first; the last 300 that are kept when null. */
  history(address: Address, after: string | null): Promise<readonly Owed[]>;
  /** What this person wrote and chose by a channel since that message was sent, oldest first; the last 300 when null. */
  heard(channel: ChannelName, from: string, after: string | null): Promise<readonly Heard[]>;
  /** Who this is, as a channel knows them; null for a stranger. */
  find(channel: ChannelName, from: string): Promise<PersonId | null>;
  /** Makes these, and nobody else of the settings, shopkeepers; who became one by a code stays one. */
  appoint(keepers: readonly Keeper[], now: Instant): Promise<void>;
  /** Opens a one-time code that makes a shopkeeper, in the place of any earlier one. False when there is a shopkeeper. */
  offerCode(code: string, until: Instant): Promise<boolean>;
  /** Everything kept of a person, as plain values. */
  exportOf(person: PersonId): Promise<Json>;
  /** Removes every byte of a person; their seats go on. Update ids stay, without the person, so that a repeat is still seen. */
  forget(person: PersonId, now: Instant): Promise<void>;
  /** Drops what was settled before this instant: incomings, messages, closed tasks. Returns how many rows went. */
  prune(before: Instant): Promise<number>;
  /** How the house fares in these channels. */
  vitals(channels: readonly ChannelName[], now: Instant): Promise<Vitals>;
  close(): Promise<void>;
}

export interface Recorded {
  readonly outcome: 'new' | 'seen';
  readonly person: PersonId | null;
  /** Null when it waits to be handled, or was seen before. */
  readonly handled: Commit | null;
  /** What of it was taken for sending in the same transaction; null when nothing was. */
  readonly taken: Owed | null;
}

/** How what arrives is handled while it is kept. */
export interface AtOnce {
  readonly now: Instant;
  /** Null leaves it waiting. May be asked again for the same, when the transaction could not be held. */
  readonly decide: (turn: Turn) => Commit | null;
  /** What may be taken for sending with it, as by `claim`. */
  readonly room: Room;
}

/** What may be sent to a chat now: anything, no edits and reminders, or nothing. */
export type Room = 'any' | 'urgent' | 'none';

export interface Recovered {
  readonly doubtful: number;
  readonly waiting: number;
}

/** What is handled: one incoming, or one wake. */
export type EventRef =
  { readonly kind: 'incoming'; readonly seq: number } | { readonly kind: 'wake'; readonly name: string };

export interface Turn {
  readonly person: PersonId;
  /** 0 before the first commit. */
  readonly version: number;
  readonly state: FlowState | null;
  readonly memory: Facts;
  /** The language spoken so far; null before the first commit. */
  readonly language: Language | null;
  readonly deviceLanguage: string | null;
  /** Where an answer goes: where this came from, or for a wake, where the person last was. */
  readonly address: Address;
  readonly event: TurnEvent;
  /** When the incoming arrived; null for a wake. */
  readonly receivedAt: Instant | null;
  /** How often handling this was begun and not finished. */
  readonly tries: number;
  readonly desk: Desk;
  readonly lessons: LessonBoard;
}

export type TurnEvent =
  | { readonly kind: 'text'; readonly seq: number; readonly text: string }
  /** `chosen` is null when the key is unknown or was shown to someone else. */
  | { readonly kind: 'tap'; readonly seq: number; readonly chosen: SayingChoice | null }
  | { readonly kind: 'open'; readonly seq: number; readonly payload: string }
  | { readonly kind: 'wake'; readonly name: string; readonly at: Instant };

/** A handle that is a shopkeeper's, whether the house has met them or not. */
export interface Keeper {
  readonly channel: ChannelName;
  readonly from: string;
}

export interface Commit {
  readonly person: PersonId;
  readonly version: number;
  readonly event: EventRef;
  readonly outcome: 'handled' | 'failed';
  readonly state: FlowState | null;
  readonly language: Language;
  readonly address: Address;
  /** In this order. */
  readonly changes: readonly Change[];
  readonly now: Instant;
}

export type Change =
  | { readonly do: 'say'; readonly saying: Saying; readonly due: Instant; readonly priority: Priority }
  | { readonly do: 'withdraw'; readonly name: string }
  | { readonly do: 'wake'; readonly name: string; readonly at: Instant }
  | { readonly do: 'remember'; readonly name: string; readonly value: Json }
  | { readonly do: 'task'; readonly task: string; readonly values: Facts }
  /** A question for the shop, to be answered where the turn came from. */
  | { readonly do: 'ask'; readonly id: QuestionId; readonly text: string; readonly language: Language }
  /** Said to every shopkeeper. */
  | { readonly do: 'tell-keepers'; readonly saying: Saying }
  // What follows is a shopkeeper's right: from anyone else, or too late, the whole commit has moved.
  | { readonly do: 'answer'; readonly id: QuestionId; readonly text: string; readonly saying: Saying }
  /** Moved as well when the answer does not read `before` any more. */
  | {
      readonly do: 'correct-answer';
      readonly id: QuestionId;
      readonly before: string;
      readonly text: string;
      readonly saying: Saying;
    }
  /** `question` null: as it was asked. */
  | { readonly do: 'keep-answer'; readonly id: QuestionId; readonly question: string | null }
  | { readonly do: 'drop-answer'; readonly id: number }
  /** A one-time code was tried; the right one has moved when another try came between. */
  | { readonly do: 'use-code'; readonly right: boolean; readonly tries: number }
  | LessonChange
  | DeskChange
  /** The person is forgotten with this commit; the farewell is the last that is said, and is dropped once settled. */
  | { readonly do: 'forget'; readonly farewell: Saying };

/** The most urgent first. A saying that replaces an earlier one of its slot becomes an edit by itself. */
export const priorities = ['timer', 'reply', 'reminder', 'edit'] as const;
export type Priority = (typeof priorities)[number];

export interface Claim {
  readonly channels: readonly ChannelName[];
  readonly now: Instant;
  readonly limit: number;
  /** Chats that must wait (`chatKey`), however due. */
  readonly held: ReadonlySet<string>;
  /** How many reminders and edits these channels may be given now; any other, any number. */
  readonly bulkRoom: ReadonlyMap<ChannelName, number>;
}

/** A message owed, in no words yet. */
export interface Owed {
  readonly id: string;
  /** Null when the person is forgotten, and this the last word to them. */
  readonly person: PersonId | null;
  readonly address: Address;
  readonly language: Language;
  readonly saying: Saying;
  readonly priority: Priority;
  readonly due: Instant;
  /** When it was last taken for sending. */
  readonly claimedAt: Instant;
  /** Sendings that failed for certain. */
  readonly attempts: number;
  /** The channel's reference of the message this one replaces. */
  readonly replaces: string | null;
}

/** Something a person wrote, chose or opened, as it arrived. */
export interface Heard {
  readonly line: string;
  readonly receivedAt: Instant;
  readonly what: Incoming['what'];
}

export type Settlement =
  /** `wordless`: only a line that says so was sent in its place; the shop gets a task `undelivered`. */
  | { readonly kind: 'sent'; readonly ref: string; readonly wordless?: true }
  | { readonly kind: 'retry'; readonly at: Instant; readonly why: string }
  /** It may have arrived: tried once more at `at`; in doubt a second time, it is given up. */
  | { readonly kind: 'doubt'; readonly at: Instant; readonly why: string }
  /** Never sent; the shop gets a task `undelivered`. */
  | { readonly kind: 'give-up'; readonly why: string }
  /** Given up, and all else of this chat is held until the person comes back. */
  | { readonly kind: 'unreachable'; readonly why: string };

export function chatKey(address: Address): string {
  return `${address.channel} ${address.chat}`;
}

/** The key of a choice of a message: at most 40 bytes, and of no use to anyone but the person it was shown to. */
export function choiceKey(id: string, index: number): string {
  return `${id}.${index}`;
}

/** The store cannot be used. Its message is made to be read by the person who runs the shop. */
export class StoreMistake extends Error {
  override readonly name = 'StoreMistake';
}
