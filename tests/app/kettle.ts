/** A tiny conversation for the tests of the house: no tea, no flow file, every kind of effect. */
import type { Effect, FlowEvent, FlowState, Saying } from '../../src/core/flow/flow.ts';
import type { Step } from '../../src/conversation/answer.ts';
import type { Say } from '../../src/delivery/render.ts';
import type { Log } from '../../src/log.ts';

const start: FlowState = { flow: 'kettle', hash: 'h', place: 'p', facts: { count: 0 }, trail: [], parked: [] };

const says = (key: string, values = {}, more: Partial<Saying> = {}): Effect => ({
  do: 'say',
  saying: { phrases: [{ key, values }], choices: [], ...more },
});

/** Counts what it is told and echoes it; a few words do more. */
export const kettle: Step = (state, event, { nowMs, language, memory }) => {
  const before = state ?? start;
  const count = Number(before.facts['count']) + 1;
  const effects = effectsOf(event, { nowMs, count, language, taste: memory['taste'] ?? null });
  return { state: { ...before, facts: { count } }, effects };
};

interface Around {
  readonly nowMs: number;
  readonly count: number;
  readonly language: string;
  readonly taste: unknown;
}

function effectsOf(event: FlowEvent, { nowMs, count, language, taste }: Around): readonly Effect[] {
  if (event.kind === 'chosen') return [says('chosen', { choice: event.choice, ...event.gives })];
  if (event.kind === 'opened') return [says('opened', { payload: event.payload })];
  if (event.kind === 'timer') return [says('woken', { lateMs: nowMs - event.dueAtMs })];
  const [word = '', number] = event.text.split(' ');
  switch (word) {
    case 'burst':
      throw new TypeError('the lid flew off');
    case 'ask': {
      const from = { flow: 'kettle', place: 'p' };
      return [
        says('ask', {}, { choices: [{ id: 'yes', label: { key: 'yes', values: {} }, gives: { cups: 2 }, from }] }),
      ];
    }
    case 'wake':
      return [{ do: 'wake', name: 'boil', atMs: nowMs + Number(number) }];
    case 'later':
      return [says('later', {}, { later: { name: 'pour', atMs: nowMs + Number(number) } })];
    case 'never':
      return [{ do: 'withdraw', name: 'pour' }];
    case 'speak':
      return [{ do: 'remember', name: 'language', value: number ?? null }, says('language', { language })];
    case 'like':
      return [{ do: 'remember', name: 'taste', value: number ?? null }, says('taste', { taste: String(taste) })];
    case 'board':
      return [says('board', { count }, { slot: 'board' })];
    default:
      return [says('echo', { count, text: event.text })];
  }
}

/** "zh-Hant echo count=1 text=hi": enough to see that key, values and language arrive. */
export const plainSay: Say = (language, { key, values }) => {
  if (key === 'unsayable') throw new Error('no such sentence');
  const told = Object.entries(values).filter(([name, value]) => name !== 'late' && (name !== 'lateS' || value !== 0));
  return [language, key, ...told.map(([name, value]) => `${name}=${value as string}`)].join(' ');
};

export interface KeptLog extends Log {
  readonly lines: string[];
}

export function keptLog(): KeptLog {
  const lines: string[] = [];
  const keep = (event: string, fields?: object): void => void lines.push(`${event} ${JSON.stringify(fields ?? {})}`);
  return { lines, debug: keep, info: keep, warn: keep, error: keep };
}
