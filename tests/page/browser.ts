/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** One Chromium for a test file, and what every page in it is watched for. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { inspect, isDeepStrictEqual } from 'node:util';
import type axeCore from 'axe-core';
import { chromium, type Browser, type BrowserContextOptions, type Page } from 'playwright-core';
import { chromium as chromiumHere } from '../../ops/chromium.mjs';

/** Null where this machine has none; the project's own check asks for one first. */
export const browserPath: string | null = chromiumHere();

/** A shared machine may be slow: patience for what must come, none for what must not. */
export const soon = { timeout: 20_000 };
export const patienceMs = 90_000;

/** Looks again until it is as wanted. Vitest's own looking belongs to one test at a time, and here many run at once. */
export async function eventually<T>(look: () => T | Promise<T>, wanted: T): Promise<void> {
  const deadline = Date.now() + soon.timeout;
  for (;;) {
    const seen = await look();
    if (isDeepStrictEqual(seen, wanted)) return;
    if (Date.now() > deadline) throw new Error(`wanted ${inspect(wanted)}, still ${inspect(seen)}`);
    await new Promise((again) => setTimeout(again, 50));
  }
}

const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: browserPath ?? 'no Chromium here', args: flags });

export interface Watched {
  readonly page: Page;
  /** Script errors, refusals of the content policy and failed loads, none of which a page may have. */
  readonly complaints: string[];
}

export async function openPage(browser: Browser, options: BrowserContextOptions = {}): Promise<Watched> {
  const context = await browser.newContext({ viewport: { width: 390, height: 800 }, locale: 'en-US', ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(soon.timeout);
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  return { page, complaints };
}

/** The page's own policy lets no script in from outside; the debugger's door is not bound by it. */
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const everything = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** All that another light can change. */
const inAnotherLight = ['color-contrast', 'link-in-text-block'];

/** What of a page is looked at: all of it, or what was added last and the line beneath. */
const parts = { page: ['html'], newest: ['.lines > li:nth-last-child(-n + 2)', '.writing', 'main > .quiet'] };

export interface Looked {
  readonly at?: keyof typeof parts;
  readonly for?: 'everything' | 'light';
}

/** What axe-core finds against WCAG 2.2 A and AA and its own best practices, each as "rule: where". */
export async function barriers(page: Page, looked: Looked = {}): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe);
  const runOnly = looked.for === 'light' ? inAnotherLight : everything;
  return page.evaluate(
    async ([rules, include, least]) => {
      const { axe: checker } = window as unknown as { axe: typeof axeCore };
      const there = include.filter((part) => document.querySelector(part) !== null);
      const found = await checker.run({ include: there }, { runOnly: rules, resultTypes: ['violations'] });
      if (found.passes.length < least) return ['axe looked at next to nothing'];
      return found.violations.flatMap((one) => one.nodes.map((node) => `${one.id}: ${node.html}`));
    },
    [runOnly, parts[looked.at ?? 'page'], looked.for === 'light' ? 1 : 8] as const,
  );
}
