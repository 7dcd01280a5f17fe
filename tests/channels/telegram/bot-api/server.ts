/** A strict stand-in for the Bot API: real HTTP on loopback, the server's rules and words, faults on demand. */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { type CallArguments, readArguments } from './call-arguments.ts';
import { reply, spoil } from './answer.ts';
import { CallRecord, type RecordedCall } from './call-record.ts';
import { FaultPlan } from './fault-plan.ts';
import { countedMethods, FloodLimiter, type FloodLimits } from './flood-limiter.ts';
import { methods, type Behind } from './methods.ts';
import { People } from './people.ts';
import { Refusal } from './refusal.ts';
import { StandInClock } from './stand-in-clock.ts';
import { UpdateQueue } from './update-queue.ts';
import { startCourier } from './webhook-courier.ts';
import { World, type KeptMessage } from './world.ts';

export const standInToken = '7000000001:AAstand-in-token-of-thirty-five-letters';

export interface StandInOptions {
  readonly port?: number;
  readonly token?: string;
  readonly flood?: FloodLimits;
  readonly firstUpdateId?: number;
  /** Where a webhook's https address is reached on this machine; without it nothing is brought to any. */
  readonly route?: (url: string) => string;
  readonly firstRetryMs?: number;
  /** Answers what is not a call of the Bot API; for the control of a stand-in in its own process. */
  readonly beside?: (request: IncomingMessage, response: ServerResponse) => boolean;
}

export interface StandIn {
  /** What a client takes for its server. */
  readonly root: string;
  readonly token: string;
  readonly clock: StandInClock;
  readonly world: World;
  readonly queue: UpdateQueue;
  readonly people: People;
  readonly faults: FaultPlan;
  readonly record: CallRecord;
  /** The bot's messages as this person sees them, oldest first. */
  seenBy(person: number): readonly KeptMessage[];
  close(): Promise<void>;
}

export async function startStandIn(options: StandInOptions = {}): Promise<StandIn> {
  const token = options.token ?? standInToken;
  const clock = new StandInClock();
  const queue = new UpdateQueue(clock, options.firstUpdateId ?? 5_000_001);
  const world = new World(clock);
  const behind: Behind = { world, queue, clock, webhook: null };
  const faults = new FaultPlan();
  const record = new CallRecord();
  const flood = options.flood ? new FloodLimiter(options.flood, () => clock.now()) : null;

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    if (options.beside?.(request, response)) return;
    const url = new URL(request.url ?? '/', 'http://stand-in');
    const [, askedToken = '', method = ''] = /^\/bot([^/]+)\/([^/]+)$/.exec(url.pathname) ?? [];
    const args = await readArguments(request, url.searchParams).catch(refusalOnly);
    if (method === '') return reply(response, new Refusal(404, 'Not Found'));
    if (args instanceof Error) return reply(response, args);
    await take(response, { token: decodeURIComponent(askedToken), method: method.toLowerCase(), args });
  }

  async function take(
    response: ServerResponse,
    call: { readonly token: string; readonly method: string; readonly args: CallArguments },
  ): Promise<void> {
    const { method, args } = call;
    const chat = args.text('chat_id');
    const recorded = record.begin({ method, chat, at: clock.now(), values: Object.fromEntries(args.values) });
    const trouble = faults.meet({ method, chat, text: args.text('text') });
    const isDone = !(trouble && (trouble.kind === 'refuse' || ('processed' in trouble && !trouble.processed)));
    const result = isDone ? await outcome(call, recorded) : null;
    recorded.endedAt = clock.now();
    if (!trouble) return reply(response, result, recorded);
    await spoil(response, trouble, () => reply(response, result, recorded), recorded);
  }

  async function outcome(
    { token: asked, method, args }: { token: string; method: string; args: CallArguments },
    recorded: RecordedCall,
  ): Promise<unknown> {
    try {
      if (asked !== token) throw new Refusal(401, 'Unauthorized');
      const run = methods.get(method);
      if (!run) throw new Refusal(404, 'Not Found: method not found');
      if (countedMethods.has(method)) flood?.pass(args.text('chat_id'));
      const result = await run(args, behind);
      recorded.processed = true;
      return { result };
    } catch (error) {
      if (error instanceof Refusal) return error;
      throw error;
    }
  }

  const server = createServer({ keepAliveTimeout: 60_000 }, (request, response) => {
    answer(request, response).catch((error: unknown) => response.destroy(error instanceof Error ? error : undefined));
  });
  await new Promise<void>((resolve) => server.listen(options.port ?? 0, '127.0.0.1', resolve));
  const courier = startCourier({
    queue,
    clock,
    webhook: () => (options.route ? behind.webhook : null),
    route: options.route ?? ((url) => url),
    firstRetryMs: options.firstRetryMs ?? 1000,
  });
  return {
    root: `http://127.0.0.1:${(server.address() as { port: number }).port}`,
    token,
    clock,
    world,
    queue,
    people: new People(behind),
    faults,
    record,
    seenBy: (person) => [...world.messages(person).values()].filter(({ fromBot }) => fromBot),
    close: async () => {
      queue.close();
      await courier.close();
      await closed(server);
    },
  };
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

function refusalOnly(error: unknown): Refusal {
  if (error instanceof Refusal) return error;
  throw error;
}
