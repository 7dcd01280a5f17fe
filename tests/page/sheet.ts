/// <reference lib="dom" />
/** What a person does on the page, in a few words; each with a sheet of their own, so that many may sit in one house at once. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import type { Incoming, Outgoing } from '../../src/messages.ts';
import { openPage, type Watched } from './browser.ts';
import { builtPage, openHouse, type FakeHouse, type Language } from './fake-house.ts';

export const locales: Record<Language, string> = { en: 'en-US', 'zh-Hant': 'zh-TW', 'zh-Hans': 'zh-CN' };
const generous = { burst: 10_000, perSecond: 1_000 };

/** A house that lets one address do all that a test file does. */
export async function openGenerousHouse(clock?: { now(): number }): Promise<FakeHouse> {
  const limits = { postsPerSheet: generous, postsPerAddress: generous, pagesPerAddress: generous };
  return openHouse({ pageFolder: await builtPage(), limits, ...(clock === undefined ? {} : { clock }) });
}

export async function write(page: Page, text: string): Promise<void> {
  await page.fill('textarea', text);
  await page.press('textarea', 'Enter');
}

export interface Sitting extends Watched {
  readonly chat: string;
  /** Says something on this sheet. */
  readonly say: (part: Partial<Outgoing>) => Promise<string>;
  /** What the house took in of this sheet since this was last asked. */
  readonly news: () => readonly Incoming['what'][];
}

export interface Seat {
  readonly language?: Language;
  readonly options?: BrowserContextOptions;
  /** What is done to the page before it is opened. */
  readonly before?: (page: Page) => Promise<unknown>;
}

/** A sheet that was just opened, and greeted. */
export async function sitDown(browser: Browser, house: FakeHouse, seat: Seat = {}): Promise<Sitting> {
  const { language = 'en', options = {}, before } = seat;
  const opened = await openPage(browser, { locale: locales[language], ...options });
  const { page } = opened;
  await before?.(page);
  await page.goto(house.url);
  await page.waitForSelector('.entry');
  const chat = await chatOf(page, house);
  let known = 0;
  const news = (): readonly Incoming['what'][] => {
    const all = house.recorded.filter((one) => one.chat === chat).map(({ what }) => what);
    return all.slice(known, (known = all.length));
  };
  news();
  return { ...opened, chat, news, say: (part) => house.say({ chat, ...part }) };
}

/** Whose sheet a page shows: it holds the beginning of its name. */
export async function chatOf(page: Page, house: FakeHouse): Promise<string> {
  const boot = await page.locator('#boot').textContent();
  const { sheet } = JSON.parse(boot ?? '{}') as { readonly sheet: string };
  return house.recorded.find(({ chat }) => chat.startsWith(sheet))?.chat ?? `nobody wrote on ${sheet}`;
}

/** A sheet with a plan on it. */
export async function planOn(browser: Browser, house: FakeHouse, seat: Seat = {}): Promise<Sitting> {
  const sitting = await sitDown(browser, house, seat);
  await write(sitting.page, '110 ml');
  await sitting.page.waitForSelector('.ladder');
  sitting.news();
  return sitting;
}
