/** What a flow tells the shop, as changes: a question, an answer, a standing answer, the wish to be forgotten. Pure. */
import type { Effect, Facts, Saying } from '../core/flow/flow.ts';
import type { Language } from '../core/units.ts';
import type { Change, Turn } from '../store/contract.ts';
import type { Question } from '../store/desk-contract.ts';
import { deskWork } from './desk-work.ts';
import { quote } from './house-facts.ts';
import { lessonWork } from './lesson-work.ts';
import { numberOf, optionalText, textOf } from './task-values.ts';

type Task = Extract<Effect, { readonly do: 'task' }>;

/** Longer questions are kept by their beginning; no channel lets more through. */
const longestQuestion = 5_000;

/** The name a flow gives to the wish to be forgotten. */
export const forgetting = 'forget-me';

/** Throws when a flow asks for what its own checks should have ruled out. */
export function shopWork({ task, values }: Task, turn: Turn, language: Language): readonly Change[] {
  switch (task) {
    case 'question':
      return asked(textOf(values, 'question'), turn, language);
    case 'answer':
      return answered(values, turn);
    case 'correct-answer':
      return corrected(values, turn);
    case 'keep-answer':
      return [{ do: 'keep-answer', id: numberOf(values, 'id'), question: optionalText(values, 'question') }];
    case 'drop-answer':
      return [{ do: 'drop-answer', id: numberOf(values, 'id') }];
    default:
      return (
        lessonWork(task, values, turn) ?? deskWork(task, values, { turn, language }) ?? [{ do: 'task', task, values }]
      );
  }
}

/** A code that was tried, whatever the flow makes of it. */
export function codeUse({ desk: { code } }: Turn): readonly Change[] {
  return code === null || code.tries === null ? [] : [{ do: 'use-code', right: code.right, tries: code.tries }];
}

/** Everything said in this turn, as the last word. */
export function farewell(effects: readonly Effect[]): Saying {
  const said = effects.flatMap((effect) => (effect.do === 'say' && !effect.saying.later ? effect.saying.phrases : []));
  return { phrases: said, choices: [] };
}

function asked(text: string, { event }: Turn, language: Language): readonly Change[] {
  if (event.kind === 'wake') throw new Error('a question for the shop comes from a person, not from a timer');
  const id = event.seq;
  return [
    { do: 'ask', id, text: text.slice(0, longestQuestion), language },
    { do: 'tell-keepers', saying: newQuestion(id) },
  ];
}

/** The choice is one of the front's, so that it counts whatever the shopkeeper is in the middle of. */
function newQuestion(id: Question['id']): Saying {
  const choice = {
    id: 'choice-shop-questions',
    label: { key: 'choice-shop-questions', values: {} },
    gives: {},
    from: { flow: 'front', place: 'idle' },
  };
  return { phrases: [{ key: 'shop-told-question', values: { question: quote(id, 'question') } }], choices: [choice] };
}

function answered(values: Facts, { desk }: Turn): readonly Change[] {
  const question = desk.waiting.find(({ id }) => id === values['id']);
  if (!question) throw new Error('an answer to a question that does not wait');
  const same = desk.answered.find(({ id }) => id === values['sameAs']);
  const text = same?.answer ?? textOf(values, 'text');
  return [{ do: 'answer', id: question.id, text, saying: toAsker('shop-told-answer', question, text) }];
}

/** `before` is the answer as the shopkeeper knew it: another may have put it right meanwhile. */
function corrected(values: Facts, { desk }: Turn): readonly Change[] {
  const question = desk.answered.find(({ id }) => id === values['id']);
  if (!question) throw new Error('a correction of an answer that is not kept');
  const text = textOf(values, 'text');
  const saying = toAsker('shop-told-correction', question, text);
  return [{ do: 'correct-answer', id: question.id, before: question.answer, text, saying }];
}

/** The subject tells the shop what it was about, should it not arrive. */
function toAsker(key: string, { id }: Question, text: string): Saying {
  const question = quote(id, 'question');
  const subject = { key: `${key}-about`, values: { question } };
  return { phrases: [{ key, values: { question, text } }], choices: [], subject };
}
