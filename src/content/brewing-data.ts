/** Reads data/{families,leaf-forms,vessels}.yaml and data/kinetics/parameters.yaml; every mistake with file:line:column. */
import { join } from 'node:path';
import { z } from 'zod';
import { solutes, type BrewingData } from '../core/brewing/brewing-data.ts';
import { families, styles } from '../core/brewing/plan.ts';
import { ContentMistake, readYaml } from './yaml-file.ts';

const positive = z.number().positive();
const share = z.number().min(0).max(1);
const temperature = z.number().min(0).max(100);
const range = z
  .strictObject({ least: positive, most: positive })
  .refine(({ least, most }) => least < most, 'expected least to be below most');

const eachSolute = z.record(z.enum(solutes), z.number().min(0).max(1000));
const target = z.strictObject({ strengthMgPerMl: positive, doseGPerMl: positive, infusions: z.int().min(1).max(20) });
const family = z.strictObject({
  form: z.string(),
  content: eachSolute,
  waterC: temperature,
  highestC: temperature,
  rinsed: z.boolean(),
  styles: z.strictObject({ gongfu: target, western: target, grandpa: target, cold: target }),
});

const form = z.strictObject({
  bulkGPerMl: positive.max(2),
  smallPotFill: share,
  wettingSeconds: positive.max(600),
  holdsMlPerG: z.number().min(0).max(10),
  surface: z.string(),
  pace: positive.max(20),
  rinseSeconds: positive.max(60),
});

const vessel = z.strictObject({
  kind: z.enum(['cup', 'pot']).nullable().default(null),
  material: z.string(),
  wallJPerGK: positive.max(5),
  wallGPerMl23: positive.max(100),
  sideWPerM2K: positive.max(100),
  openness: share,
  fillLevel: share,
  warmed: z.boolean(),
  handlingSeconds: positive.max(120),
  style: z.enum(styles),
  westernFromMl: positive.optional(),
  volumeMl: range,
  glass: z.boolean(),
});

const rates = z.strictObject({
  fastPerMinute: positive,
  slowPerMinute: positive,
  activationKJPerMol: positive.max(200),
  bend: positive.max(20),
});
const kinetics = z.strictObject({
  solutes: z.record(z.enum(solutes), rates),
  fastShares: z.record(z.string(), share),
  partitionMlPerG: z.number().min(0).max(20),
  wettingKJPerMol: positive.max(200),
});

/** Throws ContentMistake with one line a mistake. */
export function readBrewingData(dataDir: string): BrewingData {
  const forms = readYaml(join(dataDir, 'leaf-forms.yaml'), z.record(z.string(), form));
  const vessels = readYaml(join(dataDir, 'vessels.yaml'), z.record(z.string(), vessel));
  const rateFile = readYaml(join(dataDir, 'kinetics', 'parameters.yaml'), kinetics).value;
  const strange = Object.entries(forms.value).filter(([, f]) => !Object.hasOwn(rateFile.fastShares, f.surface));
  if (strange.length > 0) {
    const known = Object.keys(rateFile.fastShares).join(', ');
    const lines = strange.map(([id]) => `${forms.at([id, 'surface'])} ${id}.surface: expected one of ${known}`);
    throw new ContentMistake(lines.join('\n'));
  }
  return {
    families: readYaml(join(dataDir, 'families.yaml'), z.record(z.enum(families), family)).value,
    forms: forms.value,
    vessels: withoutUndefined(vessels.value),
    kinetics: rateFile,
  };
}

type ReadVessel = z.output<typeof vessel>;

/** An absent optional stays absent instead of being there as undefined. */
function withoutUndefined(vessels: Record<string, ReadVessel>): BrewingData['vessels'] {
  return Object.fromEntries(
    Object.entries(vessels).map(([id, { westernFromMl, ...rest }]) => [
      id,
      westernFromMl === undefined ? rest : { ...rest, westernFromMl },
    ]),
  );
}
