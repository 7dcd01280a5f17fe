/// <reference lib="dom" />
/** The page loaded anew without a connection: the last sheet stands, a brew goes on, and what is done waits its turn. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { barriers, browserPath, patienceMs, soon } from './browser.ts';
import { sideBySide } from './side-by-side.ts';
import { hold, pageWords } from './fake-house.ts';
import { openGenerousHouse, planOn, write } from './sheet.ts';

const words = pageWords('en');

const isKept = (page: Page): Promise<boolean> =>
  page.evaluate(async () => {
    const kept = await Promise.all(
      ['/', ...document.querySelectorAll('script[src]')].map(async (part) =>
        caches.match(typeof part === 'string' ? part : (part as HTMLScriptElement).src),
      ),
    );
    return navigator.serviceWorker.controller !== null && kept.every((one) => one !== undefined);
  });

describe.skipIf(browserPath === null)('without a connection', { timeout: patienceMs }, () => {
  const at = sideBySide(openGenerousHouse);

  const cutOff = async () => {
    const { page, complaints } = await planOn(at.browser, at.house);
    await expect.poll(() => isKept(page), soon).toBe(true);
    await page.context().setOffline(true);
    return { page, complaints };
  };

  it('the last sheet is shown; a tap and a line wait through a reload, go out in order, once, and are shown once', async () => {
    const { page, complaints } = await cutOff();
    expect(complaints).toEqual([]);
    await page.reload();
    await page.waitForSelector('.ladder');
    expect(await page.getByText('Tieguanyin in a gaiwan of 110 ml', { exact: false }).count()).toBe(1);
    await page.getByText(words['page-lost'] ?? '').waitFor();
    const recorded = at.house.recorded.length;
    await page.getByRole('button', { name: 'Why these numbers' }).click();
    await write(page, 'Is it strong?');
    const waiting = page.locator('.own.waiting');
    await waiting.nth(1).waitFor();
    await page.reload();
    await waiting.nth(1).waitFor();
    expect(await waiting.count()).toBe(2);
    expect(await barriers(page)).toEqual([]);
    expect(at.house.recorded).toHaveLength(recorded);

    await page.context().setOffline(false);
    await waiting.first().waitFor({ state: 'detached' });
    await expect.poll(() => waiting.count(), soon).toBe(0);
    const what = at.house.recorded.slice(recorded).map((one) => one.what);
    expect(what).toEqual([
      { kind: 'tap', key: 'more.1' },
      { kind: 'text', text: 'Is it strong?' },
    ]);
    await expect.poll(() => page.locator('.own', { hasText: 'Is it strong?' }).count(), soon).toBe(1);
    await page.reload();
    await page.locator('.own', { hasText: 'Is it strong?' }).waitFor();
    expect(await page.locator('.own', { hasText: 'Is it strong?' }).count()).toBe(1);
    expect(await page.locator('.own', { hasText: 'Why these numbers' }).count()).toBe(1);
    expect(at.house.recorded).toHaveLength(recorded + 2);
    await page.context().close();
  });

  it('a hold goes on through a reload and is called at its end', async () => {
    const { page } = await cutOff();
    await page.context().setOffline(false);
    await at.house.say({ chat: at.house.chat(), ...hold('en', 12_000) });
    const endsAt = Date.now() + 12_000;
    await page.waitForSelector('.digits');
    await page.context().setOffline(true);
    await page.reload();
    await page.locator('.digits').getByText(/^\d+$/).waitFor();
    const before = (endsAt - Date.now()) / 1000;
    const read = Number(await page.locator('.digits').textContent());
    expect(read).toBeGreaterThan((endsAt - Date.now()) / 1000 - 0.5);
    expect(read).toBeLessThan(before + 1.5);
    await page
      .getByRole('alert')
      .getByText(words['page-pour-now'] ?? '')
      .waitFor({ state: 'attached' });
    expect(Date.now()).toBeGreaterThan(endsAt - 100);
    await page.context().close();
  });

  it('nothing of the last person is left for the next', async () => {
    const { page } = await cutOff();
    await page.context().setOffline(false);
    await page.locator('summary', { hasText: words['page-fresh'] ?? '' }).click();
    await page.getByRole('button', { name: words['page-fresh-confirm'] ?? '' }).click();
    await page.locator('.ladder').waitFor({ state: 'detached' });
    await page.waitForSelector('.entry');
    await page.context().setOffline(true);
    await page.reload();
    await page.getByText(words['page-lost'] ?? '').waitFor();
    expect(await page.getByText('110 ml').count()).toBe(0);
    await page.context().close();
  });

  it('what is forgotten is forgotten on every device at once', async () => {
    const { page } = await planOn(at.browser, at.house);
    await at.house.say({ chat: at.house.chat(), paragraphs: ['All of it is gone.'], last: true });
    await page.locator('.ladder').waitFor({ state: 'detached' });
    await page.getByText('All of it is gone.').waitFor();
    await expect.poll(() => page.evaluate(() => Object.values(localStorage).join()), soon).not.toContain('110 ml');
    await page.context().close();
  });
});
