/** Facts that go together by one name: writes them out wherever a flow names them. Knows no values. */
import type { FlowProblem, Path } from './parse.ts';
import type { RawFlow, RawValues, RawWith } from './raw.ts';

/** What holds facts, by its name: `=earlier`, `=plan.kept`. */
const holder = /^=[\w.-]+$/;

export class Together {
  readonly #lists: ReadonlyMap<string, readonly string[]>;
  readonly #problems: FlowProblem[];
  readonly #used = new Set<string>();

  constructor(raw: RawFlow['together'], problems: FlowProblem[]) {
    this.#lists = new Map(Object.entries(raw ?? {}));
    this.#problems = problems;
  }

  /** A name of several is each of them. */
  facts(names: readonly string[]): readonly string[] {
    return names.flatMap((name) => this.#listed(name) ?? [name]);
  }

  /** The name of several beside null is each of them forgotten, beside what holds them each of them taken from it. */
  values(raw: RawValues, path: Path): RawValues {
    const all = Object.entries(raw).map(([name, value]): RawValues => {
      const listed = this.#listed(name);
      if (listed === undefined) return { [name]: value };
      if (value === null) return Object.fromEntries(listed.map((fact) => [fact, null]));
      if (typeof value === 'string' && holder.test(value)) {
        return Object.fromEntries(listed.map((fact) => [fact, `${value}.${fact}`]));
      }
      this.#problems.push({
        path: [...path, name],
        expected: 'null, or the name of what holds these facts (=earlier)',
      });
      return {};
    });
    return Object.assign({}, ...all) as RawValues;
  }

  /** What a line gives beside a function or a sentence: facts as they are, or values by name. The last of a name holds. */
  given(raw: RawWith, path: Path): RawValues {
    if (!isList(raw)) return this.values(raw, path);
    const all = raw.map((one, i) =>
      typeof one === 'string'
        ? Object.fromEntries(this.facts([one]).map((fact) => [fact, `=${fact}`]))
        : this.values(one, [...path, i]),
    );
    return Object.assign({}, ...all) as RawValues;
  }

  /** What would lead astray whoever reads on: a name that is a fact as well, and one that nothing names. */
  noteWrong(facts: ReadonlySet<string>): void {
    for (const name of this.#lists.keys()) {
      const path = ['together', name];
      if (facts.has(name)) this.#problems.push({ path, expected: 'a name that no fact has' });
      else if (!this.#used.has(name)) this.#problems.push({ path, expected: `something that names "${name}"` });
    }
  }

  #listed(name: string): readonly string[] | undefined {
    const listed = this.#lists.get(name);
    if (listed) this.#used.add(name);
    return listed;
  }
}

const isList = (raw: RawWith): raw is readonly (string | RawValues)[] => Array.isArray(raw);
