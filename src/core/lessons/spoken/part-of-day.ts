/** Which of several lessons is meant by the part of the day it is in. Knows no day. */
import type { Lesson } from '../lesson.ts';

/** 12號下午的課, "the afternoon lesson on the 12th": of two on one day. A time it is moved to is told behind it. */
export function inPartOfDay(lessons: readonly Lesson[], text: string): readonly Lesson[] {
  if (lessons.length < 2) return lessons;
  const atHour = lessons.filter(({ starts }) => beginsAt(starts, text));
  if (atHour.length > 0) return atHour;
  const part = parts.find(([told]) => told.test(text));
  return part === undefined ? lessons : lessons.filter(({ starts }) => part[1](Number(starts.slice(11, 13))));
}
/** "The 12th at 2": in the morning or in the afternoon, as the lesson is. */
const hourSaid = /\bat (?<hour>\d{1,2})(?:[:.](?<minutes>\d{2}))?(?: ?[ap]\.?m\.?| ?o'?clock)?(?![\d:])/iu;
function beginsAt(starts: string, text: string): boolean {
  const { hour, minutes = '00' } = hourSaid.exec(text)?.groups ?? {};
  return (
    hour !== undefined && Number(starts.slice(11, 13)) % 12 === Number(hour) % 12 && starts.slice(14, 16) === minutes
  );
}

const ofPart = (han: string, english: string): RegExp =>
  new RegExp(
    `(?:${han})的?那?[課课堂节節場场那]|\\b${english} (?:lesson|class|course|workshop|session|one)\\b|\\b(?:in the|day|\\d{1,2}(?:th|st|nd|rd)) ${english}\\b|day ${english}\\b`,
    'iu',
  );
const [noon, evening] = [12, 17];
const parts: readonly (readonly [RegExp, (hour: number) => boolean])[] = [
  [ofPart('早上|上午', 'morning'), (hour) => hour < noon],
  [ofPart('下午', 'afternoon'), (hour) => hour >= noon && hour < evening],
  [ofPart('晚上', 'evening'), (hour) => hour >= evening],
];
