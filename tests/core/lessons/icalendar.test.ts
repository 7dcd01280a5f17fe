import ICAL from 'ical.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calendarEnclosure, calendarFile, type CalendarEvent } from '../../../src/core/lessons/icalendar.ts';

const event: CalendarEvent = {
  uid: 'b1@quillfern.example',
  sequence: 3,
  startsAt: Date.UTC(2026, 11, 6, 2),
  endsAt: Date.UTC(2026, 11, 6, 3, 30),
  cancelled: false,
  stampedAt: Date.UTC(2026, 11, 1, 17, 0, 5),
  language: 'zh-Hant',
  summary: '白茶, 三種; 一個晚上',
  description: 'Bring:\n- a cup\\mug\n- yourself',
  location: 'Quillfern Tea Room',
  organizer: { name: 'The "Quillfern" Tea Room', address: 'mailto:tea@quillfern.example' },
};

/** Read by a library that is not ours. */
const read = (file: string) => {
  const calendar = new ICAL.Component(ICAL.parse(file) as never[]);
  const found = calendar.getFirstSubcomponent('vevent');
  if (!found) throw new Error('no event');
  return { calendar, component: found, event: new ICAL.Event(found) };
};

describe('a calendar file', () => {
  it('is what RFC 5545 says', () => {
    expect(calendarFile({ ...event, summary: 'White tea', description: 'Three teas' }).split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'VERSION:2.0',
      'PRODID:-//Ninthpour//Lessons//EN',
      'METHOD:PUBLISH',
      'BEGIN:VEVENT',
      'UID:b1@quillfern.example',
      'SEQUENCE:3',
      'DTSTAMP:20261201T170005Z',
      'DTSTART:20261206T020000Z',
      'DTEND:20261206T033000Z',
      'STATUS:CONFIRMED',
      `ORGANIZER;CN="The 'Quillfern' Tea Room":mailto:tea@quillfern.example`,
      'SUMMARY;LANGUAGE=zh-Hant:White tea',
      'DESCRIPTION;LANGUAGE=zh-Hant:Three teas',
      'LOCATION;LANGUAGE=zh-Hant:Quillfern Tea Room',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  it('is read back by another reader', () => {
    const { calendar, event: back, component } = read(calendarFile(event));
    expect(calendar.getFirstPropertyValue('method')).toBe('PUBLISH');
    expect([back.uid, back.sequence, back.summary, back.description, back.location]).toEqual([
      event.uid,
      event.sequence,
      event.summary,
      event.description,
      event.location,
    ]);
    expect(back.startDate.toJSDate().getTime()).toBe(event.startsAt);
    expect(back.endDate.toJSDate().getTime()).toBe(event.endsAt);
    expect(component.getFirstProperty('organizer')?.getParameter('cn')).toBe("The 'Quillfern' Tea Room");
  });

  it('folds a line at 75 octets, the leading space counted', () => {
    const lines = calendarFile({ ...event, location: 'x'.repeat(200) }).split('\r\n');
    const at = lines.findIndex((line) => line.startsWith('LOCATION'));
    expect(lines.slice(at, at + 4).map((line) => line.length)).toEqual([75, 75, 75, 4]);
  });

  it('cancels', () => {
    const { calendar, component } = read(calendarFile({ ...event, cancelled: true }));
    expect(calendar.getFirstPropertyValue('method')).toBe('CANCEL');
    expect(component.getFirstPropertyValue('status')).toBe('CANCELLED');
  });

  it.each([
    [false, 'PUBLISH'],
    [true, 'CANCEL'],
  ])('cancelled %s goes with a message under the method it holds', (cancelled, method) => {
    const file = calendarEnclosure({ ...event, cancelled }, 'a.ics');
    expect(file).toMatchObject({ name: 'a.ics', mediaType: `text/calendar; method=${method}` });
    expect(read(file.text).calendar.getFirstPropertyValue('method')).toBe(method);
  });

  it('survives any words: no line over 75 octets, no character cut, nothing smuggled in', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 300 }),
        fc.string({ unit: 'binary', maxLength: 60 }),
        (words, noise) => {
          const file = calendarFile({
            ...event,
            summary: words,
            description: `${noise}\r\nEND:VEVENT`,
            location: noise,
          });
          const lines = file.split('\r\n');
          expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
          expect(lines.filter((line) => Buffer.from(line).toString() !== line)).toEqual([]);
          const back = read(file).event;
          expect(back.summary).toBe(words.replace(/\r\n?|[\u0085\u2028\u2029]/g, '\n').replace(/[^\P{Cc}\t\n]/gu, ''));
          expect(back.uid).toBe(event.uid);
          expect(file.match(/^END:VEVENT/gm)).toHaveLength(1);
        },
      ),
      { numRuns: 100 },
    );
  });
});
