/** Brings updates to a webhook, in order, again and again until each is taken. */
import type { StandInClock } from './stand-in-clock.ts';
import type { UpdateQueue } from './update-queue.ts';

export interface Webhook {
  readonly url: string;
  readonly secret: string;
}

export interface Courier {
  close(): Promise<void>;
}

export interface CourierDeps {
  readonly queue: UpdateQueue;
  readonly clock: StandInClock;
  webhook(): Webhook | null;
  /** Where an https address is reached on this machine. */
  route(url: string): string;
  readonly firstRetryMs: number;
}

const idleMs = 5;
const longestRetryMs = 60_000;

export function startCourier(deps: CourierDeps): Courier {
  const closing = new AbortController();
  let retryMs = deps.firstRetryMs;

  async function bringOne(webhook: Webhook): Promise<void> {
    const update = deps.queue.peek();
    if (!update) return rest(idleMs);
    if (await taken(deps.route(webhook.url), webhook.secret, JSON.stringify(update))) {
      deps.queue.confirm(update.update_id);
      retryMs = deps.firstRetryMs;
    } else {
      await rest(retryMs);
      retryMs = Math.min(2 * retryMs, longestRetryMs);
    }
  }

  async function run(): Promise<void> {
    while (!closing.signal.aborted) {
      const webhook = deps.webhook();
      await (webhook ? bringOne(webhook) : rest(idleMs));
    }
  }

  const running = run();
  return {
    close: () => {
      closing.abort();
      return running;
    },
  };
}

function rest(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

async function taken(url: string, secret: string, body: string): Promise<boolean> {
  try {
    const headers = {
      'content-type': 'application/json',
      ...(secret === '' ? {} : { 'x-telegram-bot-api-secret-token': secret }),
    };
    const answer = await fetch(url, { method: 'POST', headers, body });
    await answer.arrayBuffer();
    return answer.ok;
  } catch {
    return false;
  }
}
