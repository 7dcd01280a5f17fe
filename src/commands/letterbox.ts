/** Stands for the mail server in a played conversation: what would go out as a letter is shown instead. */
import { drawn, type DrawLadder } from '../channels/terminal/line.ts';
import type { Channel } from '../messages.ts';

export interface LetterboxParts {
  readonly show: (lines: readonly string[]) => void;
  readonly drawLadder: DrawLadder;
}

export function makeLetterbox({ show, drawLadder }: LetterboxParts): Channel {
  return {
    name: 'mail',
    start: () => Promise.resolve(),
    send(message) {
      // There is nothing to tap in a letter.
      const { chat, subject } = message;
      show([
        subject === undefined ? `→ ${chat}` : `→ ${chat} · ${subject}`,
        ...drawn({ ...message, choices: [] }, drawLadder),
      ]);
      return Promise.resolve({ outcome: 'sent', ref: message.id });
    },
    stop: () => Promise.resolve(),
  };
}
