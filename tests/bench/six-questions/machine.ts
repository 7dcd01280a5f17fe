/** The six questions as a machine of xstate, moved on by its pure transition. */
import { assign, setup, transition, type SnapshotFrom } from 'xstate';
import { facts, type Fact } from './questions.ts';

interface Context {
  readonly answers: { readonly [fact in Fact]?: string };
}

const saying = (key: string) => ({ type: 'say' as const, params: { key } });
const [first] = facts;
const after = (fact: Fact): string => facts[facts.indexOf(fact) + 1] ?? 'told';

const machine = setup({
  types: { context: {} as Context, events: {} as { readonly type: 'text'; readonly text: string } },
  actions: {
    say: (about, { key }: { readonly key: string }) => ({ about, key }),
    keep: assign({
      answers: ({ context, event }, { fact }: { readonly fact: Fact }) => ({ ...context.answers, [fact]: event.text }),
    }),
  },
  guards: {
    isHello: ({ event }) => event.text === 'hello',
    isBack: ({ event }) => event.text === 'back',
  },
}).createMachine({
  context: { answers: {} },
  initial: 'hello',
  states: {
    hello: { on: { text: [{ guard: 'isHello', target: first }, { actions: saying('unclear') }] } },
    ...Object.fromEntries(
      facts.map((fact, i) => [
        fact,
        {
          entry: saying(`ask-${fact}`),
          on: {
            text: [
              { guard: 'isBack' as const, target: facts[Math.max(0, i - 1)] },
              { actions: { type: 'keep' as const, params: { fact } }, target: after(fact) },
            ],
          },
        },
      ]),
    ),
    told: { entry: saying('closing'), on: { text: [{ guard: 'isHello', target: first }] } },
  },
});

export type MachineState = SnapshotFrom<typeof machine>;

export const machineStart: MachineState = machine.resolveState({ value: 'hello', context: { answers: {} } });

export function machineStep(
  state: MachineState,
  text: string,
): { readonly state: MachineState; readonly said: unknown } {
  const [next, said] = transition(machine, state, { type: 'text', text });
  return { state: next, said };
}
