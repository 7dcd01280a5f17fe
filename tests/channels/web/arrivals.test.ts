/** What is written stands above its answer on every device, however soon the house answers; and whoever fails to arrive holds up nobody. */
import { expect, it } from 'vitest';
import type { Incoming, Outgoing } from '../../../src/messages.ts';
import { makeLog } from '../../../src/log.ts';
import { aboutPost, emptyPage, follow, isCaughtUp, knock, posted, visit } from './knock.ts';
import { muteWeb } from './mute-web.ts';

const answerTo = ({ chat }: Incoming, id: string): Outgoing => ({
  id,
  channel: 'web',
  chat,
  language: 'en',
  paragraphs: [id],
  choices: [],
});

it('an answer that is there before its line is kept comes below it', async () => {
  const web = muteWeb({ log: makeLog('silent'), pageFolder: emptyPage() });
  const sent: unknown[] = [];
  await web.start(async (incoming) => {
    void web.send(answerTo(incoming, `a${sent.length}`)).then((outcome) => sent.push(outcome));
    await new Promise((kept) => setTimeout(kept, 20));
    if (incoming.what.kind === 'open') throw new Error('the disk is full');
    return 'new';
  });
  const url = web.address().replace(/\/$/, '');
  const cookie = await visit(url);
  const write = (what: unknown) =>
    knock(url, '/sheet', { method: 'POST', headers: aboutPost(url, cookie), body: posted(what) });
  const stream = await follow(url, { cookie });
  await stream.until(isCaughtUp);
  expect((await write({ kind: 'text', text: 'x' })).status).toBe(202);
  expect((await write({ kind: 'open', payload: '' })).status).toBe(500);
  const events = await stream.until((all) => all.filter(({ event }) => event === 'said').length === 2);
  expect(events.map(({ event }) => event)).toEqual(['caught-up', 'wrote', 'said', 'said']);
  expect(sent).toEqual([0, 1].map((n) => ({ outcome: 'sent', ref: `a${n}` })));
  stream.close();
  await web.stop();
});
