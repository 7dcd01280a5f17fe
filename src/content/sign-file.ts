/** Reads data/reading/beside-numbers.yaml: what numbers are by what is beside them. Every sign the program knows, and no other. */
import { z } from 'zod';
import { signNames, type SignName, type SignWords } from '../core/reading/amounts/beside-number.ts';
import { cuePattern } from './cue-file.ts';
import { readYaml } from './yaml-file.ts';

const pattern = cuePattern.optional();

const line = z.strictObject({
  before: pattern,
  behind: pattern,
  toVessel: pattern,
  said: pattern,
  unsaid: pattern,
  least: z.number().optional(),
  most: z.number().optional(),
  digits: z.literal(true).optional(),
  vessel: z.literal(true).optional(),
  tea: z.literal(true).optional(),
});

const schema = z.strictObject(
  Object.fromEntries(signNames.map((name) => [name, z.array(line).min(1)])) as {
    readonly [sign in SignName]: z.ZodArray<typeof line>;
  },
);

/** Throws ContentMistake. */
export function readSigns(file: string): { readonly [sign in SignName]: readonly SignWords[] } {
  return readYaml(file, schema).value;
}
