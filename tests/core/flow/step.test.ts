import { describe, expect, it } from 'vitest';
import { step } from '../../../src/core/flow/step.ts';
import { around, book, bookOf, chosen, front, picnic, play, text, told, weather } from './picnic.ts';

const plan = 'packed people=3 spot="lake" basket-loaves=6 [change-spot] [done]';
const full = 'picnic people=3 spot=lake';

describe('asking only for what is missing', () => {
  it.each([
    [['picnic'], 'ask-people [two]'],
    [['picnic people=3'], 'ask-spot [spot name="lake"] [spot name="hill"]'],
    [['picnic spot=lake'], 'ask-people [two]'],
    [['picnic', '3', 'picnic spot=lake'], plan],
    [[full], plan],
    [['picnic', '3', 'spot lake'], plan],
    [['picnic people=3', '1'], plan],
    [['hello', 'plan-one', 'two', '2'], 'packed people=2 spot="hill" basket-loaves=4 [change-spot] [done]'],
    [['picnic people=7 spot=lake'], 'packed people=7 spot="lake" basket-loaves=14 | heavy [change-spot] [done]'],
  ])('%j is answered', (messages, answer) => {
    expect(told(play(messages)).split('\n').at(-1)).toBe(answer);
  });
});

describe('going on', () => {
  it.each([
    [
      'a correction is worked out anew',
      [full, 'picnic people=4'],
      'packed people=4 spot="lake" basket-loaves=8 [change-spot] [done]',
    ],
    ['a mistake of the call leads where the file says', ['picnic people=30 spot=lake'], 'mistake-too-many most=20'],
    ['and is mended there', ['picnic people=30 spot=lake', '3'], plan],
    ['a complaint repeats the question', ['picnic', '0'], 'alone | ask-people [two]'],
    ['what is not understood repeats the question', ['picnic', 'blah'], 'unclear | ask-people [two]'],
    ['what is not understood, with nothing open', ['blah'], 'unclear | hello [plan-one]'],
    [
      'another subject, then the open question again',
      ['picnic people=3', 'weather'],
      'weather spot=null | ask-spot [spot name="lake"] [spot name="hill"]',
    ],
    [
      'another subject takes along what it may, and the answer lies where it was',
      [full, 'weather'],
      'weather spot="lake" [change-spot] [done]',
    ],
    ['back repeats the question before', ['picnic', '3', 'back'], 'ask-people [two]'],
    ['back twice', ['hello', 'picnic', '3', 'back', 'back'], 'hello [plan-one]'],
    ['back at the beginning', ['back'], 'nothing-before | hello [plan-one]'],
    ['start over', [full, 'start-over'], 'hello [plan-one]'],
    ['nothing is kept after starting over', [full, 'start-over', 'picnic'], 'ask-people [two]'],
    [
      'a label further up, typed',
      ['picnic people=3', 'spot lake', 'spot hill'],
      'packed people=3 spot="hill" basket-loaves=6 [change-spot] [done]',
    ],
    ['other words of a choice', [full, 'All eaten.'], 'eaten [again]'],
  ])('%s', (_, messages, answer) => {
    expect(told(play(messages)).split('\n').at(-1)).toBe(answer);
  });
});

describe('taps', () => {
  it.each([
    [
      'an answer',
      ['picnic'],
      chosen('how-many', 'two', { people: 2 }),
      'ask-spot [spot name="lake"] [spot name="hill"]',
    ],
    [
      'an older answer changed',
      [full],
      chosen('where', 'spot:1', { spot: 'hill' }),
      'packed people=3 spot="hill" basket-loaves=6 [change-spot] [done]',
    ],
    ['the same tap twice', [full], chosen('where', 'spot:0', { spot: 'lake' }), 'already-so [change-spot] [done]'],
    ['a choice no longer in the file', [full], chosen('where', 'gone'), 'stale-tap [change-spot] [done]'],
    ['a place no longer in the file', [full], chosen('gone', 'spot:0'), 'stale-tap [change-spot] [done]'],
    [
      'facts the choice never gives',
      [full],
      chosen('where', 'spot:0', { people: 99 }),
      'stale-tap [change-spot] [done]',
    ],
    ['of a conversation that is over', ['hello'], chosen('where', 'spot:0', { spot: 'lake' }), 'stale-tap [plan-one]'],
    ['once only, from where it was said', [full, 'done'], chosen('eaten', 'again'), 'ask-people [two]'],
    [
      'once only, from elsewhere',
      [full, 'done', 'again', '3'],
      chosen('eaten', 'again'),
      'stale-tap [change-spot] [done]',
    ],
    [
      'of the way in',
      [full],
      { kind: 'chosen' as const, choice: 'plan-one', from: { flow: 'front', place: 'hello' }, gives: {} },
      plan,
    ],
  ])('%s', (_, before, tap, answer) => {
    expect(
      told(play([...before, tap]))
        .split('\n')
        .at(-1),
    ).toBe(answer);
  });
});

describe('effects', () => {
  const { state, effects } = play([full]);

  it('are everything the lines of a place ask for, in order, and one message', () => {
    expect(effects.map((e) => e.do)).toEqual(['remember', 'wake', 'say', 'say']);
    expect(effects[0]).toEqual({ do: 'remember', name: 'people', value: 3 });
    expect(effects[1]).toEqual({ do: 'wake', name: 'picnic/rain', atMs: 1_060_000 });
    expect(effects[2]).toEqual({
      do: 'say',
      saying: {
        phrases: [{ key: 'sunset', values: {} }],
        choices: [],
        later: { name: 'picnic/sunset', atMs: 1_002_000 },
      },
    });
    expect(effects[3]).toMatchObject({ saying: { show: { kind: 'list', loaves: 6 } } });
  });

  it('withdraw, hand to the shop and replace by slot', () => {
    const done = step(book, state, text('done'), around).effects;
    expect(done).toContainEqual({ do: 'withdraw', name: 'picnic/rain' });
    expect(done).toContainEqual({ do: 'withdraw', name: 'picnic/sunset' });
    expect(done).toContainEqual({ do: 'task', task: 'wash-up', values: { people: 3 } });
    expect(done.at(-1)).toMatchObject({ saying: { slot: 'picnic/card' } });
  });

  it('withdraw what was to come, when a person starts over', () => {
    const over = step(book, state, text('start-over'), around).effects;
    expect(over).toContainEqual({ do: 'withdraw', name: 'picnic/rain' });
    expect(over).toContainEqual({ do: 'withdraw', name: 'picnic/sunset' });
  });

  it('remembers only what is news', () => {
    const again = step(book, state, text(full), { ...around, memory: { people: 3 } });
    expect(again.effects.map((e) => e.do)).not.toContain('remember');
  });

  it('notices the language of every message', () => {
    expect(play(['hello!']).effects[0]).toEqual({ do: 'remember', name: 'language', value: 'xx' });
  });
});

describe('timers', () => {
  const timer = { kind: 'timer', name: 'picnic/rain', dueAtMs: 1_000_000 } as const;

  it('speak in their own flow', () => {
    expect(told(play([full, timer]))).toBe('rain-comes [change-spot] [done]');
  });

  it('find a flow left for another subject, and take it up', () => {
    const elsewhere = bookOf(front, picnic, weather);
    const left = play([full, 'weather'], null, elsewhere);
    expect(left.state).toMatchObject({ flow: 'weather', parked: [{ flow: 'picnic', place: 'basket' }] });
    const { state } = play([timer], left.state, elsewhere);
    expect(state).toMatchObject({ flow: 'picnic', place: 'basket', parked: [] });
  });

  it.each([[{ ...timer, name: 'picnic/unknown' }], [{ ...timer, name: 'gone/rain' }], [{ ...timer, name: '' }]])(
    'are let pass when nobody waits for them: %j',
    (event) => {
      const before = play([full]).state;
      expect(step(book, before, event, around)).toEqual({ state: before, effects: [] });
    },
  );
});

describe('a flow that changed under a conversation', () => {
  const { state } = play(['picnic people=3']);

  it('goes on in the same place with its facts', () => {
    const changed = bookOf(front, { ...picnic, about: 'a longer title than before' });
    const stepped = play(['1'], state, changed);
    expect(told(stepped).split('\n').at(-1)).toBe(plan);
    expect(stepped.state.hash).not.toBe(state.hash);
  });

  it('begins at the start of the flow when the place is gone, keeping facts', () => {
    const { where, ...others } = picnic.places;
    const changed = bookOf(front, {
      ...picnic,
      places: {
        ...others,
        spot: where!,
        basket: { ...others['basket']!, needs: { people: 'how-many', spot: 'spot' } },
      },
    });
    expect(
      told(play(['picnic spot=hill'], state, changed))
        .split('\n')
        .at(-1),
    ).toBe('flow-changed | packed people=3 spot="hill" basket-loaves=6 [change-spot] [done]');
  });

  it('comes in by the front when the flow is gone', () => {
    expect(told(play(['hello'], state, bookOf(front)))).toBe('flow-changed | hello [plan-one]');
  });
});

it('a circle of places without a question throws instead of hanging', () => {
  const circle = bookOf(front, { ...picnic, places: { basket: { do: [{ go: 'basket' }] } } });
  expect(() => play(['picnic'], null, circle)).toThrow('circle');
});

describe('what stands beside a message', () => {
  const lunch = {
    ...picnic,
    places: {
      ...picnic.places,
      basket: {
        do: [
          { set: { card: 'lunch-1' } },
          'packed',
          { later: { name: 'sunset', at: '=now + 2000', say: 'sunset', slot: '=card', offers: true } },
        ],
        slot: '=card',
        choices: [
          { label: 'change-spot', go: 'where' },
          { label: 'done', unseen: true, go: 'eaten' },
        ],
      },
    },
  };
  const spread = bookOf(front, lunch, weather);
  const { state, effects } = step(spread, null, text(full), around);
  const sayings = effects.flatMap((effect) => (effect.do === 'say' ? [effect.saying] : []));

  it('a slot may be worked out, also for a later saying, which may take the choices along', () => {
    expect(sayings.map(({ slot }) => slot)).toEqual(['picnic/lunch-1', 'picnic/lunch-1']);
    expect(sayings.map(({ later }) => later?.atMs)).toEqual([1_002_000, undefined]);
    expect(sayings.map(({ choices }) => choices.map(({ id }) => id))).toEqual([['change-spot'], ['change-spot']]);
  });

  it('an unseen choice has no number, but its words', () => {
    expect(step(spread, state, text('2'), around).state.place).toBe('basket');
    expect(step(spread, state, text('done'), around).state.place).toBe('eaten');
  });

  it("the front's choices can be written anywhere", () => {
    const eaten = step(spread, state, text('done'), around).state;
    expect(eaten.place).toBe('eaten');
    expect(step(spread, eaten, text('plan-one'), around).state.place).toBe('basket');
  });
});
