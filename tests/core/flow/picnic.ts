/** A small book of flows about picnics, for testing the engine without any tea. */
import type { Around, Calls, FlowBook } from '../../../src/core/flow/book.ts';
import type { Effect, Facts, FlowEvent, FlowState, Json, Phrase } from '../../../src/core/flow/flow.ts';
import { parseFlow } from '../../../src/core/flow/parse.ts';
import type { RawFlow } from '../../../src/core/flow/raw.ts';
import { step, type Stepped } from '../../../src/core/flow/step.ts';

export const front: RawFlow = {
  flow: 'front',
  about: 'the way in',
  starts: 'hello',
  news: 'idle',
  front: {
    reads: 'read',
    opens: 'read-label',
    notices: [{ when: 'heard.language is known', remember: { language: '=heard.language' } }],
    always: [
      { when: "heard.act is 'back'", go: 'back' },
      { when: "heard.act is 'start-over'", go: 'start' },
      { when: "heard.act is 'weather'", go: 'weather/' },
    ],
    otherwise: [{ say: 'unclear', go: 'again' }],
    sentences: {
      'stale-tap': 'stale-tap',
      'already-so': 'already-so',
      'nothing-before': 'nothing-before',
      'flow-changed': 'flow-changed',
      'one-at-a-time': 'one-at-a-time',
    },
  },
  hears: [
    { when: "heard.kind is 'picnic'", go: 'picnic/' },
    { when: "heard.kind is 'hello'", go: 'front/hello' },
  ],
  places: {
    hello: { do: ['hello'], choices: [{ label: 'plan-one', go: 'picnic/' }] },
    idle: { choices: [{ label: 'plan-one', go: 'picnic/' }] },
  },
};

export const picnic: RawFlow = {
  flow: 'picnic',
  about: 'what to bring',
  starts: 'basket',
  listens: {
    when: "heard.kind is 'picnic' or answered",
    facts: { people: [], spot: ['blanket'], dish: [] },
  },
  hears: [{ when: 'heard.complaint is known', say: '=heard.complaint', go: 'again' }],
  wakes: { rain: ['rain-comes'] },
  places: {
    basket: {
      needs: { people: 'how-many', spot: 'where' },
      do: [
        {
          call: 'pack',
          with: ['people', 'spot'],
          keep: 'basket',
          'if-wrong': { 'too-many': 'too-many', any: 'how-many' },
        },
        'packed',
        { when: 'basket.heavy', say: 'heavy' },
        { show: { kind: 'list', loaves: '=basket.loaves' } },
        { remember: { people: '=people' } },
        { wake: { name: 'rain', at: '=now + 60 * 1000' } },
        { later: { name: 'sunset', at: '=now + 2 * 1000', say: 'sunset' } },
      ],
      choices: [
        { label: 'change-spot', go: 'where' },
        { label: 'done', withdraw: ['rain', 'sunset'], go: 'eaten' },
      ],
    },
    'how-many': { asks: 'people', do: ['ask-people'], choices: [{ label: 'two', gives: { people: 2 } }] },
    'too-many': { asks: 'people', do: ['=mistake'], repeats: ['ask-people'] },
    where: {
      asks: 'spot',
      do: ['ask-spot'],
      choices: [{ label: 'spot', with: { name: '=item' }, each: "['lake', 'hill']", gives: { spot: '=item' } }],
    },
    eaten: {
      once: true,
      slot: 'card',
      do: ['eaten', { 'tell-shop': 'wash-up', with: ['people'] }],
      choices: [{ label: 'again', set: { people: null }, go: 'basket' }],
    },
  },
};

export const weather: RawFlow = {
  flow: 'weather',
  about: 'a word on the weather',
  starts: 'said',
  passing: true,
  takes: ['spot'],
  places: { said: { do: ['weather'], hears: [], choices: [], repeats: [] } },
};

const weatherThenBack: RawFlow = {
  ...weather,
  places: { said: { do: ['weather', { go: 'resume' }] } },
};

/** Reads "picnic people=3 spot=lake", a bare number where people are asked, and the words that act. */
function read(given: Facts): Facts {
  const said = given['text'] ?? given['payload'];
  const text = typeof said === 'string' ? said : '';
  const facts = [...text.matchAll(/(\w+)=(\w+)/g)].map(([, name, v]) => [name, /^\d+$/.test(v!) ? Number(v) : v]);
  const act = /^(back|start-over|weather)/.exec(text)?.[1] ?? null;
  const number = given['asked'] === 'people' && /^\d+$/.test(text) ? { people: Number(text) } : {};
  const isComplaint = number.people === 0;
  return {
    kind: text.startsWith('picnic') ? 'picnic' : text.startsWith('hello') ? 'hello' : 'other',
    act,
    ...(isComplaint ? { complaint: { key: 'alone', values: {} } } : number),
    ...(text.includes('!') ? { language: 'xx' } : {}),
    ...Object.fromEntries(facts),
  };
}

export const calls: Calls = {
  read: (given) => ({ gives: read(given) }),
  'read-label': (given) => ({ gives: read(given) }),
  pack: ({ people }) =>
    Number(people) > 20
      ? { wrong: 'too-many', field: 'people', values: { most: 20 } }
      : { gives: { loaves: Number(people) * 2, heavy: Number(people) > 5 } },
};

const variables: { readonly [key: string]: readonly string[] } = {
  packed: ['people', 'spot', 'basket-loaves'],
  spot: ['name'],
  weather: ['spot'],
  'mistake-too-many': ['most'],
};

const shown = (phrase: Phrase): string =>
  [phrase.key, ...Object.entries(phrase.values).map(([name, value]) => `${name}=${JSON.stringify(value)}`)].join(' ');

export const bookOf = (...flows: readonly RawFlow[]): FlowBook => ({
  flows: Object.fromEntries(
    flows.map((raw) => {
      const { flow, problems } = parseFlow(raw, JSON.stringify(raw).length.toString());
      if (problems.length > 0) throw new Error(JSON.stringify(problems));
      return [flow.name, flow];
    }),
  ),
  front: 'front',
  calls,
  words: {
    languages: ['en', 'xx'],
    say: (language, phrase) =>
      language === 'en'
        ? `${phrase.key} ${Object.values(phrase.values)
            .map((v) => JSON.stringify(v))
            .join(' ')}`.trim()
        : '?',
    typed: (_, key) => (key === 'done' ? ['all eaten'] : []),
    variables: (key) => variables[key] ?? [],
  },
});

export const book = bookOf(front, picnic, weatherThenBack);

export const around: Around = { nowMs: 1_000_000, language: 'en', memory: {} };

export const text = (words: string): FlowEvent => ({ kind: 'text', text: words, language: 'en' });

/** What a step said, as "key name=value | key" and its choices in brackets. */
export function told({ effects }: Stepped): string {
  return effects
    .flatMap((effect: Effect) => {
      if (effect.do !== 'say') return [];
      const choices = effect.saying.choices.map((c) => `[${shown(c.label)}]`);
      return [[effect.saying.phrases.map(shown).join(' | '), ...choices].join(' ')];
    })
    .join('\n');
}

/** Plays events one after another; every state on the way must survive a JSON round trip. */
export function play(events: readonly (string | FlowEvent)[], from: FlowState | null = null, using = book): Stepped {
  let last: Stepped = { state: from as FlowState, effects: [] };
  for (const event of events) {
    const state = last.state === null ? null : (JSON.parse(JSON.stringify(last.state)) as FlowState);
    last = step(using, state, typeof event === 'string' ? text(event) : event, around);
  }
  return last;
}

export const chosen = (place: string, choice: string, gives: { [name: string]: Json } = {}): FlowEvent => ({
  kind: 'chosen',
  choice,
  from: { flow: 'picnic', place },
  gives,
});
