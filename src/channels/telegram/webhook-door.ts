/** The HTTP side of the webhook: one path, one method, a bounded body, slow callers dropped. */
import { createServer, type IncomingMessage, type Server } from 'node:http';
import { webhookLimitBytes, type WebhookHandler } from './webhook.ts';

export interface WebhookDoor {
  readonly port: number;
  close(): Promise<void>;
}

const requestTimeoutMs = 10_000;

export async function openWebhookDoor(
  at: { readonly host: string; readonly port: number; readonly path: string },
  handler: WebhookHandler,
): Promise<WebhookDoor> {
  const server = createServer(
    { requestTimeout: requestTimeoutMs, headersTimeout: requestTimeoutMs },
    (request, response) => {
      const end = (status: number): void => void response.writeHead(status, { 'content-length': 0 }).end();
      if (request.url !== at.path) return end(404);
      if (request.method !== 'POST') return end(405);
      bodyOf(request).then(
        async (body) => end(body === null ? 413 : await handler(body, secretOf(request))),
        // The caller broke off: nobody is left to answer.
        () => response.destroy(),
      );
    },
  );
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(at.port, at.host, resolve);
  });
  return { port: (server.address() as { port: number }).port, close: () => closed(server) };
}

function secretOf(request: IncomingMessage): string | undefined {
  const header = request.headers['x-telegram-bot-api-secret-token'];
  return Array.isArray(header) ? header[0] : header;
}

/** Null when it is longer than any update. */
async function bodyOf(request: IncomingMessage): Promise<string | null> {
  const parts: Buffer[] = [];
  let bytes = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    bytes += part.length;
    if (bytes > webhookLimitBytes) return null;
    parts.push(part);
  }
  return Buffer.concat(parts).toString('utf8');
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
  });
}
