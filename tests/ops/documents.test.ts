/** What the documents name is there: files by their path or by their name alone, and commands. */
import { readFileSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { projectRoot } from '../../src/project-root.ts';

const textOf = (file: string): string => readFileSync(join(projectRoot, file), 'utf8');

const documents = [
  'DEVELOPERS.md',
  'README.md',
  'flows/how-to-read.md',
  ...readdirSync(join(projectRoot, 'ops'))
    .filter((name) => name.endsWith('.md'))
    .map((name) => `ops/${name}`),
];

const folders = ['src', 'data', 'flows', 'ops', 'tests'];
const files: readonly string[] = folders.flatMap((folder) =>
  readdirSync(join(projectRoot, folder), { recursive: true, encoding: 'utf8' }).map((name) =>
    `${folder}/${name}`.replaceAll('\\', '/'),
  ),
);
const names = new Set(files.map((file) => basename(file)));
const scripts = new Set(
  Object.keys(
    (JSON.parse(textOf('package.json')) as { readonly scripts: { readonly [name: string]: string } }).scripts,
  ),
);

/** Letters in braces are one or the other, a star and a name in angles stand for any, a slash at the end for a folder. */
function isThere(path: string): boolean {
  const any = path
    .replace(/\/$/, '')
    .replaceAll('.', String.raw`\.`)
    .replaceAll(/\{([^}]*)\}/g, (_, either: string) => `(?:${either.replaceAll(',', '|')})`)
    .replaceAll(/\*|<[^>]*>/g, '[^/]*');
  const pattern = new RegExp(`^${any}$`);
  return folders.includes(path.replace(/\/$/, '')) || files.some((file) => pattern.test(file));
}

const isWrong = (named: string): boolean => {
  const script = /^npm run (?:-s |--silent )?([\w-]+)/.exec(named)?.[1];
  if (script !== undefined) return !scripts.has(script);
  if (/^(?:src|data|flows|ops|tests)\/\S*$/.test(named)) return !isThere(named);
  return /^[\w-]+\.(?:ts|mjs|sql)$/.test(named) && !names.has(named);
};

describe.each(documents)('%s', (document) => {
  test('names what is there', () => {
    const named = [...textOf(document).matchAll(/`([^`\n]+)`/g)].map(([, words = '']) => words);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter(isWrong)).toEqual([]);
  });
});

test.each(['src/core/no-such.ts', 'no-such.ts', 'npm run no-such', 'tests/*/no-such.ts', 'ops/{no,such}.md'])(
  '%s would be found missing',
  (named) => {
    expect(isWrong(named)).toBe(true);
  },
);
