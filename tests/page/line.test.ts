/// <reference lib="dom" />
/** The page and a line that breaks: what is written waits and goes out once, what is said is missed never. */
import { describe, expect, it } from 'vitest';
import { browserPath, patienceMs, soon } from './browser.ts';
import { sideBySide } from './side-by-side.ts';
import { pageWords } from './fake-house.ts';
import { openGenerousHouse, planOn, write } from './sheet.ts';

describe.skipIf(browserPath === null)('the line', { timeout: patienceMs }, () => {
  const at = sideBySide(openGenerousHouse);

  const withPlan = () => planOn(at.browser, at.house);

  it('keeps what is written without a connection, shows it waiting, and sends it once', async () => {
    const { page } = await withPlan();
    const recorded = at.house.recorded.length;
    await page.context().setOffline(true);
    await write(page, 'Is it strong?');
    await page.waitForSelector('.own.waiting');
    expect(await page.locator('.own.waiting .quiet').last().textContent()).toBe(pageWords('en')['page-waiting']);
    expect(at.house.recorded).toHaveLength(recorded);
    await page.context().setOffline(false);
    await page.waitForSelector('.own.waiting', { state: 'detached' });
    expect(at.house.recorded.slice(recorded).map((one) => one.what)).toEqual([{ kind: 'text', text: 'Is it strong?' }]);
    await page.context().close();
  });

  it('sends what was waiting when the page itself was closed', async () => {
    const { page } = await withPlan();
    const recorded = at.house.recorded.length;
    await page.route('**/sheet', (route) => route.abort());
    await write(page, 'before closing');
    await page.waitForSelector('.own.waiting');
    await page.unroute('**/sheet');
    await page.reload();
    await expect
      .poll(() => at.house.recorded.slice(recorded).map((one) => one.what), soon)
      .toEqual([{ kind: 'text', text: 'before closing' }]);
    await page.context().close();
  });

  it('says so when the line is lost, and misses nothing when it is back', async () => {
    const { page } = await withPlan();
    const entries = await page.locator('.entry').count();
    await page.context().setOffline(true);
    // An open stream outlives the emulated loss: break it as a real one would.
    await page.route('**/stream*', (route) => route.abort());
    await page.evaluate(() => window.dispatchEvent(new Event('online')));
    await at.house.say({ chat: at.house.chat(), paragraphs: ['said meanwhile'] });
    await page.context().setOffline(false);
    await page.unroute('**/stream*');
    await page.getByText('said meanwhile').waitFor();
    expect(await page.locator('.entry').count()).toBe(entries + 1);
    await page.context().close();
  });

  it('a replaced message changes where it stands, and its taps leave no lines', async () => {
    const { page } = await withPlan();
    const id = await at.house.say({
      chat: at.house.chat(),
      paragraphs: ['Fill.'],
      choices: [{ key: 'a', label: 'Filled' }],
    });
    await page.getByRole('button', { name: 'Filled' }).click();
    await page.getByText('Fill.').waitFor();
    await at.house.say({
      chat: at.house.chat(),
      paragraphs: ['Hold.'],
      choices: [{ key: 'b', label: 'Poured' }],
      replaces: id,
    });
    await page.getByRole('button', { name: 'Poured' }).waitFor();
    expect(await page.getByText('Fill.').count()).toBe(0);
    expect(await page.locator('.own', { hasText: 'Filled' }).count()).toBe(0);
    await page.context().close();
  });
});
