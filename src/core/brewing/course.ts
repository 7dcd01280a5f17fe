/** One steeping remembered step by step, so that any moment of it is one short step away. It pours nothing off. */
import type { Seconds } from '../units.ts';
import {
  advance,
  beginSteeping,
  stepSeconds,
  strengthOf,
  type Bath,
  type LeafState,
  type Steeping,
} from './extraction.ts';
import type { Leaf } from './leaf.ts';

export class Course {
  readonly leaf: Leaf;
  readonly bath: Bath;
  /** Where it stood at the beginning, and after every whole step gone so far. */
  readonly #marks: Steeping[];

  constructor(leaf: Leaf, bath: Bath, from: LeafState) {
    this.leaf = leaf;
    this.bath = bath;
    this.#marks = [beginSteeping(from, bath)];
  }

  /** After so many seconds; what is handed out is not the course's own. */
  at(seconds: Seconds): Steeping {
    let last = this.#mark(0);
    for (let n = 1; last.elapsedS + stepSeconds(last.elapsedS) <= seconds; n++) last = this.#mark(n);
    const steeping = copyOf(last);
    if (seconds > steeping.elapsedS) advance(this.leaf, this.bath, steeping, seconds - steeping.elapsedS);
    return steeping;
  }

  /** Seconds until the liquor is this strong, at most `longestS`: between two steps by a straight line. */
  secondsToReach({
    strengthMgPerMl,
    longestS,
  }: {
    readonly strengthMgPerMl: number;
    readonly longestS: Seconds;
  }): Seconds {
    let [before, strengthBefore] = [this.#mark(0), this.#strength(0)];
    for (let n = 1; before.elapsedS < longestS; n++) {
      const [now, strength] = [this.#mark(n), this.#strength(n)];
      if (strength >= strengthMgPerMl) {
        const rise = strength - strengthBefore;
        const share = rise > 0 ? Math.max(strengthMgPerMl - strengthBefore, 0) / rise : 0;
        return Math.min(before.elapsedS + share * (now.elapsedS - before.elapsedS), longestS);
      }
      [before, strengthBefore] = [now, strength];
    }
    return longestS;
  }

  #strength(n: number): number {
    return strengthOf(this.leaf, this.bath, this.#mark(n));
  }

  #mark(n: number): Steeping {
    for (let last = this.#marks.length - 1; last < n; last++) {
      const next = copyOf(this.#marks[last] as Steeping);
      advance(this.leaf, this.bath, next, stepSeconds(next.elapsedS));
      this.#marks.push(next);
    }
    return this.#marks[n] as Steeping;
  }
}

// Member by member: spreading them takes several times as long, and a plan copies about a hundred.
const copyOf = ({ cells, wetness, tempC, elapsedS }: Steeping): Steeping => ({
  cells: cells.slice(),
  wetness,
  tempC,
  elapsedS,
});
