import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { FlowEvent, FlowState, SayingChoice } from '../../src/core/flow/flow.ts';
import { step } from '../../src/core/flow/step.ts';
import { content } from '../the-content.ts';

const around = { nowMs: Date.UTC(2026, 11, 1), language: 'en', memory: {} };
const written = (text: string): FlowEvent => ({ kind: 'text', text, language: 'en' });

/** Written out, as where no channel makes a tap of a number. */
function after(...lines: readonly string[]): FlowState {
  let state: FlowState | null = null;
  for (const text of lines) ({ state } = step(content.book, state, written(text), around));
  return state!;
}

test.each([
  ['1', 'tieguanyin'],
  ['2', 'shou-puer'],
])('%s, written where one of several teas is asked for, is %s', (number, tea) => {
  const told = 'tieguanyin and ripe puer in my 120 ml gaiwan';
  expect(after(told, number).facts).toMatchObject({ tea, vessel: 'gaiwan', volumeMl: 120 });
  const { facts } = after('longjing, 5 g, 110 ml gaiwan', told, number);
  expect(facts).toMatchObject({ tea, volumeMl: 120 });
  expect(facts['leafG'] ?? null).toBeNull();
});

/** What is written there is taken as it stands. */
const wordForWord = new Set(['my-tea/vessel-name']);
const whereTo = ({ flow, place, facts }: FlowState): string =>
  JSON.stringify([flow, place, facts['tea'] ?? null, facts['vessel'] ?? null, facts['volumeMl'] ?? null]);

const folder = new URL('.', import.meta.url);
/** Of customers, in one language: the others go the same ways. */
const talks = readdirSync(folder).filter(
  (file) => file.endsWith('.transcript') && !/lesson|desk|keeper|\.zh-/.test(file),
);

test.each(talks)('in %s a number written is the choice it counts', (file) => {
  const lines = [...readFileSync(new URL(file, folder), 'utf8').matchAll(/^> (.*)$/gm)].map(([, line]) => line!);
  let state: FlowState | null = null;
  for (const line of lines) {
    const stepped = step(content.book, state, written(line), around);
    state = stepped.state;
    if (wordForWord.has(`${state.flow}/${state.place}`)) continue;
    for (const [n, { id, from, gives }] of shown(stepped.effects).slice(0, 2).entries()) {
      const typed = step(content.book, state, written(String(n + 1)), around).state;
      const tapped = step(content.book, state, { kind: 'chosen', choice: id, from, gives }, around).state;
      expect([line, n + 1, whereTo(typed)]).toEqual([line, n + 1, whereTo(tapped)]);
    }
  }
});

function shown(effects: ReturnType<typeof step>['effects']): readonly SayingChoice[] {
  const said = effects.flatMap((effect) => (effect.do === 'say' && !effect.saying.later ? [effect.saying] : []));
  return said.at(-1)?.choices ?? [];
}
