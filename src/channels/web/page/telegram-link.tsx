/** One tap to the same conversation in Telegram, with the tea of this sheet. */
import type { JSX } from 'preact';
import type { PageWords } from './wire.ts';

interface Props {
  readonly words: PageWords;
  readonly telegram: string | null;
}

export function TelegramLink({ words, telegram }: Props): JSX.Element | null {
  if (telegram === null) return null;
  return (
    <a class="to-telegram" href={telegram} rel="noreferrer">
      {words['page-telegram']}
    </a>
  );
}
