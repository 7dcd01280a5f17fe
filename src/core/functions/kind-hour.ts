/** When a cold infusion is called: it has hours to spare, so not in the night. Other infusions don't wait. */
import type { Hold } from '../brewing/guided-brew.ts';
import { afterQuiet, beforeQuiet } from '../lessons/quiet.ts';
import type { Instant } from '../units.ts';

/**
 * So much of its time is enough to be strained in the evening: by the model it is then 12 % weaker at most, while a night
 * more makes it stronger by up to a half, which cold water mends. Judgement.
 */
const enough = 0.75;

/** By the clock of the shop, as reminders are. */
export function kindHour({ filledAt, endsAt }: Hold, zone: string): Instant {
  const evening = beforeQuiet(endsAt, zone);
  return evening - filledAt >= enough * (endsAt - filledAt) ? evening : afterQuiet(endsAt, zone);
}
