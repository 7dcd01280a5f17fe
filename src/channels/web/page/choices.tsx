/** What may be chosen under a message. What was taken is seen at once, and stays where it is until it is answered. */
import type { JSX } from 'preact';
import { isSameTouch } from './finger.ts';
import type { Act } from './sheet-state.ts';
import { breadth } from './whole.ts';
import type { PageWords, Said } from './wire.ts';
import { Words } from './words.tsx';

type Choice = Said['choices'][number];

interface Props {
  readonly of: readonly Choice[];
  readonly tapped: Act | null;
  readonly words: PageWords;
  readonly take: (choice: Choice) => void;
}

/** In letters: broader labels stand below each other where the column is narrow, briefer ones beside each other even there. */
const broad = 20;
const brief = 12;

function shapeOf(choices: readonly Choice[]): string {
  const broadest = Math.max(...choices.map(({ label }) => breadth(label)));
  return `choices${broadest > broad ? ' broad' : ''}${broadest <= brief ? ' brief' : ''}`;
}

export function Choices({ of, tapped, words, take }: Props): JSX.Element {
  const isTaken = ({ key }: Choice): boolean => tapped?.what.kind === 'tap' && tapped.what.key === key;
  return (
    <div class={shapeOf(of)} role="group" aria-label={words['page-choices']}>
      {of.map((choice) => (
        <button
          key={choice.key}
          type="button"
          class={isTaken(choice) ? 'taken' : undefined}
          aria-disabled={tapped === null ? undefined : 'true'}
          onClick={(event) => {
            if (!isSameTouch(event) && tapped === null) take(choice);
          }}
        >
          <span>
            <Words of={choice.label} />
          </span>
        </button>
      ))}
      {tapped?.state === 'waiting' && of.some(isTaken) && <p class="quiet late-shown">{words['page-waiting']}</p>}
    </div>
  );
}
