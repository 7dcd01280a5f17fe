/** Whether the house can do its work, and the ages by which one sees trouble come. */
import type { Clock } from '../clock.ts';
import type { Instant } from '../core/units.ts';
import type { Vitals } from '../store/vitals.ts';

export interface Health {
  /** The store answers. */
  readonly ready: boolean;
  /** By channel that polls; null before the first answer. */
  readonly lastPollAgeS: { readonly [channel: string]: number | null };
  /** 0 when nothing is overdue. */
  readonly oldestUndeliveredS: number;
  /** Null when there is none. */
  readonly backupAgeS: number | null;
  readonly vitals: Vitals | null;
}

export interface HealthParts {
  readonly clock: Clock;
  readonly vitals: () => Promise<Vitals>;
  readonly polls: () => { readonly [channel: string]: Instant | null };
  readonly newestBackup: () => Instant | null;
}

export async function healthOf({ clock, vitals, polls, newestBackup }: HealthParts): Promise<Health> {
  const found = await vitals().catch(() => null);
  const now = clock.now();
  const ageS = (at: Instant | null): number | null => (at === null ? null : Math.max(0, now - at) / 1000);
  return {
    ready: found !== null,
    lastPollAgeS: Object.fromEntries(Object.entries(polls()).map(([channel, at]) => [channel, ageS(at)])),
    oldestUndeliveredS: ageS(found?.oldestUndelivered ?? null) ?? 0,
    backupAgeS: ageS(newestBackup()),
    vitals: found,
  };
}
