/** On which days there are to be no lessons, in three languages. Said on Wednesday, December 2, 2026. */
import { expect, test } from 'vitest';
import type { OffDays } from '../../../../src/core/lessons/calling-off.ts';
import { readOffDays } from '../../../../src/core/lessons/spoken/off-days.ts';

const today = '2026-12-02';
const from = (date: string, more: Partial<OffDays> = {}): OffDays => ({
  from: date,
  to: null,
  weekday: null,
  only: null,
  ...more,
});
const to = (first: string, last: string): OffDays => from(first, { to: last });
const days = (...only: string[]): OffDays => from(only[0] ?? '', { to: only.at(-1) ?? '', only });

test.each<[string, OffDays]>([
  ['the Saturday lessons stop after Christmas', from('2026-12-26', { weekday: 6 })],
  ['no more first cup lessons after January', from('2027-02-01')],
  ['stop the gaiwan evenings from 1 February on', from('2027-02-01')],
  ['the first cup stops in February', to('2027-02-01', '2027-02-28')],
  ['the last first cup lesson is on 19 December', from('2026-12-20')],
  ['the last lesson is on 19 December', from('2026-12-20')],
  ['the Thursday evenings end on 24 December', from('2026-12-25', { weekday: 4 })],
  ['call off all of the beginners evenings', from(today)],
  ['cancel all Saturday lessons', from(today, { weekday: 6 })],
  ["cancel Saturday's lessons", days('2026-12-05')],
  ['call off everything on Saturdays in January', from('2027-01-01', { to: '2027-01-31', weekday: 6 })],
  ['we are closed on 24 and 25 December', days('2026-12-24', '2026-12-25')],
  ['we are closed 24, 25 and 31 December', days('2026-12-24', '2026-12-25', '2026-12-31')],
  ['closed from 24 to 27 December', to('2026-12-24', '2026-12-27')],
  ['closed Dec 24-27', to('2026-12-24', '2026-12-27')],
  ['closed between Christmas and New Year', to('2026-12-25', '2027-01-01')],
  ['no lessons until 10 January', to(today, '2027-01-10')],
  ['the first cup runs until Christmas', from('2026-12-26')],
  ['no lessons next week', to('2026-12-07', '2026-12-13')],
  ['cancel everything in January', to('2027-01-01', '2027-01-31')],
  ['no lessons before 10 January', to(today, '2027-01-09')],
  ['we are closed tomorrow', days('2026-12-03')],
  ['聖誕節後星期六的課都不開了', from('2026-12-26', { weekday: 6 })],
  ['圣诞节以后周六的课都不开了', from('2026-12-26', { weekday: 6 })],
  ['整個系列取消', from(today)],
  ['12月24日到26日休館', to('2026-12-24', '2026-12-26')],
  ['12月24、25日休息', days('2026-12-24', '2026-12-25')],
  ['下週休息，所有課取消', to('2026-12-07', '2026-12-13')],
  ['一月份的課全部取消', to('2027-01-01', '2027-01-31')],
  ['從二月起第一杯茶停開', from('2027-02-01')],
  ['一月之後沒有第一杯茶了', from('2027-02-01')],
  ['過年前的課都取消', to(today, '2027-02-05')],
  ['第一杯茶開到12月19日就停', from('2026-12-20')],
  ['最後一堂是12月19日', from('2026-12-20')],
  ['逢星期四晚上的課取消', from(today, { weekday: 4 })],
  ['星期四都不上課', from(today, { weekday: 4 })],
  ['下週六的課都取消', days('2026-12-12')],
  ['明天休息', days('2026-12-03')],
])('%s', (text, expected) => {
  expect(readOffDays(text, today).days).toEqual(expected);
});
