/** What the routes need of the house, gathered once. */
import type { Enclosure } from '../../messages.ts';
import type { Log } from '../../log.ts';
import type { Assets } from './assets.ts';
import type { Devices } from './devices.ts';
import type { Around } from './intake.ts';
import type { WebLimits } from './limits.ts';
import type { Home } from './origin.ts';
import type { PageLanguage, PageWords, Posted, Said } from './page/wire.ts';
import type { Passes } from './passes.ts';
import type { Rate } from './rate.ts';
import type { Past, Streams } from './streams.ts';

/** What is told of the house; it can do its work when it is ready. */
export interface Wellbeing {
  readonly ready: boolean;
  readonly [figure: string]: unknown;
}

export interface House {
  readonly home: Home;
  readonly secureCookies: boolean;
  readonly log: Log;
  readonly limits: WebLimits;
  readonly assets: Assets;
  readonly streams: Streams;
  readonly rates: {
    readonly postsPerSheet: Rate;
    readonly postsPerAddress: Rate;
    readonly pagesPerAddress: Rate;
    readonly joinsPerAddress: Rate;
    readonly joins: Rate;
  };
  readonly passes: Passes;
  readonly devices: Devices;
  now(): number;
  health(): Promise<Wellbeing>;
  words(language: PageLanguage): PageWords;
  label(payload: string, language: PageLanguage): Promise<Said | null>;
  past(chat: string, afterId: string | null): Promise<Past>;
  /** What went with a message of this sheet; null when nothing did, or it is no longer kept. */
  file(chat: string, messageId: string): Promise<Enclosure | null>;
  /** Where to go on in Telegram with what was opened here; null without such a bot, or before it has told its name. */
  telegram(payload: string): string | null;
  /** All that is kept of the person behind a sheet; null when nothing is. */
  myData(chat: string): Promise<string | null>;
  /** Keeps what was posted, shows it on every device of the sheet, and gives back the name it goes by there. */
  takeIn(posted: Posted, around: Around): Promise<string>;
}
