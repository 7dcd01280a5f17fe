/**
 * What YAML files held when the program was built, by the hash of their text, so that a start need not parse them
 * again. A file edited since has another hash and is parsed as ever.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const keptFile = fileURLToPath(new URL('../../dist/parsed.json', import.meta.url));

type Kept = { readonly [hash: string]: unknown };

let kept: Kept | null = null;

/** The value of this text, or undefined when it was not kept. */
export function parsedBefore(text: string): unknown {
  kept ??= readKept();
  return kept[hashOf(text)];
}

export function keepParsed(parsed: ReadonlyMap<string, unknown>): void {
  writeFileSync(
    keptFile,
    JSON.stringify(Object.fromEntries([...parsed].map(([text, value]) => [hashOf(text), value]))),
  );
}

function readKept(): Kept {
  try {
    return JSON.parse(readFileSync(keptFile, 'utf8')) as Kept;
  } catch {
    return {};
  }
}

const hashOf = (text: string): string => createHash('sha256').update(text).digest('base64url');
