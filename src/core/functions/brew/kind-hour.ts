/** When a cold infusion is called: it has hours to spare, so not in the night. Other infusions don't wait. */
import type { Hold } from '../../brewing/guided-brew.ts';
import { afterQuiet, beforeQuiet } from '../../lessons/quiet.ts';
import type { Instant } from '../../units.ts';

/**
 * So much of its time is enough to be strained in the evening. Judgement: by the model it is then 15 % weaker at most (3,234
 * cold plans of every family, form and vessel), while the rest of a night makes it stronger by up to 71 %, which cold water mends.
 */
const enough = 0.75;

/** By the clock of the shop, as reminders are. */
export function kindHour({ filledAt, endsAt }: Hold, zone: string): Instant {
  const evening = beforeQuiet(endsAt, zone);
  return evening - filledAt >= enough * (endsAt - filledAt) ? evening : afterQuiet(endsAt, zone);
}
