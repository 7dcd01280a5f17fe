/** What is said of a lesson that is over: it was missed, it was lovely, once more, what was that tea called. Knows no lesson. */
import { firstSaid, type Sentence } from './sentence.ts';

/** The first that fits; each is a cue of the same name. */
const afterwards = ['which-tea', 'missed', 'once-more', 'lovely'] as const;
export type Afterwards = (typeof afterwards)[number];

/** Longer texts tell more than that. */
const longest = 120;

/** Null where nothing of the kind is said. */
export function hearAfterwards(sentence: Sentence): Afterwards | null {
  return sentence.text.length > longest ? null : (firstSaid(sentence, afterwards) ?? null);
}
