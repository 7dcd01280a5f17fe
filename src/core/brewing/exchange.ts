/**
 * A fast and a slow part of every solute trading with one liquor, in closed form. Counted in doses, both trades have constant
 * paces: two linear equations, whose solution is two decays towards the balance.
 */
import type { Seconds } from '../units.ts';
import { soluteCount, type Bath, type LeafState, type Steeping } from './extraction.ts';
import type { Leaf } from './leaf.ts';

/** One solute of one bath, as shares of its content. A value after dose d: balance + long · e^(−longPace · d) + short · e^(−shortPace · d). */
interface Trade {
  readonly longPace: number;
  readonly shortPace: number;
  readonly fast: Decay;
  readonly slow: Decay;
  readonly dissolved: Decay;
  /** mg/ml when all of the solute is dissolved. */
  readonly fullMgPerMl: number;
}

interface Decay {
  readonly balance: number;
  readonly long: number;
  readonly short: number;
}

export type Exchange = readonly Trade[];

export function exchangeOf(leaf: Leaf, bath: Bath, from: LeafState): Exchange {
  return leaf.fastShare.map((_, i) => tradeOf(leaf, bath, from, i));
}

function tradeOf(leaf: Leaf, bath: Bath, from: LeafState, i: number): Trade {
  const share = leaf.fastShare[i] as number;
  const keptBack = (leaf.partitionMlPerG * bath.leafG) / bath.liquorMl;
  const fastKept = keptBack * share;
  const slowKept = keptBack * (1 - share);
  const fast = from.fast[i] as number;
  const slow = from.slow[i] as number;
  const balance = (fast + slow + (from.dissolved[i] as number)) / (1 + fastKept + slowKept);
  // The distances u, v of the parts from their balance: u' = −(a u + b v), v' = −(c u + d v).
  const u = fast - fastKept * balance;
  const v = slow - slowKept * balance;
  const b = (leaf.fastPace[i] as number) * fastKept;
  const a = (leaf.fastPace[i] as number) + b;
  const c = (leaf.slowPace[i] as number) * slowKept;
  const d = (leaf.slowPace[i] as number) + c;
  const half = (a - d) / 2;
  const spread = Math.sqrt(half * half + b * c);
  const fastDecay = decay(fastKept * balance, u, (half * u + b * v) / spread);
  const slowDecay = decay(slowKept * balance, v, (c * u - half * v) / spread);
  return {
    longPace: (a + d) / 2 - spread,
    shortPace: (a + d) / 2 + spread,
    fast: fastDecay,
    slow: slowDecay,
    dissolved: { balance, long: -fastDecay.long - slowDecay.long, short: -fastDecay.short - slowDecay.short },
    fullMgPerMl: ((leaf.contentMgPerG[i] as number) * bath.leafG) / bath.liquorMl,
  };
}

/** `own`: the distance from the balance at the beginning; `moved`: how the other part's distance turns it. */
function decay(balance: number, own: number, moved: number): Decay {
  return { balance, long: (own - moved) / 2, short: (own + moved) / 2 };
}

/** mg/ml of everything dissolved. */
export function strengthOf(exchange: Exchange, dissolved: readonly number[]): number {
  return exchange.reduce((sum, { fullMgPerMl }, i) => sum + fullMgPerMl * (dissolved[i] as number), 0);
}

/** The same after these doses, without the state of the leaf. */
export function strengthAfter(exchange: Exchange, doses: readonly Seconds[]): number {
  let strength = 0;
  for (let i = 0; i < soluteCount; i++) {
    const { longPace, shortPace, dissolved, fullMgPerMl } = exchange[i] as Trade;
    const dose = doses[i] as number;
    strength +=
      fullMgPerMl *
      (dissolved.balance + dissolved.long * Math.exp(-longPace * dose) + dissolved.short * Math.exp(-shortPace * dose));
  }
  return strength;
}

export function leafAfter(exchange: Exchange, { doses, dry }: Steeping): LeafState {
  const [fast, slow, dissolved]: [number[], number[], number[]] = [[], [], []];
  for (let i = 0; i < soluteCount; i++) {
    const trade = exchange[i] as Trade;
    const long = Math.exp(-trade.longPace * (doses[i] as number));
    const short = Math.exp(-trade.shortPace * (doses[i] as number));
    fast.push(after(trade.fast, long, short));
    slow.push(after(trade.slow, long, short));
    dissolved.push(after(trade.dissolved, long, short));
  }
  return { wetness: 1 - dry, fast, slow, dissolved };
}

const after = ({ balance, long, short }: Decay, longLeft: number, shortLeft: number): number =>
  balance + long * longLeft + short * shortLeft;
