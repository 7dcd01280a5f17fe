/** Keeps the screen lit while a brew is held; the browser takes the light back whenever the page is hidden. */
import { useEffect } from 'preact/hooks';

export function useWakeLock(wanted: boolean): void {
  useEffect(() => {
    if (!wanted || !('wakeLock' in navigator)) return undefined;
    let ended = false;
    let held: WakeLockSentinel | null = null;
    const take = (): void => {
      if (document.visibilityState !== 'visible') return;
      navigator.wakeLock
        .request('screen')
        .then((sentinel) => {
          if (ended) void sentinel.release();
          held = sentinel;
        })
        // Refused on a low battery: the screen then goes dark as it always does.
        .catch(() => undefined);
    };
    take();
    document.addEventListener('visibilitychange', take);
    return () => {
      ended = true;
      document.removeEventListener('visibilitychange', take);
      void held?.release();
    };
  }, [wanted]);
}
