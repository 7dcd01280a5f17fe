/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The page in a real browser: asked, answered, held, cut off, come back, in three languages and two lights. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { barriers, eventually, openPage } from './browser.ts';
import type { SideBySide } from './side-by-side.ts';
import { hold, pageWords, plan, type FakeHouse, type Language } from './fake-house.ts';
import { chatOf, planOn, sitDown, write, type Seat } from './sheet.ts';

const firstWords: Record<Language, string> = {
  en: 'Tieguanyin in my gaiwan',
  'zh-Hant': '蓋碗泡鐵觀音',
  'zh-Hans': '盖碗泡铁观音',
};
const shown = (page: Page): Promise<readonly string[]> =>
  page.$$eval('.lines > li', (lines) =>
    lines.map(
      (line) => `${line.classList[0]}: ${(line.querySelector('p')?.lastChild?.textContent ?? '').slice(0, 30)}`,
    ),
  );

export function thePage(at: SideBySide<FakeHouse>): void {
  const withPlan = (seat: Seat = {}) => planOn(at.browser, at.house, seat);

  it.concurrent.each(['en', 'zh-Hant', 'zh-Hans'] as const)(
    'asks, answers and is reachable for everybody: %s',
    async (language) => {
      const { page, complaints, say } = await sitDown(at.browser, at.house, { language });
      expect(await page.title()).toBe(pageWords(language)['page-title']);
      await write(page, firstWords[language]);
      await page.waitForSelector('.choices');
      await page.click('.choices button:nth-child(2)');
      await page.waitForSelector('.ladder');
      expect(await page.locator('.rung').count()).toBe(8);
      expect(await page.locator('.entry').last().getAttribute('lang')).toBe(language);
      expect(await page.locator('.choices').count()).toBe(1);
      await say(hold(language, 60_000));
      await page.waitForSelector('.digits');
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await barriers(page)).toEqual([]);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  it.concurrent('fits 320 px with large things to touch, and doubled letters', async () => {
    const { page, say } = await withPlan({ options: { viewport: { width: 320, height: 640 } } });
    const wide = (): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);
    const heights = (): Promise<number[]> =>
      page.$$eval('button, a, summary, textarea, .consent', (all) =>
        all.flatMap((one) => [...one.getClientRects()].slice(0, 1).map(({ height }) => Math.round(height))),
      );
    const before = await heights();
    expect(before.length).toBeGreaterThan(7);
    expect(Math.min(...before)).toBeGreaterThanOrEqual(44);
    await say(hold('en', 60_000));
    await page.waitForSelector('.digits');
    expect(await wide()).toBe(320);
    expect(Math.min(...(await heights()))).toBeGreaterThanOrEqual(44);
    await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
    expect(await wide()).toBe(320);
    await page.context().close();
  });

  it.concurrent('hands over the file of a message, and breaks no rule by it', async () => {
    const { page, say } = await withPlan();
    const file = { name: 'first-cup.ics', mediaType: 'text/calendar', text: 'BEGIN', label: 'For your calendar' };
    await say({ paragraphs: ['You are coming.'], file });
    const link = page.getByRole('link', { name: file.label });
    await link.waitFor();
    expect(await barriers(page)).toEqual([]);
    expect(Math.round((await link.boundingBox())?.height ?? 0)).toBeGreaterThanOrEqual(44);
    const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
    expect(download.suggestedFilename()).toBe(file.name);
    await page.context().close();
  });

  it.concurrent('is whole again after it is loaded anew, and greets only once', async () => {
    const { page, news } = await withPlan();
    const before = await shown(page);
    expect(before).toHaveLength(3);
    await page.reload();
    await page.waitForSelector('.ladder');
    expect(await shown(page)).toEqual(before);
    expect(news()).toEqual([]);
    await page.context().close();
  });

  it.concurrent('opens at a label: the plan stands before any script, then the conversation takes over', async () => {
    const { page } = await openPage(at.browser, { javaScriptEnabled: false });
    await page.goto(`${at.house.url}/tea/tieguanyin`);
    expect(await page.locator('.rung').count()).toBe(8);
    await page.context().close();
    const { page: live, complaints } = await openPage(at.browser);
    await live.goto(`${at.house.url}/tea/tieguanyin`);
    await live.waitForSelector('.choices');
    const chat = await chatOf(live, at.house);
    const opened = () => at.house.recorded.filter((one) => one.chat === chat).map(({ what }) => what);
    expect(opened()).toEqual([{ kind: 'open', payload: 'tea-tieguanyin' }]);
    expect(await live.locator('.ladder').count()).toBe(1);
    await live.reload();
    await live.waitForSelector('.choices');
    expect(opened()).toHaveLength(1);
    await live.goto('about:blank');
    await live.goto(`${at.house.url}/tea/tieguanyin`);
    await eventually(() => opened().length, 2);
    expect(complaints).toEqual([]);
    await live.context().close();
  });

  it.concurrent('speaks another language at a touch, and tells the conversation', async () => {
    const { page, news } = await withPlan();
    await page.getByRole('link', { name: '繁體中文' }).click();
    await eventually(() => page.title(), pageWords('zh-Hant')['page-title']);
    await eventually(news, [{ kind: 'text', text: '繁體中文' }]);
    await page.reload();
    await page.waitForSelector('.ladder');
    expect(await page.getAttribute('html', 'lang')).toBe('zh-Hant');
    await page.context().close();
  });

  it.concurrent('follows the conversation into another language', async () => {
    const { page, say } = await withPlan();
    const hand = () =>
      page
        .locator('.entry[lang=en] p')
        .last()
        .evaluate((one) => {
          const { fontFamily, lineHeight } = getComputedStyle(one);
          return { fontFamily, lineHeight };
        });
    const before = await hand();
    await say({ language: 'zh-Hans', ...plan['zh-Hans'] });
    await eventually(() => page.title(), pageWords('zh-Hans')['page-title']);
    // What was said in English stays as it was set.
    expect(await hand()).toEqual(before);
    const chinese = page.locator('.entry[lang=zh-Hans] p').first();
    expect(await chinese.evaluate((one) => getComputedStyle(one).fontFamily)).toContain('Songti SC');
    await page.context().close();
  });

  it.concurrent('sets what is written from right to left in its own direction', async () => {
    const { page } = await withPlan();
    const direction = (of: string): Promise<string> =>
      page
        .locator(of)
        .last()
        .evaluate((one) => getComputedStyle(one).direction);
    expect(await direction('textarea')).toBe('ltr');
    await page.fill('textarea', 'شاي أخضر؟');
    expect(await direction('textarea')).toBe('rtl');
    await page.press('textarea', 'Enter');
    await page.getByText('شاي أخضر؟').waitFor();
    expect(await direction('.own bdi')).toBe('rtl');
    await page.context().close();
  });

  it.concurrent('says so when more is pasted than a line holds', async () => {
    const { page } = await withPlan({ options: { viewport: { width: 320, height: 640 } } });
    const full = page.getByText(pageWords('en')['page-write-full'] ?? '-');
    const paste = (text: string): Promise<unknown> =>
      page.locator('textarea').evaluate((field, pasted) => {
        field.focus();
        document.execCommand('insertText', false, pasted);
      }, text);
    await paste('sencha '.repeat(20));
    expect(await full.count()).toBe(0);
    await paste('sencha '.repeat(3_000));
    await full.waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.press('textarea', 'Enter');
    await full.waitFor({ state: 'detached' });
    const sides = await page.$$eval('.growing, .writing button', (all) =>
      all.map((one) => one.getBoundingClientRect().bottom),
    );
    expect(sides[0]).toBeCloseTo(sides[1] ?? 0, 0);
    await page.context().close();
  });

  it.concurrent('a fresh sheet shows nothing of the last person, and is another chat', async () => {
    const { page, chat: before } = await withPlan();
    const { 'page-fresh': fresh = '', 'page-fresh-confirm': confirm = '' } = pageWords('en');
    await page.locator('summary', { hasText: fresh }).click();
    await page.getByRole('button', { name: confirm }).click();
    await page.locator('.ladder').waitFor({ state: 'detached' });
    await page.waitForSelector('.entry');
    expect(await chatOf(page, at.house)).not.toBe(before);
    expect(await page.getByText('110 ml').count()).toBe(0);
    expect(await page.evaluate(() => Object.values(localStorage).join())).not.toContain('110 ml');
    await page.context().close();
  });

  it.concurrent('can be used by keys alone, and a word being composed is not sent by Enter', async () => {
    const { page, news } = await withPlan();
    await page.fill('textarea', '鐵觀音');
    await page.locator('textarea').evaluate((field) => {
      // In Safari the word is whole already, and its Enter bears this code.
      for (const composing of [{ isComposing: true }, { keyCode: 229 }]) {
        const enter = { key: 'Enter', bubbles: true, cancelable: true, ...composing };
        field.dispatchEvent(new KeyboardEvent('keydown', enter));
      }
    });
    expect(await page.inputValue('textarea')).toBe('鐵觀音');
    await page.focus('.languages a');
    for (let n = 0; n < 20; n++) {
      await page.keyboard.press('Tab');
      if (await page.evaluate(() => document.activeElement?.closest('.choices') !== null)) break;
    }
    const outline = await page.evaluate(() => getComputedStyle(document.activeElement ?? document.body).outlineStyle);
    expect(outline).toBe('solid');
    await page.keyboard.press('Enter');
    await eventually(() => news().map(({ kind }) => kind), ['tap']);
    expect(await page.evaluate(() => document.activeElement?.classList[0])).toBe('entry');
    await page.context().close();
  });

  it.concurrent('prints the newest plan alone, as a card', async () => {
    const { page, say } = await withPlan();
    await say({ paragraphs: ['Anything else?'] });
    await page.getByText('Anything else?').waitFor();
    await page.emulateMedia({ media: 'print' });
    const seen = await page.$$eval('.lines > li, button, .masthead, .foot, .writing', (all) =>
      all.filter((one) => one.checkVisibility()).map((one) => one.className),
    );
    expect(seen).toEqual(['entry card']);
    await page.context().close();
  });

  it.concurrent('is no more than 60 kB of scripts and styles, packed', async () => {
    const { page } = await openPage(at.browser);
    const session = await page.context().newCDPSession(page);
    await session.send('Network.enable');
    let packed = 0;
    session.on('Network.loadingFinished', (one) => (packed += one.encodedDataLength));
    const assets: string[] = [];
    page.on('response', (answer) => void (answer.url().includes('/assets/') && assets.push(answer.url())));
    await page.goto(at.house.url);
    await page.waitForSelector('.entry');
    // Fetched a second time for when there is no connection: that counts as well.
    for (const part of [/\/main-.*\.js$/, /\/page-.*\.css$/]) {
      expect(assets.filter((url) => part.test(url)).length).toBeGreaterThan(0);
    }
    expect(packed).toBeGreaterThan(5_000);
    expect(packed).toBeLessThan(60_000);
    await page.context().close();
  });
}
