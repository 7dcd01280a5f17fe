// The database library as it is, but every statement is seen before it runs, so that a test may end the process just there.
import Real from 'better-sqlite3';

const die = () => process.kill(process.pid, 'SIGKILL');
let seen = false;

/** `globalThis.dieAt`: { before | after | committed: part of a statement }. */
function watch(sql) {
  const at = globalThis.dieAt;
  if (!at) return;
  if (at.nth !== undefined) {
    if (--at.nth < 0) die();
    return;
  }
  if (seen && at.after) die();
  // Queued before whoever waits for this commit is told of it.
  if (seen && at.committed && sql === 'COMMIT') queueMicrotask(die);
  const part = at.before ?? at.after ?? at.committed;
  if (part === undefined || !sql.includes(part)) return;
  if (at.before) die();
  seen = true;
}

export default class Watched extends Real {
  constructor(file, options = {}) {
    super(file, { ...options, verbose: watch });
  }
}
