/// <reference lib="dom" />
/** One guided brew on the page with the real house behind it: a tap an infusion, a call on time, a reload in the middle. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserPath, openPage, patienceMs } from './browser.ts';
import { sideBySide } from './side-by-side.ts';
import { openRealHouse } from './real-house.ts';

const tap = (page: Page, label: string): Promise<void> =>
  page.getByRole('button', { name: label, exact: true }).last().click();
const shown = (page: Page, text: string | RegExp): Promise<void> => page.getByText(text).last().waitFor();

describe.skipIf(browserPath === null)('a guided brew on the page', { timeout: patienceMs }, () => {
  const at = sideBySide(openRealHouse);

  it('is written on one message, counts down through a reload, calls on time, and ends', async () => {
    const { page, complaints } = await openPage(at.browser);
    await page.goto(at.house.address());
    await page.waitForSelector('.entry');
    await page.fill('textarea', 'rou gui in a 110 ml gaiwan');
    await page.press('textarea', 'Enter');
    await page.waitForSelector('.ladder');
    await tap(page, 'Guide me');
    await shown(page, /set them out/);
    const entries = await page.locator('.entry').count();
    await tap(page, 'Ready');
    await shown(page, /^Warm vessel/);
    await tap(page, 'Done');
    await shown(page, /^Put in/);
    await tap(page, 'The leaf is in');
    await shown(page, /^Fill with/);
    await tap(page, 'Rinsed');
    await shown(page, /^Infusion 1: fill from high/);
    await tap(page, 'Poured');
    await shown(page, /^Infusion 2: fill from high/);
    await tap(page, 'Poured');
    await shown(page, /^Infusion 3, \d+ s: fill with/);
    // Six taps, and still the one message.
    expect(await page.locator('.entry').count()).toBe(entries);

    await tap(page, 'Filled');
    await page.waitForSelector('.digits');
    const seconds = Number(/(\d+) s/.exec((await page.locator('.hold-label').first().textContent()) ?? '')?.[1]);
    const read = Number(await page.locator('.digits').textContent());
    const endsAt = Date.now() + read * 1000;
    expect(read).toBeGreaterThan(seconds - 3);
    await page.reload();
    await page.waitForSelector('.digits');
    const left = Number(await page.locator('.digits').textContent());
    expect(Math.abs(left - (endsAt - Date.now()) / 1000)).toBeLessThan(1.6);

    await shown(page, 'Pour off now, infusion 3: low, to the last drop.');
    const lateMs = Date.now() - endsAt;
    console.log(`the call was seen ${lateMs} ms after the end read off the page (digits are rounded up to a second)`);
    expect(lateMs).toBeGreaterThan(-1_100);
    expect(lateMs).toBeLessThan(1_000);
    await page.locator('.digits.pour').waitFor();
    expect(await page.locator('.entry').count()).toBe(entries + 1);

    await tap(page, 'Poured');
    await shown(page, /^Infusion 4, \d+ s: fill with/);
    await shown(page, /^Infusion 3: \d+ s\.$/);
    expect(await page.locator('.digits').count()).toBe(0);
    await page.fill('textarea', 'finish');
    await page.press('textarea', 'Enter');
    await shown(page, 'As you poured it');
    expect(await page.locator('.entry').last().locator('.rung').count()).toBe(3);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});
