/// <reference lib="dom" />
/** One brew on two devices: a code brings the second to the first one's sheet, and a tap on both counts once. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { barriers, eventually, openPage } from './browser.ts';
import type { SideBySide } from './side-by-side.ts';
import type { RealHouse } from './real-house.ts';
import { write } from './sheet.ts';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).last();
const sheetOf = (page: Page): Promise<string> => page.locator('[role=log]').innerText();
/** The lines that stand on one of two sheets only. */
async function apart(...pages: readonly [Page, Page]): Promise<readonly string[]> {
  const [ones, others] = (await Promise.all(pages.map(sheetOf))).map((text) => text.split('\n'));
  return ones?.join('\n') === others?.join('\n') ? [] : [...(ones ?? []), '– beside –', ...(others ?? [])];
}
async function join(page: Page, code: string): Promise<void> {
  await page.getByText('This sheet on another device').click();
  await page.getByLabel('A code from the other device').fill(code);
  await button(page, 'Open that sheet here').click();
}

export function twoDevices(at: SideBySide<RealHouse>): void {
  const visitor = async () => {
    const opened = await openPage(at.browser);
    await opened.page.goto(at.house.address());
    await opened.page.waitForSelector('.entry');
    return opened;
  };
  it.concurrent('opens the running brew by a code, shows the same, and a tap on both at once counts once', async () => {
    const { page: kitchen, complaints } = await visitor();
    await write(kitchen, 'rou gui in a 110 ml gaiwan');
    await kitchen.waitForSelector('.ladder');
    await button(kitchen, 'Guide me').click();
    await button(kitchen, 'Ready').click();
    await kitchen.getByText(/^Warm vessel/).waitFor();
    await kitchen.getByText('This sheet on another device').click();
    expect(await barriers(kitchen)).toEqual([]);
    await button(kitchen, 'Show a code for the other device').click();
    const code = (await kitchen.locator('p.pass').textContent()) ?? '';
    expect(code).toMatch(/^\d{4} \d{4}$/);

    const { page: table, complaints: others } = await visitor();
    await write(table, 'something of my own');
    await join(table, code);
    await table.getByText(/^Warm vessel/).waitFor();
    expect(await sheetOf(table)).toBe(await sheetOf(kitchen));
    expect(await sheetOf(table)).toContain('rou gui in a 110 ml gaiwan');
    expect(await table.getByText('something of my own').count()).toBe(0);

    const both = await Promise.all([kitchen, table].map((page) => button(page, 'Done').elementHandle()));
    // Not as a driver clicks, who first waits for the button to stand still: the second would see it gone.
    await Promise.all(both.map((one) => one?.evaluate((element) => (element as HTMLButtonElement).click())));
    await Promise.all([kitchen, table].map((page) => button(page, 'The leaf is in').waitFor()));
    await button(table, 'The leaf is in').click();
    await Promise.all([kitchen, table].map((page) => page.getByText(/^Fill with/).waitFor()));
    await write(table, 'why?');
    await kitchen.locator('.own', { hasText: 'why?' }).waitFor();
    await eventually(() => apart(kitchen, table), []);

    const { page: third } = await visitor();
    await join(third, code);
    await third.getByText('No sheet opens with that.', { exact: false }).waitFor();
    expect(complaints).toEqual([]);
    // A refused code is told to the page by its status, and a browser writes that down.
    expect(others.filter((one) => !one.includes('404'))).toEqual([]);
  });
}
