/** A browser and a house, opened before the tests of a file and closed after them. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { openBrowser, patienceMs } from './browser.ts';

export interface SideBySide<House> {
  readonly browser: Browser;
  readonly house: House;
}

/** To be called within `describe`; what it gives is there once the tests run. */
export function sideBySide<House extends { stop(): Promise<void> }>(open: () => Promise<House>): SideBySide<House> {
  let browser: Browser;
  let house: House;
  beforeAll(async () => {
    [browser, house] = await Promise.all([openBrowser(), open()]);
  }, patienceMs);
  afterAll(async () => {
    await browser.close();
    await house.stop();
  }, patienceMs);
  return {
    get browser() {
      return browser;
    },
    get house() {
      return house;
    },
  };
}
