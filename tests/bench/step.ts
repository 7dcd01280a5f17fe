/**
 * One step of the six questions, no store: the flow engine beside a switch written by hand and a state-machine library. All three
 * hear the same, say keys with values and can go back. The switch does no more than that, and for this dialogue alone: it looks
 * for no choices whose label was typed, asks no function to read the text, remembers and parks nothing, finds no flow that has
 * changed since, and its way back is the question before, not a trail.
 */
import { step } from '../../src/core/flow/step.ts';
import type { FlowState } from '../../src/core/flow/flow.ts';
import { less, type Row } from './figure.ts';
import { inTurns, median, microseconds } from './rounds.ts';
import { book } from './six-questions/flow.ts';
import { machineStart, machineStep, type MachineState } from './six-questions/machine.ts';
import { messages } from './six-questions/questions.ts';
import { atFirst, handStep, type HandState } from './six-questions/switch.ts';

const around = { nowMs: 0, language: 'en', memory: {} };

function engine(): FlowState | null {
  let state: FlowState | null = null;
  for (const text of messages) ({ state } = step(book, state, { kind: 'text', text, language: 'en' }, around));
  return state;
}

function byHand(): HandState {
  let state = atFirst;
  for (const text of messages) ({ state } = handStep(state, text));
  return state;
}

function machine(): MachineState {
  let state = machineStart;
  for (const text of messages) ({ state } = machineStep(state, text));
  return state;
}

/** All three heard the same. */
function check(): void {
  const heard = [engine()?.facts, byHand().answers, machine().context.answers].map((facts) => JSON.stringify(facts));
  if (new Set(heard).size !== 1) throw new Error(`the contestants heard different things: ${heard.join(' ')}`);
}

export const stepping: Row = {
  name: 'step',
  about: 'one step of the six questions, no store',
  async measure({ quick }) {
    check();
    const [rounds, batches, batch] = quick ? [1, 3, 10] : [7, 20, 200];
    const perStep = (dialogue: () => unknown): number => microseconds(dialogue, batches, batch) / messages.length;
    const times = await inTurns(rounds, {
      engine: () => perStep(engine),
      byHand: () => perStep(byHand),
      machine: () => perStep(machine),
    });
    const ours = median(times.engine);
    const figure = { what: 'one step', unit: 'µs', ours };
    return [
      less({ ...figure, who: 'switch by hand', theirs: median(times.byHand), atLeast: 0.3 }),
      less({ ...figure, who: 'xstate transition', theirs: median(times.machine), atLeast: 1 }),
    ];
  },
};
