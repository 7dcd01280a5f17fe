/** The composition root: the only file that knows every part, and the order in which they start and stop. */
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { makeWebChannel } from './channels/web/web-channel.ts';
import type { Clock } from './clock.ts';
import { databaseFile, projectRoot, type Config } from './config.ts';
import { readContent, type Content } from './content.ts';
import type { Step } from './conversation/answer.ts';
import { morningOf } from './content/shop-data.ts';
import { languageOfDevice } from './conversation/device-language.ts';
import { makeHandling } from './conversation/handle.ts';
import { makeRecord } from './conversation/record.ts';
import { signOf, type Sign } from './delivery/calendar.ts';
import { makeDelays } from './delivery/delay.ts';
import { makeDelivering } from './delivery/deliver.ts';
import { makeLoop } from './delivery/loop.ts';
import { makeMorning, type MorningTime } from './delivery/morning.ts';
import { makePace } from './delivery/pace.ts';
import { makeHistory } from './delivery/history.ts';
import { makePlanning } from './delivery/planning.ts';
import type { Say } from './delivery/render.ts';
import { makeTidying } from './delivery/tidying.ts';
import { step } from './core/flow/step.ts';
import type { Instant, Language } from './core/units.ts';
import { makeDistantChannels } from './distant-channels.ts';
import { labelPage } from './label-page.ts';
import { errorFields, type Log } from './log.ts';
import type { Channel, ChannelName } from './messages.ts';
import type { Address, Keeper, Store } from './store/contract.ts';
import type { LessonPlan } from './store/lesson-contract.ts';
import { makeShopCode } from './store/shop-code.ts';
import { makeOperation } from './operation.ts';
import { PlainMistake } from './start.ts';
import { openSqliteStore } from './store/sqlite/store.ts';
import { lineOf } from './store/line-name.ts';

export interface AppParts {
  readonly store: Store;
  readonly step: Step;
  readonly say: Say;
  /** The name the shop's entries bear in calendars. */
  readonly sign?: Sign;
  readonly channels: readonly Channel[];
  readonly clock: Clock;
  readonly log: Log;
  readonly keepDays: number;
  /** After so many days without a word someone is forgotten; never when 0 or not told. */
  readonly forgetDays?: number;
  /** Those the settings name; none told leaves them as they are. */
  readonly shopkeepers?: readonly Keeper[];
  /** The lessons the shop's files tell of. */
  readonly lessons?: LessonPlan;
  /** When shopkeepers are told what the day brings. */
  readonly morning?: MorningTime | null;
  /** Codes for colleagues; made by chance unless told. */
  readonly freshCode?: () => string;
}

export interface App {
  /** Takes up what was left, then lets people in. */
  start(): Promise<void>;
  /** Resolves when all that came in is handled and all that is due is sent. */
  settled(): Promise<void>;
  /** Stops taking in, finishes what is under way, closes the store. What is not finished in time stays in the store. */
  stop(): Promise<void>;
}

/** A service manager's patience is longer; ours ends here. */
const longestStopMs = 4_000;

export interface Service extends App {
  address(): string;
  /** A sentence with a one-time code for whoever is to be shopkeeper; null when there is one. */
  shopCode(): Promise<string | null>;
}

/** The shop's service, with the page. Throws ContentMistake or StoreMistake, in words made to be read. */
export function makeService(config: Config, clock: Clock, log: Log): Service {
  const content = contentOf(config);
  const distant = makeDistantChannels({ config, content, clock, log });
  const operation = makeOperation({
    config,
    store: openSqliteStore(databaseFile(config)),
    clock,
    log,
    channels: () => channels.map(({ name }) => name),
    polls: () => distant.polls(),
  });
  const { store } = operation;
  const say = sayIn(content);
  const sign = signOf(content.shop.name, config.mail?.from ?? null);
  const history = makeHistory({ store, say, log, sign });
  const web = makeWebChannel({
    host: config.host,
    port: config.port,
    clock,
    log,
    passed: (chat, after) => history({ channel: 'web', chat }, after),
    lineOf: (updateId) => lineOf({ channel: 'web', updateId }),
    myData: (chat) => keptOf(store, { channel: 'web', chat }),
    async label(payload, language) {
      const now = clock.now();
      const rosters = payload.startsWith('lesson-') ? await store.rosters(now) : [];
      return labelPage(content, { payload, language, now, rosters });
    },
    telegramName: () => distant.telegramName(),
    pageWords: (language) => pageWords(content, language),
    health: async () => ({ ...(await operation.health()), vitals: undefined }),
    secureCookies: config.origin?.startsWith('https:') ?? false,
    publicOrigin: config.origin,
  });
  const { keepDays, forgetDays, shopkeepers } = config;
  const channels = [web, ...distant.channels];
  const { lessons } = content;
  const app = makeApp({
    store,
    step: stepIn(content),
    say,
    sign,
    channels,
    clock,
    log,
    keepDays,
    forgetDays,
    shopkeepers,
    lessons,
    morning: morningOf(content.shop),
  });
  const language = languageOfDevice(config.deviceLanguage);
  return {
    ...app,
    async start() {
      for (const trouble of await distant.troubles()) {
        const told = say(language, { key: trouble, values: {} });
        if (trouble === 'telegram-token-refused') throw new PlainMistake(told);
        log.warn(told);
      }
      await operation.start();
      await app.start();
      setImmediate(() => warmUp(content));
      // Later: what fell due while we were away comes first.
      setTimeout(() => void distant.warmUp().catch(() => undefined), 5_000).unref();
    },
    async stop() {
      await operation.stop();
      await app.stop();
    },
    address: () => web.address(),
    shopCode: () => offeredCode({ store, say, clock, language }),
  };
}

/** The reader makes its indexes at the first question; that question is ours, so that no customer waits for them. */
function warmUp({ answers, read }: Content): void {
  const question = answers[0]?.questions.en[0];
  if (question !== undefined) read(question, { language: 'en', asked: null });
}

/** On the page a chat and the one who writes in it are known by the same name. */
async function keptOf(store: Store, { channel, chat }: Address): Promise<string | null> {
  const person = await store.find(channel, chat);
  return person === null ? null : JSON.stringify(await store.exportOf(person), null, 1);
}

const codeMinutes = 10;

async function offeredCode({
  store,
  say,
  clock,
  language,
}: Pick<AppParts, 'store' | 'say' | 'clock'> & { readonly language: Language }): Promise<string | null> {
  const code = makeShopCode(randomBytes);
  const offered = await store.offerCode(code, clock.now() + codeMinutes * 60_000);
  return offered ? say(language, { key: 'shop-told-code', values: { code, minutes: codeMinutes } }) : null;
}

export function contentOf({ shopFolder, keepDays, forgetDays, backups }: Config): Content {
  const [flowsDir, dataDir] = [join(projectRoot, 'flows'), join(projectRoot, 'data')];
  const keeping = { messageDays: keepDays, idleDays: forgetDays, backupDays: backups.keepDays };
  return readContent({ flowsDir, dataDir, shopDir: shopFolder, keeping });
}

export const sayIn =
  ({ words }: Content): Say =>
  (language, phrase) =>
    words.say(language, phrase);

export const stepIn =
  ({ book }: Content): Step =>
  (state, event, around) =>
    step(book, state, event, around);

/** What the page shows before a word is said: its words, by their keys. */
function pageWords({ words }: Content, language: Language): Readonly<Record<string, string>> {
  const keys = words.keys().filter((key) => key.startsWith('page-'));
  return Object.fromEntries(keys.map((key) => [key, words.say(language, { key, values: {} })]));
}

export function makeApp(parts: AppParts): App {
  const { store, step: decide, say, channels, clock, log, keepDays, forgetDays = 0, shopkeepers } = parts;
  const names = channels.map(({ name }) => name);
  const byName = new Map<ChannelName, Channel>(channels.map((channel) => [channel.name, channel]));
  const later = (at: Instant): void => loop.owed(at);
  const delays = makeDelays();
  const pace = makePace();
  const delivering = makeDelivering({
    store,
    channels: byName,
    say,
    sign: parts.sign,
    clock,
    log,
    pace,
    delays,
    later,
  });
  const freshCode = parts.freshCode ?? (() => makeShopCode(randomBytes));
  const handling = makeHandling({
    store,
    step: decide,
    clock,
    means: { mail: names.includes('mail'), freshCode },
    deliveryMs: delays.usual,
    owed: later,
    stumbled: (error, tries) => log.error('a step failed', { tries, ...errorFields(error) }),
  });
  const loop = makeLoop({ store, channels: names, clock, log, pump: delivering.pump, take: handling.take });
  const record = makeRecord({
    store,
    take: handling.take,
    troubled: (error) => log.error('handling was put off', errorFields(error)),
  });
  const tidying = makeTidying({ store, clock, log, keepDays, forgetDays });
  const plan = parts.lessons ?? { lessons: [], series: [] };
  const planning = makePlanning({ store, clock, log, plan });
  const morning = makeMorning({ store, clock, log, when: parts.morning ?? null, owed: later });

  const finish = async (): Promise<'finished'> => {
    await Promise.all(channels.map((channel) => channel.stop()));
    tidying.stop();
    planning.stop();
    morning.stop();
    await loop.stop();
    await handling.idle();
    await delivering.stop();
    await store.close();
    return 'finished';
  };
  return {
    async start() {
      if (shopkeepers) await store.appoint(shopkeepers, clock.now());
      await planning.start();
      await loop.start();
      for (const channel of channels) await channel.start(record);
      tidying.start();
      morning.start();
    },
    async settled() {
      await loop.rest();
      await handling.idle();
      await delivering.idle();
    },
    async stop() {
      const outcome = await Promise.race([finish(), tooLate(longestStopMs)]);
      if (outcome === 'late') log.warn('stopped before all was finished; the rest is taken up at the next start');
    },
  };
}

function tooLate(ms: number): Promise<'late'> {
  return new Promise((resolve) => setTimeout(() => resolve('late'), ms).unref());
}
