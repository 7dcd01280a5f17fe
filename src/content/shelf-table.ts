/** The teas on the shelf as a table, there and back, one a row in their order. Their names are there to read, not to change. */
import { stringify } from 'yaml';
import { mistake } from '../core/lessons/lesson.ts';
import type { Tea } from '../core/teas/tea.ts';
import { languages } from '../core/units.ts';
import { cellsOf, type Cells } from './cells.ts';
import { readTable, writeTable, type LineMistake } from './csv.ts';

const nameColumns = languages.map((language) => `name ${language}`);

export type ReadShelf = { readonly shelf: readonly Tea[] } | { readonly mistakes: readonly LineMistake[] };

export function writeShelf(shelf: readonly Tea[]): string {
  const rows = shelf.map(({ id, names }) => ({
    tea: id,
    ...Object.fromEntries(languages.map((language) => [`name ${language}`, names[language]])),
  }));
  return writeTable(['tea', ...nameColumns], rows);
}

/** `head` is a comment that stays above the list. */
export function writeShelfYaml(shelf: readonly Tea[], head = ''): string {
  return head + stringify(shelf.map(({ id }) => id));
}

/** The comment above the list of such a file. */
export function headOf(yaml: string): string {
  return /^(?:#.*\n|\s*\n)*/.exec(yaml)?.[0] ?? '';
}

export function readShelfTable(text: string, teas: readonly Tea[]): ReadShelf {
  const table = readTable(text, ['tea'], nameColumns);
  if ('mistakes' in table) return table;
  const lines = new Map<string, number>();
  const read = table.rows.map((row) => {
    const cells = cellsOf(row);
    const tea = teaOf(cells, teas);
    const earlier = tea && lines.get(tea.id);
    if (earlier !== undefined) cells.blame(mistake('table-twice', 'tea', { words: cells.text('tea'), earlier }));
    else if (tea) lines.set(tea.id, row.line);
    return { tea, mistakes: cells.mistakes };
  });
  const mistakes = read.flatMap((one) => one.mistakes);
  if (mistakes.length > 0) return { mistakes };
  const shelf = read.flatMap(({ tea }) => (tea ? [tea] : []));
  return shelf.length > 0 ? { shelf } : { mistakes: [{ ...mistake('table-no-tea', 'tea'), line: 1 }] };
}

/** A name that was changed is told: it would come to nothing here. */
function teaOf(cells: Cells, teas: readonly Tea[]): Tea | undefined {
  const words = cells.text('tea');
  const tea = teas.find(({ id }) => id === words);
  if (!tea) {
    cells.blame(mistake('table-tea', 'tea', { words }));
    return undefined;
  }
  for (const language of languages) {
    const name = cells.text(`name ${language}`);
    if (name !== '' && name !== tea.names[language].trim()) {
      cells.blame(mistake('table-tea-name', `name ${language}`, { words: tea.names[language] }));
    }
  }
  return tea;
}
