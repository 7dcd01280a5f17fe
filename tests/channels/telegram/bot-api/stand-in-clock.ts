/** The stand-in's own time: the wall's, moved on by hand where a test needs a day to pass. */
export class StandInClock {
  #aheadMs = 0;
  #stoodAt: number | null = null;

  now(): number {
    return (this.#stoodAt ?? Date.now()) + this.#aheadMs;
  }

  /** From now on time passes by hand only, so that a slow machine changes nothing. */
  stand(): void {
    this.#stoodAt = Date.now();
  }

  advance(ms: number): void {
    this.#aheadMs += ms;
  }

  /** As the Bot API writes dates. */
  seconds(): number {
    return Math.floor(this.now() / 1000);
  }
}
