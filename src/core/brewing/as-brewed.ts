/** What a brew that was really made gave: shares of what the leaf holds, infusion by infusion. It plans nothing. */
import type { Celsius, Grams, Millilitres, Mistake, Seconds } from '../units.ts';
import { solutes, type BrewingData, type LeafProfile, type Solute } from './brewing-data.ts';
import { dryBrew, infuse, rest, type Cup, type Setup } from './infusion.ts';
import { makeLeaf } from './leaf.ts';
import { rounded } from './rounding.ts';
import { heldBath, potOf, warmedC } from './vessel.ts';

export interface AsBrewedRequest {
  readonly leafG: Grams;
  /** Without one the water holds its temperature, as in a laboratory's bath. */
  readonly vessel?: string;
  readonly infusions: readonly BrewedInfusion[];
}

export interface BrewedInfusion {
  readonly waterMl: Millilitres;
  readonly waterC: Celsius;
  readonly seconds: Seconds;
}

export interface AsBrewed {
  readonly infusions: readonly AsBrewedInfusion[];
}

export interface AsBrewedInfusion {
  readonly caffeineFraction: number;
  readonly caffeineMgPerG: number;
  readonly caffeineMgPerL: number;
  readonly solidsFraction: number;
  readonly aminoFraction: number;
  readonly catechinFraction: number;
  readonly gallateFraction: number;
}

export const asBrewedRanges = {
  leafG: { least: 0.01, most: 10_000 },
  waterMl: { least: 1, most: 1_000_000 },
  waterC: { least: 0, most: 100 },
  seconds: { least: 0, most: 172_800 },
  infusions: { least: 1, most: 50 },
} as const;

/** Between two infusions the wet leaf waits: judgement, nobody publishes it. */
const pauseSeconds = 60;

export function asBrewed(data: BrewingData, profile: LeafProfile, request: AsBrewedRequest): AsBrewed | Mistake {
  const mistake = mistakeIn(data, request);
  if (mistake) return mistake;
  const content = makeLeaf(data, profile).contentMgPerG;
  const infusions = brewedShares(data, profile, request).map((cup) => told(content, request.leafG, cup));
  return { infusions };
}

/** What one infusion added to all that had left the leaf: poured before, or in the liquor now. */
export interface BrewedShares {
  readonly cup: Cup;
  /** Shares of content, in the order of `solutes`. */
  readonly released: readonly number[];
  readonly solids: number;
}

/** The same without rounding or checks. */
export function brewedShares(
  data: BrewingData,
  profile: LeafProfile,
  request: AsBrewedRequest,
): readonly BrewedShares[] {
  const setup = setupFor(data, profile, request);
  const content = setup.leaf.contentMgPerG;
  const holds = content.reduce((sum, mg) => sum + mg, 0);
  let state = dryBrew(setup, startingWallC(data, request, setup));
  let poured = content.map(() => 0);
  let most = content.map(() => 0);
  return request.infusions.map((infusion) => {
    const { cup, state: after } = infuse(setup, state, infusion);
    state = rest(setup, after, pauseSeconds);
    const out = cup.dissolved.map((share, i) => share + (poured[i] ?? 0));
    const released = out.map((share, i) => Math.max(share - (most[i] ?? 0), 0));
    most = out.map((share, i) => Math.max(share, most[i] ?? 0));
    poured = poured.map((share, i) => share + ((cup.dissolved[i] ?? 0) * cup.pouredMl) / cup.liquorMl);
    const solids = released.reduce((sum, part, i) => sum + part * (content[i] ?? 0), 0);
    return { cup, released, solids: holds > 0 ? solids / holds : 0 };
  });
}

function setupFor(data: BrewingData, profile: LeafProfile, request: AsBrewedRequest): Setup {
  const vessel = request.vessel === undefined ? undefined : data.vessels[request.vessel];
  const most = Math.max(...request.infusions.map((i) => i.waterMl));
  const firstC = request.infusions[0]?.waterC ?? 100;
  const pot = vessel ? potOf(vessel, most / vessel.fillLevel, firstC) : heldBath(firstC);
  return { leaf: makeLeaf(data, profile), leafG: request.leafG, pot };
}

function startingWallC(data: BrewingData, request: AsBrewedRequest, setup: Setup): Celsius {
  const first = request.infusions[0];
  const vessel = request.vessel === undefined ? undefined : data.vessels[request.vessel];
  if (!vessel?.warmed || !first) return setup.pot.ambientC;
  return warmedC(setup.pot, first.waterMl, first.waterC);
}

function told(content: readonly number[], leafG: Grams, { cup, released, solids }: BrewedShares): AsBrewedInfusion {
  // Of a solute the leaf hasn't got, no share comes out.
  const share = (name: Solute): number => {
    const i = solutes.indexOf(name);
    return content[i] ? rounded(released[i] ?? 0, 4) : 0;
  };
  const at = solutes.indexOf('caffeine');
  const caffeine = content[at] ?? 0;
  return {
    caffeineFraction: share('caffeine'),
    caffeineMgPerG: rounded((released[at] ?? 0) * caffeine, 3),
    caffeineMgPerL: rounded(((cup.dissolved[at] ?? 0) * caffeine * leafG * 1000) / cup.liquorMl, 2),
    solidsFraction: rounded(solids, 4),
    aminoFraction: share('amino'),
    catechinFraction: share('catechin'),
    gallateFraction: share('gallate'),
  };
}

function mistakeIn(data: BrewingData, request: AsBrewedRequest): Mistake | null {
  if (request.vessel !== undefined && !Object.hasOwn(data.vessels, request.vessel)) {
    return { code: 'vessel-unknown', field: 'vessel', values: { allowed: Object.keys(data.vessels).join(', ') } };
  }
  const rows: readonly (readonly [string, number, keyof typeof asBrewedRanges])[] = [
    ['leafG', request.leafG, 'leafG'],
    ['infusions', request.infusions.length, 'infusions'],
    ...request.infusions.flatMap((infusion, i) =>
      (['waterMl', 'waterC', 'seconds'] as const).map((key) => [`infusions.${i}.${key}`, infusion[key], key] as const),
    ),
  ];
  for (const [field, value, key] of rows) {
    const { least, most } = asBrewedRanges[key];
    if (!(value >= least && value <= most))
      return { code: 'as-brewed-out-of-range', field, values: { field, least, most } };
  }
  return null;
}
