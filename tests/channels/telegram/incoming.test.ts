import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { incomingOf, tapIdOf } from '../../../src/channels/telegram/incoming.ts';

const around = {
  now: 5,
  says: (command: string, language?: string) => (command === 'brew' ? `brew ${language}` : null),
};
const person = { id: 42, is_bot: false, first_name: 'A', language_code: 'zh-hant' };
const privately = { id: 42, type: 'private' };
const message = (content: object, more: object = {}) => ({
  message_id: 1,
  date: 100,
  from: person,
  chat: privately,
  ...content,
  ...more,
});
const read = (kind: string, content: unknown) => incomingOf({ update_id: 9, [kind]: content }, around);

describe('what a person did', () => {
  it('says who, where and when', () => {
    expect(read('message', message({ text: 'hi' }))).toEqual({
      channel: 'telegram',
      updateId: '9',
      from: '42',
      chat: '42',
      receivedAt: 5,
      deviceLanguage: 'zh-hant',
      what: { kind: 'text', text: 'hi' },
    });
  });

  it.each<[string, string, object, object]>([
    ['a start', 'message', message({ text: '/start' }), { kind: 'open', payload: '' }],
    ['a label', 'message', message({ text: '/start tea-tieguanyin' }), { kind: 'open', payload: 'tea-tieguanyin' }],
    ['a label made up', 'message', message({ text: '/start ../../x' }), { kind: 'open', payload: '' }],
    ['a command', 'message', message({ text: '/brew' }), { kind: 'text', text: 'brew zh-hant' }],
    [
      'a command with more',
      'message',
      message({ text: '/brew@stand_in_bot long jing\n200 ml' }),
      { kind: 'text', text: 'brew zh-hant long jing\n200 ml' },
    ],
    ['a command we lack', 'message', message({ text: '/start_over' }), { kind: 'text', text: 'start over' }],
    ['words that begin like one', 'message', message({ text: '/茶' }), { kind: 'text', text: '/茶' }],
    [
      'a picture with words',
      'message',
      message({ photo: [], caption: 'this one' }),
      { kind: 'text', text: 'this one' },
    ],
    ['a picture without', 'message', message({ photo: [] }), { kind: 'text', text: '' }],
    ['a voice', 'message', message({ voice: {} }), { kind: 'text', text: '' }],
    ['a sticker', 'message', message({ sticker: { emoji: '👍' } }), { kind: 'text', text: '👍' }],
    [
      'a correction',
      'edited_message',
      message({ text: '120 ml' }, { edit_date: 110 }),
      { kind: 'text', text: '120 ml' },
    ],
    [
      'a tap',
      'callback_query',
      { id: '7', from: person, message: { message_id: 3, date: 0, chat: privately }, data: 'k.1' },
      { kind: 'tap', key: 'k.1' },
    ],
    [
      'a block',
      'my_chat_member',
      message({ new_chat_member: { status: 'kicked' } }),
      { kind: 'reach', reachable: false },
    ],
    [
      'a return',
      'my_chat_member',
      message({ new_chat_member: { status: 'member' } }),
      { kind: 'reach', reachable: true },
    ],
  ])('%s', (_case, kind, content, what) => {
    expect(read(kind, content)?.what).toEqual(what);
  });

  it.each<[string, string, unknown]>([
    ['a group', 'message', message({ text: 'hi' }, { chat: { id: -4, type: 'group' } })],
    [
      'an anonymous admin',
      'message',
      message({ text: 'hi' }, { chat: { id: -4, type: 'supergroup' }, from: { id: 1087968824, is_bot: true } }),
    ],
    ['a channel', 'channel_post', message({ text: 'hi' }, { from: undefined })],
    ['another bot', 'message', message({ text: 'hi' }, { from: { id: 3, is_bot: true } })],
    ['a pinned message', 'message', message({ pinned_message: {} })],
    ['a late edit', 'edited_message', message({ text: 'x' }, { edit_date: 400 })],
    ['an edit without words', 'edited_message', message({ location: {} }, { edit_date: 101 })],
    [
      'a tap in a group',
      'callback_query',
      { id: '7', from: person, message: { chat: { id: -4, type: 'group' } }, data: 'k' },
    ],
    ['a tap on nothing', 'callback_query', { id: '7', from: person, data: 'k' }],
    ['a tap without data', 'callback_query', { id: '7', from: person, message: { chat: privately } }],
    ['a name instead of an id', 'message', message({ text: 'x' }, { from: { id: 'admin' } })],
    ['nothing', 'message', null],
  ])('is not: %s', (_case, kind, content) => {
    expect(read(kind, content)).toBeNull();
  });

  it('finds the tap to answer even where it serves nobody', () => {
    expect(tapIdOf({ update_id: 1, callback_query: { id: '7' } })).toBe('7');
    expect(tapIdOf({ update_id: 1, message: {} })).toBeNull();
  });

  it('takes any JSON at all', () => {
    const names = [
      'update_id',
      'message',
      'callback_query',
      'my_chat_member',
      'edited_message',
      'from',
      'chat',
      'id',
      'type',
      'text',
      'data',
      'new_chat_member',
      'status',
      'date',
      '__proto__',
    ];
    const key = fc.oneof(fc.constantFrom(...names), fc.string());
    const { tree } = fc.letrec((tie) => ({
      tree: fc.oneof(
        { maxDepth: 5 },
        fc.oneof(fc.jsonValue({ maxDepth: 0 }), fc.constantFrom('private', 'kicked', '/start', 42)),
        fc.array(tie('tree'), { maxLength: 3 }),
        fc.dictionary(key, tie('tree'), { maxKeys: 6 }),
      ),
    }));
    const update = fc.record(
      { update_id: fc.integer(), message: tree, callback_query: tree, my_chat_member: tree },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(fc.oneof(tree, update), (value) => {
        const found = incomingOf(value, around);
        if (found !== null) expect(found.from).toMatch(/^-?\d+$/);
        tapIdOf(value);
      }),
      { numRuns: 5000 },
    );
  });
});
