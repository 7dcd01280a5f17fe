import { expect, test } from 'vitest';
import { languageOfDevice } from '../../src/conversation/device-language.ts';

test.each([
  [null, 'en'],
  ['', 'en'],
  ['en-GB', 'en'],
  ['de', 'en'],
  ['zh', 'zh-Hans'],
  ['zh-CN', 'zh-Hans'],
  ['zh-SG', 'zh-Hans'],
  ['zh-TW', 'zh-Hant'],
  ['zh_HK', 'zh-Hant'],
  ['zh-MO', 'zh-Hant'],
  ['zh-hant-CN', 'zh-Hant'],
  ['zh-Hans-HK', 'zh-Hans'],
  ['yue', 'zh-Hant'],
  ['yue-Hans', 'zh-Hans'],
  ['zha', 'en'],
])('a device that says %s is spoken to in %s', (tag, language) => {
  expect(languageOfDevice(tag)).toBe(language);
});
