/** Tables as a spreadsheet reads and writes them: RFC 4180 with a header line. A cell is text; what it means is told elsewhere. */
import { CsvError, parse } from 'csv-parse/sync';
import { mistake } from '../core/lessons/lesson.ts';
import type { Mistake } from '../core/units.ts';

/** `field` is the column; `line` as an editor counts them. */
export interface LineMistake extends Mistake {
  readonly line: number;
}

export interface Row {
  readonly line: number;
  readonly cells: { readonly [column: string]: string };
}

export type Table = { readonly rows: readonly Row[] } | { readonly mistakes: readonly LineMistake[] };

/** What a spreadsheet could take for a formula: it starts, perhaps behind blanks or quotes, with one of these signs. */
const formula = /^['\s]*[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/u;

/** Excel takes a file for UTF-8 only by this mark. */
const byteOrderMark = '\uFEFF';

/** What could be a formula gets a leading apostrophe, which `readTable` takes off again. */
export function writeTable(columns: readonly string[], rows: readonly Row['cells'][]): string {
  const lines = [columns, ...rows.map((row) => columns.map((column) => row[column] ?? ''))];
  return byteOrderMark + lines.map((cells) => `${cells.map(writeCell).join(',')}\r\n`).join('');
}

function writeCell(cell: string): string {
  const harmless = formula.test(cell) ? `'${cell}` : cell;
  return /[",;\t\r\n]|^\s|\s$/u.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

function readCell(cell: string): string {
  return cell.startsWith("'") && formula.test(cell.slice(1)) ? cell.slice(1) : cell;
}

/** Every column must be there and no other. Parted by comma, semicolon or tab, whichever the header shows. */
export function readTable(text: string, columns: readonly string[]): Table {
  const mistakes: LineMistake[] = [];
  const body = text.startsWith(byteOrderMark) ? text.slice(1) : text;
  const [header, ...records] = recordsOf(body, mistakes);
  if (header === undefined) mistakes.push(lineMistake('table-empty', 1, 'table'));
  const found = (header?.cells ?? []).map((cell) => cell.trim());
  if (header !== undefined) mistakes.push(...headerMistakes(header.line, found, columns));
  if (mistakes.length > 0) return { mistakes: mistakes.toSorted((a, b) => a.line - b.line) };
  const rows = records.map(({ line, cells }) => ({
    line,
    cells: Object.fromEntries(found.map((column, n) => [column, readCell(cells[n] ?? '')])),
  }));
  return { rows };
}

interface TextRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

function recordsOf(body: string, mistakes: LineMistake[]): readonly TextRecord[] {
  const tell = (error: CsvError | undefined): undefined => {
    mistakes.push(lineMistake('table-line-unreadable', Number(error?.['lines'] ?? 1), 'table'));
  };
  try {
    const records = parse(body, {
      delimiter: delimiterOf(body),
      info: true,
      skip_empty_lines: true,
      skip_records_with_error: true,
      on_skip: tell,
    }) as unknown as readonly { readonly record: readonly string[]; readonly info: { readonly lines: number } }[];
    // The reader counts to a record's last line; a cell may hold several.
    return records.map(({ record, info }) => ({ line: info.lines - lineBreaksIn(record), cells: record }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    tell(error);
    return [];
  }
}

function delimiterOf(body: string): string {
  const [header = ''] = body.split(/[\r\n]/, 1);
  return [',', ';', '\t'].find((sign) => header.includes(sign)) ?? ',';
}

function lineBreaksIn(cells: readonly string[]): number {
  return cells.join('').match(/\r\n|\r|\n/g)?.length ?? 0;
}

function headerMistakes(line: number, found: readonly string[], wanted: readonly string[]): readonly LineMistake[] {
  return [
    ...wanted.filter((one) => !found.includes(one)).map((one) => lineMistake('table-column-missing', line, one)),
    ...found.filter((one) => !wanted.includes(one)).map((one) => lineMistake('table-column-unknown', line, one)),
    ...found.filter((one, n) => found.indexOf(one) < n).map((one) => lineMistake('table-column-twice', line, one)),
  ];
}

function lineMistake(code: string, line: number, column: string): LineMistake {
  return { ...mistake(code, column), line };
}
