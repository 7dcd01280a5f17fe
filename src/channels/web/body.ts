/** The body of a post, read from the connection: hono's own limit makes a stream of the web of it first, which took a third of a post. */
import type { IncomingMessage } from 'node:http';

export const tooLong = Symbol('too long');

/** What its JSON says; null where it is none or was cut off, `tooLong`, without reading on, where it has more bytes. */
export async function readJson(incoming: IncomingMessage, mostBytes: number): Promise<unknown> {
  const text = await readText(incoming, mostBytes);
  if (text === tooLong) return tooLong;
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function readText(incoming: IncomingMessage, mostBytes: number): Promise<string | typeof tooLong> {
  if (Number(incoming.headers['content-length'] ?? 0) > mostBytes) return Promise.resolve(tooLong);
  const parts: Buffer[] = [];
  let bytes = 0;
  return new Promise((resolve) => {
    const add = (part: Buffer): void => {
      bytes += part.length;
      parts.push(part);
      if (bytes <= mostBytes) return;
      incoming.off('data', add).pause();
      resolve(tooLong);
    };
    const cutOff = (): void => resolve('');
    incoming.on('data', add).once('end', () => resolve(Buffer.concat(parts).toString()));
    incoming.once('error', cutOff).once('close', cutOff);
  });
}
