/** A conversation written down: what the person writes, and exactly what is answered. */

export interface Transcript {
  readonly deviceLanguage: string | null;
  readonly exchanges: readonly Exchange[];
}

export interface Exchange {
  /** Null where only time passes. */
  readonly wrote: string | null;
  readonly passesMs?: number;
  /** The clock on the shop's wall goes there at once, as after a long sleep: "2026-12-04T18:00". */
  readonly leapsTo?: string;
  /** Who wrote it, when it was the shopkeeper. */
  readonly by?: 'shop';
  readonly line: number;
  readonly expected: readonly Expected[];
}

export interface Expected {
  readonly line: number;
  readonly text: string;
}

export interface Difference {
  readonly line: number;
  readonly expected: string;
  readonly got: string;
}

/**
 * `> ` begins what the person writes, `shop> ` what the shopkeeper does (and `shop: ` what they are told), `+ 8 s` (or
 * min, h) says that so much time passes, `at 2026-12-04 18:00` that it is that time at the shop by now, `# ` is a comment, `language: zh-Hant` on the first line is what their device
 * speaks. All other lines are the answer; empty ones and spaces at a line's end do not count.
 */
export function readTranscript(text: string): Transcript {
  const lines = text.split('\n').map((line, i) => ({ line: i + 1, text: line.trimEnd() }));
  const [, language] = /^language: *([\w-]+)$/.exec(lines[0]?.text ?? '') ?? [];
  const told = (language === undefined ? lines : lines.slice(1)).filter(
    ({ text: t }) => t !== '' && !/^#( |$)/.test(t),
  );
  const exchanges: (Exchange & { expected: Expected[] })[] = [];
  for (const one of told) {
    const last = exchanges.at(-1);
    const passesMs = timePassing(one.text);
    const leapsTo = leapTo(one.text);
    const written = /^(shop)?>(?: (.*))?$/.exec(one.text);
    if (written) {
      const [, by, wrote = ''] = written;
      exchanges.push({ wrote, ...(by === 'shop' ? { by } : {}), line: one.line, expected: [] });
    } else if (passesMs !== null) {
      exchanges.push({ wrote: null, passesMs, line: one.line, expected: [] });
    } else if (leapsTo !== null) {
      exchanges.push({ wrote: null, leapsTo, line: one.line, expected: [] });
    } else if (last) last.expected.push(one);
  }
  return { deviceLanguage: language ?? null, exchanges };
}

const unitMs: { readonly [unit: string]: number } = { s: 1_000, min: 60_000, h: 3_600_000 };

/** "+ 8 s", "+ 90 min", "+ 26 h"; null for any other line. */
export function timePassing(text: string): number | null {
  const [, count, unit = ''] = /^\+ (\d+) (s|min|h)$/.exec(text) ?? [];
  return count === undefined ? null : Number(count) * (unitMs[unit] ?? 0);
}

/** "at 2026-12-04 18:00"; null for any other line. */
export function leapTo(text: string): string | null {
  const [, day, time] = /^at (\d{4}-\d\d-\d\d) (\d\d:\d\d)$/.exec(text) ?? [];
  return day === undefined ? null : `${day}T${time ?? ''}`;
}

/** The first line that differs, or null. */
export function firstDifference({ expected, line }: Exchange, answered: readonly string[]): Difference | null {
  const got = answered.map((text) => text.trimEnd()).filter((text) => text !== '');
  const length = Math.max(expected.length, got.length);
  for (let i = 0; i < length; i++) {
    const [wanted, given] = [expected[i]?.text ?? null, got[i] ?? null];
    const at = expected[i]?.line ?? expected.at(-1)?.line ?? line;
    if (wanted !== given) return { line: at, expected: wanted ?? '(nothing more)', got: given ?? '(nothing more)' };
  }
  return null;
}
