/** The last step of a build: reads every file of the content once, for every start to come. A wrong file is left for the start to tell. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ContentMistake, readContent } from '../content.ts';
import { keepNoted, noteParsed, readAnew } from '../content/kept.ts';
import { parseWhole } from '../content/yaml-file.ts';
import { projectRoot } from '../project-root.ts';

function unlessWrong(read: () => void): void {
  try {
    read();
  } catch (error) {
    if (!(error instanceof ContentMistake)) throw error;
  }
}

readAnew();
const [flowsDir, dataDir] = ['flows', 'data'].map((name) => join(projectRoot, name)) as [string, string];
for (const folder of [flowsDir, dataDir]) {
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.yaml')) continue;
    const text = readFileSync(join(folder, name), 'utf8');
    unlessWrong(() => noteParsed(text, parseWhole(text, name)));
  }
}
unlessWrong(() => readContent({ flowsDir, dataDir, shopDir: join(dataDir, 'shop') }));
keepNoted();
