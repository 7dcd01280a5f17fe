/// <reference lib="dom" />
/** A person with a keyboard and nothing else: every way to a thing is by Tab, and where they are is always seen. */
import type { Page } from 'playwright-core';
import { soon } from './browser.ts';

/** More stops than any sheet has between two things one wants. */
const mostStops = 80;

export interface Stop {
  readonly tag: string;
  readonly text: string;
  /** Nothing is seen of the focus here. */
  readonly unseen: boolean;
  readonly choice: number;
}

/** Where the keys are, as the person sees it; the choice counts from the newest that stand open. */
const stop = (page: Page): Promise<Stop> =>
  page.evaluate(() => {
    const at = document.activeElement ?? document.body;
    const box = at.getBoundingClientRect();
    const open = [...document.querySelectorAll('.choices')].at(-1);
    const isOutlined = getComputedStyle(at).outlineStyle !== 'none';
    const isUnderlined = getComputedStyle(at.closest('.writing') ?? at).boxShadow !== 'none';
    const onTop = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
    const isInView = onTop !== null && (at.contains(onTop) || onTop.contains(at));
    return {
      tag: at.localName,
      text: (at.textContent || at.getAttribute('id')) ?? '',
      unseen: !isInView || !(isOutlined || isUnderlined),
      choice: open ? [...open.querySelectorAll('button')].indexOf(at as HTMLButtonElement) : -1,
    };
  });

/** As soon as it is seen: an answer that comes at this instant moves the page once more. */
async function stopSeen(page: Page): Promise<Stop> {
  const end = Date.now() + soon.timeout;
  for (;;) {
    const at = await stop(page);
    if (!at.unseen || at.tag === 'body' || Date.now() > end) return at;
    await page.waitForTimeout(50);
  }
}

/** Goes on by Tab until `wanted`; throws where the focus cannot be seen on the way, or the way does not lead there. */
async function goTo(page: Page, wanted: (at: Stop) => boolean, what: string): Promise<void> {
  const way: string[] = [];
  for (let n = 0; n < mostStops; n++) {
    await page.keyboard.press('Tab');
    const at = await stopSeen(page);
    way.push(`${at.tag} ${at.text.slice(0, 20)}`);
    // The end of the page: from there a browser begins at its top again.
    if (at.tag === 'body') continue;
    if (at.unseen) throw new Error(`the focus is not seen on the way to ${what}: ${way.join(' → ')}`);
    if (wanted(at)) return;
  }
  throw new Error(`no way by keys to ${what}: ${way.join(' → ')}`);
}

/** Takes one of the newest choices, counted from 0. */
export async function choose(page: Page, n: number): Promise<void> {
  await goTo(page, ({ choice }) => choice === n, `choice ${n}`);
  await page.keyboard.press('Enter');
}

export async function writeByKeys(page: Page, text: string): Promise<void> {
  await goTo(page, ({ tag }) => tag === 'textarea', 'the next line');
  await page.keyboard.insertText(text);
  await page.keyboard.press('Enter');
}

/** Presses what says this. */
export async function press(page: Page, text: string): Promise<void> {
  await goTo(page, (at) => at.text.trim() === text, text);
  await page.keyboard.press('Enter');
}

export async function fillByKeys(page: Page, id: string, text: string): Promise<void> {
  await goTo(page, (at) => at.tag === 'input' && at.text === id, `the field ${id}`);
  await page.keyboard.press('Control+A');
  await page.keyboard.insertText(text);
  await page.keyboard.press('Enter');
}
