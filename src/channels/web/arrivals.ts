/** What is just arriving of each sheet: its line is shown on every device before the answer to it, however soon that comes. */
export interface Arrivals {
  /** Nothing is said on the sheet until this is done. */
  first<T>(chat: string, arrival: () => Promise<T>): Promise<T>;
  /** Null when nothing is arriving. */
  shown(chat: string): Promise<unknown> | null;
}

export function makeArrivals(): Arrivals {
  const underWay = new Map<string, Set<Promise<unknown>>>();
  return {
    async first(chat, arrival) {
      // Begun only once it is counted: the answer may be sent before the first wait.
      const work = Promise.resolve().then(arrival);
      const all = underWay.get(chat) ?? new Set();
      underWay.set(chat, all.add(work));
      try {
        return await work;
      } finally {
        all.delete(work);
        if (all.size === 0 && underWay.get(chat) === all) underWay.delete(chat);
      }
    },
    shown(chat) {
      const all = underWay.get(chat);
      return all === undefined ? null : Promise.allSettled(all);
    },
  };
}
