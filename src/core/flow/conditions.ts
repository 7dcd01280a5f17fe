/** Conditions a flow has given names to: puts each in the place of its name. Evaluates nothing. */
import { readExpression, type Expression } from './expression.ts';
import type { FlowProblem, Path } from './parse.ts';
import type { RawCondition } from './raw.ts';
import { toldNames } from './scope.ts';

const noExpression: Expression = { op: 'value', value: null };

export class Conditions {
  readonly #named = new Map<string, Expression>();
  readonly #used = new Set<string>();
  readonly #problems: FlowProblem[];

  /** A condition may be made of those named before it. */
  constructor(raw: { readonly [name: string]: RawCondition } | undefined, problems: FlowProblem[]) {
    this.#problems = problems;
    for (const [name, condition] of Object.entries(raw ?? {})) {
      this.#named.set(name, this.condition(condition, ['conditions', name]));
    }
  }

  /** Of several each must hold. */
  condition(raw: RawCondition, path: Path): Expression {
    if (typeof raw === 'string') return this.expression(raw, path);
    return raw
      .map((one, i) => this.expression(one, [...path, i]))
      .reduce((left, right): Expression => ({ op: 'two', by: 'and', left, right }));
  }

  expression(text: string, path: Path): Expression {
    const read = readExpression(text);
    if ('expression' in read) return this.#writtenOut(read.expression);
    const { offset, expected } = read.problem;
    this.#problems.push({ path, expected: `${expected} at character ${offset + 1} of "${text}"` });
    return noExpression;
  }

  #writtenOut(expression: Expression): Expression {
    const { op } = expression;
    if (op === 'value') return expression;
    if (op === 'name') return this.#meant(expression.path) ?? expression;
    if (op === 'list') return { op, items: expression.items.map((item) => this.#writtenOut(item)) };
    if (op !== 'two') return { op, of: this.#writtenOut(expression.of) };
    const { by, left, right } = expression;
    return { op, by, left: this.#writtenOut(left), right: this.#writtenOut(right) };
  }

  #meant([name = '', ...further]: readonly string[]): Expression | undefined {
    const meant = further.length > 0 ? undefined : this.#named.get(name);
    if (meant) this.#used.add(name);
    return meant;
  }

  /** What would lead astray whoever reads on: a name that stands for something else as well, and one that nothing names. */
  noteWrong(facts: ReadonlySet<string>): void {
    for (const name of this.#named.keys()) {
      const path = ['conditions', name];
      if (facts.has(name) || toldNames.includes(name)) {
        this.#problems.push({ path, expected: 'a name that no fact has' });
      } else if (!this.#used.has(name)) this.#problems.push({ path, expected: `something that names "${name}"` });
    }
  }
}
