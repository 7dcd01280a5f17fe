/** Work that is never done twice at once: asked for while under way, it is done once more afterwards. */

export interface OneAtATime {
  readonly ask: () => void;
  readonly busy: () => boolean;
  /** Resolves when it rests; it may have been asked again by the time this is heard. */
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
    busy: () => running !== null,
    async rest() {
      await running;
    },
  };
}
