/** The page and the real house behind it: a question typed in each language is answered with a computed plan. */
import { describe, expect, it } from 'vitest';
import { barriers, browserPath, openPage, patienceMs } from './browser.ts';
import { sideBySide } from './side-by-side.ts';
import { openRealHouse } from './real-house.ts';

const asked = [
  ['en-US', 'en', 'Tieguanyin in my 110 ml gaiwan'],
  ['zh-TW', 'zh-Hant', '蓋碗泡鐵觀音，110毫升'],
  ['zh-CN', 'zh-Hans', '110毫升盖碗泡铁观音'],
] as const;

describe.skipIf(browserPath === null)('the page and its house', { timeout: patienceMs }, () => {
  const at = sideBySide(openRealHouse);

  it.each(asked)('answers in %s', async (locale, language, question) => {
    const { page, complaints } = await openPage(at.browser, { locale });
    await page.goto(at.house.address());
    await page.waitForSelector('.entry');
    await page.fill('textarea', question);
    await page.press('textarea', 'Enter');
    await page.waitForSelector('.ladder');
    expect(await page.locator('.rung').count()).toBeGreaterThanOrEqual(7);
    expect(await page.locator('.entry').last().getAttribute('lang')).toBe(language);
    expect(await page.locator('.entry').last().textContent()).toMatch(/9[0-9] ?°C|100 ?°C/);
    // Its rows are the history: a page loaded anew shows the same sheet.
    const before = await page.locator('.lines').innerText();
    await page.reload();
    await page.waitForSelector('.ladder');
    expect(await page.locator('.lines').innerText()).toBe(before);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('shows a lesson without scripts, and gives a seat in it with them', async () => {
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
    expect(await page.getByText(/8 seats are free/).count()).toBe(1);
    expect(await barriers(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('shows what a label leads to without scripts, and takes it up with them', async () => {
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
});
