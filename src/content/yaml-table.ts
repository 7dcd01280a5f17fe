/** A table as a YAML list: each item holds its columns by name. It is read as the same rows a CSV gives. */
import { isMap, isScalar, isSeq, LineCounter, parseDocument, stringify, type Pair, type YAMLMap } from 'yaml';
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

/** Numbers stay as they are written. What is not said is empty; of the needed columns each item must say what is not empty. */
export function readRows(text: string, needed: readonly string[], more: readonly string[] = []): Table {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const lineAt = (offset: number): number => lines.linePos(offset).line;
  const [error] = document.errors;
  if (error) return { mistakes: [lineMistake('table-no-yaml', lineAt(error.pos[0]), 'table')] };
  const { contents } = document;
  if (contents === null) return { rows: [] };
  if (!isSeq(contents)) return { mistakes: [lineMistake('table-no-list', 1, 'table')] };
  const read = contents.items.map((item) =>
    isMap(item)
      ? rowOf(item, { columns: [...needed, ...more], lineAt })
      : { mistakes: [lineMistake('table-no-item', lineAt(startOf(item)), 'table')] },
  );
  const mistakes = read.flatMap((one) => ('mistakes' in one ? one.mistakes : []));
  return mistakes.length > 0 ? { mistakes } : { rows: read.flatMap((one) => ('row' in one ? [one.row] : [])) };
}

interface Ground {
  readonly columns: readonly string[];
  readonly lineAt: (offset: number) => number;
}

function rowOf(item: YAMLMap, { columns, lineAt }: Ground): { row: Row } | { mistakes: readonly LineMistake[] } {
  const cells = item.items.map((pair) => ({ ...cellOf(pair), line: lineAt(startOf(pair.key)) }));
  const mistakes = cells.flatMap(({ column, text, line }) => {
    if (!columns.includes(column)) return [lineMistake('table-column-unknown', line, column)];
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

/** Null where a list or a map stands for a text. */
function cellOf({ key, value }: Pair): { readonly column: string; readonly text: string | null } {
  const column = isScalar(key) ? String(key.value) : '?';
  if (value === null) return { column, text: '' };
  if (!isScalar(value)) return { column, text: null };
  if (value.value === null) return { column, text: '' };
  return { column, text: typeof value.value === 'string' ? value.value : (value.source ?? '') };
}

function startOf(node: unknown): number {
  return (node as { readonly range?: readonly [number, number, number] } | null)?.range?.[0] ?? 0;
}
