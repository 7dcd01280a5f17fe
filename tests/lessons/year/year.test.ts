import { expect, test } from 'vitest';
import { playYear } from './year.ts';

/** `npm run year` plays more, larger or one seed again. */
const setting = (name: string, usual: number): number => Number(process.env[name] ?? usual);
const years = setting('YEARS', 3);
const first = setting('YEAR_SEED', 1);
const size = {
  days: setting('YEAR_DAYS', 60),
  students: setting('YEAR_STUDENTS', 40),
  lessonsAWeek: setting('YEAR_LESSONS', 2),
  visitsADay: setting('YEAR_VISITS', 3),
};

test.each(Array.from({ length: years }, (_, i) => first + i))(
  `${size.days} days of the shop keep every promise, seed %i`,
  { timeout: 3_600_000 },
  async (seed) => {
    const report = await playYear({ seed, ...size });
    if (process.env['REPORT'] !== undefined) console.log(JSON.stringify(report));
    expect(report.broken).toEqual([]);
    expect(Math.min(report.bookings, report.reminders)).toBeGreaterThan(20);
    expect(
      report.moves + report.cancellations + report.standstills + report.floods + report.tables + report.reseated,
    ).toBeGreaterThan(10);
  },
);
