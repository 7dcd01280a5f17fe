import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { calendarOf, signOf, type CalendarEntry } from '../../src/delivery/calendar.ts';
import { plainSay } from '../app/kettle.ts';

const inAll = (words: string) => ({ en: words, 'zh-Hant': `${words} 繁`, 'zh-Hans': `${words} 简` });
const entry: CalendarEntry = {
  booking: '17',
  sequence: 3,
  startsAtMs: Date.UTC(2026, 11, 6, 2),
  endsAtMs: Date.UTC(2026, 11, 6, 3, 30),
  cancelled: false,
  title: inAll('The first cup'),
  place: inAll('The long table'),
  bring: inAll('A cup'),
  teacher: 'Odalys Wren',
};
const fileOf = (more: Partial<CalendarEntry> = {}, from: string | null = 'tea@quillfern.example') =>
  calendarOf(
    { ...entry, ...more },
    {
      sign: signOf(inAll('Quillfern Tea Room'), from),
      language: 'zh-Hant',
      tell: (phrase) => plainSay('zh-Hant', phrase),
      stampedAt: 0,
    },
  );
const eventOf = (text: string): ICAL.Component => {
  const event = new ICAL.Component(ICAL.parse(text) as never[]).getFirstSubcomponent('vevent');
  if (!event) throw new Error('no event');
  return event;
};
const hostOf = (name: string, from: string | null): string => signOf(inAll(name), from).host;

describe('the host of an entry', () => {
  it('is the shop’s by its address, whatever it calls itself', () => {
    expect(hostOf('Another name', 'Tea@quillfern.example')).toBe(hostOf('Quillfern Tea Room', 'tea@quillfern.example'));
  });

  it('is another for shops of one name, or at one provider', () => {
    const hosts = ['tea@quillfern.example', 'tea@alder.example', 'fern@alder.example'].map((from) =>
      hostOf('Tea', from),
    );
    expect(new Set(hosts).size).toBe(3);
    for (const host of hosts) expect(host).toMatch(/^[a-z0-9-]+(\.[a-z0-9-]+)+$/);
  });

  it('is the name on a domain of nobody’s without an address', () => {
    expect(hostOf('Quillfern Tea Room', null)).toBe('quillfern-tea-room.ninthpour.invalid');
    expect(hostOf('羽蕨茶室', null)).toBe('shop.ninthpour.invalid');
  });
});

describe('a booking in the calendar of who booked', () => {
  it('is in their language, under the shop’s name', () => {
    const file = fileOf();
    expect(file).toMatchObject({ name: 'lesson-17.ics', mediaType: 'text/calendar; method=PUBLISH' });
    expect(file.label).toBe('zh-Hant lesson-calendar');
    const event = eventOf(file.text);
    expect(['uid', 'summary', 'location', 'description'].map((name) => event.getFirstPropertyValue(name))).toEqual([
      '17@tea.quillfern.example',
      'The first cup 繁',
      'The long table 繁',
      'zh-Hant lesson-calendar-notes teacher=Odalys Wren bring=A cup 繁',
    ]);
    const organizer = event.getFirstProperty('organizer');
    expect([organizer?.getParameter('cn'), organizer?.getFirstValue()]).toEqual([
      'Quillfern Tea Room 繁',
      'mailto:tea@quillfern.example',
    ]);
  });

  it('goes out of it again, with the same id', () => {
    const file = fileOf({ cancelled: true, sequence: 4 });
    expect(file).toMatchObject({
      mediaType: 'text/calendar; method=CANCEL',
      label: 'zh-Hant lesson-calendar-cancelled',
    });
    expect(eventOf(file.text).getFirstPropertyValue('uid')).toBe('17@tea.quillfern.example');
  });

  it('stands there without an address as well', () => {
    const organizer = eventOf(fileOf({}, null).text).getFirstPropertyValue('organizer');
    expect(organizer).toBe('https://quillfern-tea-room.ninthpour.invalid/');
  });
});
