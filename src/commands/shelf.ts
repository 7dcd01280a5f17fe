/** `npm run shelf`: the teas on the shelf; `-- out FILE` writes them down, `-- in FILE` puts a changed list in their place, all of it or nothing. */
import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { contentOf } from '../own-content.ts';
import { readConfig, type Config } from '../config.ts';
import { headOf, readShelfTable, writeShelf, writeShelfYaml } from '../content/shelf-table.ts';
import { readShelf, readShelfFile, shelfFile } from '../content/shelf.ts';
import { languageOfDevice } from '../core/language-tag.ts';
import type { Tea } from '../core/teas/tea.ts';
import { PlainMistake, runCommand } from '../start.ts';
import { kindOf, mistakesTold, textOf, writeNew, type Speech } from './table-files.ts';

const usage = `npm run shelf
npm run shelf -- out shelf.csv | shelf.yaml
npm run shelf -- in shelf.csv | shelf.yaml`;

interface Shelf extends Speech {
  readonly folder: string;
  readonly teas: readonly Tea[];
}

function listed({ folder, teas, language }: Shelf): string {
  return [...readShelf(folder, teas).map(({ id, names }) => `${id}\t${names[language]}`), usage].join('\n');
}

function written(shelf: Shelf, file: string): string {
  const teas = readShelf(shelf.folder, shelf.teas);
  writeNew(file, kindOf(file, usage) === 'csv' ? writeShelf(teas) : writeShelfYaml(teas), shelf);
  return `${file}: ${teas.length}`;
}

function taken(shelf: Shelf, file: string): string {
  const teas = given(shelf, file);
  const kept = shelfFile(shelf.folder);
  // Renamed when it is whole: whoever reads the shelf meanwhile finds the old one or the new one.
  const head = existsSync(kept) ? headOf(readFileSync(kept, 'utf8')) : '';
  writeFileSync(`${kept}.new`, writeShelfYaml(teas, head));
  renameSync(`${kept}.new`, kept);
  return `${file}: ${teas.length}`;
}

function given(shelf: Shelf, file: string): readonly Tea[] {
  const text = textOf(file, shelf);
  if (kindOf(file, usage) === 'yaml') return readShelfFile(file, shelf.teas);
  const read = readShelfTable(text, shelf.teas);
  if ('mistakes' in read) throw mistakesTold(read.mistakes, shelf);
  return read.shelf;
}

function run(config: Config, [act, file, ...rest]: readonly string[]): string {
  if (rest.length > 0 || (act !== undefined && (file === undefined || !['in', 'out'].includes(act)))) {
    throw new PlainMistake(usage);
  }
  const content = contentOf(config);
  const language = languageOfDevice(config.deviceLanguage);
  const shelf = { folder: config.shopFolder, teas: content.teas, content, language };
  if (file === undefined) return listed(shelf);
  return act === 'in' ? taken(shelf, file) : written(shelf, file);
}

await runCommand(() => {
  process.stdout.write(`${run(readConfig(process.env), process.argv.slice(2))}\n`);
});
