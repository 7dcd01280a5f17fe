// How soon the page is there and can be used, on a processor slowed down: from the address to the first words, and to a
// line that can be written; from a tap to its line on the sheet; and, opened at a label, to its plan, which needs no
// script. Nothing is kept between the rounds; the median counts.
// Usage: node tests/bench/first-load.mjs [slowed down by] [rounds]
import { loadavg, tmpdir } from 'node:os';
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { chromium as chromiumHere } from '../../ops/chromium.mjs';
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
const browser = await chromium.launch({
  executablePath: chromiumHere(),
  args: ['--headless', '--no-sandbox', '--disable-gpu'],
});

/** A page of its own on a processor slowed down, with what `watch` sees of it as it comes about. */
async function opened(address, watch) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await page.addInitScript(watch);
  await page.goto(address);
  return { context, page };
}

const seenOn = (page) => page.evaluate(() => window.seen);
const paintOf = (page) =>
  page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0);

async function bareSheet() {
  const { context, page } = await opened(service.address(), () => {
    const seen = { usable: 0, greeted: 0, line: 0 };
    Object.assign(window, { seen });
    new MutationObserver(() => {
      if (!seen.usable && document.querySelector('#next-line')) seen.usable = performance.now();
      if (!seen.greeted && document.querySelector('.choices button')) seen.greeted = performance.now();
      if (!seen.line && document.querySelector('.own')) seen.line = performance.now();
    }).observe(document, { childList: true, subtree: true });
  });
  await page.waitForSelector('.choices button');
  const tapped = await page.evaluate(() => {
    const at = performance.now();
    document.querySelector('.choices button').click();
    return at;
  });
  await page.waitForSelector('.own');
  const { usable, greeted, line } = await seenOn(page);
  const paint = await paintOf(page);
  await context.close();
  return { paint, usable, greeted, tap: line - tapped };
}

async function label() {
  const { context, page } = await opened(`${service.address()}tea/sencha`, () => {
    const seen = { plan: 0, script: 0 };
    Object.assign(window, { seen });
    new MutationObserver(() => {
      if (!seen.plan && document.querySelector('.ladder text')) seen.plan = performance.now();
      if (!seen.script && document.querySelector('#next-line')) seen.script = performance.now();
    }).observe(document, { childList: true, subtree: true });
  });
  await page.waitForSelector('.choices button');
  const { plan, script } = await seenOn(page);
  const planPaint = await paintOf(page);
  await context.close();
  return { plan, planPaint, script };
}

const measured = [];
for (let n = 0; n < rounds; n++) measured.push({ ...(await bareSheet()), ...(await label()) });
const median = (part) => Math.round(measured.map((one) => one[part]).toSorted((a, b) => a - b)[Math.floor(rounds / 2)]);
console.log(
  [
    `slowed down ${slower} times, median of ${rounds}, in ms, load of this machine ${loadavg()[0].toFixed(1)}`,
    `the sheet: first paint ${median('paint')}, usable ${median('usable')}, greeted ${median('greeted')}; a tap is on it after ${median('tap')}`,
    `a label: its plan is there ${median('plan')}, painted ${median('planPaint')}, scripts take over ${median('script')}`,
  ].join('\n'),
);
await browser.close();
await service.stop();
rmSync(folder, { recursive: true, force: true });
