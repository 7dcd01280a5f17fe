/** Calls at an instant, also in a page nobody looks at: there browsers hold a page's own timers back by up to a minute, a worker's not. */
import { ownWorker } from './own-worker.ts';
import { alarmWorker } from './worker-urls.ts';

const waiting = new Map<number, () => void>();
let worker: Worker | null = null;
let set = 0;

/** Returns what calls it off. `inMs` is at most a few weeks. */
export function setAlarm(inMs: number, ring: () => void): () => void {
  const id = ++set;
  waiting.set(id, ring);
  const wake = (due: number): void => {
    const called = waiting.get(due);
    waiting.delete(due);
    called?.();
  };
  // Both are asked, and the first one counts: a page without its worker still calls.
  const timer = setTimeout(() => wake(id), inMs);
  worker ??= startWorker(wake);
  // Nothing goes over to it but these numbers.
  worker?.postMessage({ id, inMs }, []);
  return () => {
    waiting.delete(id);
    clearTimeout(timer);
  };
}

function startWorker(wake: (id: number) => void): Worker | null {
  try {
    const started = new Worker(ownWorker(alarmWorker), { type: 'module' });
    started.addEventListener('message', (event) => wake(event.data as number));
    return started;
  } catch {
    return null;
  }
}
