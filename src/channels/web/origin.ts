/** Whether a request comes from our own page, and asks for our own host. */
import { isIP } from 'node:net';

export interface Asked {
  readonly host: string | undefined;
  readonly origin: string | undefined;
  /** Sec-Fetch-Site, which no script can write. */
  readonly fetchSite: string | undefined;
}

export interface Home {
  /** "https://tea.example", or null when the house has no public name. */
  readonly publicOrigin: string | null;
  readonly host: string;
}

/** A foreign name that was made to point here is turned away, so that its page cannot speak for ours. */
export function ourHost(host: string | undefined, home: Home): boolean {
  if (host === undefined) return false;
  if (home.publicOrigin !== null && host === new URL(home.publicOrigin).host) return true;
  const name = nameOf(host);
  if (name === null) return false;
  const loopback = name === 'localhost' || name === '127.0.0.1' || name === '[::1]';
  if (home.publicOrigin !== null) return loopback;
  return loopback || name === home.host || isIP(name.replace(/^\[|\]$/g, '')) !== 0;
}

function nameOf(host: string): string | null {
  return URL.canParse(`http://${host}`) ? new URL(`http://${host}`).hostname : null;
}

/** For everything that changes something: the browser must say that our page asked. */
export function fromOurPage(asked: Asked, home: Home): boolean {
  if (asked.fetchSite !== undefined && asked.fetchSite !== 'same-origin') return false;
  return asked.origin !== undefined && ourOrigin(asked.origin, asked.host, home);
}

/** For what only reads: browsers leave the origin out here, so an absent one passes and a foreign one does not. */
export function readByOurPage(asked: Asked, home: Home): boolean {
  if (asked.fetchSite !== undefined && asked.fetchSite !== 'same-origin') return false;
  return asked.origin === undefined || ourOrigin(asked.origin, asked.host, home);
}

function ourOrigin(origin: string, host: string | undefined, home: Home): boolean {
  if (home.publicOrigin !== null && origin === new URL(home.publicOrigin).origin) return true;
  const onLoopback = home.publicOrigin === null || host !== new URL(home.publicOrigin).host;
  return onLoopback && host !== undefined && (origin === `http://${host}` || origin === `https://${host}`);
}
