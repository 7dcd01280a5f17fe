/** What goes on in a flow that was left is reached by its own words, and only by those that answer nothing else. */
import { expect, it } from 'vitest';
import type { RawFlow } from '../../../src/core/flow/raw.ts';
import { step } from '../../../src/core/flow/step.ts';
import { around, bookOf, front, picnic, play, text, told } from './picnic.ts';

/** A kettle on the fire, while a picnic is talked about. */
const kettle: RawFlow = {
  flow: 'kettle',
  about: 'a kettle on the fire',
  starts: 'lit',
  'under-way': "burning and asked is not 'dish'",
  places: {
    lit: {
      do: [{ set: { burning: true } }, 'lit'],
      hears: [
        {
          when: "place is 'lit' and flow is 'kettle' and burning and heard.text is 'hotter'",
          say: 'fanned',
          go: 'stay',
        },
      ],
      choices: [
        { label: 'boils', set: { burning: null }, say: 'taken-off', go: 'off' },
        { label: 'done', say: 'stirred', go: 'stay' },
        { label: 'logs', with: { n: '=item' }, each: '[2, 3]', say: 'more-logs', go: 'stay' },
      ],
    },
    off: { do: ['off'], choices: [{ label: 'light', go: 'lit' }] },
  },
};

const withKettle = bookOf(
  {
    ...front,
    front: { ...front.front!, 'hands-on': "place is 'basket' and heard.text is not 'colder'" },
    hears: [...(front.hears ?? []), { when: "heard.kind is 'kettle'", go: 'kettle/' }],
  },
  kettle,
  {
    ...picnic,
    places: {
      ...picnic.places,
      where: { ...picnic.places['where'], hears: [{ when: 'heard.text', say: 'any-spot', go: 'stay' }] },
      dish: { asks: 'dish', do: ['ask-dish'], hears: [{ say: 'any-dish', go: 'stay' }] },
      basket: { ...picnic.places['basket'], choices: [{ label: 'cook', go: 'dish' }] },
    },
  },
);
const book = {
  ...withKettle,
  calls: {
    ...withKettle.calls,
    read: (given: Parameters<(typeof withKettle.calls)['read']>[0]) =>
      given['text'] === 'kettle' ? { gives: { kind: 'kettle' } } : withKettle.calls['read']!(given, around),
  },
  words: {
    ...withKettle.words,
    typed: (_: string, key: string) =>
      ({ done: ['fine'], boils: ['it sings'], 'said-at-any-step': ['done', 'fine'] })[key] ?? [],
    variables: (key: string) => (key === 'logs' ? ['n'] : withKettle.words.variables(key)),
  },
};

it.each([
  // Where a place takes whatever is written.
  ['boils', ['picnic people=3'], 'taken-off | off [light]'],
  ['It sings!', ['picnic people=3'], 'taken-off | off [light]'],
  ['fine', ['picnic people=3'], 'any-spot [spot name="lake"] [spot name="hill"]'],
  ['logs 3', ['picnic people=3'], 'any-spot [spot name="lake"] [spot name="hill"]'],
  // Where it would not be understood.
  ['fine', ['picnic people=3 spot=lake'], 'stirred [boils] [done] [logs n=2] [logs n=3]'],
  ['logs 3', ['picnic people=3 spot=lake'], 'more-logs [boils] [done] [logs n=2] [logs n=3]'],
  ['gibberish', ['picnic people=3 spot=lake'], 'unclear | packed'],
  // What a place asks for in its own words is not listened through.
  ['boils', ['picnic people=3 spot=lake', 'cook'], 'any-dish'],
])('%s, after %j', (words, before, answer) => {
  const { state } = play(['kettle', ...before], null, book);
  expect(told(step(book, state, text(words), around))).toContain(answer);
});

it('what is no longer under way is not reached', () => {
  const { state } = play(['kettle', 'boils', 'picnic people=3 spot=lake'], null, book);
  expect(told(step(book, state, text('light'), around))).toMatch(/^unclear/m);
});

it.each([
  ['hotter', ['picnic people=3 spot=lake'], 'fanned [boils] [done] [logs n=2] [logs n=3]'],
  // What nothing there answers stays where it is, as does what is not to be handed on.
  ['colder', ['picnic people=3 spot=lake'], 'unclear | packed'],
  ['greener', ['picnic people=3 spot=lake'], 'unclear | packed'],
  ['hotter', ['picnic people=3'], 'any-spot'],
])('handed on to what is under way: %s, after %j', (words, before, answer) => {
  const { state } = play(['kettle', ...before], null, book);
  expect(told(step(book, state, text(words), around))).toContain(answer);
});
