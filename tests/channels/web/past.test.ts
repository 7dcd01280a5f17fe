/** How much of a long conversation is told to who comes back, and that it says so when there was more. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { mostPassed } from '../../../src/channels/web/web-channel.ts';
import type { Incoming } from '../../../src/messages.ts';
import { openSqliteStore } from '../../../src/store/sqlite/store.ts';
import { openHouse } from '../../page/fake-house.ts';
import { aboutPost, emptyPage, follow, isCaughtUp, knock, posted, visit } from './knock.ts';

const pageFolder = emptyPage();

const line = (n: number): Incoming => ({
  channel: 'web',
  updateId: `line ${n}`,
  from: 'someone',
  chat: 'someone',
  receivedAt: n,
  what: { kind: 'text', text: String(n) },
});

describe('a long past', () => {
  it.each([
    ['as much as is told', mostPassed - 1, ''],
    ['more', mostPassed, 'cut'],
  ])('of %s', async (_, count, expected) => {
    const house = await openHouse({ pageFolder, answer: () => Promise.resolve() });
    const cookie = await visit(house.url);
    const headers = aboutPost(house.url, cookie);
    await knock(house.url, '/sheet', { method: 'POST', headers, body: posted({ kind: 'text', text: 'x' }) });
    for (let n = 0; n < count; n++) await house.say({ paragraphs: [String(n)] });
    const stream = await follow(house.url, { cookie });
    const events = await stream.until(isCaughtUp);
    expect(events.find(({ event }) => event === 'caught-up')?.data).toBe(expected);
    stream.close();
    await house.stop();
  });

  it('is told by the store up to the number the channel counts with', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ninthpour-past-'));
    const store = openSqliteStore(join(folder, 'ninthpour.sqlite'));
    await Promise.all(Array.from({ length: mostPassed + 1 }, (_, n) => store.record(line(n))));
    expect(await store.heard('web', 'someone', null)).toHaveLength(mostPassed);
    await store.close();
    rmSync(folder, { recursive: true });
  });

  it('has a file of a message that is no longer kept no more, and says that', async () => {
    const house = await openHouse({ pageFolder, answer: () => Promise.resolve() });
    const answer = await knock(house.url, '/file/m1', { headers: { cookie: await visit(house.url) } });
    expect(answer.status).toBe(404);
    expect(answer.body).toContain('This file is no longer kept here.');
    await house.stop();
  });
});
