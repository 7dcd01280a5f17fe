import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/core/flow/evaluate.ts';
import { readExpression, type Expression } from '../../../src/core/flow/expression.ts';
import type { Json } from '../../../src/core/flow/flow.ts';
import { writeExpression } from '../../../src/core/flow/write-expression.ts';

const facts: { readonly [name: string]: Json } = {
  tea: 'keemun',
  ml: 200,
  none: null,
  list: ['a', 'b'],
  on: true,
  off: false,
};
const lookup = (path: readonly string[]): Json => (path.length === 1 ? (facts[path[0]!] ?? null) : null);

function valueOf(text: string): Json {
  const read = readExpression(text);
  if ('problem' in read) throw new Error(`${read.problem.offset}: ${read.problem.expected}`);
  return evaluate(read.expression, lookup);
}

describe('expressions', () => {
  it.each<[string, Json]>([
    ['tea', 'keemun'],
    ["tea is 'keemun'", true],
    ["tea is not 'keemun'", false],
    ['tea is known', true],
    ['none is known', false],
    ['none is unknown', true],
    ['nothing.at.all is unknown', true],
    ['list is empty', false],
    ['none is empty', true],
    ["'' is empty", true],
    ["tea in ['assam', 'keemun']", true],
    ["'c' in list", false],
    ["not 'c' in list", true],
    ['ml > 100 and ml <= 200', true],
    ['ml < 100 or on', true],
    ['not on or off', false],
    ['off and on or on', true],
    ['count(list)', 2],
    ['count(tea) > 5', true],
    ['1 + 2 * 3', 7],
    ['(1 + 2) * 3', 9],
    ['-ml + 1', -199],
    ['10 - 2 - 3', 5],
    ['ml / 0', null],
    ['none + 1', null],
    ['none > 1', false],
    ['none <= 1', false],
    ['[1, ml, none]', [1, 200, null]],
    ['list is list', true],
  ])('%s', (text, value) => {
    expect(valueOf(text)).toEqual(value);
  });

  it.each([
    ['', 0],
    ['tea is', 6],
    ['tea keemun', 4],
    ['(tea', 4],
    ["tea is 'keemun", 7],
    ['tea ~ 5', 4],
    ['and', 0],
    ['count(list', 10],
    ['[1 2]', 3],
    ['tea is known known', 13],
  ])('%j is refused at character %d', (text, offset) => {
    expect(readExpression(text)).toMatchObject({ problem: { offset } });
  });
});

const leaf: fc.Arbitrary<Expression> = fc.oneof(
  fc.record({
    op: fc.constant('name' as const),
    path: fc.array(fc.constantFrom('tea', 'ml', 'none', 'on'), { minLength: 1, maxLength: 3 }),
  }),
  fc.record({
    op: fc.constant('value' as const),
    value: fc.oneof(fc.boolean(), fc.constant(null), fc.nat(999), fc.constantFrom('a', 'b c', '')),
  }),
);
const { tree } = fc.letrec<{ tree: Expression }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 4 },
    leaf,
    fc.record({ op: fc.constant('list' as const), items: fc.array(tie('tree'), { maxLength: 3 }) }),
    fc.record({
      op: fc.constantFrom('not' as const, 'minus' as const, 'known' as const, 'empty' as const, 'count' as const),
      of: tie('tree'),
    }),
    fc.record({
      op: fc.constant('two' as const),
      by: fc.constantFrom(
        'and' as const,
        'or' as const,
        'is' as const,
        'in' as const,
        '<' as const,
        '>=' as const,
        '+' as const,
        '-' as const,
        '*' as const,
        '/' as const,
      ),
      left: tie('tree'),
      right: tie('tree'),
    }),
  ),
}));

describe('laws', { timeout: 60_000 }, () => {
  it('what is written reads back as the same tree', () => {
    fc.assert(
      fc.property(tree, (expression) => {
        expect(readExpression(writeExpression(expression))).toEqual({ expression });
      }),
      { numRuns: 200 },
    );
  });

  it('any tree gives a value that is JSON, and never throws', () => {
    fc.assert(
      fc.property(tree, (expression) => {
        const value = evaluate(expression, lookup);
        expect(JSON.parse(JSON.stringify(value))).toEqual(value);
      }),
      { numRuns: 200 },
    );
  });

  it('any text is read or refused within its length', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const read = readExpression(text);
        if ('problem' in read) expect(read.problem.offset).toBeLessThanOrEqual(text.length);
      }),
      { numRuns: 200 },
    );
  });
});
