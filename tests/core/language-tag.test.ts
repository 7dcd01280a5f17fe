import { expect, test } from 'vitest';
import { languageOfDevice, languageOfTag } from '../../src/core/language-tag.ts';

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
  ['yue-CN', 'zh-Hans'],
  ['yue-HK', 'zh-Hant'],
  ['zh-Hans-MO', 'zh-Hans'],
  ['EN_us', 'en'],
  ['enm', 'en'],
  ['zha', 'en'],
])('a device that says %s is spoken to in %s', (tag, language) => {
  expect(languageOfDevice(tag)).toBe(language);
});

test.each(['de', 'fr-CA', 'enm', 'zha', ''])('%s is none of ours', (tag) => {
  expect(languageOfTag(tag)).toBeNull();
});
