/** The small programs that are killed: as a run of faults bundled them, else from single modules. */
import { join } from 'node:path';
import { projectRoot } from '../../src/project-root.ts';

const folder = join(projectRoot, 'tests/faults');
const bundled = process.env['FAULTS_BUILT'];

const program = (name: string): string => (bundled ? join(bundled, `${name}.js`) : join(folder, `${name}.mjs`));

export const echoHouse = program('echo-house');
export const opener = program('open-and-die');
/** Given to node before one of them: it may be told to die at a statement. */
export const watch = join(folder, 'watch.mjs');
