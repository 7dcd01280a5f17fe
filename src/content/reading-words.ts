/** Reads data/reading: the words by which the reader knows vessels, people and what is asked. */
import { join } from 'node:path';
import { z } from 'zod';
import type { Worlds } from '../core/reading/kinds/evidence.ts';
import { kinds } from '../core/reading/kinds/kind.ts';
import { lazily } from '../core/lazily.ts';
import { cueNames, planCueNames } from '../core/reading/cues/cue-names.ts';
import type { ReadingWords } from '../core/reading/reading-words.ts';
import { readWeights, weightsHead, type Weights } from '../core/reading/kinds/weights.ts';
import { cuePattern, readCues } from './cue-file.ts';
import { readSigns } from './sign-file.ts';
import { ContentMistake, readText, readYaml } from './yaml-file.ts';

const word = z.string().trim().min(1);
const words = z.array(word);

const vesselRow = z.union([
  z.strictObject({ vessel: word, material: word.nullable().default(null), faint: z.boolean().default(false), words }),
  z.strictObject({ material: word, pot: word, words }),
  z.strictObject({ nothing: words }),
]);

const peopleSchema = z.strictObject({ me: words, one: words, two: words, many: words, joins: words });

const courtesiesSchema = z.strictObject({
  ahead: words.min(1),
  aheadOfAMark: words.min(1),
  behind: words.min(1),
  thanks: words.min(1),
  withThanks: words.min(1),
});

const placesSchema = z.strictObject({
  living: words.min(1),
  places: z.array(z.strictObject({ elevationM: z.number().min(500).max(5200), names: words.min(1) })).min(1),
});

const knownSizesSchema = z
  .array(z.strictObject({ ml: z.number().positive(), like: z.array(cuePattern).min(1) }))
  .min(1);

const subjectsSchema = z.record(word, words.min(1));
/** There are thousands of these: words stand in lines, with commas between. */
const elsewhereSchema = z.record(
  word,
  z.string().transform((line) => line.split(',').map((one) => one.trim())),
);

const noSlipsSchema = z.strictObject({ meant: word });

const examplesSchema = z.record(z.enum(kinds), words.min(1));
export type Examples = z.output<typeof examplesSchema>;

/** The sentences by kind that the weights are learnt from. Throws ContentMistake. */
export function readExamples(dataDir: string): Examples {
  return readYaml(join(dataDir, 'reading', 'examples.yaml'), examplesSchema).value;
}

/** Checked when read, parsed when first needed: a start stays short. */
function weightsOf(file: string): () => Weights {
  const text = readText(file);
  if (!text.startsWith(weightsHead)) throw new ContentMistake(`${file}:1:1 expected "${weightsHead}"`);
  return lazily(() => readWeights(text));
}

const rolesSchema = z.strictObject({ common: words, warning: words });

type Roles = Pick<Worlds, keyof z.output<typeof rolesSchema>>;

function subjectRoles(dataDir: string, home: { readonly [subject: string]: unknown }): Roles {
  const file = readYaml(join(dataDir, 'reading', 'subject-roles.yaml'), rolesSchema);
  for (const [role, subjects] of Object.entries(file.value)) {
    const unknown = subjects.findIndex((subject) => !(subject in home));
    if (unknown < 0) continue;
    const place = file.at([role, unknown]);
    throw new ContentMistake(`${place} expected a subject of subjects.yaml, not "${subjects[unknown]}"`);
  }
  return { common: new Set(file.value.common), warning: new Set(file.value.warning) };
}

const linesOf = (text: string): string[] => text.split('\n').filter(Boolean);

/** Throws ContentMistake. */
export function readReadingWords(dataDir: string): ReadingWords {
  const rows = readYaml(join(dataDir, 'reading', 'vessels.yaml'), z.array(vesselRow)).value;
  const elsewhere = readYaml(join(dataDir, 'reading', 'elsewhere.yaml'), elsewhereSchema).value;
  const home = readYaml(join(dataDir, 'reading', 'subjects.yaml'), subjectsSchema).value;
  const shopTalk = readText(join(dataDir, 'reading', 'shop-talk.txt'));
  return {
    vessels: rows.flatMap((row) => ('vessel' in row ? [row] : [])),
    materials: rows.flatMap((row) => ('pot' in row ? [row] : [])),
    notVessels: rows.flatMap((row) => ('nothing' in row ? row.nothing : [])),
    people: readYaml(join(dataDir, 'reading', 'people.yaml'), peopleSchema).value,
    courtesies: readYaml(join(dataDir, 'reading', 'courtesies.yaml'), courtesiesSchema).value,
    knownSizes: readYaml(join(dataDir, 'reading', 'known-sizes.yaml'), knownSizesSchema).value,
    besideNumbers: readSigns(join(dataDir, 'reading', 'beside-numbers.yaml')),
    places: readYaml(join(dataDir, 'reading', 'places.yaml'), placesSchema).value,
    subjects: { ...elsewhere, ...home },
    worlds: {
      elsewhere: new Set(Object.keys(elsewhere)),
      ...subjectRoles(dataDir, home),
      shopTalk: lazily(() => new Set(linesOf(shopTalk))),
    },
    alike: readYaml(join(dataDir, 'teas', 'han-slips.yaml'), words).value,
    common: linesOf(readText(join(dataDir, 'reading', 'common-words.txt'))),
    noSlips: readYaml(join(dataDir, 'reading', 'no-slips.yaml'), noSlipsSchema).value.meant.split(/\s+/),
    weights: weightsOf(join(dataDir, 'reading', 'weights.txt')),
    cues: {
      ...readCues(join(dataDir, 'reading', 'cues.yaml'), cueNames),
      ...readCues(join(dataDir, 'reading', 'plan-cues.yaml'), planCueNames),
    },
  };
}
