/** Listens to what the house says, and comes back by itself whenever the line breaks. */
import type { Said, Told, Wrote } from './wire.ts';

export interface Heard {
  told(told: Told): void;
  /** Whether more was said before than was told. */
  caughtUp(isCut: boolean): void;
  line(state: 'open' | 'lost'): void;
  /** The last message this page has; what came after it is told again. */
  lastId(): string | null;
}

/** The house beats every twenty seconds; two missed beats mean that nobody is there. */
const silenceMs = 50_000;
const longestWaitMs = 30_000;

interface Line {
  /** Tries at once. */
  wake(): void;
  /** The device says itself that there is no connection. */
  lose(): void;
  end(): void;
}

export function listen(heard: Heard): Line {
  let source: EventSource | null = null;
  let failures = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let heardAt = 0;

  const close = (): void => {
    clearTimeout(timer);
    source?.close();
    source = null;
  };
  const later = (): void => {
    close();
    heard.line('lost');
    const wait = Math.min(longestWaitMs, 500 * 2 ** failures++);
    // Spread out, so that a house that comes back is not met by everybody at once.
    timer = setTimeout(open, wait * (0.5 + Math.random() / 2));
  };
  const alive = (): void => {
    heardAt = Date.now();
    clearTimeout(timer);
    timer = setTimeout(later, silenceMs);
  };
  const open = (): void => {
    close();
    const last = heard.lastId();
    source = new EventSource(last === null ? '/stream' : `/stream?after=${encodeURIComponent(last)}`);
    alive();
    source.addEventListener('said', (event) => {
      alive();
      heard.told({ said: JSON.parse(event.data as string) as Said });
    });
    source.addEventListener('wrote', (event) => {
      alive();
      heard.told({ wrote: JSON.parse(event.data as string) as Wrote });
    });
    source.addEventListener('caught-up', (event) => {
      alive();
      failures = 0;
      heard.line('open');
      heard.caughtUp(event.data === 'cut');
    });
    source.addEventListener('beat', alive);
    source.addEventListener('error', later);
  };
  open();
  return {
    wake() {
      if (source === null || Date.now() - heardAt > silenceMs) open();
    },
    lose: later,
    end: close,
  };
}
