/** A text on the sheet, in which numbers stay with what they count. */
import type { JSX } from 'preact';
import { wholes } from './whole.ts';

export function Words({ of }: { readonly of: string }): JSX.Element {
  return (
    <>
      {wholes(of).map((part, n) =>
        n % 2 === 0 ? (
          part
        ) : (
          <span key={n} class="whole">
            {part}
          </span>
        ),
      )}
    </>
  );
}
