/** What a parsed sentence refers to: its variables, functions and other sentences. */
import type { FluentResource } from '@fluent/bundle';

export type Entry = FluentResource['body'][number];
type Pattern = NonNullable<Entry['value']>;
type Expression = Exclude<Exclude<Pattern, string>[number], string>;

export interface References {
  readonly variables: ReadonlySet<string>;
  readonly functions: ReadonlySet<string>;
  /** Ids of messages and, with a leading dash, of terms. */
  readonly entries: ReadonlySet<string>;
}

/** What this entry's value and attributes mention directly. */
export function referencesOf(entry: Entry): References {
  const found = { variables: new Set<string>(), functions: new Set<string>(), entries: new Set<string>() };
  const readPattern = (pattern: Pattern): void => {
    if (typeof pattern !== 'string') pattern.forEach((part) => typeof part !== 'string' && readExpression(part));
  };
  const readExpression = (part: Expression): void => {
    if (part.type === 'var') found.variables.add(part.name);
    if (part.type === 'mesg') found.entries.add(part.name);
    if (part.type === 'term') found.entries.add(`-${part.name}`);
    if (part.type === 'func') found.functions.add(part.name);
    if (part.type === 'func' || part.type === 'term') {
      part.args.forEach((argument) => argument.type !== 'narg' && readExpression(argument));
    }
    if (part.type === 'select') {
      readExpression(part.selector);
      part.variants.forEach((variant) => readPattern(variant.value));
    }
  };
  if (entry.value !== null) readPattern(entry.value);
  Object.values(entry.attributes).forEach(readPattern);
  return found;
}

/** The variables of an entry and of all it mentions. */
export function variablesOf(id: string, entries: ReadonlyMap<string, Entry>): ReadonlySet<string> {
  const seen = new Set<string>();
  const variables = new Set<string>();
  const visit = (name: string): void => {
    const entry = entries.get(name);
    if (!entry || seen.has(name)) return;
    seen.add(name);
    const references = referencesOf(entry);
    references.variables.forEach((v) => variables.add(v));
    references.entries.forEach(visit);
  };
  visit(id);
  return variables;
}
