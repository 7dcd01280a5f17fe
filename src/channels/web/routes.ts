/** What can be asked of the server, by whom, and how it answers. */
import { Hono, type Context } from 'hono';
import { RESPONSE_ALREADY_SENT } from '@hono/node-server/utils/response';
import type { HttpBindings } from '@hono/node-server';
import { errorFields } from '../../log.ts';
import { addressOf } from './address.ts';
import { servedAsset } from './asset-response.ts';
import { readJson, tooLong } from './body.ts';
import type { House } from './house.ts';
import { isPayload, readCode, readPosted } from './intake.ts';
import { deviceTag, pageLanguageOf } from './language.ts';
import { fromOurPage, ourHost, readByOurPage, type Asked } from './origin.ts';
import { isPageLanguage, type PageLanguage } from './page/wire.ts';
import { newSession, readCookie, writeSession, type Session } from './session.ts';
import { noticePage, sheetPage } from './shell.ts';
import type { Past } from './streams.ts';

type Call = Context<{ Bindings: HttpBindings }>;

/** How long a chosen language is kept, in seconds. */
const languageKept = 365 * 24 * 60 * 60;
/** Of a body with a code for a second device, in bytes. */
const longestCode = 200;

export function makeRoutes(house: House): Hono<{ Bindings: HttpBindings }> {
  const app = new Hono<{ Bindings: HttpBindings }>();
  app.use(async (c, next) => (ourHost(c.req.header('host'), house.home) ? await next() : c.text('', 421)));

  app.get('/', (c) => openSheet(house, c, ''));
  app.get('/tea/:id', (c) => openSheet(house, c, `tea-${c.req.param('id')}`));
  app.get('/lesson/:id', (c) => openSheet(house, c, `lesson-${c.req.param('id')}`));
  app.get('/healthz', async (c) => {
    const health = await house.health();
    return c.json({ live: true, ...health }, health.ready ? 200 : 503);
  });
  app.get('/clock', (c) => c.json({ now: house.now() }));
  app.get('/words/:language', (c) => {
    const language = c.req.param('language');
    return isPageLanguage(language) ? c.json(house.words(language)) : notFound(house, c);
  });
  app.get('/assets/:name', (c) => servedAsset(house.assets, c.req.param('name'), c) ?? notFound(house, c));
  app.get('/mark.svg', (c) => c.body(mark, 200, { 'content-type': 'image/svg+xml', 'cache-control': 'max-age=86400' }));

  app.get('/my-data', (c) => myData(house, c));
  app.get('/file/:message', (c) => enclosed(house, c));
  app.get('/stream', (c) => openStream(house, c));
  app.post('/sheet', (c) => takeIn(house, c));
  app.post('/fresh', (c) => freshSheet(house, c));
  app.post('/pass', (c) => offerPass(house, c));
  app.post('/join', (c) => joinSheet(house, c));

  app.notFound((c) => notFound(house, c));
  app.onError((error, c) => {
    house.log.error('web-failed', errorFields(error));
    return notice(house, c, 'page-failed', 500);
  });
  return app;
}

async function openSheet(house: House, c: Call, payload: string): Promise<Response> {
  if (!isPayload(payload)) return notFound(house, c);
  if (!house.rates.pagesPerAddress.take(address(house, c))) return tooFast(house, c);
  const asked = c.req.query('language');
  const language = isPageLanguage(asked) ? asked : languageOf(c);
  const label = payload === '' ? null : await house.label(payload, language);
  if (payload !== '' && label === null) return notFound(house, c);
  const session = (await sessionOf(house, c)) ?? newSession();
  // Written again on each visit, so that who keeps coming keeps their sheet.
  c.header('set-cookie', writeSession(session, house.secureCookies), { append: true });
  if (isPageLanguage(asked)) {
    c.header('set-cookie', `language=${asked}; Path=/; Max-Age=${languageKept}; SameSite=Lax`, { append: true });
  }
  const boot = {
    language,
    words: house.words(language),
    sheet: session.chat.slice(0, 12),
    payload,
    label,
    telegram: house.telegram(payload),
  };
  return c.html(sheetPage(boot, house.assets, c.req.path));
}

async function takeIn(house: House, c: Call): Promise<Response> {
  if (!fromOurPage(asked(c), house.home)) return c.text('', 403);
  if (!isJson(c)) return c.text('', 415);
  const session = await sessionOf(house, c);
  if (session === null) return c.text('', 401);
  const allowed = house.rates.postsPerAddress.take(address(house, c)) && house.rates.postsPerSheet.take(session.chat);
  if (!allowed) return c.text('', 429, { 'retry-after': '2' });
  const body = await readJson(c.env.incoming, house.limits.bodyBytes);
  if (body === tooLong) return c.text('', 413);
  const posted = readPosted(body);
  if (posted === null) return c.text('', 400);
  const deviceLanguage =
    readCookie(c.req.header('cookie'), 'language') === null ? deviceTag(c.req.header('accept-language')) : null;
  const around = { chat: session.chat, receivedAt: house.now(), deviceLanguage: deviceLanguage ?? posted.language };
  const line = await house.takeIn(posted, around);
  return c.json({ updateId: posted.updateId, line }, 202);
}

async function openStream(house: House, c: Call): Promise<Response> {
  if (!readByOurPage(asked(c), house.home)) return c.text('', 403);
  const session = await sessionOf(house, c);
  if (session === null) return c.text('', 401);
  const from = address(house, c);
  if (house.streams.full(session.chat, from) !== null) return c.text('', 429, { 'retry-after': '10' });
  const after = c.req.header('last-event-id') ?? c.req.query('after') ?? '';
  const response = c.env.outgoing;
  response.writeHead(200, { 'content-type': 'text/event-stream; charset=utf-8', 'x-accel-buffering': 'no' });
  response.flushHeaders();
  const afterId = after === '' ? null : after;
  const past = (): Promise<Past> => house.past(session.chat, afterId);
  house.streams
    .follow({ chat: session.chat, device: session.device, address: from, response }, afterId, past)
    .catch((error: unknown) => {
      house.log.error('web-stream-failed', errorFields(error));
      response.destroy();
    });
  return RESPONSE_ALREADY_SENT;
}

/** To whoever holds the sheet's cookie, from the page itself or a typed address, never from another site's page. */
async function myData(house: House, c: Call): Promise<Response> {
  const { fetchSite } = asked(c);
  if (fetchSite !== 'none' && !readByOurPage(asked(c), house.home)) return c.text('', 403);
  if (!house.rates.pagesPerAddress.take(address(house, c))) return tooFast(house, c);
  const session = await sessionOf(house, c);
  const kept = session === null ? null : await house.myData(session.chat);
  if (kept === null) return notFound(house, c);
  c.header('content-disposition', 'attachment; filename="ninthpour-my-data.json"');
  c.header('cache-control', 'no-store');
  return c.body(kept, 200, { 'content-type': 'application/json; charset=utf-8' });
}

/** To the sheet its message stands on, and nobody else. Links from elsewhere find nothing: they come without its cookie or not from the page. */
async function enclosed(house: House, c: Call): Promise<Response> {
  const { fetchSite } = asked(c);
  if (fetchSite !== 'none' && !readByOurPage(asked(c), house.home)) return c.text('', 403);
  if (!house.rates.pagesPerAddress.take(address(house, c))) return tooFast(house, c);
  const session = await sessionOf(house, c);
  const file = session === null ? null : await house.file(session.chat, c.req.param('message') ?? '');
  if (file === null) return notice(house, c, 'page-file-gone', 404);
  c.header('content-disposition', `attachment; filename="${file.name.replace(/[^\w.-]/g, '-')}"`);
  c.header('cache-control', 'no-store');
  return c.body(file.text, 200, { 'content-type': `${file.mediaType}; charset=utf-8` });
}

/** The next person on this device gets an empty sheet; the old number is kept nowhere on it, and opens nothing any more. */
async function freshSheet(house: House, c: Call): Promise<Response> {
  if (!fromOurPage(asked(c), house.home)) return c.text('', 403);
  if (!house.rates.postsPerAddress.take(address(house, c))) return c.text('', 429, { 'retry-after': '2' });
  await putAway(house, c);
  c.header('set-cookie', writeSession(newSession(), house.secureCookies));
  return c.body(null, 204);
}

/** The sheet this device had until now: its number, the codes offered for it, and what it listens to. */
async function putAway(house: House, c: Call): Promise<void> {
  const session = await sessionOf(house, c);
  if (session === null) return;
  await house.devices.putAway(session);
  house.passes.withdraw(session.chat);
  house.streams.end(session.device);
}

/** A code for the person's own second device. */
async function offerPass(house: House, c: Call): Promise<Response> {
  if (!fromOurPage(asked(c), house.home)) return c.text('', 403);
  const session = await sessionOf(house, c);
  if (session === null) return c.text('', 401);
  if (!house.rates.postsPerAddress.take(address(house, c))) return c.text('', 429, { 'retry-after': '2' });
  return c.json(house.passes.offer(session.chat));
}

/** Tries are counted for each address, and for everybody together: many addresses guess no faster than one. */
async function joinSheet(house: House, c: Call): Promise<Response> {
  if (!fromOurPage(asked(c), house.home)) return c.text('', 403);
  if (!isJson(c)) return c.text('', 415);
  const allowed = house.rates.joinsPerAddress.take(address(house, c)) && house.rates.joins.take('all');
  if (!allowed) return c.text('', 429, { 'retry-after': '60' });
  const body = await readJson(c.env.incoming, longestCode);
  if (body === tooLong) return c.text('', 413);
  const chat = house.passes.redeem(readCode(body));
  if (chat === null) return c.text('', 404);
  const session = await house.devices.letIn(chat);
  await putAway(house, c);
  c.header('set-cookie', writeSession(session, house.secureCookies));
  return c.body(null, 204);
}

const notFound = (house: House, c: Call): Promise<Response> | Response => notice(house, c, 'page-not-found', 404);
const tooFast = (house: House, c: Call): Promise<Response> | Response => {
  c.header('retry-after', '10');
  return notice(house, c, 'page-too-fast', 429);
};

function notice(
  house: House,
  c: Call,
  key: 'page-not-found' | 'page-file-gone' | 'page-too-fast' | 'page-failed',
  status: 404 | 429 | 500,
): Promise<Response> | Response {
  const language = languageOf(c);
  const words = house.words(language);
  return c.html(noticePage(language, words, house.assets, words[key]), status);
}

/** A form of another site cannot send this type. */
const isJson = (c: Call): boolean => /^application\/json(;|$)/.test(c.req.header('content-type') ?? '');

const languageOf = (c: Call): PageLanguage =>
  pageLanguageOf(readCookie(c.req.header('cookie'), 'language'), c.req.header('accept-language'));

const sessionOf = (house: House, c: Call): Promise<Session | null> => house.devices.of(c.req.header('cookie'));

const address = (house: House, c: Call): string => addressOf(c.env.incoming, house.home.publicOrigin !== null);

const asked = (c: Call): Asked => ({
  host: c.req.header('host'),
  origin: c.req.header('origin'),
  fetchSite: c.req.header('sec-fetch-site'),
});

/** Three rungs on a rail: the ladder as a sign. */
const mark =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><g fill="none" stroke="#8a4312" stroke-linecap="round">' +
  '<path stroke-width="2" d="M7 4v24"/><path stroke-width="5" d="M10 9h6M10 16h10M10 23h16"/></g></svg>';
