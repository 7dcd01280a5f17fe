/** What every start has in common: the process runs in UTC, and what hinders it is told in plain words. */
import { realpathSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

/** Local time has gaps and repeats that timers stumble over; here there is none. Throws when it cannot be had. */
export function requireUtc(): void {
  process.env['TZ'] = 'UTC';
  const zone = new Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (new Date(2026, 6, 1).getTimezoneOffset() === 0 && zone === 'UTC') return;
  throw new PlainMistake(`the process runs in the zone ${zone}; start it with TZ=UTC`);
}

/** Something hinders the start. Its message is made to be read. */
export class PlainMistake extends Error {
  override readonly name = 'PlainMistake';
}

const readable = new Set(['PlainMistake', 'ConfigMistake', 'ContentMistake', 'StoreMistake']);

/** One message, never a stack. */
export function toldPlainly(error: unknown): string {
  if (!(error instanceof Error)) return 'Could not start.';
  if (readable.has(error.name)) return error.message;
  const { code, address, port } = error as { code?: string; address?: string; port?: number };
  const place = `${address ?? 'the address'}:${port ?? '?'}`;
  if (code === 'EADDRINUSE') return `${place} is in use by another program; close it, or choose another NINTHPOUR_PORT`;
  if (code === 'EACCES') return `${place} may not be listened on; choose a NINTHPOUR_PORT above 1023`;
  if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND') {
    return `${place} is no address of this machine; choose another NINTHPOUR_HOST`;
  }
  return `Could not start: ${error.name}${code === undefined ? '' : ` (${code})`}: ${error.message}`;
}

/** Does the work of a command; what hinders it is told, and ends the process with 1. */
export async function runCommand(work: () => void | Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    process.stderr.write(`${toldPlainly(error)}\n`);
    process.exitCode = 1;
  }
}

/** Whether the file of this URL is what was started, and not read by another. */
export function isStarted(url: string): boolean {
  const [, file] = process.argv;
  return file !== undefined && url === pathToFileURL(realpathSync(file)).href;
}
