/**
 * Finds what is wrong in one language's sentences. The parser leaves out a broken sentence, or cuts it short, without
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
  readonly entries: ReadonlyMap<string, Entry>;
  readonly lines: ReadonlyMap<string, number>;
  readonly problems: readonly WordsProblem[];
}

const entryStart = /^(-?[a-zA-Z][\w-]*) *=/;

/** Reads one .ftl text; `functions` are the names a sentence may call. */
export function readWordsSource(text: string, functions: ReadonlySet<string>): WordsSource {
  const parsed = new Map(new FluentResource(text).body.map((entry) => [entry.id, entry] as const));
  const problems: WordsProblem[] = [];
  const lines = new Map<string, number>();
  text.split(/\r?\n/).forEach((content, index) => {
    const line = index + 1;
    const id = entryStart.exec(content)?.[1];
    if (id !== undefined) {
      if (lines.has(id))
        problems.push({ line, column: 1, expected: `"${id}" once; it is first at line ${lines.get(id)}` });
      else lines.set(id, line);
      if (!parsed.has(id)) problems.push({ line, column: id.length + 1, expected: brokenEntry(id) });
    } else if (!isContinuation(content)) {
      problems.push({
        line,
        column: 1,
        expected: 'a comment (#), "key = sentence", or an indented line of a sentence',
      });
    }
  });
  problems.push(...strayBraces(text, lines));
  for (const [id, entry] of parsed)
    problems.push(...brokenReferences(entry, { line: lines.get(id) ?? 1, parsed, functions }));
  return { entries: parsed, lines, problems: problems.toSorted((a, b) => a.line - b.line || a.column - b.column) };
}

const brokenEntry = (id: string): string =>
  `a sentence after "${id} =" in Fluent syntax: closed { }, quoted texts, one *[default] in each choice`;

/** Blank, comment, or part of the entry above: indented, or the brace that closes a placeable. */
const isContinuation = (line: string): boolean => /^(#{1,3}( |$)| +\S|\s*$|\})/.test(line);

/** A closing brace too many ends a sentence early without a word. */
function strayBraces(text: string, lines: ReadonlyMap<string, number>): WordsProblem[] {
  const problems: WordsProblem[] = [];
  let depth = 0;
  text.split(/\r?\n/).forEach((content, index) => {
    if (content.startsWith('#')) return;
    if (entryStart.test(content)) depth = 0;
    const bare = content.replace(/\{ *"(?:[^"\\]|\\.)*" *\}/g, (quoted) => ' '.repeat(quoted.length));
    for (let at = 0; at < bare.length; at++) {
      if (bare[at] === '{') depth++;
      if (bare[at] === '}' && --depth < 0) {
        problems.push({ line: index + 1, column: at + 1, expected: 'no "}" here, since no "{" is open' });
        depth = 0;
      }
    }
  });
  return lines.size > 0 ? problems : [];
}

interface Surroundings {
  readonly line: number;
  readonly parsed: ReadonlyMap<string, Entry>;
  readonly functions: ReadonlySet<string>;
}

function brokenReferences(entry: Entry, { line, parsed, functions }: Surroundings): WordsProblem[] {
  const references = referencesOf(entry);
  const column = entry.id.length + 1;
  const unknown = (what: string, name: string): WordsProblem => ({
    line,
    column,
    expected: `a known ${what} in "${entry.id}", not ${name}`,
  });
  return [
    ...[...references.functions].filter((f) => !functions.has(f)).map((f) => unknown('function', `${f}()`)),
    ...[...references.entries].filter((id) => !parsed.has(id)).map((id) => unknown('sentence', `{ ${id} }`)),
  ];
}
