/** Works out conditions and values against what is known. Unknown names are null, never an error. */
import type { BinaryOperator, Expression } from './expression.ts';
import type { Value, Values } from './book.ts';
import type { Facts, Json } from './flow.ts';

/** What a name stands for; null where nothing is known. */
export type Lookup = (path: readonly string[]) => Json;

export const isKnown = (value: Json | undefined): boolean => value !== null && value !== undefined;

/** Same value, compared as JSON writes it. */
export const isSame = (a: Json, b: Json): boolean =>
  a === b || (isObject(a) && isObject(b) && JSON.stringify(a) === JSON.stringify(b));

const isObject = (value: Json): boolean => typeof value === 'object' && value !== null;

export function evaluate(expression: Expression, lookup: Lookup): Json {
  if (expression.op === 'value') return expression.value;
  if (expression.op === 'name') return lookup(expression.path);
  if (expression.op === 'list') return expression.items.map((item) => evaluate(item, lookup));
  if (expression.op === 'two') return combine(expression, lookup);
  return ofOne[expression.op](evaluate(expression.of, lookup));
}

const ofOne: { readonly [op in 'not' | 'minus' | 'known' | 'empty' | 'count']: (value: Json) => Json } = {
  not: (value) => !value,
  minus: (value) => finiteOrNull(-numberOf(value)),
  known: isKnown,
  empty: (value) => countOf(value) === 0,
  count: (value) => countOf(value),
};

function combine({ by, left, right }: Extract<Expression, { op: 'two' }>, lookup: Lookup): Json {
  if (by === 'and') return holds(left, lookup) && holds(right, lookup);
  if (by === 'or') return holds(left, lookup) || holds(right, lookup);
  const [a, b] = [evaluate(left, lookup), evaluate(right, lookup)];
  if (by === 'is') return isSame(a, b);
  return by === 'in' ? contains(b, a) : calculations[by](numberOf(a), numberOf(b));
}

/** Null, false, 0 and the empty text do not hold. */
export const holds = (expression: Expression | null, lookup: Lookup): boolean =>
  expression === null || Boolean(evaluate(expression, lookup));

const contains = (list: Json, item: Json): boolean =>
  Array.isArray(list) && list.some((one: Json) => isSame(one, item));

function countOf(value: Json): number {
  if (typeof value === 'string' || Array.isArray(value)) return value.length;
  return value === null ? 0 : 1;
}

type Calculation = Exclude<BinaryOperator, 'and' | 'or' | 'is' | 'in'>;

/** An unknown number is not smaller or larger than anything, and makes every sum unknown. */
const calculations: { readonly [by in Calculation]: (a: number, b: number) => Json } = {
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
  '+': (a, b) => finiteOrNull(a + b),
  '-': (a, b) => finiteOrNull(a - b),
  '*': (a, b) => finiteOrNull(a * b),
  '/': (a, b) => finiteOrNull(a / b),
};

const numberOf = (value: Json): number => (typeof value === 'number' ? value : Number.NaN);
/** Also turns −0, which JSON does not keep, into 0. */
const finiteOrNull = (n: number): number | null => (Number.isFinite(n) ? n + 0 : null);

/** A value of a flow file with its computed parts worked out. */
export function valueOf(value: Value, lookup: Lookup): Json {
  if ('is' in value) return value.is;
  if ('computed' in value) return evaluate(value.computed, lookup);
  if ('list' in value) return value.list.map((item) => valueOf(item, lookup));
  return factsOf(value.map, lookup);
}

export function factsOf(values: Values, lookup: Lookup): Facts {
  const facts: { [name: string]: Json } = {};
  for (const [name, value] of Object.entries(values)) facts[name] = valueOf(value, lookup);
  return facts;
}
