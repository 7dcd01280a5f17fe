/** The page before its scripts run: the frame, the plan of a label, and what the scripts need to begin. */
import { html, raw } from 'hono/html';
import { drawLadder, ladderWidth } from './page/ladder-drawing.ts';
import { isPlanName, wholes } from './page/whole.ts';
import { pageLanguages, type Boot, type PageLanguage, type PageWords, type Said } from './page/wire.ts';
import type { Assets } from './assets.ts';

type Html = ReturnType<typeof html>;

/** The sheet itself. */
export function sheetPage(boot: Boot, assets: Assets, path: string): Html {
  const body = html`<div id="sheet">
      ${masthead(boot.words, boot.language, path)}
      <main class="column">
        ${boot.label === null ? html`<p class="quiet late-shown opening">${boot.words['page-opening']}</p>` : label(boot.label, boot.words)}
      </main>
    </div>
    <noscript><p class="column quiet">${boot.words['page-no-script']}</p></noscript>
    <script type="application/json" id="boot">
      ${raw(asScriptData(boot))}
    </script>`;
  return frame({ language: boot.language, words: boot.words, assets, scripts: true, body });
}

/** A page that says one thing: not found, too fast, something went wrong. */
export function noticePage(language: PageLanguage, words: PageWords, assets: Assets, text: string): Html {
  const body = html`<main class="column notice">
    <h1 class="sheet-name">${words['page-title']}</h1>
    <p>${text}</p>
    <p><a href="/">${words['page-back']}</a></p>
  </main>`;
  return frame({ language, words, assets, scripts: false, body });
}

/** What a telephone paints around the page, by the light: the paper's colour, as in `page/values.css`. */
export const paper = { light: '#f8f8f5', dark: '#191715' } as const;

interface Frame {
  readonly language: PageLanguage;
  readonly words: PageWords;
  readonly assets: Assets;
  readonly scripts: boolean;
  readonly body: Html;
}

function frame({ language, words, assets, scripts, body }: Frame): Html {
  return html`<!doctype html>
    <html lang="${language}">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        ${Object.entries(paper).map(
          ([light, colour]) =>
            html`<meta name="theme-color" media="(prefers-color-scheme: ${light})" content="${colour}" />`,
        )}
        <title>${words['page-title']}</title>
        <link rel="icon" href="/mark.svg" type="image/svg+xml" />
        ${assets.styles.map((name) => html`<link rel="stylesheet" href="/assets/${name}" />`)}
        ${scripts ? assets.scripts.map((name) => html`<script type="module" src="/assets/${name}"></script>`) : ''}
      </head>
      <body>
        ${body}
      </body>
    </html>`;
}

function masthead(words: PageWords, language: PageLanguage, path: string): Html {
  return html`<header class="masthead column">
    <h1 class="sheet-name">${words['page-title']}</h1>
    <nav class="languages" aria-label="${words['page-language']}">
      ${Object.entries(pageLanguages).map(
        ([tag, name]) =>
          html`<a
            href="${path}?language=${tag}"
            lang="${tag}"
            hreflang="${tag}"
            ${tag === language ? raw('aria-current="true"') : ''}
            >${name}</a
          >`,
      )}
    </nav>
  </header>`;
}

function label(said: Said, words: PageWords): Html {
  return html`<section class="entry" lang="${said.language}" aria-label="${words['page-from-label']}">
    ${said.paragraphs.map(
      (paragraph, n) => html`<p${raw(isPlanName(said, n) ? ' class="plan-name"' : '')}>${inWholes(paragraph)}</p>`,
    )}
    ${said.ladder === undefined ? '' : ladder(said.ladder)}
  </section>`;
}

/** As the page shows it: nothing may move when its scripts take over. */
const inWholes = (text: string): readonly Html[] =>
  wholes(text).map((part, n) => (n % 2 === 0 ? html`${part}` : html`<span class="whole">${part}</span>`));

function ladder(of: NonNullable<Said['ladder']>): Html {
  const drawn = drawLadder(of);
  return html`<figure class="ladder">
    <figcaption>${of.title}</figcaption>
    <svg viewBox="0 0 ${ladderWidth} ${drawn.height}" role="img" aria-label="${drawn.spoken}">
      <path class="rail" d="${drawn.rail}" />
      ${drawn.rungs.map(
        (rung) =>
          html`<text class="rung-number" x="${drawn.numberX}" y="${rung.textY}">${rung.n}</text>
            <path class="rung" d="${rung.outline}" fill-opacity="${rung.ink}" />
            <text x="${rung.textX}" y="${rung.textY}">${rung.label}</text>`,
      )}
    </svg>
  </figure>`;
}

/** No "<" is left, so nothing in it can end the element. */
const asScriptData = (boot: Boot): string => JSON.stringify(boot).replaceAll('<', '\\u003c');
