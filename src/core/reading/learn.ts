/** Learns from labelled sentences what their evidence weighs: multinomial logistic regression, the same every time. Not used by the reader. */
import { kinds, type Kind } from './kind.ts';
import { always, type Weights } from './weights.ts';

export interface Lesson {
  readonly kind: Kind;
  readonly evidence: readonly string[];
}

/** Chosen by leaving out a fifth of the examples in turn; src/commands/learn.ts shows it. */
const passes = 20;
const pace = 0.3;
const restraint = 0.00001;
/** Evidence seen in fewer sentences is a sentence known by heart. */
const leastSeen = 1;

export function learn(lessons: readonly Lesson[]): Weights {
  const rows = new Map<string, number[]>([[always, kinds.map(() => 0)]]);
  const slopes = new Map<string, number[]>([[always, kinds.map(() => 0)]]);
  for (const evidence of seenOften(lessons)) {
    rows.set(
      evidence,
      kinds.map(() => 0),
    );
    slopes.set(
      evidence,
      kinds.map(() => 0),
    );
  }
  const known = lessons.map(({ kind, evidence }) => ({
    truth: kinds.indexOf(kind),
    part: 1 / Math.sqrt(evidence.length + 1),
    rows: evidence.flatMap((piece) => rows.get(piece) ?? []).length,
    pieces: evidence.filter((piece) => rows.has(piece)),
  }));
  for (let pass = 0; pass < passes; pass++) {
    for (const lesson of known) {
      const sums = sumsOf(lesson, rows);
      const shares = sharesOf(sums);
      for (const piece of [always, ...lesson.pieces]) {
        const row = rows.get(piece) ?? [];
        const slope = slopes.get(piece) ?? [];
        const part = piece === always ? 1 : lesson.part;
        for (let k = 0; k < kinds.length; k++) {
          const error = (shares[k] ?? 0) - (k === lesson.truth ? 1 : 0);
          const step = error * part + restraint * (row[k] ?? 0);
          slope[k] = (slope[k] ?? 0) + step * step;
          row[k] = (row[k] ?? 0) - (pace * step) / Math.sqrt(0.01 + (slope[k] ?? 0));
        }
      }
    }
  }
  return rows;
}

interface Known {
  readonly pieces: readonly string[];
  readonly part: number;
}

function sumsOf({ pieces, part }: Known, rows: ReadonlyMap<string, readonly number[]>): number[] {
  const sums = [...(rows.get(always) ?? [])];
  for (const piece of pieces) {
    const row = rows.get(piece);
    if (row) for (let k = 0; k < sums.length; k++) sums[k] = (sums[k] ?? 0) + (row[k] ?? 0) * part;
  }
  return sums;
}

function sharesOf(sums: readonly number[]): number[] {
  const most = Math.max(...sums);
  const raised = sums.map((sum) => Math.exp(sum - most));
  const total = raised.reduce((a, b) => a + b, 0);
  return raised.map((r) => r / total);
}

function seenOften(lessons: readonly Lesson[]): string[] {
  const counts = new Map<string, number>();
  for (const piece of lessons.flatMap((lesson) => lesson.evidence)) counts.set(piece, (counts.get(piece) ?? 0) + 1);
  return [...counts].filter(([, count]) => count >= leastSeen).map(([piece]) => piece);
}
