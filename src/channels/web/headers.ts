/** What every answer says to the browser about how far to trust it, errors and streams included. */

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "object-src 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
  // The one gate of the page, through which it starts workers from its own files (`own-worker.ts`).
  'trusted-types own-workers',
].join('; ');

const permissions = [
  ...['camera', 'microphone', 'geolocation', 'payment', 'usb', 'display-capture'].map((name) => `${name}=()`),
  'screen-wake-lock=(self)',
].join(', ');

/** One year, in seconds; only told over a connection that is already safe. */
const safeTransport = 'max-age=31536000';

export function houseHeaders(publicOrigin: string | null): Readonly<Record<string, string>> {
  return {
    'content-security-policy': policy,
    'permissions-policy': permissions,
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'x-frame-options': 'DENY',
    'cache-control': 'no-store',
    ...(publicOrigin?.startsWith('https:') ? { 'strict-transport-security': safeTransport } : {}),
  };
}
