/** The page and the real house behind it: a lesson and a label, with scripts and without. */
import { expect, it } from 'vitest';
import { barriers, eventually, openPage } from './browser.ts';
import { write } from './sheet.ts';
import type { SideBySide } from './side-by-side.ts';
import type { RealHouse } from './real-house.ts';

export function opened(at: SideBySide<RealHouse>): void {
  it.concurrent('shows a lesson without scripts, and gives a seat in it with them', async () => {
    const address = `${at.house.address()}lesson/${at.house.lesson()}`;
    const { page: bare } = await openPage(at.browser, { javaScriptEnabled: false });
    await bare.goto(address);
    await bare.getByText(/seats are free/).waitFor();
    await bare.context().close();
    const { page, complaints } = await openPage(at.browser);
    await page.goto(address);
    await page.getByRole('button', { name: 'Book seats', exact: true }).click();
    await page.getByRole('button', { name: '1', exact: true }).click();
    await page.getByText('Under which name shall I put it on the list at the door?').waitFor();
    // What stood there of the lesson gave way to the conversation.
    await eventually(() => page.getByText(/seats are free/).count(), 1);
    expect(await barriers(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it.concurrent('shows what a label leads to without scripts, and takes it up with them', async () => {
    const { page: bare } = await openPage(at.browser, { javaScriptEnabled: false });
    await bare.goto(`${at.house.address()}tea/sencha`);
    expect(await bare.locator('main .entry p').count()).toBeGreaterThan(0);
    await bare.context().close();
    const { page, complaints } = await openPage(at.browser);
    await page.goto(`${at.house.address()}tea/sencha`);
    await page.waitForSelector('.choices');
    // The shop's plan stands above the question for the customer's own vessel.
    expect(await page.locator('.ladder').count()).toBe(1);
    await page.click('.choices button');
    await page.waitForSelector('.own');
    await page.locator('.entry').nth(1).waitFor();
    expect(complaints).toEqual([]);
    await page.context().close();
  });
  it.concurrent('says at its head what it does, and does not say it again to who greets', async () => {
    const { page, complaints } = await openPage(at.browser);
    await page.goto(at.house.address());
    await page.getByText(/I work out how to brew your tea/).waitFor();
    await write(page, 'hello');
    await page.getByText(/Which tea have you got/).waitFor();
    await eventually(() => page.getByText(/I work out how to brew your tea/).count(), 1);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
}
