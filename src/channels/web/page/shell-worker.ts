/// <reference lib="webworker" />
/** Stands between the page and the house: gives the page as it was last opened when the house cannot be reached. */
import { shellCache } from './shell-name.ts';

const worker = self as unknown as ServiceWorkerGlobalScope;
/** A connection that answers slower than this is as good as none, if the page is kept. */
const patienceMs = 4_000;

worker.addEventListener('install', () => void worker.skipWaiting());
worker.addEventListener('activate', (event) => event.waitUntil(worker.clients.claim()));
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== location.origin) return;
  if (pathname.startsWith('/assets/')) event.respondWith(part(request));
  else if (request.mode === 'navigate' && /^\/(|tea\/[^/]+|lesson\/[^/]+)$/.test(pathname)) {
    event.respondWith(page(request, pathname));
  }
});

/** Its name carries a hash of what is in it: what is kept is as good as new. */
async function part(request: Request): Promise<Response> {
  const cache = await caches.open(shellCache);
  const kept = await cache.match(request.url);
  if (kept) return kept;
  const answer = await fetch(request);
  if (answer.ok) await cache.put(request.url, answer.clone());
  return answer;
}

async function page(request: Request, pathname: string): Promise<Response> {
  const cache = await caches.open(shellCache);
  const kept = (await cache.match(pathname)) ?? (await cache.match('/'));
  try {
    const answer = await fetch(request, kept ? { signal: AbortSignal.timeout(patienceMs) } : {});
    if (answer.ok) await keep(pathname, answer.clone());
    return answer;
  } catch (error) {
    if (kept) return kept;
    throw error;
  }
}

/** A page of another making takes the place of all that was kept. */
async function keep(pathname: string, answer: Response): Promise<void> {
  const text = await answer.clone().text();
  const cache = await caches.open(shellCache);
  const scripts = (await cache.keys()).filter(({ url }) => /\/assets\/main-/.test(url));
  if (scripts.some(({ url }) => !text.includes(new URL(url).pathname))) await caches.delete(shellCache);
  await (await caches.open(shellCache)).put(pathname, answer);
}
