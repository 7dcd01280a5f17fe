/** Reads the cells of one row and keeps what is wrong with them, so that a row tells all its mistakes at once. */
import { mistake } from '../core/lessons/lesson.ts';
import type { Mistake } from '../core/units.ts';
import type { LineMistake, Row } from './csv.ts';

export interface Cells {
  text(column: string): string;
  /** At most 40 of [A-Za-z0-9._-]. */
  id(column: string): string;
  ids(column: string): readonly string[];
  whole(column: string): number;
  /** May be less than nothing: which numbers can be is judged elsewhere, and told better. */
  judgedWhole(column: string): number;
  oneOf<T extends string>(column: string, allowed: readonly T[]): T;
  /** "2026-12-06T02:00:00.000Z", or null for an empty cell. */
  instant(column: string): number | null;
  /** Says of this row that something else is wrong. */
  blame(problem: Mistake): void;
  readonly mistakes: readonly LineMistake[];
}

const idPattern = /^[A-Za-z0-9._-]{1,40}$/;

export function cellsOf({ line, cells, lines = {} }: Row): Cells {
  const mistakes: LineMistake[] = [];
  const blame = (problem: Mistake): void => void mistakes.push({ ...problem, line: lines[problem.field] ?? line });
  const text = (column: string): string => (cells[column] ?? '').trim();
  const asId = (column: string, id: string): string => {
    if (!idPattern.test(id)) blame(mistake('table-id', column, { words: id }));
    return id;
  };
  const number = (column: string, shape: RegExp): number => {
    const words = text(column);
    if (!shape.test(words)) blame(mistake('table-number', column, { words }));
    return Number(words);
  };
  return {
    text,
    id: (column) => asId(column, text(column)),
    ids: (column) =>
      text(column) === ''
        ? []
        : text(column)
            .split(/\s+/u)
            .map((id) => asId(column, id)),
    whole: (column) => number(column, /^\d{1,9}$/),
    judgedWhole: (column) => number(column, /^-?\d{1,9}$/),
    oneOf(column, allowed) {
      const words = text(column);
      const found = allowed.find((one) => one === words);
      if (found === undefined) blame(mistake('table-choice', column, { words, allowed: allowed.join(', ') }));
      return found ?? allowed[0]!;
    },
    instant(column) {
      const words = text(column);
      if (words === '') return null;
      const read = /^\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d{1,3})?)?Z$/.test(words) ? Date.parse(words) : Number.NaN;
      if (Number.isNaN(read)) blame(mistake('table-instant', column, { words }));
      return read;
    },
    blame,
    mistakes,
  };
}
