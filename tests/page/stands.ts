/// <reference lib="dom" />
/** What must stand on the sheet in some states of the evening (`steps.ts`), beside being there for everybody. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { eventually } from './browser.ts';
import { pageWords, type Language } from './fake-house.ts';

export interface Stands {
  readonly page: Page;
  readonly language: Language;
  /** How many messages there were when the guided brew began. */
  begun: number;
}

const count = (page: Page): Promise<number> => page.locator('.entry').count();
const newest = (page: Page) => page.locator('.entry').last();
const digits = async (page: Page): Promise<number> => Number(await page.locator('.digits').textContent());

export const stands: Readonly<Record<string, (evening: Stands) => Promise<void>>> = {
  async plan({ page, language }) {
    expect(await page.locator('.rung').count()).toBeGreaterThanOrEqual(7);
    expect(await newest(page).getAttribute('lang')).toBe(language);
    expect(await newest(page).textContent()).toMatch(/9[0-9] ?°C|100 ?°C/);
    // Its rows are the history: a page loaded anew shows the same sheet.
    const before = await page.locator('.lines').innerText();
    await page.reload();
    await eventually(() => page.locator('.lines').innerText(), before);
  },
  async 'set out'(evening) {
    evening.begun = await count(evening.page);
  },
  async fill({ page, begun }) {
    // Seven taps, and still the one message.
    expect(await count(page)).toBe(begun);
  },
  async hold({ page }) {
    const endsAt = Date.now() + (await digits(page)) * 1000;
    await page.reload();
    await page.waitForSelector('.digits:not(.pour)');
    const before = (endsAt - Date.now()) / 1000;
    // Rounded up to a second, twice; how long the reading took is no fault of the page.
    const left = await digits(page);
    expect(left).toBeLessThan(before + 2.5);
    expect(left).toBeGreaterThan((endsAt - Date.now()) / 1000 - 2.5);
  },
  async call({ page, begun }) {
    expect(await count(page)).toBe(begun + 1);
  },
  async next({ page }) {
    expect(await page.locator('.digits').count()).toBe(0);
  },
  async 'another device'({ page, language }) {
    // Called by the name under which it stands at the foot.
    const name = pageWords(language)['page-elsewhere'] ?? '-';
    expect(await newest(page).textContent()).toContain(name);
    expect(await page.locator('.foot summary').first().textContent()).toBe(name);
  },
  async finish({ page }) {
    // As it was poured, not as it was planned.
    expect(await newest(page).locator('.rung').count()).toBe(4);
  },
};
