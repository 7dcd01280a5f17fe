/** What DEVELOPERS.md and ops/security.md say holds a promise is there: the file, and the test by its words. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectRoot } from '../../src/project-root.ts';
import { faults } from '../faults/faults.ts';

interface Named {
  readonly path: string;
  /** Words of the test's name, or the number of a fault; null when the whole file is meant. */
  readonly by: string | null;
}

const textOf = (file: string): string => readFileSync(join(projectRoot, file), 'utf8');

/** `tests/…` in backticks, with what stands right behind it: a name in quotation marks, or a fault in brackets. */
const namedIn = (text: string): readonly Named[] =>
  [...text.matchAll(/`(tests\/[^`]+)`(?: "([^"]+)"| \((F\d+)\))?/g)].map(([, path = '', name, fault]) => ({
    path,
    by: name ?? fault ?? null,
  }));

const documents = ['DEVELOPERS.md', 'ops/security.md'] as const;

/** A star stands for any letters in the name of a file. */
function isThere(path: string): boolean {
  if (!path.includes('*')) return existsSync(join(projectRoot, path));
  const pattern = new RegExp(`^${basename(path).replaceAll('.', '\\.').replaceAll('*', '.*')}$`);
  return readdirSync(join(projectRoot, dirname(path))).some((name) => pattern.test(name));
}

describe.each(documents)('%s', (document) => {
  const named = namedIn(textOf(document));

  test('names tests that are there', () => {
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter(({ path }) => !isThere(path)).map(({ path }) => path)).toEqual([]);
  });

  test('names them by words they have', () => {
    const wrong = named.filter(({ path, by }) => by !== null && path.endsWith('.ts') && !textOf(path).includes(by));
    expect(wrong).toEqual([]);
  });
});

test('every fault is named where the promises are', () => {
  const text = textOf('DEVELOPERS.md');
  const missing = faults.filter(({ id }) => !new RegExp(`\\(${id}\\)`).test(text));
  expect(missing.map(({ id }) => id)).toEqual([]);
});
