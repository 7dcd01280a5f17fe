/** "A quarter pound of the ceylon please": ordered by its weight, and not brewed. */
import { after, before } from '../nearby.ts';
import type { Measure } from '../amounts/measures.ts';
import type { Observation } from '../observation.ts';

/** So much goes into no pot: judgement. */
const leastG = 25;
const isStock = ({ dimension, value }: Measure): boolean =>
  (dimension === 'mass' && value >= leastG) || dimension === 'ounce';

/** One weight and a tea beside it, a word that asks for it, and no vessel, no heat and no water. */
export function buysByWeight({ plain, written, words, teas, vessels, measures }: Observation): boolean {
  const [weight, ...others] = measures;
  if (weight === undefined || others.length > 0 || !isStock(weight) || teas.length === 0) return false;
  if (vessels.length > 0 || words.length > longest || ofBrewing.test(words)) return false;
  const ahead = before(plain, weight.start, longest);
  return (
    (asksAhead.test(ahead) && aTea.test(after(plain, weight.end))) ||
    (opens.test(ahead) && ofTheTea.test(after(plain, weight.end)) && politely.test(written))
  );
}

/** 給我留二兩鐵觀音, 幫我秤半斤: one who asks to be given so much, and asks nothing of a brew. */
export function buysInHan({ plain, teas, vessels, measures, quantities }: Observation): boolean {
  if (teas.length === 0 || vessels.length > 0 || quantities.tempC.value !== null || plain.length > longest)
    return false;
  if (ofBrewingInHan.test(plain)) return false;
  return (
    asksForPacks.test(plain) || measures.some((measure) => isStock(measure) && takes.test(before(plain, measure.start)))
  );
}

/** Ahead of a weight. */
const takes = /(?:给我|帮我|替我|同我|麻烦|我?想?要)?(?:留|订|定|来|要|买|称|秤|装|包|拿|寄|带|加)(?:个|上|多)?$/;
const asksForPacks =
  /(?:给我|帮我|替我|同我|我想|我要|麻烦|想)(?:留|订|定|来|买|装|拿|寄|带)(?:个|上)?(?:[一二两三四五六七八九十半几]|\d{1,2})(?:包|罐|盒|饼|袋|份|斤|两)/;
const ofBrewingInHan = /泡|冲|沏|喝|水|投|放|杯|壶|几克|多少克|怎么(?!卖|买|订|寄)/;

const longest = 90;
const asksAhead =
  /\b(?:(?:can|could|may) (?:i|we|you)(?: please| just)? (?:get|have|buy|take|order|send|put)|(?:i|we)(?:'?d| would|'?ll| will)? (?:like|love|want|take|need|have)|give me|put me down for|send me|another)(?: me| us| aside| by| a| an| another| just| about| some| the)* ?$/;
const opens = /^(?:(?:hi|hello|hey|morning|and|just|ok|so|then|a|an|also|maybe)[ ,!]*)*$/;
const aTea = /^,? (?:more |extra )?(?:of |pack of |bag of |loose )/;
const ofTheTea = /^ (?:more )?of (?:the|your|that|this) |^ (?:more )?of [a-z ]{3,24}$/;
const politely = /\b(?:please|pls|plz|thanks|thank you|to go|to take away|more of)\b/;
const ofBrewing =
  /\b(?:brew\w*|steep\w*|infus\w*|use|using|put|per|water|how (?:much|long|hot|many|do|should)|cups?|grams? (?:in|to|per)|left)\b/;
