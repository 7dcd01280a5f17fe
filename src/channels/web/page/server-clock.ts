/** What time the house has: this device's own clock may be minutes off. */

import { keepOffset, keptOffset } from './kept.ts';

/** House time minus device time, in milliseconds. Kept, for a page that is loaded anew without a connection. */
let offset = keptOffset();
let measuredAt = -Infinity;
let measuring: Promise<void> | null = null;
/** Clocks drift by a few milliseconds an hour: one look in half a minute is plenty. */
const freshMs = 30_000;

export const houseNow = (): number => Date.now() + offset;

/** When the house's instant comes on this device's clock. */
export const onThisDevice = (instant: number): number => instant - offset;

/** Whoever asks while it is being measured waits for the same answer. */
export async function measureClock(): Promise<void> {
  if (measuring === null && performance.now() - measuredAt < freshMs) return;
  measuring ??= measure(3).finally(() => (measuring = null));
  await measuring;
}

/** The sample with the shortest way there and back is off by at most half of it. */
async function measure(samples: number): Promise<void> {
  let shortest = Infinity;
  for (let n = 0; n < samples; n++) {
    const sample = await ask().catch(() => null);
    if (sample === null || sample.tookMs >= shortest) continue;
    shortest = sample.tookMs;
    offset = sample.offset;
    measuredAt = performance.now();
    keepOffset(offset);
  }
}

async function ask(): Promise<{ readonly tookMs: number; readonly offset: number }> {
  const sent = Date.now();
  const begun = performance.now();
  const answer = (await (await fetch('/clock', { cache: 'no-store' })).json()) as { now: number };
  const tookMs = performance.now() - begun;
  return { tookMs, offset: answer.now - (sent + tookMs / 2) };
}
