import { expect, it } from 'vitest';
import { readConfig } from '../../../src/config.ts';
import { usualKeeping } from '../../../src/core/functions/keeping.ts';

it('what is told of keeping, when nothing is set, is what the settings do then', () => {
  const { keepDays, forgetDays, backups } = readConfig({});
  expect(usualKeeping).toEqual({ messageDays: keepDays, idleDays: forgetDays, backupDays: backups.keepDays });
});
