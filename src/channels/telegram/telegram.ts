/** The Telegram channel: people in by polling or webhook, messages out, and a look at how it is. */
import { languageOfDevice } from '../../core/language-tag.ts';
import type { Log } from '../../log.ts';
import type { Channel, Incoming, Ladder, Outgoing } from '../../messages.ts';
import { makeBotApi, type CallLimits } from './bot-api.ts';
import { meaningOf } from './fault.ts';
import { allowedUpdates, incomingOf, tapIdOf, type Surroundings } from './incoming.ts';
import { makePoller, pause, pollWaits, type PollState, type PollWaits } from './poller.ts';
import { setProfile, type Profiles, type ProfileWords } from './profile.ts';
import { makeSender } from './sender.ts';
import { isWebhookSecret, makeWebhookHandler } from './webhook.ts';
import { openWebhookDoor, type WebhookDoor } from './webhook-door.ts';

export type TelegramMode =
  | { readonly kind: 'polling' }
  /** `url` is what the server calls, https and public; `door` is where we listen for it, behind whatever ends TLS. */
  | {
      readonly kind: 'webhook';
      readonly url: string;
      readonly secret: string;
      readonly door: { readonly host: string; readonly port: number; readonly path: string };
    };

export interface TelegramDeps {
  readonly token: string;
  /** "https://api.telegram.org", or any server that speaks the same. */
  readonly apiRoot: string;
  readonly mode: TelegramMode;
  readonly log: Log;
  now(): number;
  readonly profiles: Profiles;
  /** The ladder as a PNG; without it, or when it fails, the ladder comes in letters. */
  readonly drawPicture?: (ladder: Ladder, language: Outgoing['language'], givenUp: AbortSignal) => Promise<Uint8Array>;
  readonly pollSeconds?: number;
  readonly sendTimeoutMs?: number;
  readonly waits?: PollWaits;
  /** What goes wrong while it runs, and only a person can mend. */
  readonly tellTrouble?: (trouble: TelegramTrouble) => void;
}

/** Why the channel cannot work as it is set up; each is a key of flows/words. */
export type TelegramTrouble = 'telegram-token-refused' | 'telegram-unreachable' | 'telegram-second-copy';

export interface TelegramHealth {
  readonly state: PollState | 'webhook';
  /** When updates last came through, or the server last said that there are none; null before the first. */
  readonly lastPollAt: number | null;
  readonly username: string | null;
}

export interface TelegramChannel extends Channel {
  /** Asks the server who we are; null when all is well. To be called before `start`, which tries on regardless. */
  check(): Promise<TelegramTrouble | null>;
  health(): TelegramHealth;
}

const callTimeoutMs = 20_000;
/** A person looks at their button no longer. */
const tapTimeoutMs = 5000;

type HealthNow = () => Pick<TelegramHealth, 'state' | 'lastPollAt'>;

const notYet: HealthNow = () => ({ state: 'starting', lastPollAt: null });

export function makeTelegramChannel(deps: TelegramDeps): TelegramChannel {
  const { log, mode } = deps;
  const waits = deps.waits ?? pollWaits;
  const api = makeBotApi(deps);
  const stopping = new AbortController();
  const callLimits: CallLimits = { timeoutMs: callTimeoutMs, signal: stopping.signal };
  const send = makeSender({
    api,
    log,
    now: () => deps.now(),
    drawPicture: deps.drawPicture,
    timeoutMs: deps.sendTimeoutMs ?? callTimeoutMs,
  });
  const answering = new Set<Promise<void>>();
  let username: string | null = null;
  let health: HealthNow = notYet;
  let running: Promise<void> = Promise.resolve();
  let door: WebhookDoor | null = null;
  if (mode.kind === 'webhook') checkWebhookMode(mode);

  const around = (): Surroundings => ({ now: deps.now(), says: sayingsOf(deps.profiles) });
  const read = (update: unknown): Incoming | null => incomingOf(update, around());

  /** A tap is answered before any work, since the person's device waits for it; an old one can't be and needn't. */
  function greet(update: unknown): void {
    const id = tapIdOf(update);
    if (id === null) return;
    const call = api.call('answerCallbackQuery', { callback_query_id: id }, { timeoutMs: tapTimeoutMs });
    const answered = call.then((answer) => {
      answering.delete(answered);
      if (!answer.ok) log.debug('a tap was not answered', { why: meaningOf(answer.fault).why });
    });
    answering.add(answered);
  }

  async function check(): Promise<TelegramTrouble | null> {
    const answer = await api.call('getMe', {}, callLimits);
    if (answer.ok) username = answer.result.username;
    if (answer.ok) return null;
    return meaningOf(answer.fault).meaning === 'token' ? 'telegram-token-refused' : 'telegram-unreachable';
  }

  /** Tries until it succeeds or we stop. */
  async function insist(name: string, attempt: () => Promise<boolean>): Promise<void> {
    for (let waitMs = waits.firstMs; !stopping.signal.aborted; waitMs = Math.min(2 * waitMs, waits.longestMs)) {
      if ((await attempt()) || stopping.signal.aborted) return;
      log.warn('Telegram is not ready', { step: name, waitMs });
      await pause(waitMs, stopping.signal);
    }
  }

  /** A webhook that is still set would keep every poll from working. */
  async function clearWebhook(): Promise<boolean> {
    const info = await api.call('getWebhookInfo', {}, callLimits);
    if (!info.ok) return false;
    if (!info.result.url) return true;
    log.warn('a webhook was removed, to poll instead');
    return (await api.call('deleteWebhook', {}, callLimits)).ok;
  }

  async function poll(record: (incoming: Incoming) => Promise<unknown>): Promise<void> {
    const pollSeconds = deps.pollSeconds ?? 25;
    const trouble = (state: 'second-copy' | 'token-refused'): void => deps.tellTrouble?.(`telegram-${state}`);
    const poller = makePoller({ api, log, now: () => deps.now(), greet, read, record, pollSeconds, waits, trouble });
    health = poller.health;
    await insist('webhook', clearWebhook);
    await poller.run(stopping.signal);
  }

  async function openDoor(
    { url, secret, door: at }: Extract<TelegramMode, { kind: 'webhook' }>,
    record: (incoming: Incoming) => Promise<unknown>,
  ): Promise<void> {
    let lastAt: number | null = null;
    const seen = async (incoming: Incoming): Promise<void> => {
      await record(incoming);
      lastAt = deps.now();
    };
    health = () => ({ state: stopping.signal.aborted ? 'stopped' : 'webhook', lastPollAt: lastAt });
    door = await openWebhookDoor(at, makeWebhookHandler({ secret, log, greet, read, record: seen }));
    const settings = { url, secret_token: secret, allowed_updates: allowedUpdates };
    running = insist('webhook', async () => (await api.call('setWebhook', settings, callLimits)).ok);
  }

  return {
    name: 'telegram',
    check,
    health: () => ({ ...health(), username }),
    send,
    async start(record) {
      if (mode.kind === 'webhook') await openDoor(mode, record);
      else running = poll(record);
      const named = insist('name', async () => (await check()) === null);
      const set = named.then(() =>
        stopping.signal.aborted ? 0 : setProfile(api, deps.profiles, { log, limits: callLimits }),
      );
      running = Promise.all([running, set]).then(() => undefined);
    },
    async stop() {
      stopping.abort();
      await door?.close();
      await running;
      await Promise.all(answering);
    },
  };
}

function checkWebhookMode({ url, secret }: Extract<TelegramMode, { kind: 'webhook' }>): void {
  if (!url.startsWith('https://')) throw new Error('the webhook needs an https address');
  if (!isWebhookSecret(secret)) throw new Error('the webhook needs a secret of 16 to 256 letters, digits, _ or -');
}

/** The sentence behind a command, in the language the person's device speaks. */
function sayingsOf(profiles: Profiles): Surroundings['says'] {
  return (command, deviceLanguage) => {
    const words: ProfileWords = profiles[languageOfDevice(deviceLanguage ?? null)];
    return words.commands.find((one) => one.command === command)?.says ?? null;
  };
}
