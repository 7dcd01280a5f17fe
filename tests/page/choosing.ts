/// <reference lib="dom" />
/** What is chosen under a finger: nothing moves until it is answered, and nothing is taken that was not meant. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { barriers, eventually } from './browser.ts';
import type { SideBySide } from './side-by-side.ts';
import { hold, pageWords, type FakeHouse } from './fake-house.ts';
import { planOn, sitDown, write } from './sheet.ts';

const words = pageWords('en');
/** What the worker behind the page asks for cannot be held up on the way. */
const bare = { serviceWorkers: 'block' } as const;

const choices = (...labels: readonly string[]) => labels.map((label, n) => ({ key: `${n}`, label }));

const places = (page: Page): Promise<readonly number[]> =>
  page.$$eval('.choices button, .writing, .foot', (all) => all.map((one) => Math.round(one.getBoundingClientRect().y)));

export function choosing(at: SideBySide<FakeHouse>): void {
  it.concurrent('stands where it stood until it is answered, and nothing else is taken meanwhile', async () => {
    const { page, news } = await planOn(at.browser, at.house, { options: bare });
    const held: (() => Promise<void>)[] = [];
    await page.route('**/sheet', (route) => void held.push(() => route.continue()));
    await page.getByRole('button', { name: 'Guide me' }).scrollIntoViewIfNeeded();
    const before = await places(page);
    await page.getByRole('button', { name: 'Guide me' }).click();
    await page.waitForSelector('button.taken');
    // Long enough under way to be told so, and still in no one's way.
    await page
      .locator('.choices')
      .getByText(words['page-waiting'] ?? '-')
      .waitFor();
    expect(await places(page)).toEqual(before);
    expect(await page.locator('.own').count()).toBe(1);
    await page.getByRole('button', { name: 'Ask the shop' }).click({ force: true });
    expect(await page.locator('button.taken').allTextContents()).toEqual(['Guide me']);
    expect(await barriers(page)).toEqual([]);
    await Promise.all(held.map((goOn) => goOn()));
    await page.waitForSelector('.digits');
    await page.locator('.own', { hasText: 'Guide me' }).waitFor();
    expect(await page.locator('button.taken').count()).toBe(0);
    expect(news()).toEqual([{ kind: 'tap', key: 'guide' }]);
    await page.context().close();
  });

  it.concurrent('a finger that touches twice chooses once', async () => {
    const { page, news } = await planOn(at.browser, at.house);
    // Two touches on one spot, between which another choice has come under the finger.
    await page.evaluate(() => {
      for (const button of [...document.querySelectorAll('.choices button')].slice(0, 2))
        button.dispatchEvent(new MouseEvent('click', { bubbles: true, detail: 1, clientX: 60, clientY: 300 }));
    });
    await page.waitForSelector('.digits');
    expect(news()).toEqual([{ kind: 'tap', key: 'guide' }]);
    await page.context().close();
  });

  it.concurrent('brief choices stand side by side on a telephone, and the next line says what it is for', async () => {
    const { page, say } = await sitDown(at.browser, at.house, { options: { viewport: { width: 360, height: 740 } } });
    const hint = (): Promise<string | null> => page.locator('textarea').getAttribute('placeholder');
    expect(await hint()).toBe(words['page-write-hint']);
    await write(page, 'Tieguanyin in my gaiwan');
    await page.waitForSelector('.choices');
    expect(await hint()).toBe(words['page-write-on']);
    await say({ paragraphs: ['Which?'], choices: choices('100 ml', '120 ml') });
    await page.getByRole('button', { name: '100 ml' }).waitFor();
    const [first, second] = (await places(page)).slice(-4);
    expect(second).toBe(first);
    await page.goto(`${at.house.url}/lesson/12`);
    expect(await hint()).toBe(words['page-write-on']);
    await page.context().close();
  });

  it.concurrent(
    'between two steps of a brew what comes next is the largest, and no one else stands alone but the last',
    async () => {
      const { page, say } = await sitDown(at.browser, at.house);
      const boxes = (): Promise<readonly (readonly [y: number, width: number, height: number])[]> =>
        page.$$eval('.choices button', (all) =>
          all.map((one) => {
            const { y, width, height } = one.getBoundingClientRect();
            return [Math.round(y), Math.round(width), Math.round(height)] as const;
          }),
        );
      const id = await say({ paragraphs: ['Set out.'], choices: choices('Ready', 'Why') });
      await page.getByRole('button', { name: 'Ready' }).waitFor();
      const [ready, why] = await boxes();
      expect(ready).toEqual(why);
      const next = await say({ paragraphs: ['Fill.'], choices: choices('Filled', 'Why', 'Else'), replaces: id });
      await page.getByRole('button', { name: 'Filled' }).waitFor();
      const [filled, left, right] = await boxes();
      expect(filled?.[2]).toBeGreaterThanOrEqual(72);
      expect(filled?.[1]).toBeGreaterThan(2 * (left?.[1] ?? Infinity));
      expect(left).toEqual(right);
      await say({ paragraphs: ['Pour.'], choices: choices('Poured', 'Why'), replaces: next });
      await page.getByRole('button', { name: 'Poured' }).waitFor();
      const [poured, last] = await boxes();
      expect(last?.[1]).toBe(poured?.[1]);
      await page.context().close();
    },
  );

  it.concurrent('a list hangs on its numbers, and is read and copied as it was written', async () => {
    const { page, say } = await sitDown(at.browser, at.house, { options: { viewport: { width: 320, height: 640 } } });
    const line = '1. “The first cup”, Saturday, December 5, 10:30 am, the long table – 8 seats free';
    await say({ paragraphs: ['These are coming up.', line] });
    const item = page.locator('.entry p').getByText('seats free').locator('xpath=ancestor-or-self::p').last();
    expect(await item.innerText()).toBe(line);
    const lefts = await item.evaluate((one) => {
      const text = document.createRange();
      text.selectNodeContents(one);
      return [...new Set([...text.getClientRects()].map(({ left }) => Math.round(left)))];
    });
    // The number, and one edge for all that stands beside it.
    expect(lefts.filter((left) => left <= Math.min(...lefts) + 1)).toHaveLength(1);
    await page.context().close();
  });

  it.concurrent('in colours of the person’s own every choice has an edge', async () => {
    const { page, say } = await planOn(at.browser, at.house, { options: { forcedColors: 'active' } });
    await eventually(
      () =>
        page
          .locator('.choices button')
          .first()
          .evaluate((one) => getComputedStyle(one).borderTopWidth),
      '1px',
    );
    await say(hold('en', 60_000));
    await page.waitForSelector('.hold-rung');
    // What is past of a hold is filled, what is left is not.
    const [left, past] = await page.$$eval('.hold-rung rect', (all) => all.map((one) => getComputedStyle(one).fill));
    const paper = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    expect(left).toBe(paper);
    expect(past).not.toBe(paper);
    expect(await barriers(page)).toEqual([]);
    await page.context().close();
  });
}
