/** Walks the real flows: every choice to a stated depth, and every kind of message in every place. The counts are pinned. */
import { describe, expect, it } from 'vitest';
import type { Effect, Facts, FlowEvent, FlowState, Saying } from '../../src/core/flow/flow.ts';
import { rests } from '../../src/core/flow/check.ts';
import { step } from '../../src/core/flow/step.ts';
import { languages, type Language } from '../../src/core/units.ts';
import { book as realBook, holdsFor } from './holds.ts';
import { asked, customer, keeper, over, afterCallingOff } from './houses.ts';
import { rememberingCalls } from './remembering-calls.ts';

const book = rememberingCalls(realBook, ['readMessage', 'partsOfMessage']);

interface Walker {
  readonly state: FlowState;
  readonly memory: Facts;
  readonly house: Facts;
  readonly last: Saying | null;
  /** Passed to the shop in the last step. */
  readonly tasks: number;
  readonly nowMs: number;
}

function walk(
  from: Walker | null,
  event: FlowEvent,
  language: Language = 'en',
  house = from?.house ?? customer,
): Walker {
  const memory = from?.memory ?? {};
  const nowMs = from?.nowMs ?? 1_700_000_000_000;
  const stepped = step(book, from?.state ?? null, event, { nowMs, language, memory, house });
  holdsFor(stepped);
  const remembered = stepped.effects.flatMap((e) => (e.do === 'remember' ? [[e.name, e.value] as const] : []));
  const said = stepped.effects.flatMap((e: Effect) => (e.do === 'say' && !e.saying.later ? [e.saying] : []));
  return {
    state: stepped.state,
    memory: { ...memory, ...Object.fromEntries(remembered) },
    house,
    last: said.at(-1) ?? from?.last ?? null,
    tasks: stepped.effects.filter((e) => e.do === 'task').length,
    nowMs,
  };
}

const taps = (walker: Walker): readonly FlowEvent[] =>
  (walker.last?.choices ?? []).map(({ id, from, gives }) => ({ kind: 'chosen', choice: id, from, gives }));

const said = (text: string, language: Language = 'en'): FlowEvent => ({ kind: 'text', text, language });
const placeOf = ({ state }: Walker): string => `${state.flow}/${state.place}`;

const openings: readonly FlowEvent[] = [
  { kind: 'opened', payload: '' },
  { kind: 'opened', payload: 'tea-tieguanyin' },
  { kind: 'opened', payload: 'lesson-12' },
];

/** Paths of each length; the walkers that end them. */
function walkTaps(
  starts: readonly Walker[],
  depth: number,
): { readonly counts: readonly number[]; readonly places: Set<string> } {
  const places = new Set<string>();
  const counts: number[] = [];
  let edge = starts;
  for (let length = 0; length <= depth; length++) {
    counts.push(edge.length);
    edge.forEach((walker) => places.add(placeOf(walker)));
    if (length < depth) edge = edge.flatMap((walker) => taps(walker).map((tap) => walk(walker, tap)));
  }
  return { counts, places };
}

/** A shopkeeper at the desk, in the middle of an answer, just after one, too late with one, and with what may be none. */
function atTheShop(): readonly Walker[] {
  const desk = walk(walk(null, openings[0]!, 'en', keeper), said('questions'));
  const question = walk(desk, said('answer 1'));
  const late = walk(question, said('Of course'), 'en', { ...keeper, waiting: [] });
  const later: Facts = { ...keeper, answered: [{ ...asked(1, 'may I bring my dog into the shop'), answer: 'Yes.' }] };
  const between = walk(question, said('Yes, dogs are welcome'), 'en', { ...keeper, waitingCount: 3 });
  const forWhom = walk(question, said('who is coming on Saturday?'));
  return [desk, late, between, forWhom, walk(question, said('Yes, dogs are welcome'), 'en', later)];
}

/** A shopkeeper among the lessons: what only a certain sentence, lesson or mishap leads to. */
function atTheLessons(): readonly Walker[] {
  const list = tapped(walk(null, openings[0]!, 'en', keeper), 'choice-lesson-desk');
  const lesson = tapped(list, 'choice-desk-lesson', 2);
  const guest = tapped(lesson, 'choice-desk-guest');
  const planned = walk(tapped(list, 'choice-desk-add'), said('Saturday 7 pm, white tea, 8 seats, 90 minutes'));
  const gone = walk(lesson, taps(lesson)[0]!, 'en', { ...keeper, doors: [], lessons: [] });
  return [
    list,
    lesson,
    walk(list, said('is Ann on the list?')),
    walk(list, said('Ann is coming alone')),
    walk(list, said('Ann needs 2 seats')),
    walk(list, said('Ann needs 20 seats')),
    walk(list, said('move Ann to 2 December')),
    walk(list, said('tell Ann the door is open')),
    walk(walk(list, said('Ann needs 2 seats')), said('yes')),
    walk(list, said('cancel the whole series')),
    tapped(walk(list, said('cancel all Saturday lessons')), 'choice-desk-off-why'),
    walk(list, said('cancel all Saturday lessons')),
    guest,
    walk(guest, said('whoever')),
    walk(guest, said('whoever@home')),
    walk(guest, said('Ann Lee ann@mail.example 1 seat')),
    walk(tapped(lesson, 'choice-desk-move'), said('30 November 2023 8 pm')),
    planned,
    tapped(planned, 'choice-desk-change'),
    walk(tapped(lesson, 'choice-desk-write'), said('We begin ten minutes later.')),
    walk(lesson, said('change the place to the garden room')),
    walk(list, said('write to all my students: we move')),
    walk(list, said('write to all my students')),
    walk(list, said('who came yesterday')),
    walk(list, said('what did I cancel'), 'en', afterCallingOff),
    walk(list, said('it is on after all'), 'en', afterCallingOff),
    tapped(list, 'choice-desk-undelivered'),
    gone,
    walk(tapped(walk(null, said('my lessons')), 'choice-lesson-see'), said('two more')),
    walk(null, said('what was that tea called'), 'en', { ...customer, bookings: [over] }),
  ];
}

function tapped(walker: Walker, key: string, n = 0): Walker {
  const event = taps(walker).filter((_, i) => walker.last?.choices[i]?.label.key === key)[n];
  if (!event) throw new Error(`${placeOf(walker)} has no ${key}`);
  return walk(walker, event);
}

/** Who has written this, and then tapped the first choice so many times. */
function along(text: string, times: number): Walker {
  let walker = walk(null, said(text));
  for (let n = 0; n < times; n++) walker = walk(walker, tapOf(walker, 0));
  return walker;
}

function tapOf(walker: Walker, n: number): FlowEvent {
  const tap = taps(walker)[n];
  if (!tap) throw new Error(`${placeOf(walker)} has no choice ${n}`);
  return tap;
}

/** One walker in every place a person can rest in, found by choices and by messages. */
function everyPlace(): ReadonlyMap<string, Walker> {
  const found = new Map<string, Walker>();
  const queue = [...openings.map((event) => walk(null, event)), ...atTheShop(), ...atTheLessons()];
  // Places that only a certain tea, a certain hour or an unanswered call leads to.
  const longJing = along('longjing in a 350 ml glass', 4);
  const standing = along('assam in a 500 ml teapot', 5);
  const later = (hours: number, walker: Walker): Walker => ({ ...walker, nowMs: walker.nowMs + hours * 3_600_000 });
  const quiet: FlowEvent = { kind: 'timer', name: 'guide/quiet', dueAtMs: 1_700_003_600_000 };
  const poured = walk(later(0.01, longJing), tapOf(longJing, 0));
  const called = walk(later(1, poured), quiet);
  const seeds = [
    longJing,
    along('matcha in a 350 ml mug', 2),
    walk(later(2, longJing), tapOf(longJing, 0)),
    walk(later(1, standing), tapOf(standing, 0)),
    called,
    walk(later(5, called), tapOf(called, 0)),
    walk(along('longjing in a 350 ml glass', 3), said('rou gui in a 110 ml gaiwan')),
    walk(poured, said('finish')),
    walk(poured, said('in a 500 ml teapot instead')),
    ...[2, 4, 5].map((times) => along('rou gui in a 110 ml gaiwan', times)),
  ];
  queue.push(...seeds, ...seeds.flatMap((walker) => taps(walker).map((tap) => walk(walker, tap))));
  const leads = [
    'brew mao xie',
    'brew zorblax tea',
    'rou gui or shui xian in a gaiwan',
    'tieguanyin in a 110 ml gaiwan',
    'and the second?',
    'and the 40th?',
    'can I leave it 5 minutes',
    'push it to 8',
    'it was bitter',
    'talk to the shop',
    'other language',
    'forget me',
    'do you have classes',
    'do you teach children in your lessons',
    'my lessons',
    'please do not remind me of lessons',
    'book 1 seat in white tea',
    'book 2 seats in old puer',
    'cancel my booking for green morning',
    'can I move from green morning to 25 November',
    'save this',
    'storing umbrellas',
    'do you mend kites',
    'ask the shop whether you mend kites',
    'a gaiwan, a mug and a kyusu',
  ];
  for (let walker = queue.shift(); walker; walker = queue.shift()) {
    if (found.has(placeOf(walker))) continue;
    found.set(placeOf(walker), walker);
    for (const event of [...taps(walker), ...leads.map((text) => said(text))]) queue.push(walk(walker, event));
  }
  return found;
}

const messages: { readonly [language in Language]: readonly string[] } = {
  en: [
    '',
    'hello',
    'tieguanyin',
    'in a 110 ml gaiwan',
    '250',
    '-5',
    '9,000 ml',
    'big',
    '110 °C',
    'use 50 g',
    'back',
    'start over',
    'talk to the shop',
    'why',
    'yes',
    'no',
    'thanks',
    'it was bitter',
    'is it safe when pregnant?',
    'how do I store it?',
    'when do you open?',
    'do you have classes?',
    'and the third?',
    'cold instead?',
    'actually 200 ml',
    'what about football',
    '<b>x</b>',
    '\u200b\u202e',
    'a'.repeat(5000),
    'can I leave it 5 minutes',
    'should it be hotter?',
    'push it to 8',
    '1',
    '3',
    '99',
  ],
  'zh-Hant': [
    '你好',
    '鐵觀音',
    '110毫升蓋碗',
    '三百',
    '9000毫升',
    '返回',
    '重新開始',
    '點解',
    '好',
    '不用',
    '太苦',
    '孕婦可以喝嗎',
    '怎麼保存',
    '有冇班上',
    '第二泡呢',
    '冷泡呢',
    '講英文',
    '今天天氣',
  ],
  'zh-Hans': [
    '你好',
    '铁观音',
    '110毫升盖碗',
    '三百',
    '0毫升',
    '返回',
    '重新开始',
    '为什么',
    '好',
    '不用',
    '太苦',
    '孕妇可以喝吗',
    '怎么保存',
    '有课吗',
    '第二泡呢',
    '冷泡呢',
    '说英文',
    '今天天气',
  ],
};

/** There everything written goes to the customer; a choice, and "back", lead out. */
const writesToCustomer = ({ state }: Walker): boolean => book.flows[state.flow]?.places[state.place]?.asks === 'reply';

/** The counts are pinned so that no path goes unseen; whoever means to change a flow or a vessel writes the new ones here. */
const pinned = 'paths that lead on, by depth: after a meant change, write these counts here';

describe('every choice', { timeout: 300_000 }, () => {
  it('leads somewhere, from the first hello to five choices deep', () => {
    const { counts } = walkTaps([walk(null, openings[0]!)], 5);
    expect(counts, pinned).toEqual([1, 4, 18, 89, 391, 2095]);
  });

  it('leads somewhere, from a scanned label to four choices deep', () => {
    const { counts } = walkTaps([walk(null, openings[1]!)], 4);
    expect(counts, pinned).toEqual([1, 7, 30, 175, 870]);
  });

  it('leads somewhere, from a plan to four choices deep', () => {
    const { counts } = walkTaps([walk(null, said('longjing in a 350 ml glass'))], 4);
    expect(counts, pinned).toEqual([1, 6, 29, 136, 679]);
  });
});

describe('every place', { timeout: 300_000 }, () => {
  const places = everyPlace();

  it('where a person can rest is reached, and no other', () => {
    const resting = Object.values(book.flows).flatMap((flow) =>
      Object.values(flow.places).flatMap((place) => (rests(place) ? [`${flow.name}/${place.name}`] : [])),
    );
    expect([...places.keys()].toSorted()).toEqual(resting.toSorted());
    expect(places.size, 'places a person can rest in: after a meant change, write this count here').toBe(124);
  });

  it.each(languages)('answers every kind of message, in %s', (language) => {
    let steps = 0;
    for (const walker of places.values()) {
      for (const text of messages[language]) {
        const answered = walk(walker, said(text, language), language);
        expect(answered.last, `${placeOf(walker)} to ${JSON.stringify(text.slice(0, 40))}`).not.toBe(walker.last);
        steps++;
      }
    }
    expect(steps).toBe(places.size * messages[language].length);
  });

  it('lets a person back, over to a fresh start, and to the shop', () => {
    for (const walker of [...places.values()].filter((w) => !writesToCustomer(w))) {
      expect(placeOf(walk(walker, said('start over')))).toBe('front/hello');
      const shop = walk(walker, said('talk to the shop'));
      // Who keeps the shop comes to its own side.
      expect(shop.state.flow === 'ask' || shop.state.flow === 'shop' || shop.tasks > 0).toBe(true);
      const { state } = walk(walker, said('back'));
      expect(state.trail.length).toBe(Math.max(0, walker.state.trail.length - 1));
    }
  });
});
