/** The built program as a process of its own: started, spoken to, stopped, killed. */
import { spawn, type ChildProcessWithoutNullStreams } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../../src/project-root.ts';

export interface Service {
  readonly child: ChildProcessWithoutNullStreams;
  /** Resolves with the first line on stdout, or rejects with how it ended. */
  readonly ready: Promise<string>;
  readonly ended: Promise<Ended>;
}

export interface Ended {
  readonly code: number | null;
  readonly signal: string | null;
  readonly out: string;
  readonly told: string;
}

export interface Start {
  readonly script?: string;
  readonly node?: readonly string[];
  readonly args?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
}

export function startService({
  script = join(projectRoot, 'dist', 'main.js'),
  node = [],
  args = [],
  env = {},
}: Start): Service {
  if (!existsSync(script)) throw new Error(`${script} is missing: npm run build comes before this test`);
  const { PATH = '' } = process.env;
  const child = spawn(process.execPath, [...node, script, ...args], { env: { PATH, NINTHPOUR_PORT: '0', ...env } });
  let out = '';
  let told = '';
  child.stderr.on('data', (chunk) => (told += String(chunk)));
  const ended = new Promise<Ended>((resolve) =>
    child.once('close', (code, signal) => resolve({ code, signal, out, told })),
  );
  const ready = new Promise<string>((resolve, reject) => {
    child.stdout.on('data', (chunk) => {
      out += String(chunk);
      const [line, rest] = out.split('\n');
      if (rest !== undefined) resolve(line ?? '');
    });
    child.once('close', () => reject(new Error(`ended before it was ready: ${told}`)));
  });
  // Who waits for the end only need not catch this.
  ready.catch(() => {});
  return { child, ready, ended };
}
