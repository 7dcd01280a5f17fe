/// <reference lib="dom" />
/** What other browsers do differently, played in this one: nobody there writes unseen, misses a call or is told an untruth. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { eventually, openPage } from './browser.ts';
import { hold, pageWords, type FakeHouse } from './fake-house.ts';
import { planOn, sitDown } from './sheet.ts';
import type { SideBySide } from './side-by-side.ts';

const words = pageWords('en');
const long = 'The old white tea in my grandmother’s pot, which holds perhaps 160 ml, for three guests tonight. ';

const heights = (page: Page): Promise<{ readonly seen: number; readonly whole: number }> =>
  page.locator('textarea').evaluate(({ clientHeight, scrollHeight }) => ({ seen: clientHeight, whole: scrollHeight }));

/** As where storage is switched off: even asking for it throws. */
const withoutStorage = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    for (const name of ['localStorage', 'sessionStorage'])
      Object.defineProperty(window, name, {
        get() {
          throw new DOMException('switched off', 'SecurityError');
        },
      });
  });

export function otherBrowsers(at: SideBySide<FakeHouse>): void {
  it.concurrent('all of a long line is seen while it is written, where fields do not size themselves', async () => {
    const { page } = await planOn(at.browser, at.house);
    await page.locator('textarea').evaluate((field) => field.style.setProperty('field-sizing', 'fixed', 'important'));
    const { seen: one } = await heights(page);
    await page.fill('textarea', long.repeat(2));
    const { seen, whole } = await heights(page);
    expect(seen).toBeGreaterThan(3 * one);
    expect(whole).toBe(seen);
    // What is longer than the screen is rolled, not the sheet pushed away.
    await page.fill('textarea', long.repeat(40));
    expect((await heights(page)).seen).toBeLessThanOrEqual(0.4 * 800 + 1);
    await page.press('textarea', 'Enter');
    await eventually(() => heights(page), { seen: one, whole: one });
    await page.context().close();
  });

  it.concurrent('calls to pour where nothing can be stored', async () => {
    const { page, say, complaints } = await sitDown(at.browser, at.house, { before: withoutStorage });
    await say(hold('en', 1_500));
    await page.waitForSelector('.digits:not(.pour)');
    await page
      .getByRole('alert')
      .getByText(words['page-pour-now'] ?? '')
      .waitFor({ state: 'attached' });
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it.concurrent(
    'says what is missing where no cookie is allowed, and keeps before the eyes what was written',
    async () => {
      const { page } = await openPage(at.browser);
      let loads = 0;
      await page.addInitScript(() => Object.defineProperty(Navigator.prototype, 'cookieEnabled', { get: () => false }));
      await page.route(`${at.house.url}/`, async (route) => {
        if (route.request().resourceType() === 'document') loads++;
        const answer = await route.fetch();
        await page.context().clearCookies();
        const { 'set-cookie': _, ...headers } = answer.headers();
        await route.fulfill({ response: answer, headers });
      });
      await page.goto(at.house.url);
      await page.getByText(words['page-no-cookie'] ?? '-').waitFor();
      expect(await page.getByText(words['page-lost'] ?? '-').count()).toBe(0);
      await page.fill('textarea', '110 ml');
      await page.press('textarea', 'Enter');
      await page.locator('.own.refused', { hasText: '110 ml' }).waitFor();
      expect(loads).toBe(1);
      await page.context().close();
    },
  );

  it.concurrent('asks for a touch again when a telephone call has taken the sound away', async () => {
    const { page } = await planOn(at.browser, at.house, {
      before: (bare) =>
        bare.addInitScript(() => {
          window.AudioContext = class extends AudioContext {
            constructor() {
              super();
              Object.assign(window, { sound: this });
            }
          };
        }),
    });
    const hint = page.getByText(words['page-sound-wake'] ?? '-');
    await page.check('.consent input');
    await hint.waitFor({ state: 'detached' });
    await page.evaluate(() => (window as unknown as { readonly sound: AudioContext }).sound.suspend());
    await hint.waitFor();
    await page.locator('.sheet-name').click();
    await hint.waitFor({ state: 'detached' });
    await page.context().close();
  });
}
