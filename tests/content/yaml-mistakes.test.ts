/** Each kind of slip in a YAML file is told at its own line, with what was expected there and what stands there. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { z } from 'zod';
import { readYaml } from '../../src/content/yaml-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'ninthpour-yaml-'));
afterAll(() => rmSync(folder, { recursive: true }));

const tea = z.strictObject({
  id: z.string(),
  waterC: z.number().max(100).optional(),
  names: z.strictObject({ en: z.string(), fr: z.string().min(2) }),
  form: z.enum(['flat', 'bud']).optional(),
  shelf: z.boolean().optional(),
  rounds: z.int().min(1).optional(),
  aliases: z.array(z.string()).optional(),
});
const cues = z.partialRecord(z.enum(['danger', 'care']), z.array(z.string()).min(1));
const either = z.array(
  z.union([z.strictObject({ pot: z.string() }), z.strictObject({ nothing: z.array(z.string()) })]),
);
const own = z.strictObject({ at: z.union([z.string(), z.number()], 'expected a place or a number') });

const good = '- id: longjing\n  names: { en: a, fr: bc }\n';

it.each([
  [
    'a word that is not known',
    z.array(tea),
    `${good}  tast: sweet\n`,
    /:3:3 longjing: expected one of id, waterC, .*, not "tast"$/,
  ],
  [
    'and its value on a line of its own',
    cues,
    'care: [a]\ndangr:\n  - b\n',
    /:2:1 file: expected one of danger, care, not "dangr"$/,
  ],
  [
    'a word deep down',
    z.array(tea),
    '- id: longjing\n  names:\n    en: a\n    fr: bc\n    de: c\n',
    /:5:5 longjing\.names: .*, not "de"$/,
  ],
  [
    'a word missing',
    z.array(tea),
    '- id: longjing\n  names: { en: a }\n',
    /:2:10 longjing\.names\.fr: expected text, but it is missing$/,
  ],
  [
    'text for a number',
    z.array(tea),
    `${good}  waterC: hot\n`,
    /:3:11 longjing\.waterC: expected a number, not "hot"$/,
  ],
  [
    'a number too large',
    z.array(tea),
    `${good}  waterC: 178\n`,
    /:3:11 longjing\.waterC: expected at most 100, not 178$/,
  ],
  ['a number too small', z.array(tea), `${good}  rounds: 0\n`, /:3:11 longjing\.rounds: expected at least 1, not 0$/],
  [
    'half a number',
    z.array(tea),
    `${good}  rounds: 1.5\n`,
    /:3:11 longjing\.rounds: expected a whole number, not 1\.5$/,
  ],
  ['a number for text', z.array(tea), '- id: 5\n  names: { en: a, fr: bc }\n', /:1:7 0\.id: expected text, not 5$/],
  [
    'a text too short',
    z.array(tea),
    '- id: x\n  names: { en: a, fr: b }\n',
    /:2:23 x\.names\.fr: expected at least 2 characters, not "b"$/,
  ],
  [
    'one of a few',
    z.array(tea),
    `${good}  form: flatt\n`,
    /:3:9 longjing\.form: expected one of flat, bud, not "flatt"$/,
  ],
  ['yes for true', z.array(tea), `${good}  shelf: yes\n`, /:3:10 longjing\.shelf: expected true or false, not "yes"$/],
  ['one for a list', z.array(tea), `${good}  aliases: one\n`, /:3:12 longjing\.aliases: expected a list, not "one"$/],
  ['a list of none', cues, 'care: []\n', /:1:7 care: expected at least 1 of them, not an empty list$/],
  ['neither of two shapes', either, '- pot: a\n- pots: a\n', /:2:3 1: expected pot, not "pots"$/],
  ['two of them at once', z.array(tea), `${good}  a: 1\n  b: 2\n`, /:3:3 .*not "a"\n.*:4:3 .*not "b"$/],
  ['a shape with a sentence of its own', own, 'at: [1]\n', /:1:5 at: expected a place or a number$/],
  ['a list where words belong', own, '- 1\n', /:1:1 file: expected words with their values, .*, not a list$/],
])('%s', (_, schema, text, expected) => {
  const file = join(folder, 'slip.yaml');
  writeFileSync(file, text);
  expect(() => readYaml(file, schema as z.ZodType)).toThrow(expected);
});
