/** Asks the server over a bare connection, so that every header can be forged as an attacker would. */
import { request, type IncomingHttpHeaders } from 'node:http';
import { join } from 'node:path';
import { randomBytes } from 'node:crypto';
import { projectRoot } from '../../../src/project-root.ts';

export interface Answered {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

export interface Ask {
  readonly method?: string;
  readonly headers?: Record<string, string>;
  readonly body?: string;
}

export function knock(url: string, path: string, { method = 'GET', headers = {}, body }: Ask = {}): Promise<Answered> {
  return new Promise((resolve, reject) => {
    const asking = request(new URL(path, url), { method, headers, agent: false }, (answer) => {
      let text = '';
      answer.setEncoding('utf8');
      answer.on('data', (chunk: string) => (text += chunk));
      answer.on('error', reject);
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body: text }));
    });
    asking.on('error', reject);
    asking.end(body);
  });
}

/** The cookie of a new visitor, as "name=value". */
export async function visit(url: string, headers: Record<string, string> = {}): Promise<string> {
  const { headers: answered } = await knock(url, '/', { headers });
  return (answered['set-cookie']?.[0] ?? '').split(';')[0] ?? '';
}

export const aboutPost = (url: string, cookie: string): Record<string, string> => ({
  cookie,
  origin: url,
  'sec-fetch-site': 'same-origin',
  'content-type': 'application/json',
});

export const newId = (): string => randomBytes(16).toString('hex');

export const posted = (what: unknown, updateId = newId()): string => JSON.stringify({ updateId, language: 'en', what });

/** Stands for a built page where no browser looks at it. */
export const emptyPage = (): string => join(projectRoot, 'tests/channels/web/empty-page');

export interface Event {
  readonly event: string;
  readonly id: string | null;
  readonly data: string;
}

export interface OpenStream {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly events: readonly Event[];
  /** Resolves once `enough` holds; what takes half a minute does not come, on whatever machine. */
  until(enough: (events: readonly Event[]) => boolean): Promise<readonly Event[]>;
  readonly ended: Promise<void>;
  close(): void;
}

export function follow(url: string, headers: Record<string, string>, path = '/stream'): Promise<OpenStream> {
  return new Promise((resolve, reject) => {
    const asking = request(new URL(path, url), { headers, agent: false }, (answer) => {
      const events: Event[] = [];
      let rest = '';
      answer.setEncoding('utf8');
      answer.on('data', (chunk: string) => {
        const blocks = (rest + chunk).split('\n\n');
        rest = blocks.pop() ?? '';
        events.push(...blocks.map(readEvent));
      });
      const ended = new Promise<void>((end) => answer.once('close', end));
      answer.on('error', () => {});
      resolve({
        status: answer.statusCode ?? 0,
        headers: answer.headers,
        events,
        ended,
        close: () => asking.destroy(),
        async until(enough) {
          const deadline = Date.now() + 30_000;
          while (!enough(events)) {
            if (Date.now() > deadline) throw new Error(`waited in vain; got ${JSON.stringify(events)}`);
            await new Promise((again) => setTimeout(again, 5));
          }
          return events;
        },
      });
    });
    asking.on('error', reject);
    asking.end();
  });
}

function readEvent(block: string): Event {
  const field = (name: string): string | null =>
    block
      .split('\n')
      .find((line) => line.startsWith(`${name}:`))
      ?.slice(name.length + 1)
      .trim() ?? null;
  return { event: field('event') ?? 'message', id: field('id'), data: field('data') ?? '' };
}

export const isCaughtUp = (events: readonly Event[]): boolean => events.some((one) => one.event === 'caught-up');
