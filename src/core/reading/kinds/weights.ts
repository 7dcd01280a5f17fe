/** How much each piece of evidence speaks for each kind, and what that comes to for a text. Learns nothing. */
import { kinds, type Kind } from './kind.ts';

/** Evidence → its weight for each kind, in the order of `kinds`. */
export type Weights = Pick<ReadonlyMap<string, readonly number[]>, 'get' | 'keys'>;

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
  const lines = [...weights.keys()]
    .map((evidence) => `${(weights.get(evidence) ?? []).map((w) => Math.round(w * scale)).join(' ')}\t${evidence}`)
    .filter((line) => !/^[0 -]+\t/.test(line))
    .toSorted((a, b) => (a.split('\t')[1] ?? '').localeCompare(b.split('\t')[1] ?? '', 'en'));
  return `${weightsHead}\n${lines.join('\n')}\n`;
}

const wholeRow = new RegExp(`^-?\\d+(?: -?\\d+){${kinds.length - 1}}\t`);

/** Throws SyntaxError when the table is of other kinds or a row is none. A row's numbers are read when first asked for. */
export function readWeights(text: string): Weights {
  const [head, ...lines] = text.split('\n');
  if (head !== weightsHead) throw new SyntaxError(`expected the kinds "${weightsHead}"`);
  const rows = new Map<string, string | readonly number[]>();
  for (const [i, line] of lines.entries()) {
    if (line === '') continue;
    if (!wholeRow.test(line))
      throw new SyntaxError(`line ${i + 2}: expected ${kinds.length} numbers, a tab and the evidence`);
    rows.set(line.slice(line.indexOf('\t') + 1), line);
  }
  return { keys: () => rows.keys(), get: (evidence) => rowIn(rows, evidence) };
}

function rowIn(rows: Map<string, string | readonly number[]>, evidence: string): readonly number[] | undefined {
  const row = rows.get(evidence);
  if (typeof row !== 'string') return row;
  const numbers = row
    .slice(0, row.indexOf('\t'))
    .split(' ')
    .map((whole) => Number(whole) / scale);
  rows.set(evidence, numbers);
  return numbers;
}
