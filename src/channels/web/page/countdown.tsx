/** A hold under way: large digits, a rung that fills, and one call when it is time to pour. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { setAlarm } from './alarm.ts';
import { buzz, setBell } from './bell.ts';
import { keepCalled, wasCalled } from './kept.ts';
import { houseNow, onThisDevice } from './server-clock.ts';
import type { PageWords, Said } from './wire.ts';

type Countdown = NonNullable<Said['countdown']>;

/** A call made this much early, for the time it takes to arrive, still ends its hold. */
const leadMs = 2_000;

export const isOver = ({ endsAt }: Countdown): boolean => endsAt - leadMs <= houseNow();

/** A hold that ended longer ago is not called any more. */
export const staleMs = 10 * 60_000;
/** A call this late, after a reload, would only confuse. */
const lateCallMs = 10_000;

/** Nobody watches the seconds of hours: until the last of them, the time of day stands there at which it is ready. */
const farMs = 60 * 60_000;

/** Nobody stands by such a hold. */
export const isLong = ({ startedAt, endsAt }: Countdown): boolean => endsAt - startedAt > farMs;

interface Props {
  readonly id: string;
  readonly of: Countdown;
  readonly words: PageWords;
  readonly ring: boolean;
  readonly call: (text: string) => void;
}

export function Hold({ id, of, words, ring, call }: Props): JSX.Element | null {
  const now = useHouseNow(of);
  useCall({ id, of, words, ring, call });
  const left = of.endsAt - now;
  if (left < -staleMs) return null;
  const share = Math.min(1, Math.max(0, (now - of.startedAt) / Math.max(1, of.endsAt - of.startedAt)));
  return (
    <div class={`hold${left > 0 ? '' : ' over'}${left > farMs ? ' far' : ''}`} aria-live="off">
      <p class="hold-label">{of.label}</p>
      {left > farMs ? (
        <p>
          <span class="hold-label">{words['page-ready-at']} </span>
          <time class="clock" dateTime={new Date(of.endsAt).toISOString()}>
            {clockOf(of.endsAt)}
          </time>
        </p>
      ) : left > 0 ? (
        <p class="digits" role="timer" aria-label={`${words['page-left']} ${spokenOf(left)}`}>
          {digitsOf(left)}
        </p>
      ) : (
        <p class="digits pour">{words['page-pour-now']}</p>
      )}
      <svg class="hold-rung" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
        <rect class="hold-whole" width="100" height="6" />
        <rect class="hold-past" width={share * 100} height="6" />
      </svg>
      {left <= -1000 && (
        <p class="hold-label" aria-hidden="true">
          {words['page-since']} {minutesOf(-left)}
        </p>
      )}
    </div>
  );
}

/** By the device's own clock and zone. */
function clockOf(endsAt: number): string {
  const { lang } = document.documentElement;
  const cycle = lang === 'en' ? 'h12' : 'h23';
  return new Date(onThisDevice(endsAt)).toLocaleTimeString(lang, {
    hour: 'numeric',
    minute: '2-digit',
    hourCycle: cycle,
  });
}

/** Whole seconds, rounded up while time is left: "0" is never shown before it is true. */
function digitsOf(ms: number): string {
  return ms <= 99_000 ? String(Math.ceil(ms / 1000)) : minutesOf(ms);
}

function minutesOf(ms: number): string {
  const seconds = Math.ceil(ms / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

/** To whoever hears it a bare number says no unit. */
function spokenOf(ms: number): string {
  const { lang } = document.documentElement;
  const seconds = Math.ceil(ms / 1000);
  const parts = { minute: Math.floor(seconds / 60), second: seconds % 60 };
  return Object.entries(parts)
    .filter(([, n]) => n > 0)
    .map(([unit, n]) => n.toLocaleString(lang, { style: 'unit', unit, unitDisplay: 'long' }))
    .join(' ');
}

/** Ticks often enough that no second is seen late. */
function useHouseNow(of: Countdown): number {
  const [now, setNow] = useState(houseNow);
  useEffect(() => {
    const tick = (): void => {
      setNow(houseNow());
      if (houseNow() > of.endsAt + staleMs) clearInterval(timer);
    };
    const timer = setInterval(tick, 100);
    document.addEventListener('visibilitychange', tick);
    tick();
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
    };
  }, [of.startedAt, of.endsAt]);
  return now;
}

function useCall({ id, of, words, ring, call }: Props): void {
  useEffect(() => {
    const key = `called.${id}.${of.endsAt}`;
    const isDone = (): boolean => wasCalled(key);
    if (isDone() || houseNow() - of.endsAt > lateCallMs) return undefined;
    const stopBell = ring ? setBell(onThisDevice(of.endsAt)) : () => undefined;
    let callOff = (): void => undefined;
    const look = (): void => {
      const left = of.endsAt - houseNow();
      // A timer may come early, and the house's time may have been measured anew: look again.
      if (left > 0) callOff = setAlarm(Math.min(left, 60_000), look);
      else if (!isDone() && left > -staleMs) {
        keepCalled(key);
        call(words['page-pour-now']);
        if (ring) buzz();
      }
    };
    look();
    return () => {
      callOff();
      if (!isDone()) stopBell();
    };
  }, [id, of.endsAt, ring]);
}
