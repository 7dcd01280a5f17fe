/** Where the project's folders lie, from whichever of its files this is read: a source, a module of it, or the bundle. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of package.json. */
export const projectRoot = rootAbove(dirname(fileURLToPath(import.meta.url)));

/** What `ops/build.mjs` makes. */
export const builtFolder = join(projectRoot, 'dist');

function rootAbove(folder: string): string {
  const above = dirname(folder);
  return existsSync(join(folder, 'package.json')) || above === folder ? folder : rootAbove(above);
}
