/** Ties the sheet's state to the line, the postbox and what this device keeps. */
import { useEffect, useReducer, useRef } from 'preact/hooks';
import { forgetEverything, keep, keptOf } from './kept.ts';
import { makePostbox, newUpdateId, type Postbox } from './postbox.ts';
import { measureClock } from './server-clock.ts';
import { after, keptSheet, type Act, type Happened, type Sheet } from './sheet-state.ts';
import { listen } from './stream.ts';
import { pageLanguages, type Boot, type PageLanguage, type PageWords, type PostedWhat } from './wire.ts';

export interface Desk {
  readonly sheet: Sheet;
  readonly write: (text: string) => void;
  readonly tap: (place: string, key: string, label: string) => void;
  readonly speak: (language: PageLanguage) => void;
  readonly fresh: () => void;
}

export function useSheet(boot: Boot): Desk {
  const [sheet, happen] = useReducer<Sheet, Happened, Boot>(after, boot, ({ language, words, sheet: name }) =>
    keptSheet(language, words, keptOf(name)),
  );
  const now = useRef(sheet);
  now.current = sheet;
  const postbox = useRef<Postbox | null>(null);

  const act = (what: PostedWhat, shown: string, extra: Partial<Act> = {}): void => {
    const { lastId, language } = now.current;
    const updateId = newUpdateId();
    const done: Act = {
      updateId,
      line: null,
      what,
      shown,
      language,
      after: lastId,
      on: null,
      state: 'waiting',
      ...extra,
    };
    happen({ kind: 'acted', act: done });
    postbox.current?.add(done);
  };
  const speak = async (language: PageLanguage): Promise<void> => {
    document.cookie = `language=${language}; Path=/; Max-Age=31536000; SameSite=Lax`;
    const words = (await (await fetch(`/words/${language}`)).json()) as PageWords;
    happen({ kind: 'language', language, words });
  };

  useEffect(() => {
    postbox.current = makePostbox(
      now.current.acts.filter((kept) => kept.state === 'waiting'),
      {
        settled: (updateId, state, line) => happen({ kind: 'settled', updateId, state, line }),
        expired: () => location.reload(),
      },
    );
    // Both at once; but no hold is shown before the house's time is known.
    const clock = measureClock();
    const line = listen({
      told: (told) => happen({ kind: 'told', told }),
      // Too much was missed to be told in a piece: the sheet begins anew with the end of it.
      caughtUp: (isCut) =>
        isCut && now.current.caughtUp ? location.reload() : void clock.then(() => happen({ kind: 'caught-up', isCut })),
      line: (state) => happen({ kind: 'line', line: state }),
      // What this device kept is no past to go on from: the house tells it anew.
      lastId: () => (now.current.caughtUp ? now.current.lastId : null),
    });
    const wake = (): void => {
      if (document.visibilityState === 'hidden') return;
      line.wake();
      postbox.current?.wake();
    };
    const lose = (): void => line.lose();
    window.addEventListener('offline', lose);
    window.addEventListener('online', wake);
    document.addEventListener('visibilitychange', wake);
    return () => {
      line.end();
      window.removeEventListener('offline', lose);
      window.removeEventListener('online', wake);
      document.removeEventListener('visibilitychange', wake);
    };
  }, []);

  useEffect(() => keep(boot.sheet, sheet), [sheet.acts, sheet.told]);
  // The line is back: the house's time may have moved, and what waited may go.
  useEffect(() => {
    if (sheet.line !== 'open') return;
    postbox.current?.wake();
    void measureClock();
  }, [sheet.line]);
  useEffect(() => {
    if (sheet.caughtUp) open(boot, now.current, act);
  }, [sheet.caughtUp]);
  // The conversation follows the customer's language, and the page follows the conversation.
  useEffect(() => {
    const newest = sheet.entries.reduce<Sheet['entries'][number] | null>(
      (best, entry) => (best === null || entry.last > best.last ? entry : best),
      null,
    );
    const said = newest?.said.language;
    if (sheet.caughtUp && said !== undefined && said !== now.current.language) speak(said).catch(() => undefined);
  }, [sheet.caughtUp, sheet.lastId]);
  useEffect(() => {
    document.documentElement.lang = sheet.language;
    document.title = sheet.words['page-title'];
  }, [sheet.language]);

  return {
    sheet,
    write: (text) => act({ kind: 'text', text }, text),
    tap: (place, key, label) => act({ kind: 'tap', key }, label, { on: place }),
    speak(language) {
      speak(language)
        // Told to the conversation in the language's own name, so that its answers turn too.
        .then(() => act({ kind: 'text', text: pageLanguages[language] }, pageLanguages[language]))
        .catch(() => undefined);
    },
    fresh() {
      fetch('/fresh', { method: 'POST' })
        .then(forgetEverything)
        .then(() => location.assign('/'))
        .catch(() => undefined);
    },
  };
}

/** A label is opened once each time it is scanned, not again when the page is loaded anew. */
function open(boot: Boot, sheet: Sheet, act: (what: PostedWhat, shown: string) => void): void {
  // Kept by the browser through a reload, and also when another sheet is begun at the same address.
  const { opened } = (history.state ?? {}) as { readonly opened?: string };
  if (opened === boot.sheet) return;
  if (boot.payload === '' && (sheet.entries.length > 0 || sheet.acts.length > 0)) return;
  history.replaceState({ opened: boot.sheet }, '');
  act({ kind: 'open', payload: boot.payload }, '');
}
