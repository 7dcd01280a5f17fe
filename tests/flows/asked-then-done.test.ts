/** What a turn is said to come to is what comes of it: the steps stand in flows/brew.yaml and in turn-weighed.ts. */
import { expect, it } from 'vitest';
import { step, type Stepped } from '../../src/core/flow/step.ts';
import { book } from './holds.ts';

const around = { nowMs: Date.UTC(2026, 0, 5, 18), language: 'en', memory: {} } as const;
const say = (state: Stepped['state'] | null, text: string): Stepped =>
  step(book, state, { kind: 'text', text, language: 'en' }, around);

/** The times told by a phrase of this key. */
function timesTold({ effects }: Stepped, key: string): unknown {
  const phrases = effects.flatMap((effect) =>
    effect.do === 'say' && !effect.saying.later ? effect.saying.phrases : [],
  );
  return phrases.find((phrase) => phrase.key === key)?.values?.['times'];
}

it.each([
  ['should it be hotter?', 'hotter', 'hotter'],
  ['should it be cooler?', 'cooler', 'cooler'],
  ['should I use more leaf?', 'more leaf', 'more-leaf'],
  ['should I use less leaf?', 'less leaf', 'less-leaf'],
  ['would longer be better?', 'longer', 'longer'],
  ['should it be stronger?', 'stronger', 'stronger'],
  ['should it be lighter?', 'lighter', 'lighter'],
])('%s tells the times of %s', (question, wish, turn) => {
  const planned = say(null, 'baozhong in a 110 ml gaiwan');
  const asked = say(planned.state, question);
  const done = say(asked.state, wish);
  const told = timesTold(asked, `brew-weighed-${turn}`);
  expect(told).toBeDefined();
  expect(told).toEqual((done.state.facts['plan'] as { times: unknown }).times);
});
