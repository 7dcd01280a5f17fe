/** One steeping, remembered step by step, so that any moment of it is one short step away. It pours nothing off. */
import type { Celsius, Seconds } from '../units.ts';
import { exchangeOf, leafAfter, strengthAfter, strengthOf, type Exchange } from './exchange.ts';
import { advance, beginSteeping, stepSeconds, type Bath, type LeafState, type Steeping } from './extraction.ts';
import type { Leaf } from './leaf.ts';

/** How it stands at a moment. */
export interface Moment {
  readonly leaf: LeafState;
  readonly tempC: Celsius;
  readonly strengthMgPerMl: number;
}

export class Course {
  readonly bath: Bath;
  readonly #leaf: Leaf;
  readonly #exchange: Exchange;
  readonly #startMgPerMl: number;
  /** At the beginning, and after every whole step gone so far. */
  readonly #marks: Steeping[];

  constructor(leaf: Leaf, bath: Bath, from: LeafState) {
    this.bath = bath;
    this.#leaf = leaf;
    this.#exchange = exchangeOf(leaf, bath, from);
    this.#startMgPerMl = strengthOf(this.#exchange, from.dissolved);
    this.#marks = [beginSteeping(from, bath)];
  }

  at(seconds: Seconds): Moment {
    const steeping = this.#steepingAt(seconds);
    const leaf = leafAfter(this.#exchange, steeping);
    return { leaf, tempC: steeping.tempC, strengthMgPerMl: strengthOf(this.#exchange, leaf.dissolved) };
  }

  /** Seconds until the liquor is this strong, at most `longestS`; to a twentieth of the step it is reached in, and mostly far closer. */
  secondsToReach({
    strengthMgPerMl,
    longestS,
  }: {
    readonly strengthMgPerMl: number;
    readonly longestS: Seconds;
  }): Seconds {
    const offAt = (steeping: Steeping): Point => ({
      steeping,
      off: strengthAfter(this.#exchange, steeping.doses) - strengthMgPerMl,
    });
    let low: Point = { steeping: this.#mark(0), off: this.#startMgPerMl - strengthMgPerMl };
    if (low.off >= 0) return 0;
    for (let n = 1; low.steeping.elapsedS < longestS; n++) {
      let high = offAt(this.#mark(n));
      if (high.off < 0) {
        low = high;
        continue;
      }
      // Straight lines, each between nearer moments.
      for (let turn = 0; turn < 2; turn++) {
        const between = offAt(this.#from(this.#mark(n - 1), crossing(low, high)));
        if (between.off < 0) low = between;
        else high = between;
        if (Math.abs(between.off) < closeEnough * strengthMgPerMl) break;
      }
      return Math.min(crossing(low, high), longestS);
    }
    return longestS;
  }

  #steepingAt(seconds: Seconds): Steeping {
    let last = this.#mark(0);
    for (let n = 1; last.elapsedS + stepSeconds(this.bath, last) <= seconds; n++) last = this.#mark(n);
    return this.#from(last, seconds);
  }

  #from(mark: Steeping, seconds: Seconds): Steeping {
    return seconds > mark.elapsedS ? advance(this.#leaf, this.bath, mark, seconds - mark.elapsedS) : mark;
  }

  #mark(n: number): Steeping {
    for (let last = this.#marks.length - 1; last < n; last++) {
      const mark = this.#marks[last] as Steeping;
      this.#marks.push(advance(this.#leaf, this.bath, mark, stepSeconds(this.bath, mark)));
    }
    return this.#marks[n] as Steeping;
  }
}

/** Of the strength looked for. */
const closeEnough = 1e-3;

interface Point {
  readonly steeping: Steeping;
  readonly off: number;
}

/** Where the straight line between two moments comes to nothing. */
function crossing(low: Point, high: Point): Seconds {
  const { elapsedS } = low.steeping;
  return elapsedS + ((high.steeping.elapsedS - elapsedS) * -low.off) / (high.off - low.off);
}
