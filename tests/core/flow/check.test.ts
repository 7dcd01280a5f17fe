import { describe, expect, it } from 'vitest';
import { checkFlow } from '../../../src/core/flow/check.ts';
import { rememberedIn } from '../../../src/core/flow/outline.ts';
import { parseFlow } from '../../../src/core/flow/parse.ts';
import type { RawFlow, RawPlace } from '../../../src/core/flow/raw.ts';
import { calls, front, picnic, weather } from './picnic.ts';

const sentences: { readonly [key: string]: readonly string[] } = {
  spot: ['name'],
  packed: ['people', 'basket-loaves'],
};
const unknown = 'no-such-sentence';

function problemsOf(raw: RawFlow, others: readonly RawFlow[] = [front, weatherBack]): readonly string[] {
  const parsed = parseFlow(raw, 'x');
  const flows = Object.fromEntries([...others, raw].map((r) => [r.flow, parseFlow(r, 'x').flow]));
  const found = checkFlow(parsed.flow, {
    flows: { ...flows, [raw.flow]: parsed.flow },
    unread: new Set(),
    front: 'front',
    calls: new Set(Object.keys(calls)),
    heard: new Set(['people', 'spot', 'dish', 'kind', 'act', 'complaint', 'language']),
    house: new Set(['open']),
    memory: new Set(Object.values(flows).flatMap(rememberedIn)),
    hasSentence: (key) => key !== unknown,
    variables: (key) => sentences[key] ?? [],
  });
  return [...parsed.problems, ...found].map(({ path, expected }) => `${path.join('.')}: ${expected}`);
}

const weatherBack: RawFlow = { ...weather, places: { said: { do: ['weather', { go: 'resume' }] } } };
const withPlace = (name: string, place: RawPlace): RawFlow => ({
  ...picnic,
  places: { ...picnic.places, [name]: place },
});
const withBasket = (more: RawPlace): RawFlow => withPlace('basket', { ...picnic.places['basket'], ...more });

describe('flows that are right', () => {
  it.each([picnic, front, weatherBack])('have no problems', (flow) => {
    expect(problemsOf(flow, [front, picnic, weatherBack])).toEqual([]);
  });
});

describe('planted faults', () => {
  it.each<[string, RawFlow, string]>([
    [
      'a place that is not there',
      withBasket({ choices: [{ label: 'done', go: 'nowhere' }] }),
      'places.basket.choices.0.go: a place of picnic',
    ],
    ['a flow that is not there', withBasket({ do: [{ go: 'gone/' }] }), 'places.basket.do.0.go: one of the flows'],
    ['a place of another flow that is not there', withBasket({ do: [{ go: 'front/gone' }] }), 'a place of front'],
    ['a need that leads nowhere', withBasket({ needs: { people: 'gone' } }), 'places.basket.needs.people'],
    ['a need that is asked nowhere', withBasket({ needs: { dish: 'where' } }), '"where" to ask for "dish"'],
    ['a mistake that leads nowhere', withBasket({ do: [{ call: 'pack', 'if-wrong': 'gone' }] }), 'do.0.if-wrong.any'],
    ['an unknown function', withBasket({ do: [{ call: 'cook' }] }), 'places.basket.do.0.call: one of the functions'],
    ['an unknown sentence', withBasket({ do: [unknown] }), `a sentence "${unknown}"`],
    [
      'an unknown sentence on a choice',
      withBasket({ choices: [{ label: unknown, go: 'where' }] }),
      'choices.0.label: a sentence',
    ],
    [
      'a sentence whose value nobody gives',
      withBasket({ choices: [{ label: 'spot', go: 'where' }] }),
      '"name", which the sentence "spot" needs',
    ],
    [
      'a memory that nothing keeps',
      withBasket({ do: [{ when: 'memory.peple > 2', say: 'packed' }] }),
      'do.0.when: a known fact, not "memory.peple"',
    ],
    [
      'what the house does not tell',
      withBasket({ do: [{ when: 'house.opn', say: 'packed' }] }),
      'do.0.when: a known fact, not "house.opn"',
    ],
    [
      'an unknown fact in a condition',
      withBasket({ do: [{ when: 'weather is known', say: 'packed' }] }),
      'do.0.when: a known fact, not "weather"',
    ],
    [
      'something nobody hears',
      withBasket({ do: [{ when: 'heard.mood is known', say: 'packed' }] }),
      'not "heard.mood"',
    ],
    ['an item outside a list', withBasket({ choices: [{ label: 'done', gives: { spot: '=item' } }] }), 'not "item"'],
    ['a broken condition', withBasket({ do: [{ when: 'people >', say: 'packed' }] }), 'do.0.when: a name, a number'],
    ['a broken value', withBasket({ do: [{ set: { people: '=1 +' } }] }), 'do.0.set.people'],
    [
      'a place nothing leads to',
      withPlace('attic', { do: [{ go: 'basket' }] }),
      'places.attic: something that leads to "attic"',
    ],
    [
      'places that only lead to each other',
      {
        ...withPlace('a', { do: [{ go: 'b' }] }),
        places: { ...picnic.places, a: { do: [{ go: 'b' }] }, b: { do: [{ go: 'a' }] } },
      },
      'places.a: something that leads',
    ],
    ['a dead end', withPlace('eaten', { do: ['eaten'] }), 'places.eaten: a way on'],
    [
      'a question that typing cannot answer',
      withPlace('where', { asks: 'weather', do: ['ask-spot'] }),
      '"weather" to be answerable',
    ],
    ['a start that is not there', { ...picnic, starts: 'gone' }, 'starts: a place of picnic'],
  ])('%s', (_, flow, problem) => {
    expect(problemsOf(flow).join('\n')).toContain(problem);
  });

  it.each(['back', 'start'])('a front without a way to go %s', (move) => {
    const always = front.front!.always.filter((line) => typeof line === 'string' || line.go !== move);
    expect(problemsOf({ ...front, front: { ...front.front!, always } }, [picnic, weatherBack]).join('\n')).toContain(
      `go: ${move}`,
    );
  });

  it('are all told at once', () => {
    const broken = withBasket({ do: [unknown, { call: 'cook' }, { go: 'nowhere', when: 'weather' }], choices: [] });
    expect(problemsOf(broken).length).toBeGreaterThanOrEqual(4);
  });
});
