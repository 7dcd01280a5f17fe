/** The page with a house behind it that answers from a script. One browser and one house serve all of it, many tests at once. */
import { describe } from 'vitest';
import { browserPath, patienceMs } from './browser.ts';
import { choosing } from './choosing.ts';
import { theLine } from './line.ts';
import { withoutConnection } from './offline.ts';
import { otherBrowsers } from './other-browsers.ts';
import { thePage } from './page.ts';
import { openGenerousHouse } from './sheet.ts';
import { sideBySide } from './side-by-side.ts';

describe.skipIf(browserPath === null)('a sheet', { timeout: patienceMs }, () => {
  const at = sideBySide(openGenerousHouse);

  describe('the page', () => thePage(at));
  describe('what is chosen', () => choosing(at));
  describe('the line', () => theLine(at));
  describe('in another browser', () => otherBrowsers(at));
  describe('without a connection', () => withoutConnection(at));
});
