/// <reference lib="dom" />
/** The page loaded anew without a connection: the last sheet stands, a brew goes on, and what is done waits its turn. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { barriers, eventually } from './browser.ts';
import { layCable } from './cable.ts';
import type { SideBySide } from './side-by-side.ts';
import { hold, pageWords, type FakeHouse } from './fake-house.ts';
import { planOn, write } from './sheet.ts';

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

export function withoutConnection(at: SideBySide<FakeHouse>): void {
  const cutOff = async () => {
    const cable = await layCable(at.house.address);
    const sitting = await planOn(at.browser, { ...at.house, url: cable.url });
    await eventually(() => isKept(sitting.page), true);
    const context = sitting.page.context();
    const cut = async () => {
      cable.cut();
      await context.setOffline(true);
    };
    const mend = async () => {
      cable.mend();
      await context.setOffline(false);
    };
    const leave = async () => {
      await context.close();
      await cable.end();
    };
    expect(sitting.complaints).toEqual([]);
    await cut();
    return { ...sitting, cut, mend, leave };
  };

  it.concurrent(
    'the last sheet is shown; a tap and a line wait through a reload, go out in order, once, and are shown once',
    async () => {
      const { page, news, mend, leave } = await cutOff();
      await page.reload();
      await page.waitForSelector('.ladder');
      expect(await page.getByText('Tieguanyin in a gaiwan of 110 ml', { exact: false }).count()).toBe(1);
      await page.getByText(words['page-lost'] ?? '').waitFor();
      await page.getByRole('button', { name: 'Why these numbers' }).click();
      await write(page, 'Is it strong?');
      const waiting = page.locator('.own.waiting');
      await waiting.nth(1).waitFor();
      await page.reload();
      await waiting.nth(1).waitFor();
      expect(await waiting.count()).toBe(2);
      expect(await barriers(page)).toEqual([]);
      expect(news()).toEqual([]);

      await mend();
      await waiting.first().waitFor({ state: 'detached' });
      await eventually(() => waiting.count(), 0);
      expect(news()).toEqual([
        { kind: 'tap', key: 'more.1' },
        { kind: 'text', text: 'Is it strong?' },
      ]);
      await eventually(() => page.locator('.own', { hasText: 'Is it strong?' }).count(), 1);
      await page.reload();
      await page.locator('.own', { hasText: 'Is it strong?' }).waitFor();
      expect(await page.locator('.own', { hasText: 'Is it strong?' }).count()).toBe(1);
      expect(await page.locator('.own', { hasText: 'Why these numbers' }).count()).toBe(1);
      expect(news()).toEqual([]);
      await leave();
    },
  );

  it.concurrent('a hold goes on through a reload and is called at its end', async () => {
    const { page, say, cut, mend, leave } = await cutOff();
    await mend();
    await say(hold('en', 12_000));
    const endsAt = Date.now() + 12_000;
    await page.waitForSelector('.digits');
    await cut();
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
    await leave();
  });

  it.concurrent('nothing of the last person is left for the next', async () => {
    const { page, cut, mend, leave } = await cutOff();
    await mend();
    await page.locator('summary', { hasText: words['page-fresh'] ?? '' }).click();
    await page.getByRole('button', { name: words['page-fresh-confirm'] ?? '' }).click();
    await page.locator('.ladder').waitFor({ state: 'detached' });
    await page.waitForSelector('.entry');
    await cut();
    await page.reload();
    await page.getByText(words['page-lost'] ?? '').waitFor();
    expect(await page.getByText('110 ml').count()).toBe(0);
    await leave();
  });

  it.concurrent('what is forgotten is forgotten on every device at once', async () => {
    const { page, say } = await planOn(at.browser, at.house);
    await say({ paragraphs: ['All of it is gone.'], last: true });
    await page.locator('.ladder').waitFor({ state: 'detached' });
    await page.getByText('All of it is gone.').waitFor();
    await eventually(() => page.evaluate(() => Object.values(localStorage).join().includes('110 ml')), false);
    await page.context().close();
  });
}
