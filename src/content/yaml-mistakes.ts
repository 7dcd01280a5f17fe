/** What is wrong with a value of a YAML file, in plain words: what was expected there, and what stands there instead. */
import type { z } from 'zod';

export interface YamlMistake {
  /** Where it is; a word that is not known is the last of it. */
  readonly path: readonly PropertyKey[];
  /** Whether the path ends in a word of the file itself, not in its value. */
  readonly isKey: boolean;
  readonly message: string;
}

const kinds: { readonly [type: string]: string } = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'words with their values, such as "word: value"',
  record: 'words with their values, such as "word: value"',
};

/** For zod: the sentence of an issue that its schema has none for. */
export function plainly(issue: z.core.$ZodRawIssue): string | undefined {
  const found = issue.input === undefined ? ', but it is missing' : `, not ${shown(issue.input)}`;
  if (issue.code === 'unrecognized_keys') return `expected ${wordsKnown(issue)}`;
  const wanted = wantedBy(issue);
  return wanted === null ? undefined : `expected ${wanted}${found}`;
}

function wantedBy(issue: z.core.$ZodRawIssue): string | null {
  if (issue.code === 'invalid_type') return kinds[issue.expected] ?? issue.expected;
  if (issue.code === 'invalid_value') return oneOf(issue.values.map(String));
  if (issue.code === 'too_small') {
    return amount(issue.origin, `${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}`);
  }
  if (issue.code !== 'too_big') return null;
  return amount(issue.origin, `${issue.inclusive === false ? 'less than' : 'at most'} ${issue.maximum}`);
}

const oneOf = (words: readonly string[]): string => `${words.length > 1 ? 'one of ' : ''}${words.join(', ')}`;

/** Every mistake of a parse, each once: of shapes that may stand there, the one that comes nearest tells what is wrong. */
export const mistakesOf = (error: z.ZodError): readonly YamlMistake[] => error.issues.flatMap((one) => told(one, []));

function told(issue: z.core.$ZodIssue, above: readonly PropertyKey[]): readonly YamlMistake[] {
  const path = [...above, ...issue.path];
  if (issue.code === 'invalid_union' && issue.message === 'Invalid input') {
    const nearest = issue.errors.toSorted((a, b) => a.length - b.length)[0] ?? [];
    if (nearest.length > 0) return nearest.flatMap((one) => told(one, path));
  }
  if (issue.code !== 'unrecognized_keys') return [{ path, isKey: false, message: issue.message }];
  return issue.keys.map((key) => ({ path: [...path, key], isKey: true, message: `${issue.message}, not "${key}"` }));
}

interface Shaped {
  readonly def?: { readonly shape?: object; readonly keyType?: { readonly options?: readonly string[] } };
}

function wordsKnown({ inst }: z.core.$ZodRawIssue): string {
  const { shape, keyType } = (inst as Shaped | undefined)?.def ?? {};
  const known = shape ? Object.keys(shape) : (keyType?.options ?? []);
  return known.length > 0 ? oneOf(known) : 'a word that is known here';
}

function amount(origin: string, much: string): string {
  if (origin === 'string') return much === 'at least 1' ? 'text' : `${much} characters`;
  return origin === 'array' ? `${much} of them` : much;
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  if (value !== null && typeof value === 'object') return 'words with their values';
  return typeof value === 'string' ? `"${value}"` : String(value);
}
