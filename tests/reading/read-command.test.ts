import { expect, test } from 'vitest';
import { parseAsk, replyTo } from '../../src/commands/read.ts';
import { readConfig } from '../../src/config.ts';
import { contentOf } from '../../src/own-content.ts';

test.each([
  ['{"id": 1, "text": "hi"}', { id: 1, text: 'hi' }],
  ['{"id": "a", "text": "hi", "lang": "zh-Hans"}', { id: 'a', text: 'hi', lang: 'zh-Hans' }],
])('%s is a question', (line, expected) => {
  expect(parseAsk(line, 1)).toEqual(expected);
});

test.each([
  ['not json', /^line 7: expected JSON/],
  ['{"id": 1}', /^line 7: text: /],
  ['{"id": 1, "text": "hi", "lang": "fr"}', /^line 7: lang: /],
  ['[1]', /^line 7: /],
])('%s is refused with its line', (line, message) => {
  expect(parseAsk(line, 7)).toEqual({ mistake: expect.stringMatching(message) as string });
});

test.each([
  ['can you speak mandarin?', '简体中文'],
  ['in traditional chinese please', '繁體中文'],
  ['請用英文', 'English'],
])('%s is answered in the language that is wished for', (text, said) => {
  const language = /[a-z]/.test(text) ? 'en' : 'zh-Hant';
  expect(replyTo(contentOf(readConfig({})), text, language)).toContain(said);
});
