/** The page with the real house behind it. One browser and one house serve all of it at once: most of a test is waiting. */
import { describe } from 'vitest';
import { browserPath, patienceMs } from './browser.ts';
import { evenings } from './evening.ts';
import { isLooking } from './looks.ts';
import { opened } from './opened.ts';
import { openRealHouse } from './real-house.ts';
import { sideBySide } from './side-by-side.ts';
import { twoDevices } from './two-devices.ts';

describe.skipIf(browserPath === null)('the page and its house', { timeout: patienceMs * (isLooking ? 10 : 3) }, () => {
  const at = sideBySide(openRealHouse);

  describe('through an evening', () => evenings(at));
  describe('opened at a lesson or a label', () => opened(at));
  describe('on two devices', () => twoDevices(at));
});
