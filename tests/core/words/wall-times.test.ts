import { expect, it } from 'vitest';
import { wallClock, wallDay, wallTime } from '../../../src/core/words/wall-times.ts';

it.each([
  ['2026-12-05T19:00', 'Saturday, December 5, 7:00 pm', '12月5日（星期六）19:00', '12月5日（周六）19:00'],
  ['2027-01-01T00:05', 'Friday, January 1, 12:05 am', '1月1日（星期五）00:05', '1月1日（周五）00:05'],
  ['2028-02-29T12:00', 'Tuesday, February 29, 12:00 pm', '2月29日（星期二）12:00', '2月29日（周二）12:00'],
])('%s', (wall, en, hant, hans) => {
  expect([wallTime(wall, 'en'), wallTime(wall, 'zh-Hant'), wallTime(wall, 'zh-Hans')]).toEqual([en, hant, hans]);
});

it('is short on a button', () => {
  expect(wallTime('2026-12-05T19:00', 'en', 'short')).toBe('Dec 5, 7:00 pm');
  expect(wallTime('2026-12-05T19:00', 'zh-Hans', 'short')).toBe('12月5日 19:00');
});

it.each([
  ['2026-12-05T08:00', '8:00 am', '08:00'],
  ['2026-12-05T00:30', '12:30 am', '00:30'],
])('%s has only its time read', (wall, en, han) => {
  expect([wallClock(wall, 'en'), wallClock(wall, 'zh-Hant'), wallClock(wall, 'zh-Hans')]).toEqual([en, han, han]);
});

it('has only its day read', () => {
  const days = (['en', 'zh-Hant', 'zh-Hans'] as const).map((language) => wallDay('2026-12-05T19:00', language));
  expect(days).toEqual(['December 5', '12月5日', '12月5日']);
});

it('refuses what is no time on a wall', () => {
  expect(() => wallDay('soon', 'zh-Hant')).toThrow(TypeError);
  expect(() => wallTime('soon', 'en')).toThrow(TypeError);
});
