/** The last step of a build: parses every YAML file once, for every start to come. A wrong file is left for the start to tell. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../config.ts';
import { keepParsed } from '../content/parsed-before.ts';
import { ContentMistake, parseWhole } from '../content/yaml-file.ts';

const parsed = new Map<string, unknown>();
for (const folder of ['flows', 'data']) {
  for (const name of readdirSync(join(projectRoot, folder), { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.yaml')) continue;
    const text = readFileSync(join(projectRoot, folder, name), 'utf8');
    try {
      parsed.set(text, parseWhole(text, name));
    } catch (error) {
      if (!(error instanceof ContentMistake)) throw error;
    }
  }
}
keepParsed(parsed);
