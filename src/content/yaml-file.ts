/** Reads one YAML file against a schema; every mistake is told as file:line:column and what was expected. */
import { readFileSync } from 'node:fs';
import { basename, relative } from 'node:path';
import { LineCounter, parseDocument, type Document } from 'yaml';
import type { z } from 'zod';
import { noteRight, parsedBefore, rightBefore } from './kept.ts';

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
  const parsed = schema.safeParse(parsedBefore(text) ?? parseWhole(text, shown));
  if (parsed.success) {
    noteRight(basename(file), text, parsed.data);
    return { value: parsed.data, text, at };
  }
  throw new ContentMistake(
    parsed.error.issues.map((i) => `${at(i.path)} ${i.path.join('.') || 'file'}: ${i.message}`).join('\n'),
  );
}

/** What a text holds. Throws ContentMistake when it is not YAML. */
export function parseWhole(text: string, shown: string): unknown {
  const { document, place } = locate(text, shown);
  if (document.errors.length === 0) return document.toJS();
  throw new ContentMistake(document.errors.map((e) => `${place(e.pos[0])} ${e.message}`).join('\n'));
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

function offsetOf(document: Document, path: readonly PropertyKey[]): number {
  for (let depth = path.length; depth >= 0; depth--) {
    const node: unknown = depth === 0 ? document.contents : document.getIn(path.slice(0, depth), true);
    const range = (node as { range?: [number, number, number] } | null | undefined)?.range;
    if (range) return range[0];
  }
  return 0;
}
