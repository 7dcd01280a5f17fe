/** A leaf ready to be brewed: its family's content, its form's pace, its own differences. It decides no dose. */
import type { BrewingData, FormData, LeafProfile, Solute } from './brewing-data.ts';
import { solutes } from './brewing-data.ts';
import { brewedAs } from './leaf-profile.ts';

/** Arrays run in the order of `solutes`. */
export interface Leaf {
  readonly profile: LeafProfile;
  readonly form: FormData;
  readonly contentMgPerG: readonly number[];
  readonly bulkGPerMl: number;
  readonly fastShare: readonly number[];
  /** Per second at 80 °C. */
  readonly fastPace: readonly number[];
  readonly slowPace: readonly number[];
  /** Activation energy over the gas constant, K. */
  readonly activationK: readonly number[];
  readonly partitionMlPerG: number;
  readonly wettingPace: number;
  readonly wettingK: number;
}

const gasJPerMolK = 8.314462;

export function makeLeaf(data: BrewingData, profile: LeafProfile): Leaf {
  const form = data.forms[profile.form];
  if (!form) throw new Error(`no such leaf form: ${profile.form}`);
  const { kinetics } = data;
  const surface = kinetics.fastShares[form.surface];
  if (surface === undefined) throw new Error(`no fast share for: ${form.surface}`);
  const rates = solutes.map((s) => kinetics.solutes[s]);
  return {
    profile,
    form,
    contentMgPerG: solutes.map((s) => contentOf(data, profile, s)),
    bulkGPerMl: profile.bulkGPerMl ?? form.bulkGPerMl,
    fastShare: rates.map((r) => 1 - (1 - surface) ** r.bend),
    fastPace: rates.map((r) => (r.fastPerMinute * form.pace) / 60),
    slowPace: rates.map((r) => (r.slowPerMinute * form.pace) / 60),
    activationK: rates.map((r) => (r.activationKJPerMol * 1000) / gasJPerMolK),
    partitionMlPerG: kinetics.partitionMlPerG,
    wettingPace: 1 / form.wettingSeconds,
    wettingK: (kinetics.wettingKJPerMol * 1000) / gasJPerMolK,
  };
}

function contentOf(data: BrewingData, profile: LeafProfile, solute: Solute): number {
  const own: { readonly [s in Solute]: number | undefined } = {
    amino: profile.aminoMgPerG,
    caffeine: profile.caffeineMgPerG,
    catechin: profile.catechinMgPerG,
    gallate: profile.gallateMgPerG,
    other: undefined,
  };
  return own[solute] ?? brewedAs(data, profile).content[solute];
}
