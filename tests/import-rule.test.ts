/** Who may import whom. The table is the rule; planted faults prove that it bites. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const src = fileURLToPath(new URL('../src', import.meta.url));

/** Folder or file under src → what it may import, beside itself. The most specific row holds; a type-only right is marked. */
const rule: Record<string, readonly string[]> = {
  'core/units.ts': [],
  'core/lazily.ts': [],
  'core/language-tag.ts': ['core/units.ts'],
  'core/brewing': ['core/units.ts'],
  'core/lessons': ['core/units.ts', 'temporal-polyfill', 'rrule-temporal'],
  'core/words': ['core/units.ts', '@fluent/bundle'],
  'core/teas': ['core/units.ts'],
  'core/reading': ['core/units.ts', 'core/lazily.ts', 'core/teas'],
  'core/flow': [],
  'core/talk': ['core/flow/flow.ts', 'core/reading', 'core/teas/plain-text.ts', 'core/lessons', 'core/lazily.ts'],
  'core/functions.ts': ['core'],
  'core/functions': ['core'],
  'messages.ts': ['core/units.ts'],
  'clock.ts': ['core/units.ts'],
  'log.ts': ['core/units.ts', 'pino'],
  'in-turn.ts': [],
  'start.ts': ['node:fs', 'node:url'],
  operation: ['core/units.ts', 'clock.ts', 'log.ts', 'store/contract.ts', 'store/vitals.ts', 'node-cron', 'node:'],
  'operation.ts': [
    'core/units.ts',
    'messages.ts',
    'clock.ts',
    'log.ts',
    'config.ts',
    'operation',
    'store',
    'project-root.ts',
    'start.ts',
    'node:path',
  ],
  'project-root.ts': ['node:fs', 'node:path', 'node:url'],
  'config.ts': ['core/units.ts', 'project-root.ts', 'zod', 'node:path', 'node:os'],
  // Seats are judged by the core where the rows are locked.
  store: [
    'messages.ts',
    'project-root.ts',
    'type core',
    'core/lessons',
    'better-sqlite3',
    'node:fs',
    'node:path',
    'node:url',
    'node:crypto',
  ],
  conversation: [
    'core',
    'messages.ts',
    'store/contract.ts',
    'store/lesson-contract.ts',
    'store/desk-contract.ts',
    'store/quote.ts',
    'clock.ts',
    'in-turn.ts',
  ],
  delivery: [
    'core/lessons/icalendar.ts',
    'core/lessons/calendar.ts',
    'core/words',
    'core/units.ts',
    'messages.ts',
    'store/contract.ts',
    'type store/lesson-contract.ts',
    'type store/idle-contract.ts',
    'clock.ts',
    'log.ts',
  ],
  'channels/terminal': [
    'messages.ts',
    'log.ts',
    'node:readline',
    'node:readline/promises',
    'node:stream',
    'node:crypto',
  ],
  'channels/web': [
    'messages.ts',
    'log.ts',
    'project-root.ts',
    'core/lazily.ts',
    'core/language-tag.ts',
    'hono',
    '@hono/node-server',
    'preact',
    'node:',
  ],
  'channels/telegram': [
    'messages.ts',
    'log.ts',
    'core/language-tag.ts',
    'grammy',
    'node:crypto',
    'node:http',
    'node:timers/promises',
  ],
  'channels/mail': ['messages.ts', 'log.ts', 'in-turn.ts', 'nodemailer', 'node:stream'],
  'channels/web/page': ['messages.ts', 'preact', 'vite', 'node:'],
  pictures: [
    'type core',
    'messages.ts',
    'in-turn.ts',
    'project-root.ts',
    'pdfkit',
    'fontkit',
    'subset-font',
    'uqr',
    '@resvg/resvg-js',
    'node:fs',
    'node:module',
    'node:path',
    'node:worker_threads',
  ],
  content: [
    'core',
    'project-root.ts',
    'node:fs',
    'node:path',
    'node:crypto',
    'node:util',
    'yaml',
    'zod',
    'csv-parse',
    '@fluent/syntax',
  ],
  'content.ts': ['content', 'core', 'node:fs', 'node:path'],
  'own-content.ts': [
    'config.ts',
    'project-root.ts',
    'content.ts',
    'core/flow/step.ts',
    'type conversation',
    'type delivery',
    'node:path',
  ],
  'app.ts': ['*'],
  'service.ts': ['*'],
  'service/distant-channels.ts': ['*'],
  'service/label-page.ts': ['core', 'content.ts', 'content', 'delivery/render.ts', 'messages.ts', 'store/contract.ts'],
  'main.ts': ['*'],
  commands: ['*'],
};

/** Lives in one folder only, whatever else a row allows. */
const homes: Record<string, readonly string[]> = {
  'better-sqlite3': ['store'],
  '@fluent/bundle': ['core/words'],
  zod: ['content', 'content.ts', 'config.ts', 'commands'],
  yaml: ['content', 'commands/calibrate.ts'],
  'csv-parse': ['content'],
  'temporal-polyfill': ['core/lessons'],
  hono: ['channels/web'],
  grammy: ['channels/telegram'],
  nodemailer: ['channels/mail'],
  'node-cron': ['operation'],
  pdfkit: ['pictures'],
  fontkit: ['pictures'],
  'subset-font': ['pictures'],
  uqr: ['pictures'],
  '@resvg/resvg-js': ['pictures'],
};

interface Import {
  readonly file: string;
  readonly target: string;
  readonly typeOnly: boolean;
}

const within = (path: string, folder: string): boolean =>
  path === folder || path.startsWith(folder.endsWith(':') ? folder : `${folder}/`);

function importsOf(file: string, text: string): Import[] {
  const statements = text.matchAll(
    /^\s*(?:import|export(?=[^'";=]*?\bfrom\s+'))\s+(type\s)?[^'";]*?(?:from\s+)?'([^']+)'|\bimport\('([^']+)'\)/gm,
  );
  return [...statements]
    .filter((m) => !/^\s*export\s+(?:const|function|class|interface|type\s+\w+\s*=)/.test(m[0]))
    .map((m) => {
      const name = m[2] ?? m[3] ?? '';
      const target = name.startsWith('.') ? normalize(join(dirname(file), name)) : name;
      return { file, target, typeOnly: m[1] !== undefined };
    });
}

function rowOf(file: string): string | undefined {
  const rows = Object.keys(rule).filter((row) => within(file, row));
  return rows.toSorted((a, b) => b.length - a.length)[0];
}

function allowed({ file, target, typeOnly }: Import): boolean {
  const row = rowOf(file);
  if (row === undefined) return false;
  const home = Object.entries(homes).find(([library]) => within(target, library))?.[1];
  if (home !== undefined && !home.some((folder) => within(file, folder))) return false;
  if (within(target, row)) return true;
  return (rule[row] ?? []).some((entry) => {
    if (entry === '*') return true;
    if (entry.startsWith('type ')) return typeOnly && within(target, entry.slice(5));
    return within(target, entry);
  });
}

const breaches = (files: readonly (readonly [string, string])[]): string[] =>
  files
    .flatMap(([file, text]) => importsOf(file, text))
    .filter((i) => !allowed(i))
    .map((i) => `${i.file} imports ${i.target}`);

const sources = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name))
  .map((name) => [relative('.', name), readFileSync(join(src, name), 'utf8')] as const);

describe('the import rule', () => {
  it('is kept by every file', () => {
    expect(sources.length).toBeGreaterThan(10);
    expect(sources.flatMap(([file, text]) => importsOf(file, text)).length).toBeGreaterThan(sources.length / 2);
    expect(breaches(sources)).toEqual([]);
  });

  it.each([
    ['core/units.ts', "import { x } from './brewing/plan.ts';"],
    ['core/brewing/water.ts', "import type { Tea } from '../teas/tea.ts';"],
    ['core/brewing/water.ts', "import { readFileSync } from 'node:fs';"],
    ['core/flow/step.ts', "import type { Language } from '../units.ts';"],
    ['core/reading/reading.ts', "import { planBrew } from '../brewing/schedule.ts';"],
    ['core/lessons/seats.ts', "import { systemClock } from '../../clock.ts';"],
    ['store/sqlite/inbox.ts', "import { step } from '../../core/flow/step.ts';"],
    ['conversation/handle.ts', "import Database from 'better-sqlite3';"],
    ['conversation/handle.ts', "import { openStore } from '../store/sqlite/database.ts';"],
    ['delivery/loop.ts', "import { step } from '../core/flow/step.ts';"],
    ['channels/web/server.ts', "import type { Store } from '../../store/contract.ts';"],
    ['channels/web/server.ts', "import { words } from '../../core/words/words.ts';"],
    ['channels/terminal/terminal.ts', "import { page } from '../web/server.ts';"],
    ['pictures/ladder.ts', "import { planBrew } from '../core/brewing/schedule.ts';"],
    ['pictures/ladder.ts', "export { planBrew } from '../core/brewing/schedule.ts';"],
    ['channels/web/server.ts', "const words = await import('../../core/words/words.ts');"],
    ['helpers/odds-and-ends.ts', "import 'node:fs';"],
  ])('catches a fault planted in %s: %s', (file, text) => {
    expect(breaches([[file, text]])).toHaveLength(1);
  });

  it.each([
    ['store/sqlite/outbox.ts', "import type { Saying } from '../../core/flow/flow.ts';"],
    ['pictures/ladder.ts', "import type { Plan } from '../core/brewing/plan.ts';"],
    ['app.ts', "import { openStore } from './store/sqlite/database.ts';"],
  ])('lets %s be: %s', (file, text) => {
    expect(breaches([[file, text]])).toEqual([]);
  });
});
