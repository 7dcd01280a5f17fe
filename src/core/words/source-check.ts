/**
 * Finds what is wrong in one language's sentences. The parser leaves out a broken sentence without
 * a word; here each becomes a problem with its line and column.
 */
import { FluentResource } from '@fluent/bundle';
import { referencesOf, type Entry } from './pattern.ts';

export interface WordsProblem {
  readonly line: number;
  readonly column: number;
  readonly expected: string;
}

export interface WordsSource {
  readonly text: string;
  /** As the library reads it. */
  readonly resource: FluentResource;
  readonly entries: ReadonlyMap<string, Entry>;
  readonly lines: ReadonlyMap<string, number>;
  readonly problems: readonly WordsProblem[];
}

const entryStart = /^(-?[a-zA-Z][\w-]*) *=/;

/** One .ftl text; `functions` are the names a sentence may call, null when the text was found right before. */
export function readWordsSource(text: string, functions: ReadonlySet<string> | null): WordsSource {
  const resource = new FluentResource(text);
  const entries = new Map(resource.body.map((entry) => [entry.id, entry] as const));
  const rows = text.split(/\r?\n/);
  const lines = linesOf(rows);
  const problems = functions ? problemsOf(rows, { entries, lines, functions }) : [];
  return { text, resource, entries, lines, problems };
}

/** Where each entry begins. */
function linesOf(rows: readonly string[]): ReadonlyMap<string, number> {
  const lines = new Map<string, number>();
  rows.forEach((row, i) => {
    const id = entryStart.exec(row)?.[1];
    if (id !== undefined && !lines.has(id)) lines.set(id, i + 1);
  });
  return lines;
}

function problemsOf(
  rows: readonly string[],
  { entries, lines, functions }: Pick<WordsSource, 'entries' | 'lines'> & Pick<Surroundings, 'functions'>,
): readonly WordsProblem[] {
  const braces = strayBraces(rows);
  const broken = rows.flatMap((row, i) => brokenRow(row, i + 1, { entries, lines }));
  const problems = [
    ...braces,
    ...broken.filter(({ line }) => !braces.some((brace) => brace.line === line)),
    ...[...entries.values()].flatMap((entry) =>
      brokenReferences(entry, { line: lines.get(entry.id) ?? 1, entries, functions }),
    ),
  ];
  return problems.toSorted((a, b) => a.line - b.line || a.column - b.column);
}

/** Blank, comment, or part of the entry above: indented, or the brace that closes a placeable. */
const isContinuation = (row: string): boolean => /^(#{1,3}( |$)| +\S|\s*$|\})/.test(row);

function brokenRow(
  row: string,
  line: number,
  { entries, lines }: Pick<WordsSource, 'entries' | 'lines'>,
): WordsProblem[] {
  const id = entryStart.exec(row)?.[1];
  if (id === undefined) {
    const expected = 'a comment (#), "key = sentence", or an indented line of a sentence';
    return isContinuation(row) ? [] : [{ line, column: 1, expected }];
  }
  const first = lines.get(id);
  if (first !== line) return [{ line, column: 1, expected: `"${id}" once; it is first at line ${first}` }];
  const expected = `a sentence after "${id} =" in Fluent syntax: closed { }, quoted texts, one *[default] in each choice`;
  return entries.has(id) ? [] : [{ line, column: id.length + 1, expected }];
}

/** A closing brace where none is open. */
function strayBraces(rows: readonly string[]): WordsProblem[] {
  const problems: WordsProblem[] = [];
  let depth = 0;
  for (const [i, row] of rows.entries()) {
    if (row.startsWith('#')) continue;
    if (entryStart.test(row)) depth = 0;
    const bare = row.replace(/\{ *"(?:[^"\\]|\\.)*" *\}/g, (quoted) => ' '.repeat(quoted.length));
    for (const { 0: brace, index } of bare.matchAll(/[{}]/g)) {
      depth += brace === '{' ? 1 : -1;
      if (depth < 0) problems.push({ line: i + 1, column: index + 1, expected: 'no "}" here, since no "{" is open' });
      depth = Math.max(0, depth);
    }
  }
  return problems;
}

interface Surroundings {
  readonly line: number;
  readonly entries: ReadonlyMap<string, Entry>;
  readonly functions: ReadonlySet<string>;
}

function brokenReferences(entry: Entry, { line, entries, functions }: Surroundings): WordsProblem[] {
  const references = referencesOf(entry);
  const column = entry.id.length + 1;
  const unknown = (what: string, name: string): WordsProblem => ({
    line,
    column,
    expected: `a known ${what} in "${entry.id}", not ${name}`,
  });
  return [
    ...[...references.functions].filter((f) => !functions.has(f)).map((f) => unknown('function', `${f}()`)),
    ...[...references.entries].filter((id) => !entries.has(id)).map((id) => unknown('sentence', `{ ${id} }`)),
  ];
}
