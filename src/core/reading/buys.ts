/** "A quarter pound of the ceylon please": ordered by its weight, and not brewed. */
import { after, before } from './nearby.ts';
import type { Measure } from './measures.ts';
import type { Observation } from './observation.ts';

/** So much goes into no pot: judgement. */
const leastG = 25;
const isStock = ({ dimension, value }: Measure): boolean =>
  (dimension === 'mass' && value >= leastG) || dimension === 'ounce';

/** One weight and a tea beside it, a word that asks for it, and no vessel, no heat and no water. */
export function buysByWeight({ plain, words, teas, vessels, measures }: Observation): boolean {
  const [weight, ...others] = measures;
  if (weight === undefined || others.length > 0 || !isStock(weight) || teas.length === 0) return false;
  if (vessels.length > 0 || words.length > longest || ofBrewing.test(words)) return false;
  const ahead = before(plain, weight.start, longest);
  return (
    (asksAhead.test(ahead) && aTea.test(after(plain, weight.end))) ||
    (opens.test(ahead) && ofTheTea.test(after(plain, weight.end)) && politely.test(words))
  );
}

const longest = 90;
const asksAhead =
  /\b(?:(?:can|could|may) (?:i|we|you)(?: please| just)? (?:get|have|buy|take|order|send|put)|(?:i|we)(?:'?d| would|'?ll| will)? (?:like|love|want|take|need|have)|give me|put me down for|send me|another)(?: me| us| aside| by| a| an| another| just| about| some| the)* ?$/;
const opens = /^(?:(?:hi|hello|hey|morning|and|just|ok|so|then|a|an|also|maybe)[ ,!]*)*$/;
const aTea = /^,? (?:more |extra )?(?:of |pack of |bag of |loose )/;
const ofTheTea = /^ (?:more )?of (?:the|your|that|this) |^ (?:more )?of [a-z ]{3,24}(?:please|pls|plz|thanks)/;
const politely = /\b(?:please|pls|plz|thanks|thank you|to go|to take away|more of)\b/;
const ofBrewing =
  /\b(?:brew\w*|steep\w*|infus\w*|use|using|put|per|water|how (?:much|long|hot|many|do|should)|cups?|grams? (?:in|to|per)|left)\b/;
