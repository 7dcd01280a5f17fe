/** Reads data/teas: the catalogue, and the words that tell a family or nothing at all. */
import { join } from 'node:path';
import { z } from 'zod';
import { families } from '../core/brewing/plan.ts';
import type { FamilyWords, TeaNames } from '../core/teas/find.ts';
import type { LeafDifferences, Tea } from '../core/teas/tea.ts';
import { inEachLanguage } from './in-each-language.ts';
import { ContentMistake, readYaml, type YamlFile } from './yaml-file.ts';

const word = z.string().trim().min(1);
const words = z.array(word);

const leafSchema = z.strictObject({
  brewedAs: z.enum(families).optional(),
  dose: z.number().min(0.3).max(3).optional(),
  strength: z.number().min(0.3).max(3).optional(),
  waterC: z.number().min(0).max(100).optional(),
  caffeineMgPerG: z.number().min(0).max(60).optional(),
  aminoMgPerG: z.number().min(0).max(80).optional(),
  catechinMgPerG: z.number().min(0).max(300).optional(),
  gallateMgPerG: z.number().min(0).max(300).optional(),
  bulkGPerMl: z.number().min(0.02).max(1.2).optional(),
});

const teaSchema = z.strictObject({
  id: z.string().regex(/^[a-z][a-z-]*$/, 'expected small letters and hyphens'),
  family: word,
  form: word,
  byKind: z.literal(true).optional(),
  names: inEachLanguage(word),
  aliases: words,
  leaf: leafSchema.optional(),
});

/** Every tea of data/teas/catalogue.yaml, in the order of the file. Throws ContentMistake. */
export function readTeas(dataDir: string): readonly Tea[] {
  const file = readYaml(join(dataDir, 'teas', 'catalogue.yaml'), z.array(teaSchema));
  refuseTwice(file);
  return file.value.map(({ leaf, byKind, ...tea }) => ({
    ...tea,
    ...(byKind && { byKind }),
    ...(leaf && { leaf: withoutGaps(leaf) }),
  }));
}

function refuseTwice(file: YamlFile<readonly { readonly id: string }[]>): void {
  const seen = new Set<string>();
  for (const [i, { id }] of file.value.entries()) {
    if (seen.has(id)) throw new ContentMistake(`${file.at([i, 'id'])} id: "${id}" is there twice`);
    seen.add(id);
  }
}

/** exactOptionalPropertyTypes: a key that is absent, not one that is undefined. */
function withoutGaps(leaf: z.output<typeof leafSchema>): LeafDifferences {
  return Object.fromEntries(Object.entries(leaf).filter(([, value]) => value !== undefined));
}

const familySchema = z.union([
  z.strictObject({
    family: word,
    words,
    teas: words.default([]),
    kinds: z.record(word, words).default({}),
  }),
  z.strictObject({ nothing: words }),
]);

/** What tells a family, what only looks like a tea, and what is never one. Throws ContentMistake. */
export function readTeaNames(dataDir: string): TeaNames {
  const rows = readYaml(join(dataDir, 'teas', 'family-words.yaml'), z.array(familySchema)).value;
  const told: FamilyWords[] = rows.flatMap((row) => ('family' in row ? [row] : []));
  const nothing = rows.flatMap((row) => ('nothing' in row ? row.nothing : []));
  const ordinary = readYaml(join(dataDir, 'teas', 'ordinary-words.yaml'), words).value;
  const alike = readYaml(join(dataDir, 'teas', 'han-slips.yaml'), words).value;
  return { families: told, nothing, ordinary, alike };
}
