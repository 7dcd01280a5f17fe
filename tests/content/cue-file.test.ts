/** Files of cues: what they give, and where a mistake in one is told. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readCues } from '../../src/content/cue-file.ts';
import { makeCueSet } from '../../src/core/reading/cues/cue-set.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cues-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const names = ['ahead', 'behind'] as const;

function read(text: string): ReturnType<typeof readCues<(typeof names)[number]>> {
  const file = join(folder, 'some-cues.yaml');
  writeFileSync(file, text);
  return readCues(file, names);
}

it('puts the words of a name where the name stands', () => {
  const cues = makeCueSet(
    read('words:\n  walk: [walk, stroll]\nahead: ["a {walk} ~ river", 去散步]\nbehind: ["was{walk}"]\n'),
  );
  const texts = ['a stroll to the river', 'a run to the river', '我想去散步', 'waswalk'];
  expect(texts.filter((text) => cues.has('ahead', text))).toEqual(['a stroll to the river', '我想去散步']);
  expect(texts.filter((text) => cues.has('behind', text))).toEqual(['waswalk']);
});

it.each([
  [
    'a cue nobody knows',
    'ahead: [a]\nbehind: [b]\nbelow: [c]\n',
    /:3:1 file: expected one of words, ahead, behind, not "below"/,
  ],
  ['a cue that is missing', 'ahead: [a]\n', /behind: expected a list, but it is missing/],
  ['a name nobody knows', 'ahead:\n  - a\n  - "{walk}"\nbehind: [b]\n', /:3:5 ahead.1: expected a name .*not \{walk\}/],
  ['a gap that may come again', 'ahead: ["(謝謝|多謝)(你| ~ )*"]\nbehind: [b]\n', /:1:9 ahead.0: expected a pattern/],
  ['no pattern', 'ahead: ["(a"]\nbehind: [b]\n', /:1:9 ahead.0: expected a pattern/],
  [
    'no pattern, by the words of a name',
    'words:\n  walk: ["(a"]\nahead: ["{walk}"]\nbehind: [b]\n',
    /:3:9 ahead.0: expected a pattern/,
  ],
])('tells where %s stands', (_, text, mistake) => {
  expect(() => read(text)).toThrow(mistake);
});
