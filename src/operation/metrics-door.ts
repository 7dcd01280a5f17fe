/** Gives out the measures at a place of its own, which no proxy of the page leads to. */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface MetricsDoor {
  /** Resolves with the port. */
  start(): Promise<number>;
  stop(): Promise<void>;
}

interface Answer {
  readonly status: number;
  readonly body: string;
}

const found = (body: string): Answer => ({ status: 200, body });
const failed = (): Answer => ({ status: 503, body: '' });
const strange: Answer = { status: 404, body: '' };

const format = 'text/plain; version=0.0.4; charset=utf-8';

export function makeMetricsDoor(
  { host, port }: { readonly host: string; readonly port: number },
  text: () => Promise<string>,
): MetricsDoor {
  const server = createServer({ headersTimeout: 5_000, requestTimeout: 5_000 }, (request, response) => {
    const asked = request.method === 'GET' && request.url === '/metrics';
    const answer = asked ? text().then(found, failed) : Promise.resolve(strange);
    void answer.then(({ status, body }) =>
      response.writeHead(status, { 'content-type': format, 'x-content-type-options': 'nosniff' }).end(body),
    );
  });
  server.maxConnections = 16;
  return {
    start: () =>
      new Promise((resolve, reject) => {
        server.once('error', reject);
        server.listen(port, host, () => resolve((server.address() as AddressInfo).port));
      }),
    stop: () =>
      new Promise((resolve) => {
        if (!server.listening) return resolve();
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
