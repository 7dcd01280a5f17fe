/** Chance that can be thrown again: the same seed gives the same year. */
export interface Dice {
  /** 0 … 1. */
  chance(): number;
  /** least … most, both possible. */
  whole(least: number, most: number): number;
  of<T>(list: readonly T[]): T | undefined;
}

/** A 32-bit mixing generator; good enough to shuffle a shop's year. */
export function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  const chance = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
  const whole = (least: number, most: number): number => least + Math.floor(chance() * (most - least + 1));
  return { chance, whole, of: (list) => list[whole(0, list.length - 1)] };
}
