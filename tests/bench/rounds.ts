/** Takes several contestants' times in turns, so that whatever else the machine does meets them alike. */

/** Sorted ascending. */
export class Times {
  readonly #sorted: readonly number[];

  constructor(times: readonly number[]) {
    this.#sorted = times.toSorted((a, b) => a - b);
  }

  at(share: number): number {
    return this.#sorted[Math.min(this.#sorted.length - 1, Math.floor(this.#sorted.length * share))] ?? Number.NaN;
  }

  get median(): number {
    return this.at(0.5);
  }

  get p99(): number {
    return this.at(0.99);
  }

  get worst(): number {
    return this.at(1);
  }

  get count(): number {
    return this.#sorted.length;
  }
}

export const median = (values: readonly number[]): number => new Times(values).median;

/** Every contestant once a round, in the order given in even rounds, the other way round in odd ones. The first rounds are a warm-up. */
export async function inTurns<Name extends string, Result>(
  rounds: number,
  contestants: { readonly [name in Name]: () => Result | Promise<Result> },
  warmUp = 1,
): Promise<{ readonly [name in Name]: readonly Result[] }> {
  const names = Object.keys(contestants) as Name[];
  const results = Object.fromEntries(names.map((name) => [name, [] as Result[]])) as Record<Name, Result[]>;
  for (let round = 0; round < warmUp + rounds; round++) {
    for (const name of round % 2 === 0 ? names : names.toReversed()) {
      globalThis.gc?.();
      const result = await contestants[name]();
      if (round >= warmUp) results[name].push(result);
    }
  }
  return results;
}

/** Microseconds of one call, the median of batches. */
export function microseconds(call: () => unknown, batches: number, batch: number): number {
  const times = Array.from({ length: batches }, () => {
    const began = performance.now();
    for (let i = 0; i < batch; i++) call();
    return ((performance.now() - began) * 1000) / batch;
  });
  return median(times);
}
