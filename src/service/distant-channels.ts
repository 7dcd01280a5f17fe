/** The channels that reach beyond this machine, made from the settings, and what may be wrong with them at the start. */
import { makeMailChannel, type MailChannel, type MailTrouble } from '../channels/mail/mail-channel.ts';
import { profilesOf } from '../channels/telegram/menu.ts';
import { makeTelegramChannel, type TelegramChannel, type TelegramTrouble } from '../channels/telegram/telegram.ts';
import type { Clock } from '../clock.ts';
import type { Config } from '../config.ts';
import type { Content } from '../content.ts';
import { languageOfDevice } from '../core/language-tag.ts';
import type { Instant, Language } from '../core/units.ts';
import type { Log } from '../log.ts';
import type { Channel } from '../messages.ts';
import { makeDrawingRoom, type DrawingRoom } from '../pictures/drawing-room.ts';

export interface DistantParts {
  readonly config: Config;
  readonly content: Content;
  readonly clock: Clock;
  readonly log: Log;
}

/** Keys of flows/words. */
export type Trouble = TelegramTrouble | MailTrouble;

export interface DistantChannels {
  readonly channels: readonly Channel[];
  /** When each that polls was last answered. */
  readonly polls: () => { readonly [channel: string]: Instant | null };
  /** The name of the bot, as its address has it; null without one, or before Telegram has told it. */
  readonly telegramName: () => string | null;
  /** Loads what the first picture needs, so that nobody waits for it. */
  warmUp(): Promise<void>;
  /** Looks whether each can be used as it is set up. */
  troubles(): Promise<readonly Trouble[]>;
}

export function makeDistantChannels(parts: DistantParts): DistantChannels {
  const room = makeDrawingRoom();
  const telegram = telegramIn(parts, room);
  const mail = mailIn(parts);
  const isPolling = parts.config.telegram?.webhook === null;
  return {
    channels: [telegram, mail].filter((one) => one !== null),
    polls: () => (telegram && isPolling ? { telegram: telegram.health().lastPollAt } : {}),
    async warmUp() {
      if (telegram) await room.draw(smallestLadder, 'en');
    },
    telegramName: () => telegram?.health().username ?? null,
    async troubles() {
      const found = await Promise.all([
        telegram && soon(telegram.check(), 'telegram-unreachable'),
        mail && soon(mail.check(), 'mail-unreachable'),
      ]);
      return found.filter((one) => one !== null);
    },
  };
}

const smallestLadder = { title: '', rungs: [{ n: 1, seconds: 1, label: '1', length: 1, ink: 1 }] };

function telegramIn({ config, content, clock, log }: DistantParts, room: DrawingRoom): TelegramChannel | null {
  if (!config.telegram) return null;
  const { token, apiRoot, webhook } = config.telegram;
  const profiles = profilesOf((language, key) => content.words.say(language, { key, values: {} }));
  const language = languageOfDevice(config.deviceLanguage);
  const tellTrouble = (key: Trouble): void => log.error(content.words.say(language, { key, values: {} }));
  const rest = { token, apiRoot, log, now: () => clock.now(), profiles, drawPicture: room.draw, tellTrouble };
  if (!webhook) return makeTelegramChannel({ ...rest, mode: { kind: 'polling' } });
  const { url, secret, port } = webhook;
  const door = { host: config.host, port, path: new URL(url).pathname };
  return makeTelegramChannel({ ...rest, mode: { kind: 'webhook', url, secret, door } });
}

function mailIn({ config, content, clock, log }: DistantParts): MailChannel | null {
  if (!config.mail) return null;
  const head = {
    from: config.mail.from,
    nameIn: (language: Language) => content.shop.name[language],
    footIn: (language: Language) => content.words.say(language, { key: 'mail-foot', values: {} }),
  };
  return makeMailChannel({ server: config.mail.server, head, log, now: () => clock.now() });
}

/** A server that does not answer must not keep the page from opening. */
const longestCheckMs = 3_000;

function soon(check: Promise<Trouble | null>, otherwise: Trouble): Promise<Trouble | null> {
  const noAnswer = new Promise<Trouble>((resolve) => setTimeout(() => resolve(otherwise), longestCheckMs).unref());
  return Promise.race([check, noAnswer]);
}
