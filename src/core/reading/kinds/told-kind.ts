/** What kind a message is by its shape alone: brought along, bought, pried from a cake. It weighs nothing. */
import { opensWithWhy } from '../acts.ts';
import { buysByWeight, buysInHan } from './buys.ts';
import type { CueName } from '../cues/cue-names.ts';
import { readTaste, type Kind } from './kind.ts';
import type { Observation } from '../observation.ts';
import { bringsAlong } from './visitors.ts';

/** What a message is by its shape, whatever its words weigh. */
export function toldKind(seen: Observation, explained: string | null): Kind | null {
  const { words, teas, cues } = seen;
  const isSaid = (cue: CueName): boolean => cues.has(cue, words);
  if (explained !== null) return 'care';
  if (bringsAlong(words)) return 'lesson';
  if (isSaid('shape-brew')) return 'brew';
  if (isSaid('shape-care') || (teas.length === 0 && isSaid('shape-milk-tea'))) return 'care';
  if (!isSaid('safety') && (tellsOfBadCups(seen) || tellsHowMade(seen) || isSaid('shape-taste'))) return 'taste';
  return buysByWeight(seen) || buysInHan(seen) ? 'shop' : null;
}

/** All of the brew, and how its cups come out. */
const tellsOfBadCups = ({ teas, vessels, cues, words }: Observation): boolean =>
  teas.length > 0 && vessels.length > 0 && cues.has('came-out-amiss', words) && !cues.has('taste-to-come', words);

/** "Bitter: 5 g at 95 for 3 min": how a cup was made and what is amiss with it, and nothing of how it is to come out. */
const tellsHowMade = ({ measures, leafSpoons, quantities, cues, words }: Observation): boolean =>
  (leafSpoons !== null ||
    quantities.tempC.value !== null ||
    measures.some(({ dimension }) => dimension === 'time' || dimension === 'mass')) &&
  (readTaste(cues, words) ?? 'right') !== 'right' &&
  !ofTasteToCome.some((cue) => cues.has(cue, words));
const ofTasteToCome = ['taste-to-come', 'prefer', 'light', 'asks-bitter-ahead'] as const;

/** "Why not boiling for green?": the tea named in it is to be explained, not brewed. */
export const asksWhy = ({ words, vessels, plain, teas }: Observation): boolean =>
  vessels.length === 0 &&
  (opensWithWhy.test(words) ||
    whyAfterTea.test(words) ||
    teas.some(({ end }) => whyBehindTea.test(plain.slice(end, end + 12))));
const whyBehindTea = /^(?:茶|叶|汤|水)?[ ，,]*(?:到底|究竟|都|又)?(?:点解|为什么|为何|为啥|干嘛|怎么会)/u;
const whyAfterTea = /^\p{Script=Han}{1,6}(?:点解|为什么|为何|为啥)/u;
