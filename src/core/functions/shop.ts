/** What the shop's side of a conversation works out: which question is in hand, what was answered before, what is kept for such a question. */
import type { Calls, Outcome } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import { makeQuestionFinder, type QuestionFinder } from '../reading/answers/like-questions.ts';
import { listOf, textOf } from './values.ts';

export const shopCallNames = [
  'waitingQuestions',
  'waitingQuestion',
  'answeredQuestion',
  'sentAnswers',
  'sentAnswer',
  'keptAnswers',
  'keptAnswer',
] as const;

export const shopCalls: { readonly [name in (typeof shopCallNames)[number]]: Calls[string] } = {
  waitingQuestions: (_, { house = {} }) => ({ gives: listed(listOf(house['waiting']), 'shop-told-waiting') }),
  keptAnswers: (_, { house = {} }) => ({ gives: listed(listOf(house['kept']).toReversed(), 'shop-told-kept') }),
  waitingQuestion: ({ id }, { house = {} }) => waitingQuestion(id ?? null, house),
  answeredQuestion: ({ id }, { house = {} }) => {
    const found = listOf(house['answered']).find((question) => question['id'] === id);
    return found ? { gives: shown(found) } : gone('question-gone');
  },
  sentAnswers: (_, { house = {} }) => ({ gives: listed(latestSent(house), 'shop-told-kept') }),
  sentAnswer: ({ id, text }, { house = {} }) => {
    const found = listOf(house['answered']).find((question) => question['id'] === id);
    if (!found) return gone('question-gone');
    return found['answer'] === text ? gone('answer-same') : { gives: sentAnswer(found) };
  },
  keptAnswer: ({ id }, { house = {} }) => {
    const found = listOf(house['standing']).find((kept) => kept['id'] === id);
    return found ? { gives: { id: found['id'] ?? null } } : gone('kept-answer-gone');
  },
};

/** So many fit a screen. */
const mostListed = 8;

/** Numbers and quotes only, as everything a conversation keeps. */
function listed(items: readonly Facts[], key: string): Facts {
  const first = items.slice(0, mostListed).map(({ id, question, reply, language }, i) => ({
    id: id ?? null,
    n: i + 1,
    told: { key, values: { n: i + 1, question: question ?? null, reply: reply ?? null, language: language ?? null } },
  }));
  return {
    items: first.map(({ id, n }) => ({ id, n })),
    first: first[0]?.id ?? null,
    told: first.map(({ told }) => told),
  };
}

/** So many earlier answers to the same person are shown again. */
const mostEarlier = 2;

function waitingQuestion(id: Json, house: Facts): Outcome {
  const question = listOf(house['waiting']).find((one) => one['id'] === id);
  if (!question) return gone('question-answered');
  const answered = listOf(house['answered']);
  const earlier = answered.filter(({ person }) => person === question['person']).slice(0, mostEarlier);
  const same = likeQuestion(house['answered'], textOf(question['text']));
  return {
    gives: {
      ...shown(question),
      person: question['person'] ?? null,
      language: question['language'] ?? null,
      isReached: question['isReached'] ?? true,
      earlier: earlier.toReversed().map(({ question: asked, reply }) => ({
        key: 'shop-told-earlier',
        values: { question: asked ?? null, answer: reply ?? null },
      })),
      sameAs: same?.['id'] ?? null,
      same: same
        ? { key: 'shop-told-same', values: { question: same['question'] ?? null, answer: same['reply'] ?? null } }
        : null,
    },
  };
}

/** Only the number and the quote: what a conversation keeps must not hold another person's words. */
const shown = ({ id, question }: Facts): Facts => ({ id: id ?? null, question: question ?? null });

/** A shopkeeper's own, the latest first; where they gave none, those of the others. */
function latestSent(house: Facts): readonly Facts[] {
  const sent = listOf(house['answered']).toSorted((a, b) => Number(b['answeredAt']) - Number(a['answeredAt']));
  const own = sent.filter((one) => one['isOwn'] === true);
  return own.length > 0 ? own : sent;
}

/** Numbers and quotes only; `seen` tells one wording of it from the next. */
const sentAnswer = ({ reply = null, answer = null, isReached = true, isKept = false, ...one }: Facts): Facts => ({
  ...shown(one),
  reply,
  seen: checksum(textOf(answer)),
  isReached,
  isKept,
});

const checksum = (text: string): number =>
  Array.from(text).reduce((sum, char) => (Math.imul(sum, 31) + (char.codePointAt(0) ?? 0)) | 0, text.length);

const gone = (wrong: string): Outcome => ({ wrong, field: 'id', values: {} });

/** About these the shop's own answer may come; on safety only what is checked with sources is said, and a brew is worked out. */
const answerable: ReadonlySet<Json> = new Set(['shop', 'care', 'lesson', 'offtopic']);

/** What the shop keeps for such a question, if a kept one is clearly the same. */
export function keptFor(standing: Json | undefined, text: string, kind: Json): Facts | null {
  if (!answerable.has(kind)) return null;
  const found = finderOf(standing, 'question')(text);
  const kept = found === null ? undefined : listOf(standing)[found];
  return kept ? { id: kept['id'] ?? null, answer: kept['answer'] ?? null } : null;
}

function likeQuestion(answered: Json | undefined, text: string): Facts | null {
  const found = finderOf(answered, 'text')(text);
  return found === null ? null : (listOf(answered)[found] ?? null);
}

/** Kept as long as the list it was made from. */
const finders = new WeakMap<object, QuestionFinder>();

function finderOf(list: Json | undefined, field: string): QuestionFinder {
  const items = listOf(list);
  const known = finders.get(items);
  if (known) return known;
  const finder = makeQuestionFinder(items.map((item) => textOf(item[field])));
  finders.set(items, finder);
  return finder;
}
