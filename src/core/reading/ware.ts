/** What people brew in for want of anything else: a saucepan, an iron pot, a coffee maker, a bowl. The flow tells what to take it for. */
import type { Cues } from './cues/cues.ts';

export const wares = ['saucepan', 'iron-pot', 'coffee-maker', 'bowl'] as const;
export type Ware = (typeof wares)[number];

/** "No kettle, only a saucepan": the water is heated in it. */
const forTheWater =
  /\bkettle\b|\b(?:boil|heat)(?:ing|ed)? (?:the |my |some |hot )*water\b|(?:煮|烧|煲|滚)(?:开|热|滚)?水/;

/** A bowl without a lid, which is reckoned as a mug. */
const bowl = /[大空饭汤面海]碗|碗公|(?:吃饭|食饭)[的嘅]碗|\bsoup bowl\b/;

/** What is none of our vessels; a vessel that is named besides tells nothing of it, but that a bowl is named as a mug, and the cups a coffee maker holds. */
export function wareBeside(vessel: string | null, cues: Cues, words: string): Ware | null {
  if (vessel === null || (vessel === 'mug' && cupsOfMaker.test(words))) return readWare(cues, words);
  return vessel === 'mug' && bowl.test(words) ? 'bowl' : null;
}

/** "A 6 cup bialetti" */
const cupsOfMaker = /\b(?:\d|two|three|four|six|nine|twelve) ?cups? (?:bialetti|mok+a|espresso|coffee|stove)/;

export function readWare(cues: Cues, words: string): Ware | null {
  if (cues.has('ware-coffee-maker', words)) return 'coffee-maker';
  if (cues.has('ware-iron-pot', words)) return 'iron-pot';
  return cues.has('ware-saucepan', words) && !forTheWater.test(words) ? 'saucepan' : null;
}
