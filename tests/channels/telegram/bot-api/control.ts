/** Works a stand-in that runs in its own process: a verb and its JSON arguments over HTTP, beside the Bot API. */
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { PlannedTrouble } from './fault-plan.ts';
import type { StandIn } from './server.ts';

type Verb = (standIn: StandIn, given: readonly unknown[]) => unknown;

/** POST /control/<verb> with an array of arguments; answers JSON. */
export const verbs: Readonly<Record<string, Verb>> = {
  say: ({ people }, [id, text, language]) => people.say(id as number, text as string, language as string | undefined),
  tap: ({ people }, [id, button]) => people.tap(id as number, button as string),
  forge: ({ people }, [id, data]) => people.forge(id as number, data as string),
  block: ({ people }, [id]) => people.block(id as number),
  unblock: ({ people }, [id]) => people.unblock(id as number),
  bring: ({ people }, [kind, content]) => people.bring(kind as string, content),
  fault: ({ faults }, [plan]) => faults.add(plan as PlannedTrouble),
  'no-faults': ({ faults }) => faults.clear(),
  advance: ({ clock }, [ms]) => clock.advance(ms as number),
  seen: (standIn, [id]) => standIn.seenBy(id as number),
  calls: ({ record }, [method]) => (method === undefined ? record.calls : record.of(method as string)),
  codes: ({ record }) => record.codes(),
  pending: ({ queue }) => queue.pending,
  'handed-out': ({ queue }) => Object.fromEntries(queue.handedOut),
};

/** Whether this request was for the control; it is answered then. */
export function controlled(standIn: StandIn, request: IncomingMessage, response: ServerResponse): boolean {
  const name = /^\/control\/([a-z-]+)$/.exec(request.url ?? '')?.[1];
  if (name === undefined) return false;
  const end = (code: number, value: unknown): void => {
    response.writeHead(code, { 'content-type': 'application/json' }).end(JSON.stringify(value ?? null));
  };
  given(request)
    .then(
      (args) => (verbs[name] ? end(200, verbs[name](standIn, args)) : end(404, `no verb ${name}`)),
      (error: unknown) => end(400, String(error)),
    )
    .catch((error: unknown) => end(500, String(error)));
  return true;
}

async function given(request: IncomingMessage): Promise<readonly unknown[]> {
  let text = '';
  for await (const part of request as AsyncIterable<Buffer>) text += part.toString('utf8');
  const value: unknown = text === '' ? [] : JSON.parse(text);
  if (!Array.isArray(value)) throw new Error('expected an array of arguments');
  return value;
}

/** Asks a stand-in in another process. */
export async function ask(root: string, verb: string, ...args: readonly unknown[]): Promise<unknown> {
  const answer = await fetch(`${root}/control/${verb}`, { method: 'POST', body: JSON.stringify(args) });
  const value: unknown = await answer.json();
  if (!answer.ok) throw new Error(String(value));
  return value;
}
