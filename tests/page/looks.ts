/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** What must hold of the page in whatever state: no barrier in any light, room on the smallest screen, things large enough to touch. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { barriers, type Looked } from './browser.ts';

const widths = [320, 1280] as const;

/** Where each state is to be kept as a picture, for whoever wants to look; nowhere when unset. */
const folder = process.env['NINTHPOUR_LOOK'];
export const isLooking = folder !== undefined;

interface View {
  readonly at: NonNullable<Looked['at']>;
  /** Its colours are looked at in the dark as well. */
  readonly inTheDark: boolean;
}

/** All that is wrong, each as "where: what". */
export async function troubles(page: Page, state: string, { at, inTheDark }: View): Promise<readonly string[]> {
  const found: string[] = [];
  const before = page.viewportSize();
  for (const width of widths) {
    await page.setViewportSize({ width, height: 800 });
    found.push(...(await outOfShape(page, width)));
    if (width === 320) found.push(...(await barriers(page, { at, for: 'everything' })));
  }
  if (inTheDark) {
    await page.emulateMedia({ colorScheme: 'dark' });
    found.push(...(await barriers(page, { at, for: 'light' })));
    await page.emulateMedia({ colorScheme: 'light' });
  }
  if (before !== null) await page.setViewportSize(before);
  if (folder !== undefined) await keepPictures(page, state, folder);
  return found.map((one) => `${state}: ${one}`);
}

/** Wider than the screen, or too small for a wet thumb: 44 px as in WCAG 2.2, 2.5.5, one level above the one we keep. */
const outOfShape = (page: Page, width: number): Promise<readonly string[]> =>
  page.evaluate((room) => {
    const wide = document.documentElement.scrollWidth;
    const small = [...document.querySelectorAll('button, a, summary, textarea, input:not([type=checkbox]), .consent')]
      .filter((one) => one.checkVisibility())
      .map((one) => ({ one, height: Math.round(one.getBoundingClientRect().height) }))
      .filter(({ height }) => height < 44);
    return [
      ...(wide > room ? [`${wide} px wide on a screen of ${room}`] : []),
      ...small.map(({ one, height }) => `${height} px tall at ${room}: ${one.outerHTML.slice(0, 80)}`),
    ];
  }, width);

async function keepPictures(page: Page, state: string, into: string): Promise<void> {
  mkdirSync(into, { recursive: true });
  const name = state.replaceAll(/[^\w-]+/g, '-');
  const before = page.viewportSize();
  for (const width of [320, 390, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.setViewportSize({ width, height: 844 });
      await page.emulateMedia({ colorScheme });
      await page.screenshot({ path: join(into, `${name}-${width}-${colorScheme}.png`) });
    }
  }
  await page.emulateMedia({ media: 'print', colorScheme: 'light' });
  await page.screenshot({ path: join(into, `${name}-print.png`), fullPage: true });
  await page.emulateMedia({ media: 'screen' });
  if (before !== null) await page.setViewportSize(before);
}
