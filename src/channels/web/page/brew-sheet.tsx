/** The sheet: one quiet column from the name at its head to the next empty line. */
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { wakeBell } from './bell.ts';
import { isLong, isOver, staleMs } from './countdown.tsx';
import { EntryLine } from './entry-line.tsx';
import { Foot } from './foot.tsx';
import { keepMayRing, mayRing } from './kept.ts';
import { Masthead } from './masthead.tsx';
import { OwnLine } from './own-line.tsx';
import { houseNow } from './server-clock.ts';
import { linesOf, tapUnderWay } from './sheet-lines.ts';
import type { Entry, Sheet } from './sheet-state.ts';
import { useSheet } from './use-sheet.ts';
import { useWakeLock } from './wake-lock.ts';
import { WritingLine } from './writing-line.tsx';
import type { Boot, PageWordKey } from './wire.ts';

export function BrewSheet({ boot }: { readonly boot: Boot }): JSX.Element {
  const desk = useSheet(boot);
  const { sheet } = desk;
  const { words } = sheet;
  const [call, setCall] = useState('');
  const bell = useBell();
  const lines = linesOf(sheet);
  const tapped = tapUnderWay(sheet);
  const card = lines.reduce<string | null>(
    (last, line) => (line.kind === 'entry' && line.entry.said.ladder ? line.entry.place : last),
    null,
  );
  useWakeLock(sheet.entries.some(isHolding));
  useScrolling(sheet, lines.length);
  const calledFrom = placeOfCalled(sheet);
  const callId = useCallId(sheet);
  const label = boot.label !== null && !isAnswered(sheet, boot) ? boot.label : null;
  const ofLine = lineWord(sheet, label !== null);

  return (
    <>
      <Masthead words={words} language={sheet.language} speak={desk.speak} />
      <main class="column">
        {label && (
          <ol class="lines" aria-label={words['page-from-label']}>
            <EntryLine
              entry={{ place: 'label', said: label, first: 0, last: 0 }}
              open={false}
              tapped={tapped}
              called={false}
              silent={false}
              card={card === null}
              words={words}
              ring={false}
              tap={desk.tap}
              call={setCall}
            />
          </ol>
        )}
        {sheet.isCut && <p class="quiet">{words['page-earlier']}</p>}
        <div role="log" aria-label={words['page-sheet']} aria-live={sheet.caughtUp ? 'polite' : 'off'}>
          <ol class="lines">
            {lines.map((line) =>
              line.kind === 'act' ? (
                <OwnLine key={line.act.updateId} act={line.act} words={words} />
              ) : (
                <EntryLine
                  key={line.entry.place}
                  entry={line.entry}
                  open={line.open}
                  tapped={tapped}
                  called={line.entry.place === calledFrom}
                  silent={line.entry.said.id === callId}
                  card={line.entry.place === card}
                  words={words}
                  ring={bell.wanted && bell.awake}
                  tap={desk.tap}
                  call={setCall}
                />
              ),
            )}
          </ol>
        </div>
        <p class="quiet" role="status">
          {ofLine === null ? '' : words[ofLine]}
        </p>
        <WritingLine
          words={words}
          hasBegun={boot.payload !== '' || sheet.acts.some(({ shown }) => shown !== '')}
          write={desk.write}
        />
      </main>
      <Foot words={words} bell={bell} fresh={desk.fresh} telegram={boot.telegram} />
      <p class="unseen" role="alert">
        {call}
      </p>
    </>
  );
}

/** What there is to say of the line to the house. */
function lineWord({ line, caughtUp }: Sheet, hasLabel: boolean): PageWordKey | null {
  if (line === 'lost') return navigator.cookieEnabled ? 'page-lost' : 'page-no-cookie';
  return caughtUp || hasLabel ? null : 'page-opening';
}

function isHolding({ said }: Entry): boolean {
  const { countdown } = said;
  return countdown !== undefined && !isLong(countdown) && countdown.endsAt + staleMs > houseNow();
}

const endedHold = ({ entries }: Sheet): Entry | undefined =>
  entries.findLast(({ said }) => said.countdown !== undefined && isOver(said.countdown));

/** The hold whose end has been called, if it was the last. */
function placeOfCalled(sheet: Sheet): string | null {
  const { entries } = sheet;
  const hold = endedHold(sheet);
  const isCalled = hold !== undefined && entries.some(({ said, last }) => last > hold.last && said.choices.length > 0);
  return isCalled ? hold.place : null;
}

/** The message with which the house calls the end of a hold: the page has called it by itself, and once is heard better than twice. */
function useCallId(sheet: Sheet): string | null {
  const before = useRef(0);
  if (endedHold(sheet) === undefined || !sheet.caughtUp) before.current = sheet.known.size;
  const call = sheet.entries.find(({ first, said }) => first > before.current && said.choices.length > 0);
  // Written on, it has something new to tell.
  return call !== undefined && call.first === call.last ? call.said.id : null;
}

/** The label's plan stands until the conversation has one of its own; what is no plan, until it has any answer. */
function isAnswered(sheet: Sheet, boot: Boot): boolean {
  const opened = sheet.acts.findLast((act) => act.what.kind === 'open' && act.what.payload === boot.payload);
  if (opened === undefined) return false;
  const at = opened.after === null ? 0 : (sheet.known.get(opened.after)?.at ?? 0);
  return sheet.entries.some(
    (entry) => entry.last > at && (entry.said.ladder !== undefined || boot.label?.ladder === undefined),
  );
}

export interface BellState {
  readonly wanted: boolean;
  readonly awake: boolean;
  readonly want: (wanted: boolean) => void;
}

function useBell(): BellState {
  const [wanted, setWanted] = useState(mayRing);
  const [awake, setAwake] = useState(false);
  const wake = (): void => void wakeBell(setAwake).catch(() => undefined);
  useEffect(() => {
    if (!wanted || awake) return undefined;
    const touches = ['pointerup', 'keydown'] as const;
    for (const touch of touches) window.addEventListener(touch, wake);
    return () => touches.forEach((touch) => window.removeEventListener(touch, wake));
  }, [wanted, awake]);
  return {
    wanted,
    awake,
    want(value) {
      keepMayRing(value);
      setWanted(value);
      if (value) wake();
    },
  };
}

/** Shows what is new with as much of the next empty line as fits, and the beginning of the new before its end. */
function useScrolling(sheet: Sheet, lines: number): void {
  const begun = useRef(false);
  // What was refused brings the choices before it back.
  const isRefused = sheet.acts.at(-1)?.state === 'refused';
  useEffect(() => {
    if (!sheet.caughtUp && sheet.entries.length === 0) return;
    // Whoever is about to press something keeps it before their eyes; who has just written waits for the answer.
    const focused = document.activeElement;
    if (focused?.matches('button, a, summary, input') && !focused.closest('.writing')) return;
    const newest = document.querySelector('.lines > li:last-child');
    // A sheet opened anew begins where it was left off, a bare or labelled one at its head.
    if (begun.current || sheet.entries.length > 1) {
      document.querySelector('.writing')?.scrollIntoView({ block: 'nearest' });
      newest?.scrollIntoView({ block: newest.getBoundingClientRect().top < 0 ? 'start' : 'nearest' });
    }
    begun.current = true;
  }, [sheet.caughtUp, sheet.line, sheet.lastId, lines, isRefused]);
}
