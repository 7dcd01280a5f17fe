/** The real flows and data, read once for all tests of a process: reading them takes longer than most tests. */
import { readConfig } from '../src/config.ts';
import { contentOf } from '../src/own-content.ts';

export const content = contentOf(readConfig({}));
