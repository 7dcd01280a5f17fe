/** Learns from labelled sentences what their evidence weighs: multinomial logistic regression, the same every time. Not used by the reader. */
import { kinds, type Kind } from './kind.ts';
import { always, type Weights } from './weights.ts';

export interface Lesson {
  readonly kind: Kind;
  readonly evidence: readonly string[];
}

/** Chosen on sentences not learnt from; over a dozen orders of the examples the figure varies by a point. */
const passes = 20;
/** The weights are the mean of those after each of the last passes: where one draw ends is chance. */
const averaged = 5;
const pace = 0.3;
const restraint = 0.002;
/** So much of the evidence is hidden at each step, so that no single piece is relied on: a slip may take it away. With half of it hidden,
 * files of sentences left out of the learning were read a little worse: 88.0 % instead of 88.8 of three, 97.0 instead of 97.4 of two. */
const hidden = 0.3;

/** What a piece of evidence weighs for each kind, and how far it has moved so far. */
interface Row {
  readonly weights: number[];
  readonly moved: number[];
  /** Of the weights after the last passes. */
  readonly sums: number[];
}

interface Known {
  readonly truth: number;
  /** A number of its own, so that a change of one lesson moves the draws of no other. */
  readonly seed: number;
  /** The row every text has comes first. */
  readonly rows: readonly Row[];
}

const kindCount = kinds.length;

export function learn(lessons: readonly Lesson[]): Weights {
  const rows = new Map<string, Row>();
  for (const evidence of [always, ...lessons.flatMap((lesson) => lesson.evidence)]) {
    if (!rows.has(evidence)) rows.set(evidence, { weights: nothing(), moved: nothing(), sums: nothing() });
  }
  const known = lessons.map(({ kind, evidence }): Known => ({
    truth: kinds.indexOf(kind),
    seed: seedOf(evidence),
    rows: [always, ...evidence].flatMap((piece) => rows.get(piece) ?? []),
  }));
  const mixed = shuffled(known);
  for (let pass = 0; pass < passes; pass++) {
    for (const lesson of mixed) learnOne(partly(lesson, pass));
    if (pass >= passes - averaged) for (const row of rows.values()) remember(row);
  }
  return new Map([...rows].map(([evidence, { sums }]) => [evidence, sums.map((sum) => sum / averaged)]));
}

const nothing = (): number[] => Array.from({ length: kindCount }, () => 0);

const modulus = 2 ** 31 - 1;

function seedOf(evidence: readonly string[]): number {
  let seed = 1;
  for (const character of evidence.join('\n')) seed = (seed * 31 + (character.codePointAt(0) ?? 0)) % modulus;
  return seed;
}

/** Lehmer's generator with 48271: numbers from 0 to 1 that are the same on every machine. */
function dice(seed: number): () => number {
  let state = (seed % (modulus - 1)) + 1;
  return () => (state = (state * 48_271) % modulus) / modulus;
}

/** Examples come kind by kind; learnt in that order, the last kind weighs too much. */
function shuffled(list: readonly Known[]): Known[] {
  const keyed = list.map((item) => ({ item, key: dice(item.seed)() }));
  return keyed.toSorted((a, b) => a.key - b.key).map(({ item }) => item);
}

function partly({ truth, seed, rows }: Known, pass: number): Known {
  const next = dice(seed + (pass + 1) * 7919);
  return { truth, seed, rows: rows.filter((_, i) => i === 0 || next() >= hidden) };
}

function remember({ weights, sums }: Row): void {
  for (let k = 0; k < kindCount; k++) sums[k] = (sums[k] ?? 0) + (weights[k] ?? 0);
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
