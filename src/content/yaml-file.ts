/** Reads one YAML file against a schema; every mistake is told as file:line:column and what was expected. */
import { readFileSync } from 'node:fs';
import { basename, relative } from 'node:path';
import { isMap, LineCounter, parseDocument, visit, type Document } from 'yaml';
import type { z } from 'zod';
import { noteRight, parsedBefore, rightBefore } from './kept.ts';
import { mistakesOf, plainly, type YamlMistake } from './yaml-mistakes.ts';

/** A file a person wrote is wrong. Its message is made to be read, one mistake a line. */
export class ContentMistake extends Error {
  override readonly name = 'ContentMistake';
}

export interface YamlFile<T> {
  readonly value: T;
  readonly text: string;
  /** "flows/brew.yaml:12:7" of the given path, or of its nearest ancestor that exists. */
  at(path: readonly PropertyKey[]): string;
}

/** Throws ContentMistake when the file is missing, is not YAML, or does not fit the schema. */
export function readYaml<S extends z.ZodType>(file: string, schema: S): YamlFile<z.output<S>> {
  const shown = shownAs(file);
  const text = readText(file);
  const at = (path: readonly PropertyKey[]): string => {
    const { document, place } = locate(text, shown);
    return place(offsetOf(document, path));
  };
  const right = rightBefore(basename(file), text);
  if (right !== undefined) return { value: right as z.output<S>, text, at };
  const whole = parsedBefore(text) ?? parseWhole(text, shown);
  const parsed = schema.safeParse(whole, { error: plainly });
  if (parsed.success) {
    noteRight(basename(file), text, parsed.data);
    return { value: parsed.data, text, at };
  }
  const { document, place } = locate(text, shown);
  const line = ({ path, isKey, message }: YamlMistake): string => {
    const named = isKey ? path.slice(0, -1) : path;
    const offset = (isKey ? keyOffsetOf(document, path) : null) ?? offsetOf(document, path);
    return `${place(offset)} ${nameOf(whole, named)}: ${message}`;
  };
  throw new ContentMistake(mistakesOf(parsed.error).map(line).join('\n'));
}

/** "longjing.leaf.waterC": an entry of a list goes by its id where it has one, else by its number. */
function nameOf(whole: unknown, path: readonly PropertyKey[]): string {
  let value = whole;
  const names = path.map((key) => {
    value = (value as { readonly [key: PropertyKey]: unknown } | null | undefined)?.[key];
    const id = typeof key === 'number' ? (value as { readonly id?: unknown } | null | undefined)?.id : undefined;
    return typeof id === 'string' ? id : String(key);
  });
  return names.join('.') || 'file';
}

/** Where a text stands in a file for the first time, as a word or as a value; the beginning where it does not. */
export function placeOfText(file: string, text: string): string {
  const { document, place } = locate(readText(file), shownAs(file));
  let offset = 0;
  visit(document, {
    Scalar(_, node) {
      if (node.value !== text) return undefined;
      offset = node.range?.[0] ?? 0;
      return visit.BREAK;
    },
  });
  return place(offset);
}

/** What a text holds. Throws ContentMistake when it is not YAML. */
export function parseWhole(text: string, shown: string): unknown {
  const { document, place } = locate(text, shown);
  // All others follow from the first: one bracket too few makes a thousand.
  const [error] = document.errors;
  if (error === undefined) return document.toJS();
  throw new ContentMistake(`${place(error.pos[0])} ${error.message}`);
}

function locate(text: string, shown: string): { document: Document; place: (offset: number) => string } {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const place = (offset: number): string => {
    const { line, col } = lines.linePos(offset);
    return `${shown}:${line}:${col}`;
  };
  return { document, place };
}

const shownAs = (file: string): string => relative(process.cwd(), file) || file;

/** Throws ContentMistake when the file is missing or cannot be read. */
export function readText(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    throw new ContentMistake(
      `${shownAs(file)}:1:1 ${code === 'ENOENT' ? 'expected this file, but it is missing' : `cannot be read (${code})`}`,
    );
  }
}

/** Where a word of the file itself stands, its value aside. */
function keyOffsetOf(document: Document, path: readonly PropertyKey[]): number | null {
  const map: unknown = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true);
  const pair = isMap(map) ? map.items.find(({ key }) => String(key) === path.at(-1)) : undefined;
  return (pair?.key as { range?: [number, number, number] } | undefined)?.range?.[0] ?? null;
}

function offsetOf(document: Document, path: readonly PropertyKey[]): number {
  for (let depth = path.length; depth >= 0; depth--) {
    const node: unknown = depth === 0 ? document.contents : document.getIn(path.slice(0, depth), true);
    const range = (node as { range?: [number, number, number] } | null | undefined)?.range;
    if (range) return range[0];
  }
  return 0;
}
