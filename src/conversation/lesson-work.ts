/** What a flow does with lessons and bookings, as changes. What it hands over was made by the core; the commit judges it again. */
import type { OffDays } from '../core/lessons/calling-off.ts';
import type { LessonDraft, Retold } from '../core/lessons/lesson.ts';
import { bookingActs } from '../core/lessons/seats.ts';
import type { Series } from '../core/lessons/series.ts';
import type { Facts } from '../core/flow/flow.ts';
import type { Turn } from '../store/contract.ts';
import type { LessonChange } from '../store/lesson-contract.ts';
import { bookingId, numberOf, oneOf, optionalNumber, optionalText, textOf, whenDone } from './task-values.ts';

/** Null when the task is about something else. */
export function lessonWork(task: string, values: Facts, turn: Turn): readonly LessonChange[] | null {
  const change = makers[task];
  return change ? [change(values, turn)] : null;
}

const makers: { readonly [task: string]: (values: Facts, turn: Turn) => LessonChange } = {
  enrol: (values, turn) => ({
    do: 'enrol',
    booking: bookingId(turn),
    lesson: textOf(values, 'lesson'),
    seats: numberOf(values, 'seats'),
    to: oneOf(values, 'to', ['seated', 'waiting']),
    at: whenDone(turn),
  }),
  booking: (values, turn) => ({
    do: 'booking',
    booking: textOf(values, 'booking'),
    act: oneOf(values, 'act', bookingActs),
    at: whenDone(turn),
  }),
  reseat: (values, turn) => ({
    do: 'reseat',
    booking: textOf(values, 'booking'),
    seats: numberOf(values, 'seats'),
    at: whenDone(turn),
  }),
  'tick-off': (values, turn) => ({
    do: 'tick-off',
    booking: textOf(values, 'booking'),
    came: typeof values['came'] === 'boolean' ? values['came'] : null,
    at: whenDone(turn),
  }),
  'add-lessons': (values) => ({
    do: 'add-lessons',
    drafts: (values['drafts'] ?? []) as unknown as readonly LessonDraft[],
    series: (values['series'] ?? null) as unknown as Series | null,
  }),
  'change-lesson': (values) => ({
    do: 'change-lesson',
    lesson: textOf(values, 'lesson'),
    seen: numberOf(values, 'seen'),
    retold: (values['retold'] ?? {}) as unknown as Retold,
    seats: optionalNumber(values, 'seats'),
  }),
  'move-lesson': (values) => ({
    do: 'move-lesson',
    lesson: textOf(values, 'lesson'),
    seen: numberOf(values, 'seen'),
    starts: textOf(values, 'starts'),
    minutes: optionalNumber(values, 'minutes'),
  }),
  'cancel-lesson': (values) => ({
    do: 'cancel-lesson',
    lesson: textOf(values, 'lesson'),
    seen: numberOf(values, 'seen'),
    reason: optionalText(values, 'reason') ?? '',
  }),
  'cancel-lessons': (values) => ({
    do: 'cancel-lessons',
    lessons: (values['lessons'] ?? []) as unknown as Extract<LessonChange, { do: 'cancel-lessons' }>['lessons'],
    series: (values['series'] ?? []) as unknown as readonly string[],
    days: values['days'] as unknown as OffDays,
    reason: optionalText(values, 'reason') ?? '',
  }),
  'resume-lessons': (values) => ({
    do: 'resume-lessons',
    lessons: (values['lessons'] ?? []) as unknown as Extract<LessonChange, { do: 'resume-lessons' }>['lessons'],
    series: (values['series'] ?? []) as unknown as readonly Series[],
    days: (values['days'] ?? null) as unknown as OffDays | null,
  }),
  'write-to-lesson': (values) => ({
    do: 'write-to-lesson',
    lesson: textOf(values, 'lesson'),
    text: textOf(values, 'text'),
  }),
  'write-to-lessons': (values) => ({
    do: 'write-to-lessons',
    lessons: (values['lessons'] ?? []) as unknown as readonly string[],
    text: textOf(values, 'text'),
  }),
};
