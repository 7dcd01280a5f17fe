/** Where a request comes from, as far as limits care. */
import type { IncomingMessage } from 'node:http';

/**
 * The address that limits count. Behind a proxy on this machine it is the last entry the proxy wrote itself;
 * anything a client puts before that is not believed. The last 64 bits of an IPv6 address are one household.
 */
export function addressOf(request: IncomingMessage, behindProxy: boolean): string {
  const direct = (request.socket.remoteAddress ?? 'unknown').replace(/^::ffff:/, '');
  const told = behindProxy && isLoopback(direct) ? lastOf(request.headers['x-forwarded-for']) : null;
  return household(told ?? direct);
}

const isLoopback = (address: string): boolean => address === '::1' || address.startsWith('127.');

function lastOf(header: string | string[] | undefined): string | null {
  const text = Array.isArray(header) ? header.at(-1) : header;
  const last = text?.split(',').at(-1)?.trim();
  return last !== undefined && /^[0-9a-fA-F.:]{2,45}$/.test(last) ? last : null;
}

function household(address: string): string {
  if (!address.includes(':')) return address;
  const [head = '', tail] = address.split('::');
  const groups = head === '' ? [] : head.split(':');
  const back = tail === undefined || tail === '' ? [] : tail.split(':');
  const zeros = tail === undefined ? 0 : Math.max(0, 8 - groups.length - back.length);
  return [...groups, ...Array<string>(zeros).fill('0'), ...back].slice(0, 4).join(':');
}
