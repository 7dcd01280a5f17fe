import { expect, test } from 'vitest';
import { step } from '../../src/core/flow/step.ts';
import type { FlowState } from '../../src/core/flow/flow.ts';
import { content } from '../the-content.ts';

const around = { nowMs: Date.UTC(2026, 11, 1), language: 'en', memory: {} };

/** Written out, as where no channel makes a tap of a number. */
function after(...lines: readonly string[]): FlowState {
  let state: FlowState | null = null;
  for (const text of lines) ({ state } = step(content.book, state, { kind: 'text', text, language: 'en' }, around));
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
