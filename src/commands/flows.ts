/** `npm run flows`: checks every flow, sentence and data file; with --draw DIR, draws each flow as a picture. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { ContentMistake, readContent } from '../content.ts';
import { readAnew } from '../content/kept.ts';
import { readWordFiles } from '../content/words.ts';
import type { Flow } from '../core/flow/book.ts';
import { drawFlow } from '../pictures/flow-drawing.ts';
import { projectRoot } from '../project-root.ts';
import { sketchOf, type Sentence } from './flow-sketch.ts';

const flowsDir = join(projectRoot, 'flows');

function main(): void {
  readAnew();
  const { values, positionals } = parseArgs({ options: { draw: { type: 'boolean' } }, allowPositionals: true });
  const { book, words } = readContent({
    flowsDir,
    dataDir: join(projectRoot, 'data'),
    shopDir: join(projectRoot, 'data', 'shop'),
  });
  const flows = Object.values(book.flows);
  const places = flows.reduce((sum, flow) => sum + Object.keys(flow.places).length, 0);
  const sentences = words.keys().length;
  console.log(words.say('en', { key: 'flows-checked', values: { flows: flows.length, places, sentences } }));
  if (values.draw) draw(flows, positionals[0] ?? join(projectRoot, 'var', 'flows'));
}

function draw(flows: readonly Flow[], folder: string): void {
  mkdirSync(folder, { recursive: true });
  const sentence = sentencesIn(readWordFiles(flowsDir).sources.en.text);
  for (const flow of flows) {
    const file = join(folder, `${flow.name}.svg`);
    writeFileSync(file, drawFlow(sketchOf(flow, sentence)));
    console.log(file);
  }
}

/** Sentences as written, their values in angle quotes: "How much does ‹vessel› hold?". */
function sentencesIn(source: string): Sentence {
  const written = new Map([...source.matchAll(/^([\w-]+) = (.*)$/gm)].map(([, key, text]) => [key, text ?? '']));
  return (key) => (written.get(key) ?? key).replace(/\{[^}$]*\$([\w-]+)[^}]*\}/g, '‹$1›');
}

try {
  main();
} catch (error) {
  const isExpected = error instanceof ContentMistake || (error as { code?: string }).code?.startsWith('ERR_PARSE_ARGS');
  if (!isExpected) throw error;
  console.error((error as Error).message);
  process.exitCode = 1;
}
