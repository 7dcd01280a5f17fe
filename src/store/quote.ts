/** Values of a sentence that stand for what is kept elsewhere: someone's words, or all that is kept of them. */
import type { Json } from '../core/flow/flow.ts';
import type { PersonId } from './contract.ts';

/**
 * A value of a sentence that stands for someone's words. They are kept once, with the question; whoever is shown them
 * is shown them from there, and `gone` once they are kept no more.
 */
export interface Quote {
  /** The number of the question, of the kept answer, or of the person. */
  readonly quoteOf: number;
  readonly part: 'question' | 'answer' | 'kept-question' | 'kept-answer' | 'name';
  readonly gone: Json;
}

/** A person's name, as a value of a sentence: it is someone's words, and is kept once, with the person. */
export function nameQuote(person: PersonId): Json {
  const name: Quote = { quoteOf: person, part: 'name', gone: { key: 'lesson-told-nameless', values: {} } };
  return { ...name };
}

/** A value of a sentence that stands for all that is kept of the person it is said to. */
export const everythingKept = { exportOf: 'person' } as const;
