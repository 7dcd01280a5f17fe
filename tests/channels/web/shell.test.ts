/** The page before its scripts run, and what keeps the server from starting. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHouse, type FakeHouse } from '../../page/fake-house.ts';
import type { Boot } from '../../../src/channels/web/page/wire.ts';
import { paper } from '../../../src/channels/web/shell.ts';
import { emptyPage, knock } from './knock.ts';

const pageFolder = emptyPage();
let house: FakeHouse;
beforeAll(async () => {
  house = await openHouse({ pageFolder });
});
afterAll(() => house.stop());

describe('the page before its scripts', () => {
  it('shows the plan of a label with its ladder', async () => {
    const { body } = await knock(house.url, '/tea/tieguanyin', { headers: { 'accept-language': 'zh-HK' } });
    expect(body).toContain('<html lang="zh-Hant">');
    expect(body.replaceAll(/<\/?span[^>]*>/g, '')).toContain('110 毫升蓋碗泡鐵觀音');
    expect(body).toContain('<span class="whole">6.5 克</span>');
    expect(body.match(/class="rung"/g)).toHaveLength(8);
    expect(body).toContain('各道時間: 1 – 6 秒; 2 – 5 秒');
  });

  it.each([
    ['zh-TW,zh;q=0.9,en;q=0.8', '', 'zh-Hant'],
    ['zh-Hant-HK', '', 'zh-Hant'],
    ['yue', '', 'zh-Hant'],
    ['zh-CN', '', 'zh-Hans'],
    ['zh', '', 'zh-Hans'],
    ['zh-Hans-HK', '', 'zh-Hans'],
    ['en;q=0.2,zh-SG;q=0.9', '', 'zh-Hans'],
    ['fr,de;q=0.8', '', 'en'],
    ['en;q=0,zh-TW;q=0.1', '', 'zh-Hant'],
    ['', '', 'en'],
    ['*', '', 'en'],
    [`${'x,'.repeat(5_000)}zh-TW`, '', 'en'],
    ['en', 'language=zh-Hant', 'zh-Hant'],
    ['en', 'language=<script>', 'en'],
  ])('speaks as the browser asks: %s %s → %s', async (accept, kept, language) => {
    const { body } = await knock(house.url, '/', { headers: { 'accept-language': accept, cookie: kept } });
    expect(body).toContain(`<html lang="${language}">`);
  });

  it.each([
    ['/', 1],
    ['/tea/tieguanyin', 0],
  ])('says on %s that it is being opened, where nothing else is to be read: %i', async (path, times) => {
    const { body } = await knock(house.url, path, { headers: { 'accept-language': 'zh-CN' } });
    expect(body.match(/<p class="[^"]*opening">正在铺开小笺……<\/p>/g) ?? []).toHaveLength(times);
  });

  it('tells a telephone the colours of its paper, as the styles have them', async () => {
    const styles = readFileSync(new URL('../../../src/channels/web/page/values.css', import.meta.url), 'utf8');
    const papers = [...styles.matchAll(/--paper: (#\w+);/g)].map(([, colour]) => colour);
    expect(papers).toEqual([paper.light, paper.dark]);
    const { body } = await knock(house.url, '/');
    const told = [...body.matchAll(/name="theme-color" media="[^"]*(light|dark)\)" content="(#\w+)"/g)];
    expect(Object.fromEntries(told.map(([, light, colour]) => [light, colour]))).toEqual(paper);
  });

  it('changes its language by a plain link, and remembers', async () => {
    const answer = await knock(house.url, '/?language=zh-Hans');
    expect(answer.body).toContain('<html lang="zh-Hans">');
    expect(answer.headers['set-cookie']?.[1]).toMatch(/^language=zh-Hans; Path=\/; Max-Age=31536000; SameSite=Lax$/);
  });

  it.each([
    ['br', 'br'],
    ['gzip, deflate', 'gzip'],
    ['', undefined],
  ])('serves its files packed (%s) and for ever', async (accept, coding) => {
    const { headers } = await knock(house.url, '/assets/main-0.js', { headers: { 'accept-encoding': accept } });
    expect(headers['content-encoding']).toBe(coding);
    expect(headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect(headers['vary']).toBe('Accept-Encoding');
  });
});

const bootOf = (body: string): Boot => JSON.parse(/id="boot">([^<]*)</.exec(body)![1]!) as Boot;

describe('the way to Telegram', () => {
  it.each([
    ['/', 'https://t.me/tea_bot'],
    ['/tea/tieguanyin', 'https://t.me/tea_bot?start=tea-tieguanyin'],
  ])('from %s takes along what was opened', async (path, link) => {
    const withBot = await openHouse({ pageFolder, telegramName: () => 'tea_bot' });
    expect(bootOf((await knock(withBot.url, path)).body).telegram).toBe(link);
    await withBot.stop();
    expect(bootOf((await knock(house.url, path)).body).telegram).toBeNull();
  });
});

describe('starting', () => {
  it('a word missing in any language stops the start', async () => {
    const lacking = openHouse({ pageFolder, pageWords: () => ({ 'page-title': 'x' }) });
    await expect(lacking).rejects.toThrow(/words of the page missing in en: page-sheet/);
  });

  it('a page that is not built stops the start with what to do', async () => {
    await expect(openHouse({ pageFolder: '/nowhere' })).rejects.toThrow(/not built.*npm run build/);
  });

  it('a port in use is told by its code', async () => {
    const port = Number(new URL(house.url).port);
    await expect(openHouse({ pageFolder, port })).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });

  it('is well only when the house is', async () => {
    const ill = await openHouse({ pageFolder, health: () => Promise.resolve({ ready: false, backupAgeS: 7 }) });
    const { status, body } = await knock(ill.url, '/healthz');
    expect({ status, body: JSON.parse(body) as unknown }).toEqual({
      status: 503,
      body: { live: true, ready: false, backupAgeS: 7 },
    });
    expect((await knock(house.url, '/healthz')).body).toBe('{"live":true,"ready":true}');
    await ill.stop();
  });
});
