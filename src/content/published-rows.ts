/** Reads data/kinetics/published-rows.yaml. */
import { join } from 'node:path';
import { z } from 'zod';
import { families } from '../core/brewing/plan.ts';
import { measuredSolutes, measures, type PublishedRow } from '../core/brewing/published-row.ts';
import { readYaml } from './yaml-file.ts';

const content = z.number().min(0).max(1000).optional();
const infusion = z.strictObject({ waterMl: z.number(), waterC: z.number(), seconds: z.number() });
const row = z.strictObject({
  id: z.string(),
  source: z.string(),
  study: z.string().optional(),
  assumed: z.string().optional(),
  flag: z.enum(['P', 'Q', 'M']),
  use: z.enum(['fit', 'check', 'apart']),
  leaf: z.strictObject({
    family: z.enum(families),
    form: z.string(),
    caffeineMgPerG: content,
    aminoMgPerG: content,
    catechinMgPerG: content,
    gallateMgPerG: content,
  }),
  leafG: z.number().positive(),
  pot: z.boolean().optional(),
  infusions: z.array(infusion).min(1),
  against: infusion.optional(),
  measured: z.array(
    z.strictObject({
      what: z.enum(measures),
      solute: z.enum(measuredSolutes),
      n: z.int().min(1),
      value: z.number(),
      tolerance: z.number().positive(),
      weight: z.number().positive().optional(),
    }),
  ),
});

/** Throws ContentMistake. */
export function readPublishedRows(dataDir: string): readonly PublishedRow[] {
  const read = readYaml(join(dataDir, 'kinetics', 'published-rows.yaml'), z.array(row)).value;
  // What is absent must stay absent, not become a key without a value.
  return JSON.parse(JSON.stringify(read)) as readonly PublishedRow[];
}
