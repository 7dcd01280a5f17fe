/** What stands between customers and the shop: questions and their answers, and the shopkeeper's own side of the house. */
import type { Instant, Json, Language } from '../core/units.ts';
import type { PersonId } from './contract.ts';

/** A question's number: that of the incoming it came with. */
export type QuestionId = number;

/** What stands between this person and the shop as the turn begins. */
export interface Desk {
  readonly keeper: boolean;
  /** Set when the text is shaped like a one-time code; `tries` is null when no code was ever given out. */
  readonly code: { readonly right: boolean; readonly tries: number | null } | null;
  /** Whether any shopkeeper can be told. */
  readonly staffed: boolean;
  /** How many questions of this person wait. */
  readonly asked: number;
  /** For a shopkeeper, oldest first, the first 50. */
  readonly waiting: readonly Question[];
  readonly waitingCount: number;
  /** For a shopkeeper, latest first, the last 200. */
  readonly answered: readonly AnsweredQuestion[];
  /** The same list until it changes. */
  readonly standing: readonly KeptAnswer[];
  /** For a shopkeeper: what was asked for lately, and what could not be brought and was not seen yet. */
  readonly tallies: readonly Tally[];
  readonly undelivered: readonly Undelivered[];
}

export interface Question {
  readonly id: QuestionId;
  readonly person: PersonId;
  readonly language: Language;
  readonly text: string;
  readonly askedAt: Instant;
  /** 0 when whoever asked has turned the house away: what is said waits until they come back. */
  readonly reachable: 0 | 1;
}

export interface AnsweredQuestion extends Question {
  readonly answer: string;
  readonly answeredAt: Instant;
  /** Null once that shopkeeper is forgotten. */
  readonly answeredBy: PersonId | null;
}

/** What the shop keeps as a standing answer. */
export interface KeptAnswer {
  readonly id: number;
  readonly question: string;
  readonly answer: string;
  /** The question it was kept from, if that is known; it may be gone. */
  readonly ofQuestion: QuestionId | null;
}

/** What is counted, by tea and day; never of whom. */
export const countedThings = ['tea-asked', 'too-bitter'] as const;
export type Counted = (typeof countedThings)[number];

/** How often, in the last 30 days. */
export interface Tally {
  readonly what: Counted;
  readonly item: string;
  readonly count: number;
}

/** A message that will never arrive. */
export interface Undelivered {
  readonly id: number;
  readonly person: PersonId;
  readonly why: string;
  /** What it was about, not yet in words; null where that is not known. */
  readonly about: Json;
  readonly at: Instant;
}

export type DeskChange =
  /** Anyone's: one more of it today. */
  | { readonly do: 'count'; readonly what: Counted; readonly item: string }
  // What follows is a shopkeeper's right.
  /** Someone without a chat, told of it by mail; without an address, who cannot wait, by the shop itself. */
  | {
      readonly do: 'enrol-guest';
      readonly booking: string;
      readonly lesson: string;
      readonly seats: number;
      readonly to: 'seated' | 'waiting';
      readonly name: string;
      readonly mail: string | null;
      readonly language: Language;
      readonly at: Instant;
    }
  /** What someone has goes back, and they are told where they can be. */
  | { readonly do: 'release-guest'; readonly booking: string; readonly at: Instant }
  /** … and is theirs again, if nobody has it yet. */
  | {
      readonly do: 'put-back-guest';
      readonly booking: string;
      /** The id of the booking made in its place. */
      readonly id: string;
      readonly to: 'seated' | 'waiting';
      readonly at: Instant;
    }
  /** They get more seats or fewer than they had as it was shown, and are told where they can be. */
  | {
      readonly do: 'reseat-guest';
      readonly booking: string;
      readonly seats: number;
      readonly was: number;
      readonly at: Instant;
    }
  /** They get as many seats in another lesson for those they have: both at once, or neither. */
  | {
      readonly do: 'transfer-guest';
      readonly booking: string;
      readonly lesson: string;
      /** The id of the booking there. */
      readonly id: string;
      readonly at: Instant;
    }
  /** Said to whoever booked, and nobody else. */
  | { readonly do: 'write-to-guest'; readonly booking: string; readonly text: string }
  /** Opens a one-time code for a colleague, in the place of any earlier one. */
  | { readonly do: 'offer-code'; readonly code: string; readonly until: Instant }
  /** These are seen, and need not be told again. */
  | { readonly do: 'seen-undelivered'; readonly upTo: number };

/** What the house tells shopkeepers by itself. */
export interface Mornings {
  /**
   * What a day of the shop's clock brings, such as "2026-12-05", once; false when it was told already, or there is
   * nothing to tell. Without letters, who left only an address is not reached.
   */
  tellMorning(day: string, letters: boolean, now: Instant): Promise<boolean>;
}
