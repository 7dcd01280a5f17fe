/** Work that goes one piece after another, in the order it was asked for; one that fails holds up nobody. */

export type InTurn = <T>(work: () => Promise<T>) => Promise<T>;

export function makeInTurn(): InTurn {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const run = last.then(work);
    last = run.catch(() => undefined);
    return run;
  };
}
