/** One message on the sheet: its paragraphs, its ladder, the hold under way, and what may be chosen. */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { Choices } from './choices.tsx';
import { Hold } from './countdown.tsx';
import { LadderFigure } from './ladder.tsx';
import type { Act, Entry } from './sheet-state.ts';
import { isPlanName } from './whole.ts';
import type { PageWords } from './wire.ts';
import { Paragraph } from './words.tsx';

interface Props {
  readonly entry: Entry;
  /** Whether its choices still stand. */
  readonly open: boolean;
  /** Of the whole sheet; until it is answered nothing else is taken. */
  readonly tapped: Act | null;
  /** A hold whose end has been called: what can be done now stands with the call. */
  readonly called: boolean;
  /** Has been announced otherwise. */
  readonly silent: boolean;
  /** The newest plan: it prints as a card. */
  readonly card: boolean;
  readonly words: PageWords;
  readonly ring: boolean;
  readonly tap: (place: string, key: string, label: string) => void;
  readonly call: (text: string) => void;
}

export function EntryLine({ entry, open, tapped, called, silent, card, words, ring, tap, call }: Props): JSX.Element {
  const { said, place } = entry;
  const self = useRef<HTMLLIElement>(null);
  const isCard = card && said.ladder !== undefined;
  return (
    <li
      class={classOf({
        isCard,
        isHolding: said.countdown !== undefined,
        isCalled: called,
        isLive: entry.first < entry.last,
      })}
      lang={said.language}
      aria-live={silent ? 'off' : undefined}
      tabIndex={-1}
      ref={self}
    >
      {said.paragraphs.map((paragraph, n) => (
        // One that says something else is another, so that it is read out whole.
        <Paragraph key={`${n} ${paragraph}`} of={paragraph} isName={isPlanName(said, n)} />
      ))}
      {said.file !== undefined && (
        <p class="file">
          <a href={`/file/${said.id}`} download>
            {said.file}
          </a>
        </p>
      )}
      {said.ladder && <LadderFigure of={said.ladder} />}
      {said.countdown && <Hold id={place} of={said.countdown} words={words} ring={ring} call={call} />}
      {open && !called && said.choices.length > 0 && (
        <Choices
          of={said.choices}
          tapped={tapped}
          words={words}
          take={({ key, label }) => {
            // The button is about to go: the next Tab must go on from here.
            self.current?.focus({ preventScroll: true });
            tap(place, key, label);
          }}
        />
      )}
      {isCard && (
        <button type="button" class="aside" lang={document.documentElement.lang} onClick={() => print()}>
          {words['page-print']}
        </button>
      )}
    </li>
  );
}

interface Looks {
  readonly isCard: boolean;
  readonly isHolding: boolean;
  readonly isCalled: boolean;
  /** Written on where it stands, as the steps of a brew are. */
  readonly isLive: boolean;
}

const classOf = ({ isCard, isHolding, isCalled, isLive }: Looks): string =>
  ['entry', isCard && 'card', isHolding && 'holding', isCalled && 'called', isLive && 'live'].filter(Boolean).join(' ');
