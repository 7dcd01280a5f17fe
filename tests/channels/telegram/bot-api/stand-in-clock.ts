/** The stand-in's own time: the wall's, moved on by hand where a test needs a day to pass. */
export class StandInClock {
  #aheadMs = 0;

  now(): number {
    return Date.now() + this.#aheadMs;
  }

  advance(ms: number): void {
    this.#aheadMs += ms;
  }

  /** As the Bot API writes dates. */
  seconds(): number {
    return Math.floor(this.now() / 1000);
  }
}
