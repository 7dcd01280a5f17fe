/** How long what is kept of a person is kept, for whoever asks. */
import type { Calls } from '../flow/book.ts';

export const keepingCallNames = ['keepingTimes'] as const;

/** As the shop has set it. */
export interface Keeping {
  readonly messageDays: number;
  /** 0: until the person says otherwise. */
  readonly idleDays: number;
  readonly backupDays: number;
}

export const usualKeeping: Keeping = { messageDays: 90, idleDays: 730, backupDays: 14 };

export const keepingCalls = (
  keeping: Keeping,
): { readonly [name in (typeof keepingCallNames)[number]]: Calls[string] } => ({
  keepingTimes: () => ({ gives: { ...keeping } }),
});
