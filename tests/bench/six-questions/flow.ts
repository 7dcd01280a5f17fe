/** The six questions as flows of the house. */
import type { FlowBook } from '../../../src/core/flow/book.ts';
import { parseFlow } from '../../../src/core/flow/parse.ts';
import type { RawFlow } from '../../../src/core/flow/raw.ts';
import type { Say } from '../../../src/delivery/render.ts';
import { closing, facts, questions, type Fact } from './questions.ts';

const front: RawFlow = {
  flow: 'front',
  about: 'the way in',
  starts: 'hello',
  news: 'hello',
  front: {
    reads: 'read',
    opens: 'read',
    always: [{ when: "heard.text is 'back'", go: 'back' }],
    otherwise: [{ say: 'unclear', go: 'again' }],
    sentences: {
      'stale-tap': 'unclear',
      'already-so': 'unclear',
      'nothing-before': 'unclear',
      'flow-changed': 'unclear',
      'one-at-a-time': 'unclear',
    },
  },
  hears: [{ when: "heard.text is 'hello'", go: 'six/' }],
  places: { hello: {} },
};

const six: RawFlow = {
  flow: 'six',
  about: 'six questions',
  starts: 'told',
  listens: { when: 'answered', facts: Object.fromEntries(facts.map((fact) => [fact, []])) },
  places: {
    ...Object.fromEntries(facts.map((fact) => [`ask-${fact}`, { asks: fact, do: [`ask-${fact}`] }])),
    told: { needs: Object.fromEntries(facts.map((fact) => [fact, `ask-${fact}`])), do: ['closing'] },
  },
};

const sentences = new Map<string, string>([
  ['closing', `${closing} ${facts.map((fact) => `{${fact}}`).join(', ')}`],
  ...facts.map((fact: Fact) => [`ask-${fact}`, questions[fact]] as const),
]);

function parsed(raw: RawFlow): FlowBook['flows'][string] {
  const { flow, problems } = parseFlow(raw, 'as-measured');
  if (problems.length > 0) throw new Error(JSON.stringify(problems));
  return flow;
}

const asText = (value: unknown): string => (typeof value === 'string' ? value : '');

export const say: Say = (_, { key, values }) =>
  (sentences.get(key) ?? key).replace(/\{(\w+)\}/g, (__, name: string) => asText(values[name]));

/** Whatever is written is the answer to what was asked. */
export const book: FlowBook = {
  flows: { front: parsed(front), six: parsed(six) },
  front: 'front',
  calls: {
    read: ({ text, asked }) => ({ gives: typeof asked === 'string' ? { [asked]: text ?? null } : {} }),
  },
  words: {
    languages: ['en', 'zh-Hant', 'zh-Hans'],
    say: (_, phrase) => say('en', phrase),
    typed: () => [],
    variables: (key) => (key === 'closing' ? facts : []),
  },
};
