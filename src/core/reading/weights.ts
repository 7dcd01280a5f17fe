/** How much each piece of evidence speaks for each kind, and what that comes to for a text. Learns nothing. */
import { kinds, type Kind } from './kind.ts';

/** Evidence → its weight for each kind, in the order of `kinds`. */
export type Weights = ReadonlyMap<string, readonly number[]>;

export interface Weighed {
  readonly kind: Kind;
  /** 0…1: what the weights give this kind of all. */
  readonly share: number;
}

/** The evidence every text has. */
export const always = '*';
/** Weights are kept as whole tenths, and rows that are nothing then are left out. */
const scale = 10;
/** The first line of the table. */
export const weightsHead = kinds.join(' ');

/** Every kind with its share, the largest first. */
export function weigh(weights: Weights, evidence: readonly string[], leaning: Leaning = {}): Weighed[] {
  const sums = kinds.map((kind) => leaning[kind] ?? 0);
  const part = 1 / Math.sqrt(evidence.length + 1);
  for (const [i, w] of (weights.get(always) ?? []).entries()) sums[i] = (sums[i] ?? 0) + w;
  for (const piece of evidence) {
    const row = weights.get(piece);
    if (row) for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] ?? 0) + (row[i] ?? 0) * part;
  }
  const most = Math.max(...sums);
  const raised = sums.map((sum) => Math.exp(sum - most));
  const total = raised.reduce((a, b) => a + b, 0);
  return kinds.map((kind, i) => ({ kind, share: (raised[i] ?? 0) / total })).toSorted((a, b) => b.share - a.share);
}

/** What speaks for a kind besides the text, in the weights' own measure. */
export type Leaning = { readonly [kind in Kind]?: number };

export function writeWeights(weights: Weights): string {
  const lines = [...weights]
    .map(([evidence, row]) => `${row.map((w) => Math.round(w * scale)).join(' ')}\t${evidence}`)
    .filter((line) => !/^[0 -]+\t/.test(line))
    .toSorted((a, b) => (a.split('\t')[1] ?? '').localeCompare(b.split('\t')[1] ?? '', 'en'));
  return `${weightsHead}\n${lines.join('\n')}\n`;
}

/** Throws SyntaxError when the table is of other kinds or a row is none. */
export function readWeights(text: string): Weights {
  const [head, ...lines] = text.split('\n');
  if (head !== weightsHead) throw new SyntaxError(`expected the kinds "${weightsHead}"`);
  const weights = new Map<string, number[]>();
  for (const [i, line] of lines.entries()) {
    if (line === '') continue;
    const tab = line.indexOf('\t');
    const row = line
      .slice(0, tab)
      .split(' ')
      .map((w) => Number(w) / scale);
    if (tab < 0 || row.length !== kinds.length || row.some(Number.isNaN))
      throw new SyntaxError(`line ${i + 2}: expected ${kinds.length} numbers, a tab and the evidence`);
    weights.set(line.slice(tab + 1), row);
  }
  return weights;
}
