/** The foot of the sheet: whether it may sound, and a fresh one for the next person. */
import type { JSX } from 'preact';
import type { BellState } from './brew-sheet.tsx';
import { Elsewhere } from './elsewhere.tsx';
import { TelegramLink } from './telegram-link.tsx';
import type { PageWords } from './wire.ts';

interface Props {
  readonly words: PageWords;
  readonly bell: BellState;
  readonly fresh: () => void;
  readonly telegram: string | null;
}

export function Foot({ words, bell, fresh, telegram }: Props): JSX.Element {
  return (
    <footer class="column foot">
      <label class="consent">
        <input type="checkbox" checked={bell.wanted} onChange={(event) => bell.want(event.currentTarget.checked)} />
        <span>{words['page-sound']}</span>
      </label>
      {bell.wanted && !bell.awake && <p class="quiet">{words['page-sound-wake']}</p>}
      <TelegramLink words={words} telegram={telegram} />
      <a class="my-data" href="/my-data" download>
        {words['page-my-data']}
      </a>
      <Elsewhere words={words} />
      <details>
        <summary>{words['page-fresh']}</summary>
        <button type="button" onClick={fresh}>
          {words['page-fresh-confirm']}
        </button>
      </details>
    </footer>
  );
}
