/** What people brew in for want of anything else: a saucepan, an iron pot, a coffee maker. The flow tells what to take it for. */
import type { Cues } from './cues.ts';

export type Ware = 'saucepan' | 'iron-pot' | 'coffee-maker';

/** "No kettle, only a saucepan": the water is heated in it. */
const forTheWater = /\bkettle\b|\b(?:boil|heat)(?:ing|ed)? (?:the |my |some |hot )*water\b/;

export function readWare(cues: Cues, words: string): Ware | null {
  if (cues.has('ware-coffee-maker', words)) return 'coffee-maker';
  if (cues.has('ware-iron-pot', words)) return 'iron-pot';
  return cues.has('ware-saucepan', words) && !forTheWater.test(words) ? 'saucepan' : null;
}
