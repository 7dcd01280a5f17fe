/** What watches over the running service: measures, health and backups, made from the settings. */
import { join } from 'node:path';
import type { Clock } from './clock.ts';
import { databaseFile, type Config } from './config.ts';
import type { Instant } from './core/units.ts';
import type { Log } from './log.ts';
import type { ChannelName } from './messages.ts';
import { inOwnProcess, makeBackupSchedule } from './operation/backup-schedule.ts';
import { healthOf, type Health } from './operation/health.ts';
import { makeMeasures } from './operation/measures.ts';
import { makeMetricsDoor } from './operation/metrics-door.ts';
import { builtFolder } from './project-root.ts';
import { PlainMistake } from './start.ts';
import type { Store } from './store/contract.ts';
import { listBackups } from './store/sqlite/backup.ts';

export interface OperationParts {
  readonly config: Config;
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly channels: () => readonly ChannelName[];
  /** When each channel that polls was last answered. */
  readonly polls: () => { readonly [channel: string]: Instant | null };
}

export interface Operation {
  /** The store to work with: what passes through is measured. */
  readonly store: Store;
  health(): Promise<Health>;
  start(): Promise<void>;
  stop(): Promise<void>;
}

function tellPlainly(error: unknown): never {
  const { code = 'no code' } = error as { code?: string };
  throw new PlainMistake(`NINTHPOUR_METRICS cannot be listened on (${code}); choose another address or port`);
}

const backupCommand = join(builtFolder, 'commands', 'backup.js');

export function makeOperation({ config, store, clock, log, channels, polls }: OperationParts): Operation {
  const { folder, everyHours } = config.backups;
  const newest = (): Instant | null => listBackups(folder).find(({ at }) => at <= clock.now())?.at ?? null;
  const measures = makeMeasures(databaseFile(config), clock.now());
  const vitals = () => store.vitals(channels(), clock.now());
  const health = () => healthOf({ clock, vitals, polls, newestBackup: newest });
  const schedule = makeBackupSchedule({ everyHours, clock, log, newest, make: inOwnProcess(backupCommand) });
  const door = config.metrics && makeMetricsDoor(config.metrics, async () => measures.text(await health()));
  return {
    store: measures.counted(store),
    health,
    async start() {
      await door?.start().catch(tellPlainly);
      if (everyHours > 0) schedule.start();
    },
    async stop() {
      measures.stop();
      await Promise.all([schedule.stop(), door?.stop()]);
    },
  };
}
