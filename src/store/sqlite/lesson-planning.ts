/** What is done of lessons without anyone's word: offers end, reminders fall due, series go on, time-zone rules change. */
import { addDays, dateOf, wallAt, type WallDate } from '../../core/lessons/calendar.ts';
import { planLesson, recomputeLesson, type Today } from '../../core/lessons/lesson.ts';
import { lapseOffers } from '../../core/lessons/seats.ts';
import { lessonsOfSeries } from '../../core/lessons/series.ts';
import { recomputedTidings } from '../../core/lessons/tidings.ts';
import type { Instant } from '../../core/units.ts';
import type { LessonPlan } from '../lesson-contract.ts';
import { remind, takeBack } from './reminding.ts';
import { keepRoster, rosterOf } from './rosters.ts';
import { tell, type RosterRows } from './telling.ts';

/** Judgement: as far ahead as people plan an evening. */
const horizonDays = 70;

export function horizonOf(zone: string, now: Instant): WallDate {
  return addDays(dateOf(wallAt(now, zone)), horizonDays);
}

export function isAnythingDue({ bookings, reminders, claims }: RosterRows, now: Instant): boolean {
  return reminders.due(now, 1).length > 0 || bookings.offersEnded(now, 1).length > 0 || claims.isAnyExpired(now);
}

/** Returns how many offers and reminders were looked at: as many as the limit when there may be more. */
export function tendLessons(rows: RosterRows, now: Instant, limit: number): number {
  for (const name of rows.claims.expire(now)) takeBack(rows, name);
  const ended = rows.bookings.offersEnded(now, limit);
  for (const lesson of ended) endOffers(rows, lesson, now);
  const due = rows.reminders.due(now, limit - ended.length);
  for (const booking of new Set(due)) remind(rows, booking, now);
  return ended.length + due.length;
}

function endOffers(rows: RosterRows, lesson: string, now: Instant): void {
  const before = rosterOf(rows, lesson);
  if (before) keepRoster(rows, lapseOffers(before, now), { before, now });
}

/** What of the plan lies in the past, or is known, is passed over. */
export function planAll(rows: RosterRows, { lessons, series }: LessonPlan, today: Today): void {
  for (const draft of lessons) {
    const planned = rows.lessons.of(draft.id) ? null : planLesson(draft, today);
    if (planned && 'lesson' in planned) rows.lessons.add(planned.lesson);
  }
  for (const one of series) rows.lessons.addSeries(one);
  for (const one of rows.lessons.series()) {
    const horizon = horizonOf(one.draft.zone, today.now);
    for (const lesson of lessonsOfSeries(one, horizon, today).lessons) rows.lessons.add(lesson);
  }
  recompute(rows, today);
}

function recompute(rows: RosterRows, { now, tzVersion }: Today): void {
  for (const old of rows.lessons.underOtherRules(tzVersion, now)) {
    const before = rosterOf(rows, old.id);
    if (!before) continue;
    const lesson = recomputeLesson(before.lesson, tzVersion);
    keepRoster(rows, { roster: { ...before, lesson }, changes: [] }, { before, now });
    if (lesson.startsAt === before.lesson.startsAt) continue;
    const seated = before.bookings.filter((one) => one.standing === 'seated');
    for (const booking of seated) tell(rows, booking, { tidings: recomputedTidings(lesson, booking), now });
  }
}
