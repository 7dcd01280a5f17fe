/** The small language of conditions and computed values: its tree, and reading it from text. Evaluates nothing. */

export type Expression =
  | { readonly op: 'value'; readonly value: string | number | boolean | null }
  | { readonly op: 'name'; readonly path: readonly string[] }
  | { readonly op: 'list'; readonly items: readonly Expression[] }
  | { readonly op: 'not' | 'minus' | 'known' | 'empty' | 'count'; readonly of: Expression }
  | { readonly op: 'two'; readonly by: BinaryOperator; readonly left: Expression; readonly right: Expression };

export type BinaryOperator = 'and' | 'or' | 'is' | 'in' | '<' | '<=' | '>' | '>=' | '+' | '-' | '*' | '/';

export interface ExpressionProblem {
  /** Characters from the start of the text. */
  readonly offset: number;
  readonly expected: string;
}

export type ReadExpression = { readonly expression: Expression } | { readonly problem: ExpressionProblem };

interface Token {
  readonly text: string;
  readonly offset: number;
}

const tokenPattern = /\s*(?:('[^']*')|(\d+(?:\.\d+)?)|([A-Za-z][\w.-]*)|(<=|>=|[<>()[\],+*/-]))/y;
const endOfText = '';

class Unexpected extends Error {
  readonly problem: ExpressionProblem;
  constructor(problem: ExpressionProblem) {
    super(problem.expected);
    this.problem = problem;
  }
}

/**
 * Reads `volumeMl > 200 and tea is known`. Words: and, or, not, is, is not, is known, is unknown, is empty, in, count( );
 * texts in single quotes; names with dots. A minus needs a space before it, since names may hold dashes.
 */
export function readExpression(text: string): ReadExpression {
  try {
    const reader = new Reader(tokensOf(text));
    const expression = reader.either();
    reader.end();
    return { expression };
  } catch (error) {
    if (error instanceof Unexpected) return { problem: error.problem };
    throw error;
  }
}

function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = [];
  const pattern = new RegExp(tokenPattern);
  const end = text.trimEnd().length;
  while (pattern.lastIndex < end) {
    const offset = text.length - text.slice(pattern.lastIndex).trimStart().length;
    const match = pattern.exec(text);
    if (!match) throw new Unexpected({ offset, expected: "a name, a number, a 'text' or an operator" });
    tokens.push({ text: match[0].trimStart(), offset: pattern.lastIndex - match[0].trimStart().length });
  }
  return [...tokens, { text: endOfText, offset: end }];
}

const comparisons: ReadonlySet<string> = new Set(['<', '<=', '>', '>=', 'in']);
const words: ReadonlySet<string> = new Set(['and', 'or', 'not', 'is', 'in', 'known', 'unknown', 'empty']);

class Reader {
  readonly #tokens: readonly Token[];
  #at = 0;

  constructor(tokens: readonly Token[]) {
    this.#tokens = tokens;
  }

  either(): Expression {
    return this.#chain(['or'], () => this.#all());
  }

  end(): void {
    if (this.#next().text !== endOfText) this.#refuse('the end, or "and", "or", "is", a comparison');
  }

  #all(): Expression {
    return this.#chain(['and'], () => this.#negation());
  }

  #negation(): Expression {
    return this.#take('not') ? { op: 'not', of: this.#negation() } : this.#comparison();
  }

  #comparison(): Expression {
    const left = this.#sum();
    if (this.#take('is')) return this.#state(left);
    const operator = this.#next().text;
    if (!comparisons.has(operator)) return left;
    this.#at++;
    return { op: 'two', by: operator as BinaryOperator, left, right: this.#sum() };
  }

  #state(left: Expression): Expression {
    if (this.#take('not')) return { op: 'not', of: this.#state(left) };
    if (this.#take('known')) return { op: 'known', of: left };
    if (this.#take('unknown')) return { op: 'not', of: { op: 'known', of: left } };
    if (this.#take('empty')) return { op: 'empty', of: left };
    return { op: 'two', by: 'is', left, right: this.#sum() };
  }

  #sum(): Expression {
    return this.#chain(['+', '-'], () => this.#product());
  }

  #product(): Expression {
    return this.#chain(['*', '/'], () => this.#unary());
  }

  #unary(): Expression {
    return this.#take('-') ? { op: 'minus', of: this.#unary() } : this.#primary();
  }

  #primary(): Expression {
    const { text } = this.#next();
    this.#at++;
    if (text === '(') return this.#closing(this.either(), ')');
    if (text === '[') return this.#list();
    if (text === 'count' && this.#take('(')) return { op: 'count', of: this.#closing(this.either(), ')') };
    if (text === 'true' || text === 'false') return { op: 'value', value: text === 'true' };
    if (text === 'null') return { op: 'value', value: null };
    if (/^\d/.test(text)) return { op: 'value', value: Number(text) };
    if (text.startsWith("'")) return { op: 'value', value: text.slice(1, -1) };
    if (/^[A-Za-z]/.test(text) && !words.has(text)) return { op: 'name', path: text.split('.') };
    this.#at--;
    return this.#refuse("a name, a number, a 'text', [ or (");
  }

  #list(): Expression {
    const items: Expression[] = [];
    while (!this.#take(']')) {
      items.push(this.either());
      if (this.#next().text !== ']' && !this.#take(',')) this.#refuse('"," or "]"');
    }
    return { op: 'list', items };
  }

  #chain(operators: readonly string[], operand: () => Expression): Expression {
    let left = operand();
    while (operators.includes(this.#next().text)) {
      const by = this.#next().text as BinaryOperator;
      this.#at++;
      left = { op: 'two', by, left, right: operand() };
    }
    return left;
  }

  #closing(inner: Expression, bracket: string): Expression {
    return this.#take(bracket) ? inner : this.#refuse(`"${bracket}"`);
  }

  #next(): Token {
    return this.#tokens[Math.min(this.#at, this.#tokens.length - 1)]!;
  }

  #take(text: string): boolean {
    const taken = this.#next().text === text;
    if (taken) this.#at++;
    return taken;
  }

  #refuse(expected: string): never {
    throw new Unexpected({ offset: this.#next().offset, expected });
  }
}

/** The names an expression reads, each as its path. */
export function namesIn(expression: Expression): readonly (readonly string[])[] {
  if (expression.op === 'value') return [];
  if (expression.op === 'name') return [expression.path];
  if (expression.op === 'list') return expression.items.flatMap(namesIn);
  if (expression.op === 'two') return [...namesIn(expression.left), ...namesIn(expression.right)];
  return namesIn(expression.of);
}
