/** What a brew that was really made gave: shares of what the leaf holds, infusion by infusion. It plans nothing. */
import type { Celsius, Grams, Millilitres, Mistake, Seconds } from '../units.ts';
import { solutes, type BrewingData, type LeafProfile } from './brewing-data.ts';
import { beginBrew, infuse, rest, type Cup, type Setup } from './infusion.ts';
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
const pauseSeconds = 30;

export function asBrewed(data: BrewingData, profile: LeafProfile, request: AsBrewedRequest): AsBrewed | Mistake {
  const mistake = mistakeIn(data, request);
  if (mistake) return mistake;
  const setup = setupFor(data, profile, request);
  let state = beginBrew(setup, startingWallC(data, request, setup));
  const infusions = request.infusions.map((infusion) => {
    const done = infuse(setup, state, infusion);
    state = rest(setup, done.state, pauseSeconds);
    return shares(setup, done.cup);
  });
  return { infusions };
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

function shares(setup: Setup, cup: Cup): AsBrewedInfusion {
  const content = setup.leaf.contentMgPerG;
  const holds = content.reduce((sum, mg) => sum + mg, 0);
  const share = (name: (typeof solutes)[number]): number => cup.released[solutes.indexOf(name)] ?? 0;
  const caffeine = content[solutes.indexOf('caffeine')] ?? 0;
  const solids = cup.released.reduce((sum, part, i) => sum + part * (content[i] ?? 0), 0);
  const inLiquor = (cup.dissolved[solutes.indexOf('caffeine')] ?? 0) * caffeine * setup.leafG;
  return {
    caffeineFraction: rounded(share('caffeine'), 4),
    caffeineMgPerG: rounded(share('caffeine') * caffeine, 3),
    caffeineMgPerL: rounded((inLiquor * 1000) / cup.liquorMl, 2),
    solidsFraction: rounded(holds > 0 ? solids / holds : 0, 4),
    aminoFraction: rounded(share('amino'), 4),
    catechinFraction: rounded(share('catechin'), 4),
    gallateFraction: rounded(share('gallate'), 4),
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
