/** What is to go wrong, with which calls, how often. */
import type { RefusalParameters } from './refusal.ts';

/** `processed` says whether the call has its effect all the same. */
export type Trouble =
  | {
      readonly kind: 'refuse';
      readonly code: number;
      readonly description: string;
      readonly parameters?: RefusalParameters;
    }
  /** An answer of a machine in between: a page, not JSON. */
  | { readonly kind: 'page'; readonly code: number; readonly processed: boolean }
  | { readonly kind: 'delay'; readonly ms: number }
  /** The connection ends without an answer. */
  | { readonly kind: 'drop'; readonly processed: boolean }
  /** The connection is torn down. */
  | { readonly kind: 'reset'; readonly processed: boolean }
  /** No answer, ever. */
  | { readonly kind: 'hang'; readonly processed: boolean }
  /** The answer comes in drops. */
  | { readonly kind: 'slow'; readonly bytesPerSecond: number }
  /** The answer ends half-way. */
  | { readonly kind: 'truncate' };

export interface PlannedTrouble {
  readonly method?: string;
  readonly chat?: number;
  /** Of the message it is for: a call given up long ago may arrive only now. */
  readonly text?: string;
  /** How many calls pass first. */
  readonly after?: number;
  readonly times?: number;
  readonly trouble: Trouble;
}

export class FaultPlan {
  #planned: { plan: PlannedTrouble; skip: number; left: number }[] = [];

  add(plan: PlannedTrouble): void {
    this.#planned.push({ plan, skip: plan.after ?? 0, left: plan.times ?? 1 });
  }

  clear(): void {
    this.#planned = [];
  }

  /** The trouble this call meets; null for none. */
  meet({ method, chat, text }: { method: string; chat: string; text: unknown }): Trouble | null {
    for (const entry of this.#planned) {
      const { plan } = entry;
      if (plan.method !== undefined && plan.method.toLowerCase() !== method) continue;
      if (plan.chat !== undefined && String(plan.chat) !== chat) continue;
      if (plan.text !== undefined && plan.text !== text) continue;
      if (entry.skip > 0) {
        entry.skip--;
        continue;
      }
      if (--entry.left <= 0) this.#planned = this.#planned.filter((other) => other !== entry);
      return plan.trouble;
    }
    return null;
  }
}
