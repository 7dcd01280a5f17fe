/** What a flow may know of the house in a turn, as `house.`; words of others are handed on as quotes, never as text to keep. */
import type { Facts, Json } from '../core/flow/flow.ts';
import { everythingKept, type Question, type Quote, type Turn } from '../store/contract.ts';

export function houseFacts({ desk, address }: Pick<Turn, 'desk' | 'address'>): Facts {
  const { keeper, staffed, asked, waitingCount } = desk;
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
    })),
    kept: desk.keeper ? desk.standing.map(({ id }) => keptFacts(id)) : [],
    // The list itself, not a copy: what is worked out from it is kept as long as it stays the same.
    standing: desk.standing as unknown as Json,
    everything: everythingKept,
  };
}

const askedFacts = ({ id, person, language, text }: Question): Facts => ({
  id,
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
