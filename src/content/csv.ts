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
  /** Where a cell has a line of its own. */
  readonly lines?: { readonly [column: string]: number };
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

/** Every column that is needed must be there, and none that is not known. Parted by comma, semicolon or tab, whichever the header shows. */
export function readTable(text: string, needed: readonly string[], more: readonly string[] = []): Table {
  const mistakes: LineMistake[] = [];
  const body = text.startsWith(byteOrderMark) ? text.slice(1) : text;
  // No column is called so: the text was taken for another writing than it is.
  if (/^[^\r\n]*[\0\uFFFD]/u.test(body)) return { mistakes: [lineMistake('table-encoding', 1, 'table')] };
  const [header, ...records] = recordsOf(body, mistakes);
  if (header === undefined && mistakes.length === 0) mistakes.push(lineMistake('table-empty', 1, 'table'));
  const found = (header?.cells ?? []).map((cell) => cell.trim());
  if (header !== undefined) mistakes.push(...headerMistakes({ line: header.line, found }, needed, more));
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
  const skipped: CsvError[] = [];
  try {
    const records = parse(body, {
      delimiter: delimiterOf(body),
      info: true,
      skip_empty_lines: true,
      skip_records_with_error: true,
      on_skip: (error) => void (error && skipped.push(error)),
    }) as unknown as readonly { readonly record: readonly string[]; readonly info: { readonly lines: number } }[];
    const read = Math.max(0, ...records.map(({ info }) => info.lines));
    mistakes.push(...trusted(skipped).map((error) => unreadable(error, skipped, read)));
    // The reader counts to a record's last line; a cell may hold several.
    return records.map(({ record, info }) => ({ line: info.lines - lineBreaksIn(record), cells: record }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    mistakes.push(unreadable(error, [], 0));
    return [];
  }
}

const isOfCells = ({ code }: CsvError): boolean => code === 'CSV_RECORD_INCONSISTENT_FIELDS_LENGTH';

/** Behind a wrong quotation mark the reader takes cells for what they are not. */
function trusted(skipped: readonly CsvError[]): readonly CsvError[] {
  const quote = skipped.findIndex((error) => !isOfCells(error));
  return quote < 0 ? skipped : skipped.slice(0, quote + 1);
}

const lineOf = (error: CsvError): number => Number(error['lines'] ?? 1);

/** A quotation mark that is not closed is noticed at the end of the file; it stands in the first line that was not read. */
function unreadable(error: CsvError, skipped: readonly CsvError[], read: number): LineMistake {
  if (isOfCells(error)) return lineMistake('table-cells', lineOf(error), 'table');
  if (error.code !== 'CSV_QUOTE_NOT_CLOSED') return lineMistake('table-quote', lineOf(error), 'table');
  const before = Math.max(read, ...skipped.filter((one) => one !== error).map(lineOf));
  return lineMistake('table-quote-open', before + 1, 'table');
}

function delimiterOf(body: string): string {
  const [header = ''] = body.split(/[\r\n]/, 1);
  return [',', ';', '\t'].find((sign) => header.includes(sign)) ?? ',';
}

function lineBreaksIn(cells: readonly string[]): number {
  return cells.join('').match(/\r\n|\r|\n/g)?.length ?? 0;
}

interface Header {
  readonly line: number;
  readonly found: readonly string[];
}

function headerMistakes(
  { line, found }: Header,
  needed: readonly string[],
  more: readonly string[],
): readonly LineMistake[] {
  const known = [...needed, ...more];
  return [
    ...needed.filter((one) => !found.includes(one)).map((one) => lineMistake('table-column-missing', line, one)),
    ...found.filter((one) => !known.includes(one)).map((one) => lineMistake('table-column-unknown', line, one)),
    ...found.filter((one, n) => found.indexOf(one) < n).map((one) => lineMistake('table-column-twice', line, one)),
  ];
}

export function lineMistake(code: string, line: number, column: string): LineMistake {
  return { ...mistake(code, column), line };
}
