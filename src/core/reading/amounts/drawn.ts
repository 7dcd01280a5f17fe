/** How long it is to draw, or drew: "can I leave it five minutes?", 泡五分鐘可以嗎. */
import type { Measure } from './measures.ts';
import type { Observation } from '../observation.ts';

/** Longer texts tell of more than that, unless they tell how a cup is made. */
const longestText = 80;
const longestOfCup = 200;
/** Longer than any cold infusion. */
const longestS = 86_400;

const ofDrawing =
  /\b(?:and|or|leav(?:es?|ing)|left|lets?|letting|steep\w*|brew\w*|draw\w*|drew|infus\w*|soak\w*|sits?|sat|stands?|stood|stays?|do|did|gave|give|take|go|for|make|set|push|extend|stretch|bump|what if|how about|what about|is|would|instead|rather|ok|okay|enough|good|right|strong|weak|too)\b|泡|浸|焗|闷|放|等|如果|可以|可唔可以|行|得|呢|够|改|太?[久长短]/;
const ofWater =
  /\b(?:too|gone|got|get|getting) (?:cold|cool)\b|\b(?:kettle|water|boiled)\b.{0,30}\b(?:ago|sat|sitting|standing|stood|off|cold|cool\w*)\b/;

/** "It should stay hot for half an hour" is of the pot, once the leaf is out. */
const staysHot =
  /\b(?:stay|stays|keep|keeps|kept|remain|remains)(?: (?:it|the tea|nice and|really|still|piping))* (?:hot|warm)\b/;

/** `ofCup`: of one that is complained of a time is how long it drew. */
export function readDrawn(seen: Observation, { ofCup }: { readonly ofCup: boolean }): number | null {
  const { plain, measures, signs } = seen;
  const times = measures.filter(({ dimension }) => dimension === 'time');
  const [time] = times;
  if (!time || times.length > 1 || time.value <= 0 || time.value > longestS) return null;
  // "5 g 250 ml 3 min": with leaf and water told as well, a time is how long it draws.
  const tells = (...dimensions: Measure['dimension'][]): boolean =>
    measures.some(({ dimension }) => dimensions.includes(dimension));
  const isWhole = tells('mass', 'spoon') && tells('volume', 'bare', 'ounce');
  if (plain.length > (ofCup || isWhole ? longestOfCup : longestText)) return null;
  if (staysHot.test(plain)) return null;
  // Of water that stood: "it's been off for 10 min, is that too cold".
  if (ofWater.test(plain)) return null;
  if (signs.tell('no-drawing', seen, time)) return null;
  const isAll = !/[\p{L}\p{N}]/u.test(plain.slice(0, time.start) + plain.slice(time.end));
  return ofCup || isAll || isWhole || ofDrawing.test(plain) ? time.value : null;
}
