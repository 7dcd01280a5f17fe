/** What the house keeps for the shopkeeper's own side: whom they write down, what is asked for, what could not be brought. */
import type { Instant, Language } from '../core/units.ts';
import type { PersonId } from './contract.ts';

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
  readonly at: Instant;
}

export type DeskChange =
  /** Anyone's: one more of it today. */
  | { readonly do: 'count'; readonly what: Counted; readonly item: string }
  // What follows is a shopkeeper's right.
  /** Someone without a chat, told of it by mail. */
  | {
      readonly do: 'enrol-guest';
      readonly booking: string;
      readonly lesson: string;
      readonly seats: number;
      readonly to: 'seated' | 'waiting';
      readonly name: string;
      readonly mail: string;
      readonly language: Language;
      readonly at: Instant;
    }
  /** Opens a one-time code for a colleague, in the place of any earlier one. */
  | { readonly do: 'offer-code'; readonly code: string; readonly until: Instant }
  /** These are seen, and need not be told again. */
  | { readonly do: 'seen-undelivered'; readonly upTo: number };

/** What the house tells shopkeepers by itself. */
export interface Mornings {
  /** What a day of the shop's clock brings, such as "2026-12-05", once; false when it was told already, or there is nothing to tell. */
  tellMorning(day: string, now: Instant): Promise<boolean>;
}
