/** A table as a YAML list: each item holds its columns by name. It is read as the same rows a CSV gives. */
import { isMap, isScalar, isSeq, LineCounter, parseDocument, stringify, visit, type Pair, type YAMLMap } from 'yaml';
import { lineMistake, type LineMistake, type Row, type Table } from './csv.ts';

export function writeRows(rows: readonly Row['cells'][]): string {
  return stringify(
    rows.map((row) =>
      Object.fromEntries(
        Object.entries(row)
          .filter(([, cell]) => cell !== '')
          .map(([column, cell]) => [column, isWhole(cell) ? Number(cell) : cell]),
      ),
    ),
  );
}

/** Without quotation marks, as a person would write it. */
const isWhole = (cell: string): boolean => /^(?:0|[1-9]\d{0,8})$/.test(cell);

/** What of an item may hold a list, a text each, or one text for each of several names. */
interface Columns {
  readonly plain: readonly string[];
  readonly listed?: readonly string[];
  readonly named?: { readonly [column: string]: readonly string[] };
}

/**
 * Numbers stay as they are written. What is not said is empty. A list becomes its words with blanks between them, and
 * `title: { en: … }` the cell "title en".
 */
export function readRows(text: string, columns: Columns): Table {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const lineAt = (offset: number): number => lines.linePos(offset).line;
  const [error] = document.errors;
  if (error) return { mistakes: [lineMistake('table-no-yaml', lineAt(error.pos[0]), 'table')] };
  // "The same as there": read as if it stood here.
  visit(document, { Alias: (_, node) => node.resolve(document) });
  const { contents } = document;
  if (contents === null) return { rows: [] };
  if (!isSeq(contents)) return { mistakes: [lineMistake('table-no-list', 1, 'table')] };
  const read = contents.items.map((item) =>
    isMap(item)
      ? rowOf(item, { columns, lineAt })
      : { mistakes: [lineMistake('table-no-item', lineAt(startOf(item)), 'table')] },
  );
  const mistakes = read.flatMap((one) => ('mistakes' in one ? one.mistakes : []));
  return mistakes.length > 0 ? { mistakes } : { rows: read.flatMap((one) => ('row' in one ? [one.row] : [])) };
}

interface Ground {
  readonly columns: Columns;
  readonly lineAt: (offset: number) => number;
}

function rowOf(item: YAMLMap, { columns, lineAt }: Ground): { row: Row } | { mistakes: readonly LineMistake[] } {
  const { plain, listed = [], named = {} } = columns;
  const known = new Set([...plain, ...listed, ...Object.keys(named).flatMap((name) => cellNames(name, named[name]!))]);
  const cells = item.items
    .flatMap((pair) => namedCells(pair, named) ?? [cellOf(pair, listed)])
    .map(({ key, ...cell }) => ({ ...cell, line: lineAt(startOf(key)) }));
  const mistakes = cells.flatMap(({ column, text, line }) => {
    if (!known.has(column)) return [lineMistake('table-column-unknown', line, column)];
    return text === null ? [lineMistake('table-no-text', line, column)] : [];
  });
  if (mistakes.length > 0) return { mistakes };
  return {
    row: {
      line: lineAt(startOf(item)),
      cells: Object.fromEntries(cells.map(({ column, text }) => [column, text ?? ''])),
      lines: Object.fromEntries(cells.map(({ column, line }) => [column, line])),
    },
  };
}

const cellNames = (column: string, names: readonly string[]): readonly string[] =>
  names.map((name) => `${column} ${name}`);

interface Cell {
  readonly key: unknown;
  readonly column: string;
  /** Null where a list or a map stands for a text. */
  readonly text: string | null;
}

const nameOf = ({ key }: Pair): string => (isScalar(key) ? String(key.value) : '?');

/** Undefined where no names are expected. */
function namedCells(pair: Pair, named: NonNullable<Columns['named']>): readonly Cell[] | undefined {
  const column = nameOf(pair);
  const names = named[column];
  if (names === undefined) return undefined;
  if (!isMap(pair.value)) return [{ key: pair.key, column: cellNames(column, names)[0] ?? column, text: null }];
  return pair.value.items.map((part) => ({ ...cellOf(part, []), column: `${column} ${nameOf(part)}` }));
}

function cellOf({ key, value }: Pair, listed: readonly string[]): Cell {
  const column = nameOf({ key } as Pair);
  const texts = isSeq(value) && listed.includes(column) ? value.items.map(textOf) : [textOf(value)];
  return { key, column, text: texts.includes(null) ? null : texts.join(' ') };
}

function textOf(value: unknown): string | null {
  if (value === null) return '';
  if (!isScalar(value)) return null;
  if (value.value === null) return '';
  return typeof value.value === 'string' ? value.value : (value.source ?? '');
}

function startOf(node: unknown): number {
  return (node as { readonly range?: readonly [number, number, number] } | null)?.range?.[0] ?? 0;
}
