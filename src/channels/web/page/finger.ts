/** Tells a second touch of the same finger from one that is meant: a wet one taps twice, and what has come under it since is not what it wanted. */

/** Nobody reads what is new and chooses from it in so short a time. Common practice, no source. */
const againMs = 400;
/** In pixels of the page: half a fingertip. */
const apart = 16;

type Touch = Pick<MouseEvent, 'timeStamp' | 'clientX' | 'clientY' | 'detail'>;

export function makeFinger(): (touch: Touch) => boolean {
  let last: Touch | null = null;
  return (touch) => {
    // A key has no place on the page, and is pressed on purpose.
    if (touch.detail === 0) return false;
    const before = last;
    last = touch;
    if (before === null || touch.timeStamp - before.timeStamp > againMs) return false;
    return Math.hypot(touch.clientX - before.clientX, touch.clientY - before.clientY) <= apart;
  };
}

export const isSameTouch = makeFinger();
