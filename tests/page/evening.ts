/// <reference lib="dom" />
/** Everything a customer does, by keys alone, in each language; in every state nothing stands in anybody's way. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { announced, listenForAnnouncements } from './announced.ts';
import { openPage } from './browser.ts';
import { pageWords, type Language } from './fake-house.ts';
import { choose, fillByKeys, press, writeByKeys } from './hands.ts';
import { troubles } from './looks.ts';
import type { RealHouse } from './real-house.ts';
import { locales, write } from './sheet.ts';
import type { SideBySide } from './side-by-side.ts';
import { stands } from './stands.ts';
import { lastSteps, shopSteps, steps, whole, type Step } from './steps.ts';

const languages = Object.keys(locales) as readonly Language[];

/** Answered, and nothing under way. */
const settled = (page: Page, before: string): Promise<unknown> =>
  page.waitForFunction((html) => {
    const log = document.querySelector('[role=log]');
    // What was tapped stands in its place, taken, until it is answered; what was written stands below.
    const isUnderWay = log?.querySelector('.taken') || !log?.querySelector('.lines > li:last-child.entry');
    return log?.innerHTML !== html && !isUnderWay;
  }, before);

async function take(page: Page, { does, shows }: Step, language: Language): Promise<void> {
  const before = await page.locator('[role=log]').innerHTML();
  if (typeof does === 'number') await choose(page, does);
  else if (does !== null) await writeByKeys(page, does[language]);
  await settled(page, before);
  if (shows !== undefined) await page.waitForSelector(shows);
}

export function evenings(at: SideBySide<RealHouse>): void {
  let shop = Promise.resolve();

  /** One after another, as one shopkeeper works. */
  const atTheShop = (work: () => Promise<void>): Promise<void> => {
    shop = shop.then(work);
    return shop;
  };
  let keeper: Page | null = null;
  async function answerAsShop(): Promise<void> {
    if (keeper === null) {
      keeper = (await openPage(at.browser)).page;
      await keeper.goto(at.house.address());
      await keeper.waitForSelector('.choices');
      await write(keeper, await at.house.shopCode());
      await keeper.getByText('You are a shopkeeper now').waitFor();
    }
    await write(keeper, 'questions');
    await keeper.getByText('it is sent to them word for word').last().waitFor();
    await write(keeper, 'Yes, at its own risk');
    await keeper.getByText('Sent to the customer').last().waitFor();
  }

  it.concurrent.each(languages)('an evening in %s', async (language) => {
    const words = pageWords(language);
    const { page, complaints } = await openPage(at.browser, { locale: locales[language] });
    const found: string[] = [];
    const evening = { page, language, begun: 0 };
    let call = '';
    const look = async (state: string): Promise<void> => {
      // Colours are the same in every language.
      const view = { at: whole.has(state) ? 'page' : 'newest', inTheDark: language === 'en' } as const;
      found.push(...(await troubles(page, `${language} ${state}`, view)));
    };
    const takeAll = async (all: readonly Step[]): Promise<void> => {
      for (const step of all) {
        await take(page, step, language);
        await stands[step.state]?.(evening);
        if (step.state === 'hold') await listenForAnnouncements(page);
        if (step.state === 'call')
          call = (await page.locator('.entry').last().locator('p').first().textContent()) ?? '';
        await look(step.state);
      }
    };
    await page.goto(at.house.address());
    await page.waitForSelector('.choices button');
    await look('greeting');
    await takeAll(steps);
    const said = await announced(page);
    expect(said.filter((one) => one === words['page-pour-now'])).toHaveLength(1);
    // The house's own message of it stands there, and is not read out as well.
    expect(said.filter((one) => call !== '' && one.includes(call))).toEqual([]);
    expect(said.length).toBeGreaterThan(5);

    await atTheShop(async () => {
      await takeAll(shopSteps);
      await answerAsShop();
      await page.getByText('Yes, at its own risk').waitFor();
      await look('answered');
    });

    await page.context().setOffline(true);
    await page.getByText(words['page-lost'] ?? '').waitFor();
    await writeByKeys(page, '110 ml');
    await page.waitForSelector('.own.waiting');
    await look('offline');
    await page.context().setOffline(false);
    await page.waitForSelector('.lines > li.entry:last-child');

    await press(page, words['page-elsewhere'] ?? '');
    await press(page, words['page-elsewhere-show'] ?? '');
    await page.waitForSelector('p.pass');
    await fillByKeys(page, 'code', '0000 0000');
    await page.getByText(words['page-elsewhere-wrong'] ?? '').waitFor();
    await look('elsewhere');
    await press(page, words['page-fresh'] ?? '');
    await look('fresh?');
    await takeAll(lastSteps);

    await page.goto(`${at.house.address()}tea/nowhere`);
    await page.getByText(words['page-not-found'] ?? '').waitFor();
    await look('not found');
    expect(found).toEqual([]);
    // What is refused or missing is told to the page by its status, and a browser writes that down.
    expect(complaints.filter((one) => !/404|ERR_/.test(one))).toEqual([]);
    await page.context().close();
  });
}
