/** What a person does on the page, in a few words. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { openPage, type Watched } from './browser.ts';
import { builtPage, openHouse, type FakeHouse, type Language } from './fake-house.ts';

export const locales: Record<Language, string> = { en: 'en-US', 'zh-Hant': 'zh-TW', 'zh-Hans': 'zh-CN' };
const generous = { burst: 10_000, perSecond: 1_000 };

/** A house that lets one address do all that a test file does. */
export async function openGenerousHouse(): Promise<FakeHouse> {
  const limits = { postsPerSheet: generous, postsPerAddress: generous, pagesPerAddress: generous };
  return openHouse({ pageFolder: await builtPage(), limits });
}

export async function write(page: Page, text: string): Promise<void> {
  await page.fill('textarea', text);
  await page.press('textarea', 'Enter');
}

interface Sitting {
  readonly language?: Language;
  readonly options?: BrowserContextOptions;
}

/** A sheet with a plan on it. */
export async function planOn(browser: Browser, house: FakeHouse, sitting: Sitting = {}): Promise<Watched> {
  const { language = 'en', options = {} } = sitting;
  const opened = await openPage(browser, { locale: locales[language], ...options });
  await opened.page.goto(house.url);
  await opened.page.waitForSelector('.entry');
  await write(opened.page, '110 ml');
  await opened.page.waitForSelector('.ladder');
  return opened;
}
