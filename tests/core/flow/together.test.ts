import { describe, expect, it } from 'vitest';
import { parseFlow } from '../../../src/core/flow/parse.ts';
import type { RawFlow, RawLine } from '../../../src/core/flow/raw.ts';
import { picnic } from './picnic.ts';

const together = { 'the-outing': ['people', 'spot'] };

function linesRead(line: RawLine, more: Partial<RawFlow> = {}) {
  const raw: RawFlow = { ...picnic, together, takes: ['the-outing'], ...more, hears: [line] };
  const { flow, problems } = parseFlow(raw, 'x');
  return {
    flow,
    line: flow.hears[0]!,
    problems: problems.map(({ path, expected }) => `${path.join('.')}: ${expected}`),
  };
}

/** The same line with every fact written out. */
const writtenOut = (line: RawLine) => parseFlow({ ...picnic, hears: [line] }, 'x').flow.hears[0];

describe('facts that go together', () => {
  it.each<[string, RawLine, RawLine]>([
    ['are given', { call: 'pack', with: ['the-outing'] }, { call: 'pack', with: ['people', 'spot'] }],
    [
      'are given beside others, of which the last of a name holds',
      { call: 'pack', with: ['the-outing', 'dish', { spot: 'lake' }] },
      { call: 'pack', with: { people: '=people', spot: 'lake', dish: '=dish' } },
    ],
    [
      'are given from what holds them',
      { say: 'packed', with: { 'the-outing': '=heard.last', dish: 'soup' } },
      { say: 'packed', with: { people: '=heard.last.people', spot: '=heard.last.spot', dish: 'soup' } },
    ],
    [
      'are taken from what holds them',
      { set: { 'the-outing': '=basket', dish: null } },
      { set: { people: '=basket.people', spot: '=basket.spot', dish: null } },
    ],
    ['are forgotten', { set: { 'the-outing': null } }, { set: { people: null, spot: null } }],
    [
      'are meant in lines within a line',
      { do: [{ set: { 'the-outing': null } }] },
      { do: [{ set: { people: null, spot: null } }] },
    ],
  ])('%s', (_, short, long) => {
    const { line, problems } = linesRead(short);
    expect(problems).toEqual([]);
    expect(line).toEqual(writtenOut(long));
  });

  it('are taken along, and fall with another', () => {
    const listens = { facts: { dish: ['the-outing', 'blanket'] } };
    const { flow } = linesRead('packed', { listens });
    expect(flow.takes).toEqual(['people', 'spot']);
    expect(flow.listens.facts['dish']).toEqual({ clears: ['people', 'spot', 'blanket'] });
  });
});

describe('what would lead astray', () => {
  it.each<[string, RawLine, Partial<RawFlow>, string]>([
    [
      'a value for all of them',
      { set: { 'the-outing': 3 } },
      {},
      'hears.0.set.the-outing: null, or the name of what holds these facts (=earlier)',
    ],
    [
      'something worked out for all of them',
      { set: { 'the-outing': '=people + 1' } },
      {},
      'hears.0.set.the-outing: null, or the name of what holds these facts (=earlier)',
    ],
    [
      'a name that is a fact',
      { with: ['dish'], say: 'packed' },
      { together: { dish: ['people'] } },
      'together.dish: a name that no fact has',
    ],
    ['a name that nothing names', 'packed', { takes: [] }, 'together.the-outing: something that names "the-outing"'],
  ])('%s', (_, line, more, problem) => {
    expect(linesRead(line, more).problems).toContain(problem);
  });
});
