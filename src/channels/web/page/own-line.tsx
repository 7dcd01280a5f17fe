/** What the person wrote or chose, as their own line. */
import type { JSX } from 'preact';
import type { Act } from './sheet-state.ts';
import type { PageWords } from './wire.ts';

export function OwnLine({ act, words }: { readonly act: Act; readonly words: PageWords }): JSX.Element {
  return (
    <li class={`own ${act.state}`}>
      <p lang={scriptOf(act)}>
        <span class="unseen" lang={document.documentElement.lang}>
          {words['page-you-wrote']}{' '}
        </span>
        <bdi>{act.shown}</bdi>
      </p>
      {act.state === 'waiting' && <p class="quiet late-shown">{words['page-waiting']}</p>}
      {act.state === 'refused' && <p class="quiet">{words['page-refused']}</p>}
    </li>
  );
}

/** A guest may write Chinese on an English sheet: it is then neither slanted nor read out as English. */
function scriptOf({ shown, language }: Act): string {
  return language === 'en' && /\p{Script=Han}/u.test(shown) ? 'zh' : language;
}
