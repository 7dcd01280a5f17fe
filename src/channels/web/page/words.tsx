/** A text on the sheet, in which numbers stay with what they count. */
import type { JSX } from 'preact';
import { itemOf, wholes } from './whole.ts';

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

/** One of a numbered list hangs on its number. */
export function Paragraph({ of, isName }: { readonly of: string; readonly isName: boolean }): JSX.Element {
  const item = itemOf(of);
  if (item === null) {
    return (
      <p class={isName ? 'plan-name' : undefined}>
        <Words of={of} />
      </p>
    );
  }
  return (
    <p class="item">
      <span class="count">{item.count}</span> <Words of={item.text} />
    </p>
  );
}
