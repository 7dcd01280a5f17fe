/** All faults, in their order. */
import { blockedLoops } from './blocked-loops.ts';
import { botApiFaults } from './bot-api-faults.ts';
import { canaries } from './canaries.ts';
import { damagedLog } from './damaged-log.ts';
import { doubleKills } from './double-kills.ts';
import { erasures } from './erasures.ts';
import type { Fault } from './fault.ts';
import { foreignLocks } from './foreign-locks.ts';
import { fullDisk } from './full-disk.ts';
import { handOvers } from './hand-overs.ts';
import { interruptedBrews } from './interrupted-brews.ts';
import { killPoints } from './kill-points.ts';
import { killedBackups } from './killed-backups.ts';
import { oneWinner } from './one-winner.ts';
import { killedMigrations, wrongSettings } from './opening.ts';
import { orderlyStops } from './orderly-stops.ts';
import { repeats } from './repeats.ts';
import { soak } from './soak.ts';
import { standstills } from './standstills.ts';
import { steppedClocks } from './stepped-clocks.ts';
import { strangeInput } from './strange-input.ts';
import { wholeKills } from './whole-kills.ts';
import { acrossChanges, changedRules, everyZone } from './zones.ts';

export const faults: readonly Fault[] = [
  [wholeKills, killPoints, doubleKills, damagedLog, wrongSettings],
  [fullDisk, foreignLocks, botApiFaults, repeats, steppedClocks],
  [everyZone, acrossChanges, standstills, changedRules, interruptedBrews],
  [blockedLoops, killedBackups, killedMigrations, handOvers, oneWinner],
  [strangeInput, canaries, erasures, orderlyStops, soak],
].flat();
