/** The head of the sheet: its name, and the languages. */
import type { JSX } from 'preact';
import { pageLanguages, type PageLanguage, type PageWords } from './wire.ts';

interface Props {
  readonly words: PageWords;
  readonly language: PageLanguage;
  readonly speak: (language: PageLanguage) => void;
}

export function Masthead({ words, language, speak }: Props): JSX.Element {
  return (
    <header class="masthead column">
      <h1 class="sheet-name">{words['page-title']}</h1>
      <nav class="languages" aria-label={words['page-language']}>
        {(Object.keys(pageLanguages) as PageLanguage[]).map((tag) => (
          <a
            key={tag}
            href={`?language=${tag}`}
            lang={tag}
            hreflang={tag}
            aria-current={tag === language ? 'true' : undefined}
            onClick={(event) => {
              event.preventDefault();
              if (tag !== language) speak(tag);
            }}
          >
            {pageLanguages[tag]}
          </a>
        ))}
      </nav>
    </header>
  );
}
