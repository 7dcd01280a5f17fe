/// <reference lib="dom" />
/** What a screen reader would say by itself while the sheet changes: every change within a live region, by ARIA's own rules. */
import type { Page } from 'playwright-core';

/** From now on; a page loaded anew forgets it. */
export const listenForAnnouncements = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    const byRole: Record<string, string> = { alert: 'assertive', log: 'polite', status: 'polite', timer: 'off' };
    // The nearest element that says anything about it counts.
    const isLive = (at: Element | null): boolean => {
      if (at === null || at.closest('[aria-hidden=true]') !== null) return false;
      const told = at.getAttribute('aria-live') ?? byRole[at.getAttribute('role') ?? ''];
      return told === undefined ? isLive(at.parentElement) : told !== 'off';
    };
    const textIn = (node: Node): string => {
      const texts = document.createTreeWalker(node, NodeFilter.SHOW_TEXT);
      let all = '';
      for (let text: Node | null = node.nodeType === 3 ? node : texts.nextNode(); text; text = texts.nextNode()) {
        if (isLive(text.parentElement) && text.parentElement?.checkVisibility({ visibilityProperty: true }))
          all += text.textContent ?? '';
      }
      return all.trim();
    };
    new MutationObserver((changes) => {
      for (const { type, target, addedNodes } of changes) {
        for (const node of type === 'characterData' ? [target] : addedNodes) {
          if (node.isConnected && textIn(node) !== '') said.push(textIn(node));
        }
      }
    }).observe(document.body, { childList: true, characterData: true, subtree: true });
  });

export const announced = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { readonly said: readonly string[] }).said);
