import { describe, expect, it } from 'vitest';
import { parseFlow } from '../../../src/core/flow/parse.ts';
import type { RawFlow, RawLine } from '../../../src/core/flow/raw.ts';
import { picnic } from './picnic.ts';

const conditions = { 'fine-day': "heard.sky is 'blue' or heard.warm", outing: ['fine-day', 'people > 1'] };

function lineRead(line: RawLine, more: Partial<RawFlow> = {}) {
  const { flow, problems } = parseFlow({ ...picnic, conditions, ...more, hears: [line] }, 'x');
  return { line: flow.hears[0], problems: problems.map(({ path, expected }) => `${path.join('.')}: ${expected}`) };
}

/** The same line with every condition written out. */
const writtenOut = (line: RawLine) => parseFlow({ ...picnic, hears: [line] }, 'x').flow.hears[0];

describe('conditions by name', () => {
  it.each<[string, RawLine, RawLine]>([
    [
      'stand for what they are, as one',
      { when: 'not fine-day and outing', say: 'packed' },
      {
        when: "not (heard.sky is 'blue' or heard.warm) and ((heard.sky is 'blue' or heard.warm) and people > 1)",
        say: 'packed',
      },
    ],
    [
      'stand in what is worked out',
      { when: 'outing', set: { dry: '=count([fine-day])' } },
      {
        when: "(heard.sky is 'blue' or heard.warm) and people > 1",
        set: { dry: "=count([heard.sky is 'blue' or heard.warm])" },
      },
    ],
    [
      'leave alone what only begins so',
      { when: 'outing and fine-day.late', say: 'packed' },
      { when: "((heard.sky is 'blue' or heard.warm) and people > 1) and fine-day.late", say: 'packed' },
    ],
  ])('%s', (_, short, long) => {
    const { line, problems } = lineRead(short);
    expect(problems).toEqual([]);
    expect(line).toEqual(writtenOut(long));
  });

  it('may be several, of which each must hold', () => {
    const { line, problems } = lineRead({ when: ['outing', 'dish is known', 'people < 9'], say: 'packed' });
    expect(problems).toEqual([]);
    expect(line).toEqual(
      writtenOut({
        when: "(heard.sky is 'blue' or heard.warm) and people > 1 and dish is known and people < 9",
        say: 'packed',
      }),
    );
  });
});

describe('what would lead astray', () => {
  it.each<[string, Partial<RawFlow>, string]>([
    ['a name that nothing names', {}, 'conditions.idle: something that names "idle"'],
    ['a name that is a fact', { takes: ['idle'] }, 'conditions.idle: a name that no fact has'],
  ])('%s', (_, more, problem) => {
    const named = { ...conditions, idle: 'people is unknown' };
    expect(lineRead({ when: 'outing', say: 'packed' }, { ...more, conditions: named }).problems).toEqual([problem]);
  });

  it('a name the engine has', () => {
    const named = { ...conditions, place: 'people is unknown' };
    const { problems } = lineRead({ when: 'outing and place', say: 'packed' }, { conditions: named });
    expect(problems).toEqual(['conditions.place: a name that no fact has']);
  });

  it('one of several that cannot be read is told by its place', () => {
    const { problems } = lineRead({ when: ['outing', 'dish is'], say: 'packed' });
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(/^hears\.0\.when\.1: .* at character 8 of "dish is"$/);
  });
});
