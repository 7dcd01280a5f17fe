/// <reference lib="dom" />
/** The page and a line that breaks: what is written waits and goes out once, what is said is missed never. */
import { expect, it } from 'vitest';
import { mostPassed } from '../../src/channels/web/web-channel.ts';
import { barriers, eventually } from './browser.ts';
import type { SideBySide } from './side-by-side.ts';
import { pageWords, type FakeHouse } from './fake-house.ts';
import { planOn, sitDown, write } from './sheet.ts';

const words = pageWords('en');
/** What the worker behind the page asks for cannot be held up on the way. */
const bare = { options: { serviceWorkers: 'block' } } as const;

export function theLine(at: SideBySide<FakeHouse>): void {
  it.concurrent('keeps what is written without a connection, shows it waiting, and sends it once', async () => {
    const { page, news } = await planOn(at.browser, at.house);
    await page.context().setOffline(true);
    await page.getByText(words['page-lost'] ?? '').waitFor();
    await write(page, 'Is it strong?');
    await page.waitForSelector('.own.waiting');
    expect(await page.locator('.own.waiting .quiet').last().textContent()).toBe(words['page-waiting']);
    expect(news()).toEqual([]);
    await page.context().setOffline(false);
    await page.waitForSelector('.own.waiting', { state: 'detached' });
    expect(news()).toEqual([{ kind: 'text', text: 'Is it strong?' }]);
    await page.context().close();
  });

  it.concurrent('sends what was waiting when the page itself was closed', async () => {
    const { page, news } = await planOn(at.browser, at.house, bare);
    await page.route('**/sheet', (route) => route.abort());
    await write(page, 'before closing');
    await page.waitForSelector('.own.waiting');
    await page.unroute('**/sheet');
    await page.reload();
    const heard: unknown[] = [];
    await eventually(() => heard.push(...news()), 1);
    expect(heard).toEqual([{ kind: 'text', text: 'before closing' }]);
    await page.context().close();
  });

  it.concurrent('says so when the line is lost, and misses nothing when it is back', async () => {
    const { page, say } = await planOn(at.browser, at.house, bare);
    const entries = await page.locator('.entry').count();
    await page.context().setOffline(true);
    await page.getByText(words['page-lost'] ?? '').waitFor();
    await say({ paragraphs: ['said meanwhile'] });
    await page.context().setOffline(false);
    await page.getByText('said meanwhile').waitFor();
    expect(await page.locator('.entry').count()).toBe(entries + 1);
    await page.getByText(words['page-lost'] ?? '').waitFor({ state: 'detached' });
    await page.context().close();
  });

  it.concurrent('says so when more was said before than is told', async () => {
    const { page, say } = await planOn(at.browser, at.house, bare);
    expect(await page.getByText(words['page-earlier'] ?? '').count()).toBe(0);
    for (let left = mostPassed; left > 0; left--) await say({ paragraphs: [`${left} to go`] });
    await page.getByText('1 to go', { exact: true }).waitFor();
    expect(await page.getByText(words['page-earlier'] ?? '').count()).toBe(0);
    await page.reload();
    await page.getByText(words['page-earlier'] ?? '').waitFor();
    await page.getByText('1 to go', { exact: true }).waitFor();
    await page.context().close();
  });

  it.concurrent('says what could not go out, and lets the choices before it stand', async () => {
    const { page } = await planOn(at.browser, at.house, bare);
    await page.route('**/sheet', (route) => route.fulfill({ status: 400 }));
    await write(page, 'misshapen');
    await page.getByText(words['page-refused'] ?? '').waitFor();
    expect(await page.locator('.choices').count()).toBe(1);
    expect(await barriers(page)).toEqual([]);
    await page.context().close();
  });

  it.concurrent('a replaced message changes where it stands, and its taps leave no lines', async () => {
    const { page, say } = await sitDown(at.browser, at.house);
    const id = await say({ paragraphs: ['Fill.'], choices: [{ key: 'a', label: 'Filled' }] });
    await page.getByRole('button', { name: 'Filled' }).click();
    await page.getByText('Fill.').waitFor();
    await say({ paragraphs: ['Hold.'], choices: [{ key: 'b', label: 'Poured' }], replaces: id });
    await page.getByRole('button', { name: 'Poured' }).waitFor();
    expect(await page.getByText('Fill.').count()).toBe(0);
    expect(await page.locator('.own', { hasText: 'Filled' }).count()).toBe(0);
    await page.context().close();
  });
}
