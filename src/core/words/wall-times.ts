/** A time on the wall ("2026-12-05T19:00") as people of each language say it. Knows no zones: it is said as it stands. */
import type { Language } from '../units.ts';

/** Short is for a button: "Dec 5, 7:00 pm", "12月5日 19:00". */
export type WallStyle = 'long' | 'short';

/** "Saturday, December 5, 7:00 pm", "12月5日（星期六）19:00", "12月5日（周六）19:00". */
export function wallTime(wall: string, language: Language, style: WallStyle = 'long'): string {
  const [date = '', time = ''] = wall.split('T');
  const day = new Date(`${date}T00:00Z`);
  if (Number.isNaN(day.getTime())) throw new TypeError(`"${wall}" is no time on a wall`);
  if (language === 'en') return `${said(day, 'en-US', englishDay[style])}, ${noonBased(time)}`;
  const weekday = style === 'short' ? ' ' : `（${said(day, language, hanWeekday[language])}）`;
  return `${day.getUTCMonth() + 1}月${day.getUTCDate()}日${weekday}${time}`;
}

/** "7:00 pm", "19:00". */
export function wallClock(wall: string, language: Language): string {
  const [, time = ''] = wall.split('T');
  return language === 'en' ? noonBased(time) : time;
}

const englishDay = {
  long: { weekday: 'long', month: 'long', day: 'numeric' },
  short: { month: 'short', day: 'numeric' },
} as const;
const hanWeekday = { 'zh-Hant': { weekday: 'long' }, 'zh-Hans': { weekday: 'short' } } as const;

function noonBased(time: string): string {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return `${hours % 12 || 12}:${String(minutes).padStart(2, '0')} ${hours < 12 ? 'am' : 'pm'}`;
}

function said(day: Date, locale: string, parts: Intl.DateTimeFormatOptions): string {
  return day.toLocaleDateString(locale, { ...parts, timeZone: 'UTC' });
}
