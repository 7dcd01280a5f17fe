/** Work that is never done twice at once: asked for while under way, it is done once more afterwards. */

export interface OneAtATime {
  readonly ask: () => void;
  /** Resolves when it rests. */
  readonly rest: () => Promise<void>;
}

/** `work` handles its own errors. */
export function oneAtATime(work: () => Promise<void>): OneAtATime {
  let running: Promise<void> | null = null;
  let asked = false;

  const run = async (): Promise<void> => {
    while (asked) {
      asked = false;
      await work();
    }
    running = null;
  };
  return {
    ask() {
      asked = true;
      running ??= run();
    },
    async rest() {
      await running;
    },
  };
}
