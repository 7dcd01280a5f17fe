/** Work that goes one piece after another, in the order it was asked for; one that fails holds up nobody. */

export type InTurn = <T>(work: () => Promise<T>) => Promise<T>;

/** The first begins after `before`, which never fails. */
export function makeInTurn(before: Promise<unknown> = Promise.resolve()): InTurn {
  let last = before;
  return (work) => {
    const run = last.then(work);
    last = run.catch(() => undefined);
    return run;
  };
}
