/** What a fault is: something that goes wrong, tried so many times, and what was found. */
import type { Dice } from './counts.ts';

export interface Fault {
  /** "F1" … "F25". */
  readonly id: string;
  readonly title: string;
  /** What one try is: "kills", "cases". */
  readonly unit: string;
  readonly counts: Counts;
  /** About how long the usual count takes. */
  readonly seconds?: number;
  /** What of this fault is not tried, and why. */
  readonly untried?: string;
  run(trial: Trial): Promise<Findings>;
}

export interface Counts {
  /** In every check. */
  readonly few: number;
  /** With `npm run faults`. */
  readonly usual: number;
  /** With `npm run faults -- --long`. */
  readonly long: number;
}

export interface Trial {
  readonly count: number;
  readonly dice: Dice;
  /** Empty, and removed afterwards. */
  readonly folder: string;
  /** How much slower than a quiet machine of two cores this one may be before a wait is called in vain. */
  readonly slack: number;
}

export interface Findings {
  readonly tried: number;
  /** Each in words, with the number of its case. */
  readonly broken: readonly string[];
  readonly figures?: Figures;
}

export type Figures = { readonly [name: string]: number | string };

/** Collects what was tried and what did not hold. */
export class Tally {
  tried = 0;
  readonly broken: string[] = [];

  /** One more case; what is wrong with it in words, nothing when all is well. */
  add(...wrong: readonly (string | false | null)[]): void {
    this.tried += 1;
    this.wrong(...wrong);
  }

  /** Of a case already counted, or of all of them together. */
  wrong(...wrong: readonly (string | false | null)[]): void {
    const told = wrong.filter((one) => typeof one === 'string');
    if (told.length > 0) this.broken.push(`case ${this.tried}: ${told.join('; ')}`);
  }

  found(figures: Figures = {}): Findings {
    return { tried: this.tried, broken: this.broken, figures };
  }
}

/** In words when the two differ. */
export function unlike(what: string, found: unknown, wanted: unknown): string | null {
  const [is, must] = [JSON.stringify(found), JSON.stringify(wanted)];
  return is === must ? null : `${what} is ${is.slice(0, 300)}, not ${must.slice(0, 300)}`;
}

/** Waits until it holds; false when it does not in that time. */
export async function comesTrue(
  holds: () => boolean | Promise<boolean>,
  withinMs: number,
  everyMs = 20,
): Promise<boolean> {
  for (const end = performance.now() + withinMs; !(await holds());) {
    if (performance.now() > end) return false;
    await new Promise((resolve) => setTimeout(resolve, everyMs));
  }
  return true;
}

/** Runs so many side by side, each with its number, and keeps their order. */
export async function sideBySide<T>(
  count: number,
  atOnce: number,
  work: (n: number) => Promise<T>,
): Promise<readonly T[]> {
  const results: T[] = [];
  let next = 0;
  const one = async (): Promise<void> => {
    for (let n = next++; n < count; n = next++) results[n] = await work(n);
  };
  await Promise.all(Array.from({ length: Math.min(atOnce, count) }, one));
  return results;
}

/** The value below which this share lies; 0 of none. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}
