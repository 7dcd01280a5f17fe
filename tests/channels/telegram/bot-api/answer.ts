/** How an answer leaves the stand-in: in the server's envelope, or spoilt as planned. */
import type { ServerResponse } from 'node:http';
import type { RecordedCall } from './call-record.ts';
import type { Trouble } from './fault-plan.ts';
import { Refusal } from './refusal.ts';

export function reply(response: ServerResponse, outcome: unknown, recorded?: RecordedCall): void {
  const { code, body } = envelope(outcome);
  if (recorded) recorded.code = code;
  const retry = outcome instanceof Refusal ? outcome.parameters?.retry_after : undefined;
  response.writeHead(code, {
    'content-type': 'application/json',
    'content-length': Buffer.byteLength(body),
    ...(retry === undefined ? {} : { 'retry-after': String(retry) }),
  });
  response.end(body);
}

function envelope(outcome: unknown): { readonly code: number; readonly body: string } {
  if (!(outcome instanceof Refusal)) return { code: 200, body: JSON.stringify({ ok: true, ...(outcome as object) }) };
  const { code, description, parameters } = outcome;
  return {
    code,
    body: JSON.stringify({ ok: false, error_code: code, description, ...(parameters ? { parameters } : {}) }),
  };
}

export async function spoil(
  response: ServerResponse,
  trouble: Trouble,
  answer: () => void,
  recorded: RecordedCall,
): Promise<void> {
  switch (trouble.kind) {
    case 'refuse':
      return reply(response, new Refusal(trouble.code, trouble.description, trouble.parameters), recorded);
    case 'page':
      recorded.code = trouble.code;
      response.writeHead(trouble.code, { 'content-type': 'text/html' }).end('<html><title>Bad gateway</title></html>');
      return;
    case 'delay':
      await new Promise((resolve) => setTimeout(resolve, trouble.ms));
      return answer();
    case 'drop':
      response.socket?.end();
      response.destroy();
      return;
    case 'reset':
      response.socket?.resetAndDestroy();
      return;
    case 'hang':
      return;
    case 'slow':
    case 'truncate':
      return dribble(response, trouble, recorded);
  }
}

async function dribble(
  response: ServerResponse,
  trouble: Extract<Trouble, { kind: 'slow' | 'truncate' }>,
  recorded: RecordedCall,
): Promise<void> {
  const body = JSON.stringify({ ok: true, result: { message_id: 1, date: 1, chat: { id: 1, type: 'private' } } });
  recorded.code = 200;
  response.writeHead(200, { 'content-type': 'application/json' });
  if (trouble.kind === 'truncate') return void response.end(body.slice(0, body.length / 2));
  for (const letter of body) {
    if (response.destroyed) return;
    response.write(letter);
    await new Promise((resolve) => setTimeout(resolve, 1000 / trouble.bytesPerSecond));
  }
  response.end();
}
