/**
 * What the files held and what was found right when the program was built, by the hash of their texts: a start need not
 * parse and check again what nobody has touched since. Anything edited has another hash, and is read as ever.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { builtFolder } from '../project-root.ts';

const keptFile = join(builtFolder, 'kept.json');

interface Kept {
  /** What a YAML text holds, unchecked. */
  readonly parsed: { [hash: string]: unknown };
  /** What its schema made of it; left out where that is the same. */
  readonly right: { [hash: string]: { readonly value?: unknown } };
  /** The texts that were found right together. */
  readonly together: { [hash: string]: true };
}

const nothing = (): Kept => ({ parsed: {}, right: {}, together: {} });

let kept: Kept | null = null;
let recording = false;
/** Checks that were made by the built program say nothing about sources, which may have changed since. */
const builtToo = import.meta.url.endsWith('.js');

/** The value of this text, or undefined when it was not kept. */
export const parsedBefore = (text: string): unknown => theKept().parsed[hashOf(text)];

/** What the schema of files of this name made of this text; undefined when that is not known. */
export function rightBefore(name: string, text: string): unknown {
  if (!builtToo || recording) return undefined;
  const right = theKept().right[hashOf(name, text)];
  return right && ('value' in right ? right.value : parsedBefore(text));
}

/** Whether these texts were found right together. */
export const rightTogether = (texts: readonly string[]): boolean =>
  builtToo && !recording && theKept().together[hashOf(...texts)] === true;

/** From here on everything is read and checked anew, and what is found noted. */
export function readAnew(): void {
  kept = nothing();
  recording = true;
}

export function noteParsed(text: string, value: unknown): void {
  if (recording) theKept().parsed[hashOf(text)] = value;
}

export function noteRight(name: string, text: string, value: unknown): void {
  if (!recording || !isDeepStrictEqual(value, asKept(value))) return;
  theKept().right[hashOf(name, text)] = isDeepStrictEqual(value, parsedBefore(text)) ? {} : { value };
}

export function noteTogether(texts: readonly string[]): void {
  if (recording) theKept().together[hashOf(...texts)] = true;
}

/** Writes down what was noted. */
export const keepNoted = (): void => writeFileSync(keptFile, JSON.stringify(kept));

const theKept = (): Kept => (kept ??= readKept());

function readKept(): Kept {
  try {
    return JSON.parse(readFileSync(keptFile, 'utf8')) as Kept;
  } catch {
    return nothing();
  }
}

const asKept = (value: unknown): unknown => JSON.parse(JSON.stringify(value) ?? 'null');

function hashOf(...texts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(text).update('\0');
  return hash.digest('base64url');
}
