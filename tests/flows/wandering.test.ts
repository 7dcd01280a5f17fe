/** Talks nobody would hold: whatever was once written in a transcript, choices and timers, in any order. Nothing is thrown, said without words or left unanswered. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { Effect, Facts, FlowEvent, FlowState, Saying } from '../../src/core/flow/flow.ts';
import { step } from '../../src/core/flow/step.ts';
import { languages, type Language } from '../../src/core/units.ts';
import { countOf, dice as diceOf, type Dice } from '../faults/counts.ts';
import { book, holdsFor } from './holds.ts';
import { asked, customer, keeper, over } from './houses.ts';

const folder = 'tests/flows';
const written = [
  ...new Set(
    readdirSync(folder)
      .filter((name) => name.endsWith('.transcript'))
      .flatMap((name) => readFileSync(`${folder}/${name}`, 'utf8').split('\n'))
      .flatMap((line) => /^(?:shop)?> (.+)$/.exec(line)?.[1] ?? []),
  ),
];
/** What leads out of a place, or changes what it speaks of. */
const turns = [
  'back/start over/finish/skip/next/done/poured/yes/no/why/1/3/stop/undo',
  'guide me/another tea/in a mug instead/use the kyusu/cold instead/500 ml/longjing/matcha',
  '返回/帶我泡/換蓋碗/另一種茶/不要了/出汤了/换成英文/找店家',
].flatMap((some) => some.split('/'));

interface Wanderer {
  readonly state: FlowState | null;
  readonly memory: Facts;
  readonly last: Saying | null;
  readonly timers: readonly { readonly name: string; readonly at: number }[];
  readonly nowMs: number;
}

function nextEvent({ last, timers, nowMs }: Wanderer, language: Language, { below, pick }: Dice): FlowEvent {
  const due = timers.find(({ at }) => at <= nowMs);
  if (due && below(2) === 0) return { kind: 'timer', name: due.name, dueAtMs: due.at };
  const shape = below(10);
  if (shape < 4 && last && last.choices.length > 0) {
    const { id, from, gives } = pick(last.choices);
    return { kind: 'chosen', choice: id, from, gives };
  }
  return { kind: 'text', text: pick(shape < 6 ? turns : written), language };
}

function wander(from: Wanderer, event: FlowEvent, house: Facts, language: Language): Wanderer {
  // As the store gives it back.
  const state = JSON.parse(JSON.stringify(from.state)) as FlowState | null;
  const stepped = step(book, state, event, { nowMs: from.nowMs, language, memory: from.memory, house });
  holdsFor(stepped);
  const { effects } = stepped;
  const told = effects.flatMap((e: Effect) => (e.do === 'say' ? [e.saying] : []));
  if (event.kind === 'text' && told.length === 0) throw new Error('no answer');
  const gone = effects.flatMap((e) => (e.do === 'withdraw' ? [e.name] : []));
  const remembered = effects.flatMap((e) => (e.do === 'remember' ? [[e.name, e.value] as const] : []));
  const woken = effects.flatMap((e) => (e.do === 'wake' ? [{ name: e.name, at: e.atMs }] : []));
  const kept = from.timers.filter(
    ({ name }) => !gone.includes(name) && !(event.kind === 'timer' && event.name === name),
  );
  return {
    state: stepped.state,
    memory: { ...from.memory, ...Object.fromEntries(remembered) },
    last: told.findLast(({ later }) => !later) ?? from.last,
    timers: [...kept, ...woken],
    nowMs: from.nowMs,
  };
}

const told = (event: FlowEvent): string =>
  event.kind === 'text' ? event.text : event.kind === 'chosen' ? `[${event.choice}]` : `<${event.kind}>`;

/** What went wrong on the way, with the way to it. */
function wrongOn(way: number, house: Facts, dice: Dice): string | null {
  let wanderer: Wanderer = { state: null, memory: {}, last: null, timers: [], nowMs: 1_700_000_000_000 };
  const said: string[] = [];
  for (let n = 0; n < way; n++) {
    const language = dice.pick(languages);
    const later = { ...wanderer, nowMs: wanderer.nowMs + dice.below(dice.below(4) === 0 ? 7_200_000 : 60_000) };
    const event = nextEvent(later, language, dice);
    said.push(told(event));
    try {
      wanderer = wander(later, event, house, language);
    } catch (error) {
      return `${String(error)} after ${JSON.stringify(said.slice(-12))}`;
    }
  }
  return null;
}

/** Of a customer and of a shopkeeper, with lessons, bookings and questions and without. */
const houses: readonly Facts[] = [
  customer,
  { ...customer, bookings: [], lessons: [] },
  { ...customer, bookings: [over], asked: 5, staffed: false },
  keeper,
  { ...keeper, waiting: [asked(1, 'may I bring my dog')], doors: [], lessons: [], undelivered: [] },
];

it('a talk in any order is answered at every step', { timeout: 600_000 }, () => {
  const dice = diceOf(countOf('SEED', 20_231_118));
  const walks = countOf('WALKS', 100);
  const wrong = Array.from({ length: walks }, (_, n) => wrongOn(30, houses[n % houses.length]!, dice));
  expect(wrong.filter((one) => one !== null)).toEqual([]);
});
