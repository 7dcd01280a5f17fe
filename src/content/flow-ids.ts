/** The ids of the data that flow files write out: a vessel, a family, a style or a tea named there must be one there is. */
import type { Flow, Value, Values } from '../core/flow/book.ts';
import type { Expression } from '../core/flow/expression.ts';
import { choicesOf, expressionsOf, linesOf } from '../core/flow/outline.ts';
import type { FlowProblem, Path } from '../core/flow/parse.ts';

/** By the name of the fact that holds one: all the ids there are. */
export type Ids = { readonly [fact: string]: readonly string[] };

interface Written {
  readonly fact: string;
  readonly ids: readonly string[];
  readonly path: Path;
}

export function wrongIds(flow: Flow, ids: Ids): readonly FlowProblem[] {
  return writtenIn(flow).flatMap(({ fact, ids: written, path }) => {
    const known = Object.hasOwn(ids, fact) ? ids[fact]! : written;
    return written
      .filter((id) => !known.includes(id))
      .map((id) => ({ path, expected: `a ${fact} of data (${known.join(', ')}), not "${id}"` }));
  });
}

function writtenIn(flow: Flow): readonly Written[] {
  return [
    ...expressionsOf(flow).flatMap(({ expression, path }) => compared(expression, path)),
    ...linesOf(flow).flatMap(({ line, path }) => [
      ...given(line.set, [...path, 'set']),
      ...given(line.with, [...path, 'with']),
    ]),
    ...choicesOf(flow).flatMap(({ choice, path }) => [
      ...given(choice.gives, [...path, 'gives']),
      ...offered(choice.gives, choice.each, [...path, 'each']),
    ]),
  ];
}

/** `vessel in ['mug', 'thermos']`, `heard.style is 'cold'`. */
function compared(expression: Expression, path: Path): readonly Written[] {
  if (expression.op === 'list') return expression.items.flatMap((item) => compared(item, path));
  if (expression.op === 'value' || expression.op === 'name') return [];
  if (expression.op !== 'two') return compared(expression.of, path);
  const { by, left, right } = expression;
  if (left.op === 'name' && (by === 'is' || by === 'in')) return [{ fact: left.path.at(-1)!, ids: texts(right), path }];
  return [...compared(left, path), ...compared(right, path)];
}

function given(values: Values | null, path: Path): readonly Written[] {
  return Object.entries(values ?? {}).map(([fact, value]) => ({ fact, ids: plain(value), path: [...path, fact] }));
}

/** One choice of each item of a list that is written out. */
function offered(gives: Values, each: Expression | null, path: Path): readonly Written[] {
  if (each === null) return [];
  const facts = Object.entries(gives).filter(([, value]) => 'computed' in value && isItem(value.computed));
  return facts.map(([fact]) => ({ fact, ids: texts(each), path }));
}

const isItem = (expression: Expression): boolean =>
  expression.op === 'name' && expression.path.length === 1 && expression.path[0] === 'item';

const plain = (value: Value): readonly string[] => ('is' in value && typeof value.is === 'string' ? [value.is] : []);

function texts(expression: Expression): readonly string[] {
  if (expression.op === 'list') return expression.items.flatMap(texts);
  return expression.op === 'value' && typeof expression.value === 'string' ? [expression.value] : [];
}
