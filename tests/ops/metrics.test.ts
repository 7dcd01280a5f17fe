import { describe, expect, test } from 'vitest';
import { gauge, makeMetrics, total } from '../../src/operation/metrics.ts';

describe('the text of the measures', () => {
  test('tells a count by its labels', () => {
    const metrics = makeMetrics();
    const poured = metrics.counter('cups_total', 'Cups poured.');
    expect(metrics.text()).toBe('# HELP cups_total Cups poured.\n# TYPE cups_total counter\n');
    poured.add({ tea: 'a "b" \\ c\nd' });
    poured.add({ tea: 'a "b" \\ c\nd' });
    poured.add();
    expect(metrics.text().split('\n').slice(2)).toEqual([
      'cups_total{tea="a \\"b\\" \\\\ c\\nd"} 2',
      'cups_total 1',
      '',
    ]);
  });

  test('tells how many stayed within each bound, each bound holding those before it', () => {
    const metrics = makeMetrics();
    const late = metrics.histogram('late_seconds', 'Lateness.', [0.1, 1]);
    for (const value of [0.05, 0.1, 0.5, 7]) late.observe(value, { kind: 'timer' });
    expect(metrics.text().split('\n').slice(2)).toEqual([
      'late_seconds_bucket{kind="timer",le="0.1"} 2',
      'late_seconds_bucket{kind="timer",le="1"} 3',
      'late_seconds_bucket{kind="timer",le="+Inf"} 4',
      'late_seconds_sum{kind="timer"} 7.65',
      'late_seconds_count{kind="timer"} 4',
      '',
    ]);
  });

  test('leaves out what has no value', () => {
    expect(gauge('age_seconds', 'Age.', [])).toBe('');
    expect(total('cpu_total', 'Time.', 3)).toBe('# HELP cpu_total Time.\n# TYPE cpu_total counter\ncpu_total 3\n');
  });
});
