// How soon the page is there and can be used, on a processor slowed down: from the address to the first words, and to a
// line that can be written; and from a tap to its line on the sheet. Nothing is kept between the rounds; the median counts.
// Usage: node tests/bench/first-load.mjs [slowed down by] [rounds]
import { loadavg, tmpdir } from 'node:os';
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { makeService } from '../../dist/service.js';
import { systemClock } from '../../dist/clock.js';
import { readConfig } from '../../dist/config.js';
import { makeLog } from '../../dist/log.js';

const slower = Number(process.argv[2] ?? 4);
const rounds = Number(process.argv[3] ?? 7);
const folder = mkdtempSync(join(tmpdir(), 'ninthpour-first-load-'));
const settings = {
  NINTHPOUR_FOLDER: folder,
  NINTHPOUR_PORT: '0',
  NINTHPOUR_LOG: 'silent',
  NINTHPOUR_BACKUP_HOURS: '0',
};
const service = makeService(readConfig(settings), systemClock, makeLog('silent'));
await service.start();
const executablePath = process.env.NINTHPOUR_CHROMIUM ?? '/usr/bin/chromium';
const browser = await chromium.launch({ executablePath, args: ['--headless', '--no-sandbox', '--disable-gpu'] });

async function round() {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await page.addInitScript(() => {
    const seen = { usable: 0, greeted: 0, line: 0 };
    Object.assign(window, { seen });
    new MutationObserver(() => {
      if (!seen.usable && document.querySelector('#next-line')) seen.usable = performance.now();
      if (!seen.greeted && document.querySelector('.entry')) seen.greeted = performance.now();
      if (!seen.line && document.querySelector('.own')) seen.line = performance.now();
    }).observe(document, { childList: true, subtree: true });
  });
  await page.goto(service.address());
  await page.waitForSelector('.choices button');
  const tapped = await page.evaluate(() => {
    const at = performance.now();
    document.querySelector('.choices button').click();
    return at;
  });
  await page.waitForSelector('.own');
  const { usable, greeted, line } = await page.evaluate(() => window.seen);
  const paint = await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0);
  await context.close();
  return { paint, usable, greeted, tap: line - tapped };
}

const measured = [];
for (let n = 0; n < rounds; n++) measured.push(await round());
const median = (part) => Math.round(measured.map((one) => one[part]).toSorted((a, b) => a - b)[Math.floor(rounds / 2)]);
console.log(
  `slowed down ${slower} times, median of ${rounds}, in ms: first paint ${median('paint')}, usable ${median('usable')}, greeted ${median('greeted')}; a tap is on the sheet after ${median('tap')}; load of this machine ${loadavg()[0].toFixed(1)}`,
);
await browser.close();
await service.stop();
rmSync(folder, { recursive: true, force: true });
