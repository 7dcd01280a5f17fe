/** The repository's own brewing data and teas, read once for the tests of the model. */
import { join } from 'node:path';
import { readBrewingData } from '../../../src/content/brewing-data.ts';
import { readTeas } from '../../../src/content/tea-data.ts';
import type { LeafProfile } from '../../../src/core/brewing/brewing-data.ts';
import { leafOfTea } from '../../../src/core/brewing/leaf-profile.ts';
import type { BrewRequest, Plan } from '../../../src/core/brewing/plan.ts';
import { isMistake, planBrew } from '../../../src/core/brewing/schedule.ts';

export const dataDir = join(import.meta.dirname, '..', '..', '..', 'data');
export const data = readBrewingData(dataDir);
export const teas = readTeas(dataDir);

export function leafOf(id: string): LeafProfile {
  const tea = teas.find((one) => one.id === id);
  if (!tea) throw new Error(`no such tea: ${id}`);
  return leafOfTea(data, tea);
}

export function request(tea: string, vessel: string, volumeMl: number, more: Partial<BrewRequest> = {}): BrewRequest {
  return { tea, family: leafOf(tea).family, vessel, volumeMl, ...more };
}

/** A plan that must be possible. */
export function plan(tea: string, vessel: string, volumeMl: number, more: Partial<BrewRequest> = {}): Plan {
  const made = planBrew(data, leafOf(tea), request(tea, vessel, volumeMl, more));
  if (isMistake(made)) throw new Error(JSON.stringify(made));
  return made;
}
