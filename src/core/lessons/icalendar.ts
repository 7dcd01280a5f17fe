/** One event as calendar text, RFC 5545 and 5546. Its words come from outside; nothing here knows a lesson. */
import type { Instant, Language } from '../units.ts';

export interface CalendarEvent {
  /** Stable for ever: a later file of the same uid replaces the earlier one. */
  readonly uid: string;
  /** Never falls; rises with every change. */
  readonly sequence: number;
  readonly startsAt: Instant;
  readonly endsAt: Instant;
  readonly cancelled: boolean;
  /** When this file was made. */
  readonly stampedAt: Instant;
  readonly language: Language;
  readonly summary: string;
  readonly description: string;
  readonly location: string;
  /** RFC 5546 demands one; the address is a URI such as "mailto:tea@example.org". */
  readonly organizer: { readonly name: string; readonly address: string };
}

/** Times are written in UTC, so that no reader needs our time-zone rules. Lines end in CRLF. */
export function calendarFile(event: CalendarEvent): string {
  const language = `LANGUAGE=${event.language}`;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Ninthpour//Lessons//EN',
    `METHOD:${methodOf(event)}`,
    'BEGIN:VEVENT',
    `UID:${text(event.uid)}`,
    `SEQUENCE:${event.sequence}`,
    `DTSTAMP:${utc(event.stampedAt)}`,
    `DTSTART:${utc(event.startsAt)}`,
    `DTEND:${utc(event.endsAt)}`,
    `STATUS:${event.cancelled ? 'CANCELLED' : 'CONFIRMED'}`,
    `ORGANIZER;CN="${quoted(event.organizer.name)}":${oneLine(event.organizer.address)}`,
    `SUMMARY;${language}:${text(event.summary)}`,
    `DESCRIPTION;${language}:${text(event.description)}`,
    `LOCATION;${language}:${text(event.location)}`,
    'END:VEVENT',
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${fold(line)}\r\n`).join('');
}

/** The event as a file to go with a message. PUBLISH, never REQUEST: nobody here reads the replies that one asks for (RFC 5546 §3.2.1). */
export function calendarEnclosure(
  event: CalendarEvent,
  name: string,
): { readonly name: string; readonly mediaType: string; readonly text: string } {
  return { name, mediaType: `text/calendar; method=${methodOf(event)}`, text: calendarFile(event) };
}

function methodOf({ cancelled }: CalendarEvent): 'CANCEL' | 'PUBLISH' {
  return cancelled ? 'CANCEL' : 'PUBLISH';
}

/** "20261206T020000Z". */
function utc(at: Instant): string {
  return new Date(at).toISOString().replace(/\.\d{3}|[-:]/g, '');
}

/** Everything some reader takes for the end of a line. */
const lineEnds = /\r\n?|[\n\u0085\u2028\u2029]/g;

/** RFC 5545 §3.3.11; other control characters may not stand in a file at all. */
function text(value: string): string {
  return printable(value.replace(lineEnds, '\n'))
    .replace(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');
}

/** A parameter value, §3.2: no quote can be escaped in it. */
function quoted(value: string): string {
  return oneLine(value).replaceAll('"', "'");
}

function oneLine(value: string): string {
  return printable(value.replace(lineEnds, ' '));
}

function printable(value: string): string {
  return value.replace(/[^\P{Cc}\t\n]/gu, '');
}

/** §3.1: no line longer than 75 octets without its end; a character is never cut. The leading space counts. */
function fold(line: string): string {
  const lines: string[] = [];
  let current = '';
  let octets = 0;
  for (const character of line) {
    const size = Buffer.byteLength(character);
    if (octets + size > 75) {
      lines.push(current);
      current = ' ';
      octets = 1;
    }
    current += character;
    octets += size;
  }
  return [...lines, current].join('\r\n');
}
