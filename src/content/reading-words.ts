/** Reads data/reading: the words by which the reader knows vessels, people and what is asked. */
import { join } from 'node:path';
import { z } from 'zod';
import { sourceOf } from '../core/reading/cues.ts';
import { kinds } from '../core/reading/kind.ts';
import { cueNames, type ReadingWords } from '../core/reading/reading-words.ts';
import { readYaml } from './yaml-file.ts';

const word = z.string().trim().min(1);
const words = z.array(word);

const vesselRow = z.union([
  z.strictObject({ vessel: word, material: word.nullable().default(null), faint: z.boolean().default(false), words }),
  z.strictObject({ material: word, pot: word, words }),
  z.strictObject({ nothing: words }),
]);

const peopleSchema = z.strictObject({ me: words, one: words, two: words, many: words, joins: words });

const pattern = word.superRefine((text, context) => {
  try {
    void RegExp(sourceOf(text));
  } catch (error) {
    context.addIssue({ code: 'custom', message: `expected a pattern: ${(error as Error).message}` });
  }
});
const cuesSchema = z.record(z.enum(cueNames), z.array(pattern).min(1));

const examplesSchema = z.record(z.enum(kinds), words.min(1));

/** Throws ContentMistake. */
export function readReadingWords(dataDir: string): ReadingWords {
  const rows = readYaml(join(dataDir, 'reading', 'vessels.yaml'), z.array(vesselRow)).value;
  return {
    vessels: rows.flatMap((row) => ('vessel' in row ? [row] : [])),
    materials: rows.flatMap((row) => ('pot' in row ? [row] : [])),
    notVessels: rows.flatMap((row) => ('nothing' in row ? row.nothing : [])),
    people: readYaml(join(dataDir, 'reading', 'people.yaml'), peopleSchema).value,
    examples: readYaml(join(dataDir, 'reading', 'examples.yaml'), examplesSchema).value,
    cues: readYaml(join(dataDir, 'reading', 'cues.yaml'), cuesSchema).value,
  };
}
