/** Has the page itself kept for when there is no connection. */
import { ownWorker } from './own-worker.ts';
import { shellCache } from './shell-name.ts';
import { alarmWorker, shellWorker } from './worker-urls.ts';

/** Where it cannot be, on a plain connection or in a private window, the page works without. */
export function keepShell(): void {
  if ('serviceWorker' in navigator) keep().catch(() => undefined);
}

async function keep(): Promise<void> {
  const { serviceWorker } = navigator;
  const isFirst = serviceWorker.controller === null;
  await serviceWorker.register(ownWorker(shellWorker), { scope: '/' });
  await serviceWorker.ready;
  // From now on the worker keeps what is opened; this first page came before it.
  if (!isFirst) return;
  const parts = [
    ...document.querySelectorAll<HTMLScriptElement | HTMLLinkElement>('script[src], link[rel=stylesheet]'),
  ];
  const urls = parts.map((part) => ('src' in part ? part.src : part.href));
  await (await caches.open(shellCache)).addAll([location.pathname, ...urls, alarmWorker]);
}

/** The next person on this device finds nothing. */
export const forgetShell = async (): Promise<void> => {
  if ('caches' in window) await caches.delete(shellCache);
};
