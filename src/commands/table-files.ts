/** Files a shopkeeper edits in a spreadsheet or an editor: what kind one is, reading it, writing a new one, telling its mistakes. */
import { isUtf8 } from 'node:buffer';
import { readFileSync, writeFileSync } from 'node:fs';
import { extname } from 'node:path';
import type { Content } from '../content.ts';
import { lineMistake, type LineMistake } from '../content/csv.ts';
import type { Facts } from '../core/flow/flow.ts';
import type { Language } from '../core/units.ts';
import { PlainMistake } from '../start.ts';

/** Who is told, in which words. */
export interface Speech {
  readonly content: Pick<Content, 'words'>;
  readonly language: Language;
}

export function saidPlainly({ content, language }: Speech, key: string, values: Facts = {}): PlainMistake {
  return new PlainMistake(content.words.say(language, { key, values }));
}

export function kindOf(file: string, usage: string): 'csv' | 'yaml' {
  const ending = extname(file).toLowerCase();
  if (ending === '.csv') return 'csv';
  if (ending === '.yaml' || ending === '.yml') return 'yaml';
  throw new PlainMistake(usage);
}

export function textOf(file: string, speech: Speech): string {
  const bytes = bytesOf(file, speech);
  if (!isUtf8(bytes)) throw mistakesTold([lineMistake('table-encoding', firstStrangeLine(bytes), 'table')], speech);
  return bytes.toString('utf8');
}

function bytesOf(file: string, speech: Speech): Buffer {
  try {
    return readFileSync(file);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    throw saidPlainly(speech, 'lesson-table-missing', { file });
  }
}

/** In no UTF-8 is a line feed part of another sign. */
function firstStrangeLine(bytes: Buffer): number {
  let [line, start] = [1, 0];
  for (
    let end = bytes.indexOf('\n');
    end >= 0 && isUtf8(bytes.subarray(start, end));
    end = bytes.indexOf('\n', start)
  ) {
    [line, start] = [line + 1, end + 1];
  }
  return line;
}

/** Never over a file that is there: it may hold what was not taken in yet. */
export function writeNew(file: string, text: string, speech: Speech): void {
  try {
    writeFileSync(file, text, { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    throw saidPlainly(speech, 'lesson-table-there', { file });
  }
}

/** One mistake a line. */
export function mistakesTold(mistakes: readonly LineMistake[], { content, language }: Speech): PlainMistake {
  const lines = mistakes
    .toSorted((a, b) => a.line - b.line)
    .map(({ code, field, values, line }) => {
      const mistake = { key: `mistake-${code}`, values };
      return content.words.say(language, { key: 'lesson-table-place', values: { line, column: field, mistake } });
    });
  return new PlainMistake(lines.join('\n'));
}
