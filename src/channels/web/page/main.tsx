/** Entrance of the page: reads what the server left, and puts the sheet in place of the frame. */
import { render } from 'preact';
import { BrewSheet } from './brew-sheet.tsx';
import { keepShell } from './shell.ts';
import type { Boot } from './wire.ts';

const place = document.getElementById('sheet');
const boot = document.getElementById('boot')?.textContent;
if (place === null || boot === undefined) throw new Error('this page was not made by its server');
place.replaceChildren();
render(<BrewSheet boot={JSON.parse(boot) as Boot} />, place);
// Last: it must not delay the first words.
if (document.readyState === 'complete') keepShell();
else window.addEventListener('load', keepShell);
