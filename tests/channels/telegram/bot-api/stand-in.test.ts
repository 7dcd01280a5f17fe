/** The stand-in itself, asked directly and through a second client library that knows nothing of it. */
import { Telegraf, type TelegramError } from 'telegraf';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ask } from './control.ts';
import { publishedLimits } from './flood-limiter.ts';
import { startControlled } from './process.ts';
import { startStandIn, standInToken, type StandIn } from './server.ts';

let server: StandIn;
beforeEach(async () => {
  server = await startStandIn();
});
afterEach(() => server.close());

interface Reply {
  readonly ok: boolean;
  readonly result?: unknown;
  readonly error_code?: number;
  readonly description?: string;
  readonly parameters?: { readonly retry_after?: number; readonly migrate_to_chat_id?: number };
}

async function call(method: string, args: object = {}, token = standInToken): Promise<Reply> {
  const answer = await fetch(`${server.root}/bot${token}/${method}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(args),
  });
  return (await answer.json()) as Reply;
}

const ids = async (args: object): Promise<readonly number[]> =>
  ((await call('getUpdates', args)).result as { update_id: number }[]).map((u) => u.update_id);

describe('the queue', () => {
  it('hands out again what is not confirmed, and confirms all below the offset', async () => {
    const [a, b, c] = ['one', 'two', 'three'].map((text) => server.people.say(1, text)!) as [number, number, number];
    expect(await ids({})).toEqual([a, b, c]);
    expect(await ids({ offset: a })).toEqual([a, b, c]);
    expect(await ids({ offset: b, limit: 1 })).toEqual([b]);
    expect(server.queue.pending).toEqual([b, c]);
    expect(await ids({ offset: c + 1 })).toEqual([]);
    expect(server.queue.pending).toEqual([]);
    expect([...server.queue.handedOut.values()]).toEqual([2, 3, 2]);
  });

  it('keeps only the last n for a negative offset', async () => {
    for (const text of ['one', 'two', 'three']) server.people.say(1, text);
    expect(await ids({ offset: -1 })).toHaveLength(1);
    expect(server.queue.pending).toHaveLength(1);
  });

  it('confirms nothing for an offset far in the future', async () => {
    const id = server.people.say(1, 'one')!;
    expect(await ids({ offset: id + 1000 })).toEqual([id]);
    expect(server.queue.pending).toEqual([id]);
  });

  it('asks again too soon: one at a time', async () => {
    server.people.say(1, 'one');
    server.people.say(1, 'two');
    expect(await ids({ timeout: 5 })).toHaveLength(2);
    expect(await ids({ timeout: 5 })).toHaveLength(1);
  });

  it('wakes a waiting poll', async () => {
    const waiting = ids({ timeout: 10 });
    await new Promise((resolve) => setTimeout(resolve, 30));
    const id = server.people.say(1, 'hello');
    expect(await waiting).toEqual([id]);
  });

  it('ends the older of two polls', async () => {
    const older = call('getUpdates', { timeout: 10 });
    await new Promise((resolve) => setTimeout(resolve, 30));
    const newer = ids({ timeout: 10 });
    expect(await older).toMatchObject({
      ok: false,
      error_code: 409,
      description: expect.stringContaining('Conflict: terminated by other getUpdates') as string,
    });
    server.people.say(1, 'hello');
    expect(await newer).toHaveLength(1);
  });

  it('keeps only the kinds asked for, from then on', async () => {
    await call('getUpdates', { allowed_updates: ['callback_query'] });
    expect(server.people.say(1, 'hello')).toBeNull();
    expect(server.people.bring('message_reaction', {})).toBeNull();
    expect(server.people.forge(1, 'k')).not.toBeNull();
    await call('getUpdates', { allowed_updates: [] });
    expect(server.people.say(1, 'hello')).not.toBeNull();
  });

  it('forgets a tap after 150 s and a message after a day', async () => {
    server.people.say(1, 'hello');
    server.people.forge(1, 'k');
    server.clock.advance(151_000);
    expect(server.queue.pending).toHaveLength(1);
    server.clock.advance(24 * 3_600_000);
    expect(server.queue.pending).toHaveLength(0);
    expect(server.queue.expired).toHaveLength(2);
  });

  it('refuses polls while a webhook is set, and plain http for one', async () => {
    expect(await call('setWebhook', { url: 'http://x.example/' })).toMatchObject({ error_code: 400 });
    expect(await call('setWebhook', { url: 'https://x.example/' })).toMatchObject({ ok: true });
    expect(await call('getUpdates')).toMatchObject({ error_code: 409 });
    await call('deleteWebhook');
    expect(await call('getUpdates')).toMatchObject({ ok: true });
  });
});

const button = (data: string) => ({ reply_markup: { inline_keyboard: [[{ text: 'A', callback_data: data }]] } });
const mark = (offset: number, length: number) => ({ type: 'bold', offset, length });

describe('what it refuses', () => {
  it.each<[string, string, object, string]>([
    ['no chat', 'sendMessage', { text: 'x' }, 'Bad Request: chat_id is empty'],
    ['a stranger', 'sendMessage', { chat_id: 99, text: 'x' }, 'Bad Request: chat not found'],
    ['no text', 'sendMessage', { chat_id: 1, text: ' \n ' }, 'Bad Request: message text is empty'],
    ['4,097 characters', 'sendMessage', { chat_id: 1, text: '𠮷'.repeat(4097) }, 'Bad Request: message is too long'],
    ['32,769 bytes', 'sendMessage', { chat_id: 1, text: 'x'.repeat(32_769) }, 'Bad Request: text is too long'],
    [
      'half a character',
      'sendMessage',
      { chat_id: 1, text: 'a\ud83c' },
      'Bad Request: strings must be encoded in UTF-8',
    ],
    [
      '65 bytes of data',
      'sendMessage',
      { chat_id: 1, text: 'x', ...button('茶'.repeat(22)) },
      'Bad Request: BUTTON_DATA_INVALID',
    ],
    [
      'a button without data',
      'sendMessage',
      { chat_id: 1, text: 'x', ...button('') },
      "Bad Request: can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
    ],
    [
      'null for buttons',
      'sendMessage',
      { chat_id: 1, text: 'x', reply_markup: null },
      'Bad Request: object expected as reply markup',
    ],
    [
      'a mark past the end',
      'sendMessage',
      { chat_id: 1, text: 'abc', entities: [mark(2, 2)] },
      'Bad Request: entity beginning at UTF-16 offset 2 ends after the end of the text at UTF-16 offset 4',
    ],
    [
      'a mark inside a character',
      'sendMessage',
      { chat_id: 1, text: '🍵x', entities: [mark(1, 1)] },
      'Bad Request: entity begins in a middle of a UTF-16 symbol',
    ],
    [
      'marks that overlap in part',
      'sendMessage',
      { chat_id: 1, text: 'abcd', entities: [mark(0, 2), mark(1, 2)] },
      'Bad Request: stand-in: marks overlap in part',
    ],
    [
      'an edit of nothing',
      'editMessageText',
      { chat_id: 1, message_id: 77, text: 'x' },
      'Bad Request: message to edit not found',
    ],
    [
      "an edit of a person's words",
      'editMessageText',
      { chat_id: 1, message_id: 1, text: 'x' },
      "Bad Request: message can't be edited",
    ],
    [
      'a tap it never had',
      'answerCallbackQuery',
      { callback_query_id: '5' },
      'Bad Request: query is too old and response timeout expired or query ID is invalid',
    ],
    [
      'a command in capitals',
      'setMyCommands',
      { commands: [{ command: 'Brew', description: 'x' }] },
      'Bad Request: BOT_COMMAND_INVALID',
    ],
    ['a method it does not know', 'sendTea', {}, 'Not Found: method not found'],
  ])('%s', async (_case, method, args, description) => {
    server.people.say(1, 'hello');
    expect(await call(method, args)).toMatchObject({ ok: false, description });
  });

  it('takes exactly the limits', async () => {
    server.people.say(1, 'hello');
    expect(await call('sendMessage', { chat_id: 1, text: '𠮷'.repeat(4096) })).toMatchObject({ ok: true });
    expect(await call('sendMessage', { chat_id: 1, text: 'x', ...button('x'.repeat(64)) })).toMatchObject({ ok: true });
  });

  it('those who blocked it, are gone, or moved', async () => {
    server.people.say(1, 'hello');
    server.people.block(1);
    expect(await call('sendMessage', { chat_id: 1, text: 'x' })).toMatchObject({
      error_code: 403,
      description: 'Forbidden: bot was blocked by the user',
    });
    server.people.unblock(1);
    expect(await call('sendMessage', { chat_id: 1, text: 'x' })).toMatchObject({ ok: true });
    server.people.deactivate(1);
    expect(await call('sendMessage', { chat_id: 1, text: 'x' })).toMatchObject({
      error_code: 403,
      description: 'Forbidden: user is deactivated',
    });
    server.world.movedGroups.set(-5, -1005);
    expect(await call('sendMessage', { chat_id: -5, text: 'x' })).toMatchObject({
      error_code: 400,
      parameters: { migrate_to_chat_id: -1005 },
    });
  });

  it('a wrong token, and a path that is none', async () => {
    expect(await call('getMe', {}, '1:wrong')).toMatchObject({ error_code: 401, description: 'Unauthorized' });
    expect((await fetch(`${server.root}/elsewhere`)).status).toBe(404);
  });
});

describe('taps', () => {
  it('are answered once, within 150 s', async () => {
    server.people.say(1, 'hello');
    server.people.forge(1, 'a');
    server.people.forge(1, 'b');
    const [a, b] = [...server.world.taps.keys()];
    expect(await call('answerCallbackQuery', { callback_query_id: a })).toMatchObject({ ok: true });
    expect(await call('answerCallbackQuery', { callback_query_id: a })).toMatchObject({ error_code: 400 });
    server.clock.advance(151_000);
    expect(await call('answerCallbackQuery', { callback_query_id: b })).toMatchObject({ error_code: 400 });
  });
});

describe('the flood limiter', () => {
  it('lets a burst through, then one a second to a chat and thirty in all', async () => {
    await server.close();
    server = await startStandIn({ flood: publishedLimits });
    for (let id = 1; id <= 40; id++) server.people.say(id, 'hello');
    server.clock.stand();
    const codes: (number | undefined)[] = [];
    for (let i = 0; i < 4; i++) codes.push((await call('sendMessage', { chat_id: 1, text: `${i}` })).error_code);
    expect(codes).toEqual([undefined, undefined, undefined, 429]);
    const rest = await Promise.all(
      [...Array(39).keys()].map((i) => call('sendMessage', { chat_id: i + 2, text: 'x' })),
    );
    const refused = rest.filter((reply) => reply.error_code === 429);
    expect(refused).toHaveLength(39 - 27);
    expect(refused[0]?.parameters?.retry_after).toBe(1);
    server.clock.advance(1000);
    expect(await call('sendMessage', { chat_id: 1, text: 'later' })).toMatchObject({ ok: true });
  });
});

describe('a second client', () => {
  it('polls, answers, is tapped, edits, and learns of refusals', async () => {
    const telegraf = new Telegraf(standInToken, { telegram: { apiRoot: server.root } });
    const heard: string[] = [];
    telegraf.on('text', async (ctx) => {
      heard.push(ctx.message.text);
      await ctx.reply('which?', { reply_markup: { inline_keyboard: [[{ text: 'This', callback_data: 'key-1' }]] } });
    });
    telegraf.on('callback_query', async (ctx) => {
      heard.push('data' in ctx.callbackQuery ? ctx.callbackQuery.data : '');
      await ctx.answerCbQuery();
      await ctx.editMessageText('this one');
      heard.push(
        await ctx.editMessageText('this one').then(
          () => 'twice',
          (error: unknown) => (error as TelegramError).description,
        ),
      );
    });
    const running = telegraf.launch();
    server.people.say(1, 'tea', 'en');
    await until(() => server.seenBy(1).length === 1);
    server.people.tap(1, 'This');
    await until(() => heard.length === 3);
    expect(heard).toEqual(['tea', 'key-1', expect.stringContaining('message is not modified')]);
    expect(server.seenBy(1).map(({ text, edits }) => [text, edits])).toEqual([['this one', 1]]);
    const photo = await telegraf.telegram.sendPhoto(1, { source: png }, { caption: 'a picture' });
    expect(photo.photo).toHaveLength(1);
    await expect(telegraf.telegram.sendMessage(9, 'x')).rejects.toThrow('400: Bad Request: chat not found');
    await telegraf.telegram.setMyCommands([{ command: 'brew', description: 'Brew' }], { language_code: 'zh' });
    expect(await telegraf.telegram.getMyCommands({ language_code: 'zh' })).toEqual([
      { command: 'brew', description: 'Brew' },
    ]);
    // Asked again within three seconds, the server would hold its answer back.
    server.clock.advance(4000);
    telegraf.stop();
    server.queue.close();
    await running;
    expect(server.queue.pending).toEqual([]);
  });
});

describe('its control from outside', () => {
  it('works it by verbs', async () => {
    await server.close();
    server = await startControlled({ port: 0, flood: false });
    const id = await ask(server.root, 'say', 1, 'hello', 'zh-hant');
    expect(await ids({})).toEqual([id]);
    await ask(server.root, 'fault', {
      method: 'sendMessage',
      trouble: { kind: 'refuse', code: 500, description: 'Internal Server Error: restart' },
    });
    expect(await call('sendMessage', { chat_id: 1, text: 'x' })).toMatchObject({ error_code: 500 });
    await call('sendMessage', { chat_id: 1, text: 'y' });
    expect(await ask(server.root, 'seen', 1)).toMatchObject([{ text: 'y' }]);
    await expect(ask(server.root, 'brew')).rejects.toThrow('no verb brew');
  });
});

const png = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

async function until(holds: () => boolean): Promise<void> {
  for (const end = Date.now() + 15_000; !holds();) {
    if (Date.now() > end) throw new Error('waited in vain');
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}
