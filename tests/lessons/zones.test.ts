import { expect, it } from 'vitest';
import { compareZones } from './zones.ts';

/** `node tests/lessons/long.mjs 10000000` asks for more. */
const wanted = Number(process.env['ZONE_CASES'] ?? 500_000);

it(
  `two implementations agree on ${wanted} wall times around every transition 2024–2034`,
  { timeout: 3_600_000 },
  () => {
    const report = compareZones(wanted);
    console.log(JSON.stringify(report));
    expect(report.differences).toEqual([]);
    expect(report.zones).toBeGreaterThan(400);
    expect(report.transitions).toBeGreaterThan(2000);
    expect(report.cases).toBeGreaterThan(wanted * 0.9);
    expect(Math.min(report.shown.never, report.shown.twice)).toBeGreaterThan(wanted / 1000);
  },
);
