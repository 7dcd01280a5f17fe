/** How a person likes it brewed: in which style, how strong, in a warmed vessel or not. */
import type { Cues } from './cues/cues.ts';

export type ReadStyle = 'gongfu' | 'western' | 'grandpa' | 'cold';

export function readStyle(cues: Cues, words: string): ReadStyle | null {
  const told = (['cold', 'gongfu', 'western', 'grandpa'] as const).filter((style) => cues.has(style, words));
  return told[0] ?? null;
}

/** Common practice, no source: what "strong" and "light" ask of the model's own wish of 0.6 … 1.5. */
const strongWish = 1.25;
const lightWish = 0.8;

export function readStrength(cues: Cues, words: string): number | null {
  if (likesDiffer(cues, words)) return null;
  if (cues.has('light', words) || cues.has('likes-light', words)) return lightWish;
  return cues.has('strong', words) || cues.has('likes-strong', words) ? strongWish : null;
}

/** "One of us likes it strong, the other weak": neither is wished for the pot. */
export const likesDiffer = (cues: Cues, words: string): boolean =>
  (cues.has('strong', words) || cues.has('likes-strong', words)) && lighter.test(words) && ofEach.test(words);

const lighter = /\b(?:weak|light|mild)(?:er)?\b|淡/;
const ofEach =
  /\b(?:one|other|mine|his|hers?|husband|wife|partner|boyfriend|girlfriend|friend|mum|mom|dad|he|she|i|they|we|us)\b|一个|另|他|她|佢/;

/** How somebody likes it, and no word on a cup that was not so. */
export const tellsLiking = (cues: Cues, words: string): boolean =>
  (cues.has('likes-strong', words) || cues.has('likes-light', words)) && !wasNotSo.test(words);

const wasNotSo = /\b(?:too|came|turned|tast\w+|was|but)\b|太|[泡冲]出|但|可是/;

/** 要用冷水還是熱水溫杯 has warmed nothing yet. */
const asksOfWarming =
  /(?:温|烫|暖|预热)(?:杯|壶|碗|盖碗|具).{0,8}(?:吗|嘛|呢|什么|怎么|多久|多热|几度)|(?:还是|要不要|需不需要|用不用|为什么|怎么|什么水|干嘛|一定要).{0,6}(?:温|烫|暖|预热)(?:杯|壶|碗|盖碗|具)/;
const isDone = /(?:温|烫|暖|预热)(?:好|完)?(?:过|了|咗)|已经/;

export function readWarmed(cues: Cues, words: string): boolean | null {
  if (asksOfWarming.test(words) && !isDone.test(words)) return null;
  if (cues.has('not-warmed', words)) return false;
  return cues.has('warmed', words) ? true : null;
}
