/// <reference lib="dom" />
/**
 * The ladder against kept pictures: its drawing to the letter, and what a browser makes of it in coarse cells, where no
 * font counts. After a meant change: delete what is in `kept` and run this with NINTHPOUR_KEEP_PICTURES=1.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { browserPath, openPage, patienceMs } from './browser.ts';
import { sideBySide } from './side-by-side.ts';
import type { Language } from './fake-house.ts';
import { locales, openGenerousHouse, planOn } from './sheet.ts';

const kept = (name: string): string => fileURLToPath(new URL(`kept/${name}`, import.meta.url));
const cellPx = 8;

/** The drawing without its words: as text, each element on a line. */
const drawing = (page: Page): Promise<string> =>
  page
    .locator('.ladder svg')
    .first()
    .evaluate((svg) => svg.outerHTML.replaceAll('><', '>\n<').replaceAll(/\s+\n/g, '\n'));

const shapes = (text: string): readonly string[] => text.match(/ (?:d|viewBox|fill-opacity|x|y)="[^"]*"/g) ?? [];

/** How dark each cell is beside the paper, 0 to 9, a row of cells a line. */
async function cellsOf(browser: Browser, page: Page): Promise<readonly string[]> {
  // Words differ with the fonts of a machine: they are left out, and the ladder stands where no line above can move it.
  await page.evaluate(() => {
    for (const ink of ['--ink', '--pencil']) document.documentElement.style.setProperty(ink, 'transparent');
    const svg = document.querySelector<SVGElement>('.ladder svg');
    const place = { position: 'fixed', top: '0', left: '0', width: '352px', background: 'var(--paper)', zIndex: '1' };
    Object.assign(svg?.style ?? {}, place);
  });
  const png = (await page.locator('.ladder svg').first().screenshot()).toString('base64');
  // The page's own policy lets no picture in from outside; an empty page has none.
  const { page: bench } = await openPage(browser);
  const rows = await bench.evaluate(
    async ([bytes, size]) => {
      const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${bytes}`)).blob());
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
      const pen = canvas.getContext('2d');
      if (pen === null) throw new Error('no canvas');
      pen.drawImage(bitmap, 0, 0);
      const { data } = pen.getImageData(0, 0, bitmap.width, bitmap.height);
      const pixel = (x: number, y: number): number => {
        const at = 4 * (y * bitmap.width + x);
        return ((data[at] ?? 0) + (data[at + 1] ?? 0) + (data[at + 2] ?? 0)) / 3;
      };
      const paper = pixel(bitmap.width - 1, 0);
      return Array.from({ length: Math.floor(bitmap.height / size) }, (_row, row) =>
        Array.from({ length: Math.floor(bitmap.width / size) }, (_cell, column) => {
          let sum = 0;
          for (let n = 0; n < size * size; n++) {
            sum += Math.abs(pixel(column * size + (n % size), row * size + Math.floor(n / size)) - paper);
          }
          return Math.min(9, Math.round((sum / size / size / 255) * 14));
        }).join(''),
      );
    },
    [png, cellPx] as const,
  );
  await bench.context().close();
  return rows;
}

describe.skipIf(browserPath === null)('the picture of a plan', { timeout: patienceMs }, () => {
  const at = sideBySide(openGenerousHouse);

  it.each(Object.keys(locales) as Language[])(
    'is drawn alike by the server and by the page, to the letter: %s',
    async (language) => {
      const { page } = await openPage(at.browser, { locale: locales[language], javaScriptEnabled: false });
      await page.goto(`${at.house.url}/tea/tieguanyin`);
      const served = await drawing(page);
      await page.context().close();
      await expect(served).toMatchFileSnapshot(kept(`ladder-${language}.svg`));
      const { page: live } = await planOn(at.browser, at.house, { language });
      expect(shapes(await drawing(live))).toEqual(shapes(served));
      await live.context().close();
    },
  );

  it.each(['light', 'dark'] as const)('looks as it was kept, cell by cell, in %s', async (colorScheme) => {
    const { page } = await planOn(at.browser, at.house, { options: { colorScheme } });
    const cells = await cellsOf(at.browser, page);
    const file = kept(`ladder-${colorScheme}.txt`);
    if (!existsSync(file) && process.env['NINTHPOUR_KEEP_PICTURES'] === '1')
      writeFileSync(file, `${cells.join('\n')}\n`);
    const before = readFileSync(file, 'utf8').trimEnd().split('\n');
    expect(cells.map((row) => row.length)).toEqual(before.map((row) => row.length));
    const apart = cells.flatMap((row, y) =>
      row.split('').filter((cell, x) => Math.abs(Number(cell) - Number(before[y]?.[x])) > 1),
    );
    expect(apart, cells.join('\n')).toEqual([]);
    await page.context().close();
  });
});
