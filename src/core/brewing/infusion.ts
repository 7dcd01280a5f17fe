/** One infusion in a vessel: fill, hold, pour off, rest. The state between two infusions is a plain value. */
import type { Celsius, Grams, Millilitres, Seconds } from '../units.ts';
import { Course } from './course.ts';
import { dryLeaf, soluteCount, type Bath, type LeafState } from './extraction.ts';
import type { Leaf } from './leaf.ts';
import { bodyJPerK, contactC, type Pot } from './vessel.ts';

export interface Setup {
  readonly leaf: Leaf;
  readonly leafG: Grams;
  readonly pot: Pot;
}

/** A brew between two infusions. Survives a JSON round trip. */
export interface BrewState {
  /** Of wall, leaf and what it holds. */
  readonly bodyC: Celsius;
  /** Liquor that wets the leaf's outside, or was left over it; it mixes with the next water at once. */
  readonly heldMl: Millilitres;
  /** Water inside the leaf; what is dissolved in it counts as still in the leaf. */
  readonly insideMl: Millilitres;
  readonly leaf: LeafState;
}

/** Of the water a leaf holds, so much clings to its outside, ml per g: judgement; no source parts the two. */
const clingsMlPerG = 0.5;

export interface Filling {
  readonly waterMl: Millilitres;
  readonly waterC: Celsius;
  /** Liquor left in the vessel on purpose, with the leaf in it. */
  readonly keepMl?: Millilitres;
}

export interface Cup {
  /** Dissolved in all the liquor, shares of content in the order of `solutes`; carried-over liquor included. */
  readonly dissolved: readonly number[];
  readonly liquorMl: Millilitres;
  readonly pouredMl: Millilitres;
  readonly strengthMgPerMl: number;
  readonly startC: Celsius;
  readonly endC: Celsius;
}

export function dryBrew(setup: Setup, wallC: Celsius): BrewState {
  return { bodyC: wallC, heldMl: 0, insideMl: 0, leaf: dryLeaf(setup.leaf) };
}

/** A vessel filled, from which the liquor may be poured off after any time. */
export interface Filled {
  readonly setup: Setup;
  readonly before: BrewState;
  readonly keepMl: Millilitres;
  readonly course: Pick<Course, keyof Course>;
}

export interface Poured {
  readonly state: BrewState;
  readonly cup: Cup;
}

export function fill(setup: Setup, before: BrewState, filling: Filling): Filled {
  const course = new Course(setup.leaf, bathOf(setup, before, filling), before.leaf);
  return { setup, before, keepMl: filling.keepMl ?? 0, course };
}

/** Fills, brews for so many seconds of full contact, pours off. */
export function infuse(setup: Setup, state: BrewState, filling: Filling & { readonly seconds: Seconds }): Poured {
  return pourOff(fill(setup, state, filling), filling.seconds);
}

/** Of so little the leaf takes and gives nothing; its shares would be lost in the rounding of numbers. */
const nothingMl = 1e-6;

/** The leaf waits in what it holds (or in what was left in the vessel) and goes on giving to it. */
export function rest(setup: Setup, state: BrewState, seconds: Seconds): BrewState {
  if (state.heldMl <= nothingMl || seconds <= 0) return state;
  const bath = bathOf(setup, state, { waterMl: 0, waterC: state.bodyC });
  const { tempC, leaf } = new Course(setup.leaf, bath, state.leaf).at(seconds);
  return { ...state, bodyC: tempC, leaf };
}

export function bathOf(setup: Setup, state: BrewState, filling: Filling): Bath {
  const { leafG, pot } = setup;
  const liquorMl = filling.waterMl + state.heldMl;
  const startC = contactC({
    waterMl: filling.waterMl,
    waterC: filling.waterC,
    wallJPerK: pot.wallJPerK,
    leafG: pot.wallJPerK > 0 ? leafG : 0,
    heldMl: pot.wallJPerK > 0 ? state.heldMl + state.insideMl : 0,
    bodyC: state.bodyC,
  });
  const heat = bodyJPerK(pot, leafG, liquorMl + state.insideMl, startC);
  return {
    leafG,
    liquorMl,
    startC,
    ambientC: pot.ambientC,
    cooling: { steady: pot.lossWPerK.steady / heat, rising: pot.lossWPerK.rising / heat },
  };
}

/** After so many seconds. What soaks into the leaf takes its share of the liquor along, back into the part that gives fast. */
export function pourOff({ setup, before, keepMl, course }: Filled, seconds: Seconds): Poured {
  const { bath } = course;
  const { leaf: after, tempC, strengthMgPerMl } = course.at(seconds);
  const { liquorMl } = bath;
  const soaksMl = setup.leafG * setup.leaf.form.holdsMlPerG * after.wetness;
  const clingsMl = Math.min(setup.leafG * clingsMlPerG * after.wetness, soaksMl, liquorMl * 0.5);
  const insideMl = Math.max(Math.min(soaksMl - clingsMl, before.insideMl + liquorMl * 0.4), before.insideMl);
  const soakedShare = (insideMl - before.insideMl) / liquorMl;
  const heldMl = Math.min(Math.max(clingsMl, keepMl), liquorMl - (insideMl - before.insideMl));
  const keptShare = heldMl / liquorMl;
  return {
    state: {
      bodyC: tempC,
      heldMl,
      insideMl,
      leaf: {
        ...after,
        fast: after.fast.map((share, i) => share + (after.dissolved[i] ?? 0) * soakedShare),
        dissolved: after.dissolved.map((share) => share * keptShare),
      },
    },
    cup: {
      dissolved: after.dissolved,
      liquorMl,
      pouredMl: liquorMl * (1 - keptShare - soakedShare),
      strengthMgPerMl,
      startC: bath.startC,
      endC: tempC,
    },
  };
}

/** mg of one solute in what was poured. */
export function pouredMg(setup: Setup, cup: Cup, solute: number): number {
  if (solute >= soluteCount || cup.liquorMl <= 0) return 0;
  const mgPerG = (cup.dissolved[solute] ?? 0) * (setup.leaf.contentMgPerG[solute] ?? 0);
  return (mgPerG * setup.leafG * cup.pouredMl) / cup.liquorMl;
}
