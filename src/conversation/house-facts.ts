/** What a flow may know of the house in a turn, as `house.`; words of others are handed on as quotes, never as text to keep. */
import type { Facts, Json } from '../core/flow/flow.ts';
import type { HouseName } from '../core/functions/names.ts';
import type { Turn } from '../store/contract.ts';
import type { Question } from '../store/desk-contract.ts';
import { namedDoor } from '../store/lesson-contract.ts';
import { everythingKept, nameQuote, type Quote } from '../store/quote.ts';

/** What the house can do, whoever asks. */
export interface Means {
  /** Whether letters can go out. */
  readonly mail: boolean;
  /** A code that a shopkeeper may give to a colleague, another one each time. */
  readonly freshCode: () => string;
}

type Known = Pick<Turn, 'person' | 'desk' | 'address' | 'lessons' | 'event'>;

export function houseFacts(
  { person, desk, address, lessons, event }: Known,
  { mail, freshCode }: Means,
): { readonly [name in HouseName]: Json } {
  const { keeper, staffed, asked, waitingCount } = desk;
  const keptFrom = new Set(desk.answered.length > 0 ? desk.standing.map(({ ofQuestion }) => ofQuestion) : []);
  return {
    keeper,
    staffed,
    asked,
    waitingCount,
    channel: address.channel,
    code: desk.code && (desk.code.right ? 'right' : 'wrong'),
    waiting: desk.waiting.map(askedFacts),
    answered: desk.answered.map((question) => ({
      ...askedFacts(question),
      answer: question.answer,
      reply: quote(question.id, 'answer'),
      answeredAt: question.answeredAt,
      isOwn: question.answeredBy === person,
      isKept: keptFrom.has(question.id),
    })),
    kept: desk.keeper ? desk.standing.map(({ id }) => keptFacts(id)) : [],
    // The list itself, not a copy: what is worked out from it is kept as long as it stays the same.
    standing: desk.standing as unknown as Json,
    everything: everythingKept,
    lessons: lessons.upcoming as unknown as Json,
    gone: lessons.gone as unknown as Json,
    bookings: lessons.own as unknown as Json,
    doors: lessons.doors.map((door) => namedDoor(door, mail)) as unknown as Json,
    past: lessons.past.map((door) => namedDoor(door, mail)) as unknown as Json,
    names: lessons.names.map((one) => ({ ...one })),
    series: lessons.series as unknown as Json,
    tzVersion: lessons.tzVersion,
    mail,
    freshCode: keeper ? freshCode() : null,
    tallies: desk.tallies.map((tally) => ({ ...tally })),
    undelivered: desk.undelivered.map(({ person: whose, ...one }) => ({ ...one, name: nameQuote(whose) })),
    // A booking is known by the number of the message it was made with.
    event: event.kind === 'wake' ? null : String(event.seq),
  };
}

const askedFacts = ({ id, person, language, text, reachable }: Question): Facts => ({
  id,
  isReached: reachable === 1,
  person,
  language,
  text,
  question: quote(id, 'question'),
});

const keptFacts = (id: number): Facts => ({
  id,
  question: quote(id, 'kept-question'),
  reply: quote(id, 'kept-answer'),
});

export function quote(id: Question['id'], part: Quote['part']): Json {
  const gone: Quote = { quoteOf: id, part, gone: { key: 'shop-told-gone', values: {} } };
  return { ...gone };
}
