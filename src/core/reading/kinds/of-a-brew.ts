/** What can only be of the brew at hand, though its words weigh for another kind. */
import { actOfGreeting } from '../acts.ts';
import type { AnswerFinder } from '../answers.ts';
import { teasAlone, type Asks } from '../asks.ts';
import type { Cues } from '../cues/cues.ts';
import { tellsOfTools } from '../facts.ts';
import { readTaste, type Kind } from './kind.ts';
import { isHalved, namesNothing } from '../named.ts';
import type { Observation } from '../observation.ts';
import { isPlanQuestion, readPlanQuestion } from '../answers/plan-questions.ts';
import { readTurn } from '../turns.ts';
import { readWare } from '../ware.ts';
import { tellsLiking } from '../wishes.ts';

interface Weighing {
  readonly weighed: Kind;
  /** Neither a tea nor a vessel nor an amount. */
  readonly namesNothing: boolean;
  readonly answerFor: AnswerFinder;
  readonly isOfBrewing: (answer: string) => boolean;
}

/** "My father bought me a tin of dong ding": whoever asks the shop nothing about it wants to brew it. */
const hasGotTea = ({ teas, cues, words }: Observation): boolean =>
  teas.length > 0 && cues.has('got-tea', words) && !cues.has('got-wrong', words) && !/[?？吗]/.test(words);

/** "The old brown pot 700, assam": tea, vessel (or the refrigerator) and size in few words, and nothing asked. */
const longestOrder = 40;
const tellsAll = (seen: Observation): boolean => seen.teas.length > 0 && tellsWhere(seen);
const tellsWhere = ({ plain, vessels, measures, quantities, cues, words }: Observation): boolean =>
  plain.length <= longestOrder &&
  ((vessels.length > 0 && measures.length > 0) || (quantities.volumeMl.value !== null && cues.has('fridge', words))) &&
  !/[?？吗嗎呢]|\b(?:how|what|why|when|which|can|is|are|do|does|has|have)\b/.test(plain);

/** "Cold brewing sencha tonight for tomorrow": told and not asked, and nothing has stood about yet. */
const makesCold = ({ teas, cues, words }: Observation): boolean =>
  teas.length > 0 && cues.has('makes-cold', words) && !isAsked.test(words) && !cues.has('stands-about', words);
const isAsked = /[?？]/;

/** "Just opened my tieguanyin, never used a gaiwan before" */
const hasItAtHand = (seen: Observation): boolean =>
  seen.vessels.length > 0 &&
  (hasGotTea(seen) || (seen.teas.length > 0 && seen.cues.has('just-opened', seen.words) && !isAsked.test(seen.words)));

/** "Longjing, just in a tall glass, leaves loose": the tea first, then what it goes into, and no word of what is amiss. */
const longestNamed = 60;
const isForVessel = ({ plain, teas, vessels, cues, words }: Observation): boolean =>
  plain.length <= longestNamed &&
  (teas[0]?.start ?? longestNamed) <= teaComesBy &&
  vessels.length > 0 &&
  cues.has('into-a-vessel', words) &&
  !isAsked.test(words) &&
  !cues.has('amiss-or-asked', words);
const teaComesBy = 12;

/** Tea, vessel and size, whatever is told beside them. */
const namesAll = ({ teas, vessels, quantities }: Observation): boolean =>
  teas.length > 0 && vessels.length > 0 && quantities.volumeMl.value !== null;

/** However politely it is wrapped. */
const tellsEach = ({ vessels, quantities }: Observation): boolean =>
  vessels.length > 0 && quantities.volumeMl.value !== null;

/** 馬克杯泡龍井可以嗎: a tea to be brewed in a vessel, whatever is asked of it. */
const brewsIn = ({ teas, vessels, words }: Observation): boolean =>
  teas.length > 0 && vessels.length > 0 && /[泡冲沏]|\b(?:brew|steep|infuse)/.test(words);

export function tellsOfABrew(
  seen: Observation,
  asks: Asks | null,
  { weighed, namesNothing: isNothing, answerFor, isOfBrewing }: Weighing,
): boolean {
  const { cues, words } = seen;
  // A word nobody explains is one of the plan's, unless an answer is for it: "what do the numbers on the cake mean".
  if (asks === 'unclear')
    return (
      (weighed === 'care' || weighed === 'shop') && (cues.has('our-words', words) || answerFor(words, weighed) === null)
    );
  if (weighed === 'greeting')
    return seen.teas.length > 0 && (tellsAll(seen) || tellsEach(seen) || actOfGreeting(words, cues) === null);
  if (weighed === 'lesson') return false;
  if (teasAlone(seen)) return true;
  if (
    asks === 'heat' &&
    seen.teas.length > 0 &&
    (weighed === 'care' || weighed === 'offtopic') &&
    (tellsHeight(seen) || isGuess(seen, answerFor))
  )
    return true;
  if (asks === 'dry' || asks === 'size' || asks === 'lasts') return true;
  if (weighed === 'shop' && cues.has('serving-weighs', words)) return true;
  if (
    weighed === 'shop' &&
    isNothing &&
    words.length <= longestSwitch &&
    !/[买退寄错]/.test(words) &&
    readTurn(cues, words) === 'other-tea'
  )
    return true;
  if (weighed === 'taste' && readTaste(cues, words) === null && tellsWhere(seen)) return true;
  if ((weighed === 'care' || weighed === 'shop' || weighed === 'offtopic') && tellsAll(seen)) return true;
  if (weighed === 'offtopic' && (namesAll(seen) || hasGotTea(seen))) return true;
  if ((weighed === 'care' || weighed === 'offtopic') && brewsInWare(seen)) return true;
  if (mayHalve(seen, isNothing) && (tellsOfTools(cues, words) || halves(cues, words))) return true;
  if (dosesLeaf(seen)) return true;
  if (weighed === 'shop')
    return (
      hasGotTea(seen) && (seen.vessels.length > 0 || cues.has('has-sample', words) || answerFor(words, 'shop') === null)
    );
  // Two lines of the plan, asked at once.
  if (asks === 'whole' && isNothing && readPlanQuestion(words, cues) !== null) return true;
  if ((weighed === 'care' || weighed === 'safety') && makesCold(seen)) return true;
  if (weighed === 'care' && (isForVessel(seen) || hasItAtHand(seen))) return true;
  if (weighed === 'care') return (hasGotTea(seen) || brewsIn(seen)) && answerFor(words, null) === null;
  // 茶葉放多了會不會苦: harm is asked of, but of no body.
  if (weighed === 'safety' && !cues.has('safety', words) && isOfBrewing(answerFor(words, 'care')?.id ?? ''))
    return true;
  if (mayBeLiking(weighed) && tellsLiking(cues, words)) return true;
  return (asks === 'too-much' || isPlanQuestion(asks)) && !(weighed === 'taste' && complains(cues, words));
}

/** "I live at 1800 m, does water get hot enough for puer?" is of no kettle that has cooled. */
const tellsHeight = ({ quantities }: Observation): boolean => quantities.elevationM.value !== null;

/** So little alike, an answer found for it is a guess. Judgement. */
const leastSure = 0.6;
const isGuess = ({ words }: Observation, answerFor: AnswerFinder): boolean =>
  (answerFor(words, 'care')?.likeness ?? 0) < leastSure;

/** "Green tea in a cast iron teapot", and no word of how such a pot is kept. */
const brewsInWare = ({ teas, cues, words }: Observation): boolean =>
  teas.length > 0 && readWare(cues, words) !== null && !cues.has('keeps-ware', words);

const mayHalve = (seen: Observation, isNothing: boolean): boolean => isNothing || namesNothing(seen, isHalved(seen));

/** "Can I halve it", and no word of what else might be halved. */
const halves = (cues: Cues, words: string): boolean => {
  const turn = readTurn(cues, words);
  return turn === 'half-leaf' || turn === 'half-pot' || turn === 'double-leaf';
};

/** 我放5克會不會太多, "is 7 g a lot": so much leaf in the pot, and not in a stomach. */
export const dosesLeaf = ({ quantities, cues, words }: Observation): boolean =>
  quantities.leafG.value !== null && cues.has('leaf-dosed', words) && !cues.has('leaf-swallowed', words);

/** 想換別的茶: so short, nothing that was bought is to be exchanged. */
const longestSwitch = 10;

const complains = (cues: Cues, words: string): boolean => (readTaste(cues, words) ?? 'right') !== 'right';

/** "I like it strong" complains of no cup. */
const mayBeLiking = (kind: Kind): boolean => kind === 'taste' || kind === 'offtopic';

/** "2 tsp", and no word of how much water. */
export const tellsLeafAlone = ({ quantities, leafSpoons }: Observation): boolean =>
  (quantities.leafG.value !== null || leafSpoons !== null) && quantities.volumeMl.value === null;
