/** Answers with a built file, packed as the browser can unpack it. */
import type { Context } from 'hono';
import type { Assets } from './assets.ts';

/** Names carry a hash of what is in them, so a browser need never ask again. */
const forEver = 'public, max-age=31536000, immutable';

/** Null when there is no such file. */
export function servedAsset(assets: Assets, name: string, c: Context): Response | null {
  const asset = assets.get(name);
  if (asset === null) return null;
  const accepted = (c.req.header('accept-encoding') ?? '').split(',').map((coding) => coding.split(';')[0]?.trim());
  const coding = accepted.includes('br') ? 'br' : accepted.includes('gzip') ? 'gzip' : null;
  const bytes = coding === 'br' ? asset.brotli() : coding === 'gzip' ? asset.gzip() : asset.plain;
  return c.body(new Uint8Array(bytes), 200, {
    'content-type': asset.type,
    'cache-control': forEver,
    vary: 'Accept-Encoding',
    // The worker that keeps the page stands before all of it.
    ...(name.startsWith('shell-worker-') ? { 'service-worker-allowed': '/' } : {}),
    ...(coding === null ? {} : { 'content-encoding': coding }),
  });
}
