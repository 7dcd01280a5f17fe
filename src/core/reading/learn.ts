/** Learns from labelled sentences what their evidence weighs: multinomial logistic regression, the same every time. Not used by the reader. */
import { kinds, type Kind } from './kind.ts';
import { always, type Weights } from './weights.ts';

export interface Lesson {
  readonly kind: Kind;
  readonly evidence: readonly string[];
}

/** Chosen on sentences not learnt from; over a dozen orders of the examples the figure varies by a point. */
const passes = 20;
const pace = 0.3;
const restraint = 0.002;
/** So much of the evidence is hidden at each step, so that no single piece is relied on: a slip may take it away. */
const hidden = 0.5;

/** What a piece of evidence weighs for each kind, and how far it has moved so far. */
interface Row {
  readonly weights: number[];
  readonly moved: number[];
}

interface Known {
  readonly truth: number;
  /** The row every text has comes first. */
  readonly rows: readonly Row[];
}

const kindCount = kinds.length;

export function learn(lessons: readonly Lesson[]): Weights {
  const rows = new Map<string, Row>();
  for (const evidence of [always, ...lessons.flatMap((lesson) => lesson.evidence)]) {
    if (!rows.has(evidence)) rows.set(evidence, { weights: nothing(), moved: nothing() });
  }
  const known = lessons.map(({ kind, evidence }): Known => ({
    truth: kinds.indexOf(kind),
    rows: [always, ...evidence].flatMap((piece) => rows.get(piece) ?? []),
  }));
  const next = dice();
  const mixed = shuffled(known, next);
  for (let pass = 0; pass < passes; pass++) for (const lesson of mixed) learnOne(partly(lesson, next));
  return new Map([...rows].map(([evidence, { weights }]) => [evidence, weights]));
}

const nothing = (): number[] => Array.from({ length: kindCount }, () => 0);

/** Lehmer's generator with 48271: numbers from 0 to 1 that are the same on every machine. */
function dice(): () => number {
  const modulus = 2 ** 31 - 1;
  let state = 22;
  return () => (state = (state * 48_271) % modulus) / modulus;
}

/** Examples come kind by kind; learnt in that order, the last kind weighs too much. */
function shuffled<T>(list: readonly T[], next: () => number): T[] {
  const keyed = list.map((item) => ({ item, key: next() }));
  return keyed.toSorted((a, b) => a.key - b.key).map(({ item }) => item);
}

function partly({ truth, rows }: Known, next: () => number): Known {
  return { truth, rows: rows.filter((_, i) => i === 0 || next() >= hidden) };
}

/** Moves every weight against its share of the error, the less the farther it has moved before. */
function learnOne({ truth, rows }: Known): void {
  const part = 1 / Math.sqrt(rows.length);
  const errors = sharesOf(rows, part);
  errors[truth] = (errors[truth] ?? 0) - 1;
  for (const [i, { weights, moved }] of rows.entries()) {
    const counts = i === 0 ? 1 : part;
    for (let k = 0; k < kindCount; k++) {
      const slope = (errors[k] ?? 0) * counts + restraint * (weights[k] ?? 0);
      moved[k] = (moved[k] ?? 0) + slope * slope;
      weights[k] = (weights[k] ?? 0) - (pace * slope) / Math.sqrt(0.01 + (moved[k] ?? 0));
    }
  }
}

function sharesOf(rows: readonly Row[], part: number): number[] {
  const sums = nothing();
  for (const [i, { weights }] of rows.entries()) {
    const counts = i === 0 ? 1 : part;
    for (let k = 0; k < kindCount; k++) sums[k] = (sums[k] ?? 0) + (weights[k] ?? 0) * counts;
  }
  const most = Math.max(...sums);
  const raised = sums.map((sum) => Math.exp(sum - most));
  const total = raised.reduce((a, b) => a + b, 0);
  return raised.map((r) => r / total);
}
