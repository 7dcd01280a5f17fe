/** What arrives at a person, against the stand-in. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Outgoing, Sent } from '../../../src/messages.ts';
import type { TelegramDeps } from '../../../src/channels/telegram/telegram.ts';
import { publishedLimits } from './bot-api/flood-limiter.ts';
import type { Trouble } from './bot-api/fault-plan.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { channelAt, outgoing } from './harness.ts';

let server: StandIn;
let send: (message: Outgoing) => Promise<Sent>;
const use = (more: Partial<TelegramDeps> = {}): void => {
  const { channel } = channelAt(server, more);
  send = (message) => channel.send(message);
};
beforeEach(async () => {
  server = await startStandIn();
  for (const id of [1, 2, 3]) server.people.say(id, 'hello');
  use();
});
afterEach(() => server.close());

const texts = (id = 1): readonly string[] => server.seenBy(id).map(({ text }) => text);
const ladder = { title: 'Six infusions', rungs: [{ n: 1, seconds: 20, label: '20 s', length: 1, ink: 1 }] };
const png = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const refOf = (sent: Sent): string => (sent.outcome === 'sent' ? sent.ref : '');

describe('a message', () => {
  it('arrives with its buttons, and its taps carry their keys', async () => {
    const choices = [
      { key: 'abc.0', label: 'Guide me' },
      { key: 'abc.1', label: 'Why' },
    ];
    expect(await send(outgoing(1, { paragraphs: ['One.', 'Two <b>&amp;'], choices }))).toMatchObject({
      outcome: 'sent',
    });
    const [message] = server.seenBy(1);
    expect(message?.text).toBe('One.\n\nTwo <b>&amp;');
    expect(message?.markup?.inline_keyboard).toEqual([
      [
        { text: 'Guide me', callback_data: 'abc.0' },
        { text: 'Why', callback_data: 'abc.1' },
      ],
    ]);
  });

  it('is edited in place, and its old buttons go', async () => {
    const first = await send(outgoing(1, { choices: [{ key: 'k', label: 'Poured' }] }));
    const second = await send(outgoing(1, { paragraphs: ['Second infusion'], replaces: refOf(first) }));
    expect(second).toEqual(first);
    expect(server.seenBy(1).map(({ text, markup, edits }) => [text, markup, edits])).toEqual([
      ['Second infusion', null, 1],
    ]);
    expect(await send(outgoing(1, { paragraphs: ['Second infusion'], replaces: refOf(first) }))).toEqual(first);
  });

  it.each([['gone'], ['t99'], ['']])('is sent anew when what it replaces is %s', async (replaces) => {
    const ref = replaces === 'gone' ? refOf(await send(outgoing(1))) : replaces;
    if (replaces === 'gone') server.world.messages(1).clear();
    expect(await send(outgoing(1, { paragraphs: ['anew'], replaces: ref }))).toMatchObject({ outcome: 'sent' });
    expect(texts()).toContain('anew');
  });

  it('too long for one goes in pieces, edited and shortened as one', async () => {
    const long = ['x'.repeat(4000), 'y'.repeat(4000)];
    const first = await send(outgoing(1, { paragraphs: long }));
    expect(texts().map((text) => text.length)).toEqual([4000, 4000]);
    await send(outgoing(1, { paragraphs: ['short'], replaces: refOf(first) }));
    expect(texts()).toEqual(['short']);
  });

  it('broken off in the middle goes on where it stopped', async () => {
    const long = outgoing(1, { paragraphs: ['x'.repeat(4000), 'y'.repeat(4000), 'z'.repeat(4000)] });
    server.faults.add({
      method: 'sendMessage',
      after: 1,
      trouble: {
        kind: 'refuse',
        code: 429,
        description: 'Too Many Requests: retry after 1',
        parameters: { retry_after: 1 },
      },
    });
    expect(await send(long)).toMatchObject({ outcome: 'retry' });
    await new Promise((resolve) => setTimeout(resolve, 1010));
    expect(await send(long)).toEqual({ outcome: 'sent', ref: expect.stringMatching(/^t\d+\.t\d+\.t\d+$/) as string });
    expect(texts().map((text) => text[0])).toEqual(['x', 'y', 'z']);
  });

  it.each<[string, Partial<Outgoing>, string]>([
    ['with nothing to say', { paragraphs: [' '] }, 'text-empty'],
    ['with a key too long', { choices: [{ key: 'k'.repeat(65), label: 'x' }] }, 'choice-key-wrong'],
    ['with an empty key', { choices: [{ key: '', label: 'x' }] }, 'choice-key-wrong'],
    [
      'with too many choices',
      { choices: [...Array(101).keys()].map((i) => ({ key: `${i}`, label: 'x' })) },
      'too-many-choices',
    ],
  ])('%s is refused', async (_case, more, why) => {
    expect(await send(outgoing(1, more))).toEqual({ outcome: 'refused', why });
    expect(texts()).toEqual([]);
  });

  it('says who cannot be reached', async () => {
    server.people.block(1);
    server.people.deactivate(2);
    expect(await send(outgoing(1))).toEqual({ outcome: 'unreachable', why: 'blocked' });
    expect(await send(outgoing(2))).toEqual({ outcome: 'unreachable', why: 'deactivated' });
    expect(await send(outgoing(404))).toEqual({ outcome: 'unreachable', why: 'no-such-chat' });
    server.people.unblock(1);
    expect(await send(outgoing(1))).toMatchObject({ outcome: 'sent' });
  });

  it('follows a group to where it moved', async () => {
    server.world.movedGroups.set(-5, -1005);
    expect(await send(outgoing(-5))).toMatchObject({ outcome: 'sent' });
    expect(texts(-1005)).toEqual(['Hello']);
  });
});

describe('the ladder', () => {
  it('is drawn in letters of one width', async () => {
    await send(outgoing(1, { ladder }));
    const [message] = server.seenBy(1);
    expect(message?.text).toBe('Hello\n\nSix infusions\n 1 ██████████████ 20 s');
    expect(message?.entities).toEqual([{ type: 'pre', offset: 7, length: 36 }]);
  });

  it('is a picture where one can be drawn, with the words under it, edited in place', async () => {
    use({ drawPicture: () => Promise.resolve(png) });
    const first = await send(outgoing(1, { ladder, choices: [{ key: 'k', label: 'Why' }] }));
    expect(server.seenBy(1)).toMatchObject([{ kind: 'photo', text: 'Hello', photo: png }]);
    expect(await send(outgoing(1, { paragraphs: ['Now'], replaces: refOf(first) }))).toEqual(first);
    expect(server.seenBy(1)).toMatchObject([{ kind: 'photo', text: 'Now', markup: null }]);
    await send(outgoing(1, { paragraphs: ['z'.repeat(2000)], ladder, replaces: refOf(first) }));
    expect(server.seenBy(1)).toMatchObject([{ kind: 'photo' }, { kind: 'text' }]);
  });

  it.each<[string, () => Promise<Uint8Array>]>([
    ['drawing it fails', () => Promise.reject(new Error('no font'))],
    ['drawing it takes too long', () => new Promise(() => undefined)],
    ['the server takes no such picture', () => Promise.resolve(Buffer.from('GIF8'))],
  ])('is in letters when %s', async (_case, drawPicture) => {
    use({ drawPicture });
    expect(await send(outgoing(1, { ladder }))).toMatchObject({ outcome: 'sent' });
    expect(texts()).toEqual(['Hello\n\nSix infusions\n 1 ██████████████ 20 s']);
  });

  it('is in letters under more words than a picture takes', async () => {
    use({ drawPicture: () => Promise.resolve(png) });
    await send(outgoing(1, { paragraphs: ['z'.repeat(1025)], ladder }));
    expect(server.seenBy(1)).toMatchObject([{ kind: 'text' }]);
  });
});

const seen = () => server.seenBy(1).map(({ kind, text, document }) => [kind, text, document?.bytes.toString()]);

describe('a file', () => {
  const file = {
    name: 'first-cup.ics',
    mediaType: 'text/calendar; method=PUBLISH',
    text: 'BEGIN:茶',
    label: 'Calendar',
  };

  it('comes with the words and the buttons under it, and a later message takes only those away', async () => {
    const first = await send(outgoing(1, { file, choices: [{ key: 'k', label: 'Give my seat back' }] }));
    expect(server.seenBy(1)).toMatchObject([{ kind: 'document', text: 'Hello', document: { filename: file.name } }]);
    expect(server.seenBy(1)[0]?.markup?.inline_keyboard).toHaveLength(1);
    expect(await send(outgoing(1, { paragraphs: ['Moved'], replaces: refOf(first) }))).toEqual(first);
    expect(seen()).toEqual([['document', 'Moved', 'BEGIN:茶']]);
    expect(server.seenBy(1)[0]?.markup).toBeNull();
  });

  it('that changed comes anew in the place of the old one', async () => {
    const first = await send(outgoing(1, { file }));
    const text = await send(outgoing(1));
    const second = await send(outgoing(1, { file: { ...file, text: 'END' }, replaces: refOf(first) }));
    expect(second).not.toEqual(first);
    await send(outgoing(1, { file: { ...file, text: 'LAST' }, replaces: refOf(text) }));
    expect(seen()).toEqual([
      ['document', 'Hello', 'END'],
      ['document', 'Hello', 'LAST'],
    ]);
  });

  it('comes after words that are too long to stand under it', async () => {
    const sent = await send(outgoing(1, { file, paragraphs: ['z'.repeat(1025)], choices: [{ key: 'k', label: 'x' }] }));
    expect(refOf(sent)).toMatch(/^t\d+\.f\d+$/);
    expect(server.seenBy(1)).toMatchObject([
      { kind: 'text', markup: { inline_keyboard: [[{ text: 'x' }]] } },
      { kind: 'document', text: '' },
    ]);
  });

  it('whose answer is lost may have arrived', async () => {
    server.faults.add({ method: 'sendDocument', trouble: { kind: 'drop', processed: true } });
    expect(await send(outgoing(1, { file }))).toMatchObject({ outcome: 'unknown' });
    expect(seen()).toHaveLength(1);
  });
});

function refused(seconds: number): Trouble {
  return {
    kind: 'refuse',
    code: 429,
    description: `Too Many Requests: retry after ${seconds}`,
    parameters: { retry_after: seconds },
  };
}

describe('the floodgate', () => {
  it('spends no call on a chat that must wait, and lets others pass', async () => {
    await server.close();
    server = await startStandIn({ flood: publishedLimits });
    server.clock.stand();
    for (const id of [1, 2]) server.people.say(id, 'hello');
    use();
    const outcomes = [];
    for (let i = 0; i < 6; i++) outcomes.push((await send(outgoing(1, { paragraphs: [`${i}`] }))).outcome);
    expect(outcomes).toEqual(['sent', 'sent', 'sent', 'retry', 'retry', 'retry']);
    expect(server.record.codes()[429]).toBe(1);
    expect(await send(outgoing(2))).toMatchObject({ outcome: 'sent' });
    const held = await send(outgoing(1));
    expect(held).toMatchObject({ outcome: 'retry', why: 'too-many' });
    if (held.outcome !== 'retry') return;
    await new Promise((resolve) => setTimeout(resolve, held.notBefore! - Date.now() + 5));
    server.clock.advance(2000);
    expect(await send(outgoing(1))).toMatchObject({ outcome: 'sent' });
  });

  it('lets all go one after another once several chats must wait, and hands back what would wait long', async () => {
    const opens: number[] = [];
    for (const chat of [1, 2]) {
      server.faults.add({ chat, trouble: refused(1) });
      const said = await send(outgoing(chat));
      if (said.outcome === 'retry') opens.push(said.notBefore!);
    }
    const outcomes = await Promise.all(Array.from({ length: 5 }, () => send(outgoing(3))));
    expect(outcomes.map(({ outcome }) => outcome)).toEqual(Array.from({ length: 5 }, () => 'sent'));
    const times = server.record
      .of('sendMessage')
      .filter(({ chat }) => chat === '3')
      .map(({ at }) => at);
    for (const [i, at] of times.entries()) expect(at - opens[1]! - 40 * i).toBeGreaterThan(-5);
    for (const chat of [1, 2]) {
      server.faults.add({ chat, trouble: refused(9) });
      await send(outgoing(chat));
    }
    expect(await send(outgoing(3))).toMatchObject({ outcome: 'retry', why: 'too-many' });
  });
});
