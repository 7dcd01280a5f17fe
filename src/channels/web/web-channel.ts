/** The page as a channel: takes in what is posted, sends along the open streams, keeps nothing that matters. */
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { getRequestListener } from '@hono/node-server';
import type { Log } from '../../log.ts';
import type { Channel, Incoming, Outgoing, What } from '../../messages.ts';
import { builtFolder } from '../../project-root.ts';
import { makeArrivals, type Arrivals } from './arrivals.ts';
import { readAssets } from './assets.ts';
import { makeDevices, type Marks } from './devices.ts';
import { houseHeaders } from './headers.ts';
import type { House, Wellbeing } from './house.ts';
import { incomingOf } from './intake.ts';
import { usualLimits, type WebLimits } from './limits.ts';
import { pageLanguages, pageWordKeys, type PageLanguage, type PageWords, type Said, type Told } from './page/wire.ts';
import { makePasses } from './passes.ts';
import { makeRate } from './rate.ts';
import { makeRoutes } from './routes.ts';
import { makeStreams, type Streams } from './streams.ts';

export interface WebChannelDeps {
  readonly host: string;
  /** 0 takes any that is free. */
  readonly port: number;
  readonly clock: { now(): number };
  readonly log: Log;
  /**
   * What is retained of a chat, both sides in the order of time: since the given message (exclusive), or all of it when
   * that is null or no longer retained. A line may be told that came just before.
   */
  passed(chat: string, afterId: string | null): Promise<readonly Passed[]>;
  /** The name an incoming goes by in what has passed. */
  lineOf(updateId: string): string;
  /** What a label or a lesson's link shows at once ("tea-tieguanyin", "lesson-12"); null when it leads nowhere any more. */
  label(payload: string, language: PageLanguage): Promise<Outgoing | null>;
  /** All that is kept of the person behind a chat, as JSON; null when nothing is. */
  myData?(chat: string): Promise<string | null>;
  /** Keeps which devices may open a sheet. */
  readonly marks: Marks;
  /** The name of the bot that holds the same conversation; null when there is none, or it is not known yet. */
  telegramName?(): string | null;
  /** All page-* words of a language. */
  pageWords(language: PageLanguage): Readonly<Record<string, string>>;
  health?(): Promise<Wellbeing>;
  /** True puts the session into a __Host- cookie, which needs TLS or a loopback address. */
  readonly secureCookies: boolean;
  /** "https://tea.example" when the house is reached under a public name, through a proxy on this machine. */
  readonly publicOrigin: string | null;
  readonly limits?: Partial<WebLimits>;
  /** Where the built page lies; the build's own place when left out. */
  readonly pageFolder?: string;
}

type Passed = { readonly said: Outgoing } | { readonly heard: { readonly line: string; readonly what: What } };

const builtPage = join(builtFolder, 'page');
/** How long open requests may take to finish when the house closes. */
const graceMs = 1_500;

export function makeWebChannel(deps: WebChannelDeps): Channel & { address(): string } {
  const limits = { ...usualLimits, ...deps.limits };
  const streams = makeStreams(limits, () => deps.clock.now());
  const arrivals = makeArrivals();
  let server: Server | null = null;
  return {
    name: 'web',
    async start(record) {
      server = serverFor(makeHouse(deps, { limits, streams, arrivals, record }), deps.publicOrigin);
      await listening(server, deps.port, deps.host);
    },
    async send(message) {
      await arrivals.shown(message.chat);
      streams.push(message.chat, { said: saidOf(message) });
      return { outcome: 'sent', ref: message.replaces ?? message.id };
    },
    async stop() {
      streams.close();
      if (server !== null) await closed(server);
      server = null;
    },
    address: () => (server === null ? '' : shownAddress(server, deps)),
  };
}

interface Parts {
  readonly limits: WebLimits;
  readonly streams: Streams;
  readonly arrivals: Arrivals;
  readonly record: (incoming: Incoming) => Promise<'new' | 'seen'>;
}

function makeHouse(deps: WebChannelDeps, { limits, streams, arrivals, record }: Parts): House {
  const words = checkedWords(deps);
  const now = (): number => deps.clock.now();
  return {
    home: { publicOrigin: deps.publicOrigin, host: deps.host },
    secureCookies: deps.secureCookies,
    log: deps.log,
    limits,
    assets: readAssets(deps.pageFolder ?? builtPage),
    streams,
    rates: {
      postsPerSheet: makeRate(limits.postsPerSheet, limits.remembered, now),
      postsPerAddress: makeRate(limits.postsPerAddress, limits.remembered, now),
      pagesPerAddress: makeRate(limits.pagesPerAddress, limits.remembered, now),
      joinsPerAddress: makeRate(limits.joinsPerAddress, limits.remembered, now),
      joins: makeRate(limits.joins, 1, now),
    },
    passes: makePasses(now),
    devices: makeDevices(deps.marks, deps.secureCookies),
    now,
    health: () => deps.health?.() ?? Promise.resolve({ ready: true }),
    words: (language) => words[language],
    async label(payload, language) {
      const sheet = await deps.label(payload, language);
      return sheet === null ? null : saidOf(sheet);
    },
    async file(chat, id) {
      const passed = await deps.passed(chat, null);
      return passed.flatMap((one) => ('said' in one && one.said.id === id ? [one.said.file] : []))[0] ?? null;
    },
    async past(chat, afterId) {
      const passed = await deps.passed(chat, afterId);
      return { told: passed.flatMap(toldOf), isCut: isCut(passed) };
    },
    telegram: (payload) => telegramLink(deps.telegramName?.() ?? null, payload),
    myData: (chat) => deps.myData?.(chat) ?? Promise.resolve(null),
    async takeIn(posted, around) {
      const incoming = incomingOf(posted, around);
      const { updateId, what } = posted;
      const line = deps.lineOf(incoming.updateId);
      await arrivals.first(incoming.chat, async () => {
        if ((await record(incoming)) === 'new') streams.push(incoming.chat, { wrote: { line, what, updateId } });
      });
      return line;
    },
  };
}

/** Of either side, however much there was. The number is the store's (`store/contract.ts`). */
export const mostPassed = 300;

function isCut(passed: readonly Passed[]): boolean {
  const said = passed.filter((one) => 'said' in one).length;
  return Math.max(said, passed.length - said) >= mostPassed;
}

function toldOf(passed: Passed): readonly Told[] {
  if ('said' in passed) return [{ said: saidOf(passed.said) }];
  const { line, what } = passed.heard;
  return what.kind === 'reach' ? [] : [{ wrote: { line, what } }];
}

/** A label's payload is what Telegram allows after ?start= (64 of A–Z, a–z, 0–9, _ and -). */
function telegramLink(name: string | null, payload: string): string | null {
  if (name === null) return null;
  return `https://t.me/${name}${payload === '' ? '' : `?start=${payload}`}`;
}

/** Picked by name: what is not for the page stays here, whatever is added to a message later. */
function saidOf(message: Outgoing): Said {
  const { id, language, paragraphs, choices, ladder, countdown, file, replaces, last } = message;
  return {
    id,
    language,
    paragraphs,
    choices,
    ...(ladder === undefined ? {} : { ladder }),
    ...(countdown === undefined ? {} : { countdown }),
    ...(file === undefined ? {} : { file: file.label }),
    ...(replaces === undefined ? {} : { replaces }),
    ...(last === undefined ? {} : { last }),
  };
}

/** A word missing in any language stops the start. */
function checkedWords(deps: WebChannelDeps): Record<PageLanguage, PageWords> {
  const read = (language: PageLanguage): PageWords => {
    const words = deps.pageWords(language);
    const missing = pageWordKeys.filter((key) => words[key] === undefined);
    if (missing.length > 0) throw new Error(`words of the page missing in ${language}: ${missing.join(', ')}`);
    return Object.fromEntries(pageWordKeys.map((key) => [key, words[key] ?? ''])) as PageWords;
  };
  return Object.fromEntries(Object.keys(pageLanguages).map((tag) => [tag, read(tag as PageLanguage)])) as Record<
    PageLanguage,
    PageWords
  >;
}

function serverFor(house: House, publicOrigin: string | null): Server {
  const { limits } = house;
  const answer = getRequestListener(makeRoutes(house).fetch, { overrideGlobalObjects: false });
  const headers = Object.entries(houseHeaders(publicOrigin));
  const options = {
    headersTimeout: limits.headersMs,
    requestTimeout: limits.requestMs,
    connectionsCheckingInterval: Math.min(2_000, limits.headersMs / 4),
    keepAliveTimeout: 10_000,
  };
  const server = createServer(options, (request, response) => {
    // Set before anything is routed, so that no answer can leave without them.
    for (const [name, value] of headers) response.setHeader(name, value);
    void answer(request, response);
  });
  server.maxConnections = limits.connections;
  return server;
}

function listening(server: Server, port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const force = setTimeout(() => server.closeAllConnections(), graceMs);
    server.close(() => {
      clearTimeout(force);
      resolve();
    });
    server.closeIdleConnections();
  });
}

function shownAddress(server: Server, deps: WebChannelDeps): string {
  if (deps.publicOrigin !== null) return `${deps.publicOrigin}/`;
  const { port } = server.address() as AddressInfo;
  const host = deps.host === '0.0.0.0' || deps.host === '::' ? 'localhost' : deps.host;
  return `http://${host.includes(':') ? `[${host}]` : host}:${port}/`;
}
