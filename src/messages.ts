/** The two shapes that cross the edge: what comes in from a channel, and what goes out through one. */
import type { Instant, Json, Language } from './core/units.ts';

export const channelNames = ['terminal', 'web', 'telegram', 'mail'] as const;
export type ChannelName = (typeof channelNames)[number];

/** One thing a person did, recorded once: `updateId` is unique within its channel. */
export interface Incoming {
  readonly channel: ChannelName;
  readonly updateId: string;
  /** Who, as the channel knows them. */
  readonly from: string;
  /** Where an answer goes, as the channel knows it. */
  readonly chat: string;
  readonly receivedAt: Instant;
  /** The language the person's device speaks, a BCP 47 tag as the device wrote it. */
  readonly deviceLanguage?: string;
  readonly what: What;
}

export type What =
  | { readonly kind: 'text'; readonly text: string }
  /** A tap on a choice; the key is the one its message carried (`Choice.key`). */
  | { readonly kind: 'tap'; readonly key: string }
  /** A link or label was opened: "tea-tieguanyin", "lesson-12"; empty for a bare start. */
  | { readonly kind: 'open'; readonly payload: string }
  /** The person blocked us, or came back. */
  | { readonly kind: 'reach'; readonly reachable: boolean };

/** What a channel is given to show: words already in the person's language. */
export interface Outgoing {
  /** Stable id of the row behind it; a second delivery of the same row carries the same id. */
  readonly id: string;
  readonly channel: ChannelName;
  readonly chat: string;
  readonly language: Language;
  /** What it is about in a few words, for a channel that writes that above a message. */
  readonly subject?: string;
  readonly paragraphs: readonly string[];
  readonly choices: readonly Choice[];
  readonly ladder?: Ladder;
  readonly countdown?: Countdown;
  readonly file?: Enclosure;
  /** Where the paragraphs say an instant; absent where they don't. */
  readonly times?: readonly SaidTime[];
  /** The channel's own reference of an earlier message that this one replaces. */
  readonly replaces?: string;
  /** The person is forgotten with it: what was said before is kept nowhere any more. */
  readonly last?: true;
}

export interface Choice {
  /** Opaque, at most 40 bytes of [A-Za-z0-9._-]; resolved in the store, where its owner is checked. */
  readonly key: string;
  readonly label: string;
}

/** The infusion ladder: one rung an infusion, its length the time, its ink the strength. */
export interface Ladder {
  readonly title: string;
  readonly rungs: readonly LadderRung[];
}

export interface LadderRung {
  readonly n: number;
  readonly seconds: number;
  /** The time as a person reads it, in their language. */
  readonly label: string;
  /** 0…1 of the longest rung. */
  readonly length: number;
  /** 0…1 of the strongest cup. */
  readonly ink: number;
}

/** A hold under way: the device counts by itself from these instants. */
export interface Countdown {
  readonly startedAt: Instant;
  readonly endsAt: Instant;
  readonly label: string;
}

/** A small file that goes with the words, such as a day for the calendar. */
export interface Enclosure {
  /** At most 80 of [A-Za-z0-9._-], with its ending. */
  readonly name: string;
  /** As MIME writes it: "text/calendar; method=PUBLISH". The text is UTF-8. */
  readonly mediaType: string;
  readonly text: string;
  /** What it is, as a person reads it. */
  readonly label: string;
}

/** A stretch of a paragraph that says an instant: a device that can shows it in its own zone, any other as it is written. */
export interface SaidTime {
  /** Which paragraph, from 0; where in it and how long, in UTF-16 units. */
  readonly paragraph: number;
  readonly offset: number;
  readonly length: number;
  readonly at: Instant;
  readonly shows: 'day' | 'time' | 'day-and-time';
}

/** What became of one sending. `ref` is the channel's own reference, needed to edit it later. */
export type Sent =
  | { readonly outcome: 'sent'; readonly ref: string }
  /** Nothing reached the other side; try again, at the earliest at `notBefore`. */
  | { readonly outcome: 'retry'; readonly notBefore?: Instant; readonly why: string }
  /** It may have arrived: resent at most once. */
  | { readonly outcome: 'unknown'; readonly why: string }
  /** This person cannot be reached until they come back. */
  | { readonly outcome: 'unreachable'; readonly why: string }
  /** This message can never be sent. */
  | { readonly outcome: 'refused'; readonly why: string };

/** The contract of every channel. */
export interface Channel {
  readonly name: ChannelName;
  /** Starts taking in. `record` resolves once the incoming is durable; a repeat changes nothing. */
  start(record: (incoming: Incoming) => Promise<'new' | 'seen'>): Promise<void>;
  /**
   * Awaits `begins` before anything can reach the other side, unless a repeat does no harm there: a sending that had not
   * begun when the process died is simply done anew.
   */
  send(message: Outgoing, begins?: () => Promise<void>): Promise<Sent>;
  /** Stops taking in, lets what is under way finish. */
  stop(): Promise<void>;
}

/**
 * A sentence before it is in words: a key of flows/words and the values it needs. A value may be a phrase itself; one with
 * a value `instantMs` says that instant, wholly unless a value `shows` is "day" or "time", and becomes a `SaidTime`.
 */
export interface Phrase {
  readonly key: string;
  readonly values: { readonly [name: string]: Json };
}
