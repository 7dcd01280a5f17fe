import { expect, it } from 'vitest';
import { cases, faultReport, runFaultTable } from './fault-table.ts';

it('every fault ends as the table of faults says', { timeout: 60_000 }, async () => {
  const rows = await runFaultTable(2);
  console.log(faultReport(rows));
  expect(rows.flatMap(({ name, wrong }) => wrong.map((what) => `${name}: ${what}`))).toEqual([]);
  expect(rows).toHaveLength(cases.length);
});
