/** The six questions as one would write them by hand for this dialogue alone: a switch. */
import { facts, type Fact } from './questions.ts';

export interface HandState {
  readonly place: Fact | 'hello' | 'told';
  readonly answers: { readonly [fact in Fact]?: string };
}

interface HandStep {
  readonly state: HandState;
  readonly say: { readonly key: string; readonly values: HandState['answers'] };
}

export const atFirst: HandState = { place: 'hello', answers: {} };

export function handStep({ place, answers }: HandState, text: string): HandStep {
  switch (place) {
    case 'hello':
    case 'told':
      return text === 'hello' ? ask('name', {}) : { state: atFirst, say: { key: 'unclear', values: {} } };
    case 'name':
    case 'tea':
    case 'vessel':
    case 'size':
    case 'kettle':
    case 'taste': {
      if (text === 'back') return ask(facts[Math.max(0, facts.indexOf(place) - 1)] ?? 'name', answers);
      const told = { ...answers, [place]: text };
      const next = facts.find((fact) => told[fact] === undefined);
      return next
        ? ask(next, told)
        : { state: { place: 'told', answers: told }, say: { key: 'closing', values: told } };
    }
    default:
      return place satisfies never;
  }
}

const ask = (place: Fact, answers: HandState['answers']): HandStep => ({
  state: { place, answers },
  say: { key: `ask-${place}`, values: {} },
});
