/** How often a fault is tried, and from which seed: small in every check, as large as asked for by the environment. */

export function countOf(name: string, usual: number): number {
  const asked = Number(process.env[name] ?? usual);
  if (!Number.isSafeInteger(asked) || asked < 0) throw new Error(`${name} must be a whole number`);
  return asked;
}

export interface Dice {
  readonly seed: number;
  /** 0 ≤ x < 1, the same row of numbers for the same seed. */
  readonly roll: () => number;
  /** 0 ≤ n < below. */
  readonly below: (below: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
}

/** Mulberry32, a public-domain generator of 32 bits: enough to pick instants and places. */
export function dice(seed = countOf('SEED', Date.now() % 1_000_000)): Dice {
  let state = seed;
  const roll = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (most: number): number => Math.floor(roll() * most);
  return { seed, roll, below, pick: <T>(from: readonly T[]) => from[below(from.length)] as T };
}
