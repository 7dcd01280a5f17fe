/** For whom a lesson is, as a shopkeeper says it. */
import type { Level } from '../lesson.ts';
import { plain } from './cut.ts';

/** The first that fits; "no beginners" is for the others. */
const patterns: readonly (readonly [Level, RegExp])[] = [
  [
    'advanced',
    /\badvanced\b|\bexperts?\b|\bexperienced\b|\bknow a (?:good deal|lot)\b|進階|进阶|高級|高级|資深|资深|老手|老茶客|懂不少/iu,
  ],
  [
    'intermediate',
    /\bintermediate\b|\bsome (?:experience|basics)\b|\b(?:have|has) begun\b|\bnot? (?:for )?beginners?\b|\bmiddle\b|中級|中级|有(?:些|點|点|一點|一点)?基[礎础]|非新手/iu,
  ],
  [
    'beginner',
    /\bbeginners?\b|\bnovices?\b|\bnewbies?\b|\bfirst[- ]timers?\b|\beverybody\b|\beveryone\b|\banybody\b|\banyone\b|\ball\b|\bno(?:thing| experience| basics)\b|\bnever (?:done|tried|learn(?:ed|t))\b|完全不[會会懂]|[沒没][學学][過过]|初[學学級级階阶]|入[門门]|新手|第一次|不[需用必]要?(?:基[礎础]|經驗|经验)?|[誰谁]都|大家|所有人|零基[礎础]/iu,
  ],
];

export function readLevel(words: string): Level | undefined {
  const text = plain(words);
  return patterns.find(([, pattern]) => pattern.test(text))?.[0];
}

/** A student says it of themselves; "all lessons" are not for everybody. */
const forWhom =
  /\b(?:beginners?|novices?|newbies?|first[- ]timers?|intermediate|advanced|experts?|never (?:done|tried|learn(?:ed|t)))\b|完全不[會会懂]|[沒没][學学][過过]|零基[礎础]|初[學学級级階阶]|入[門门]|新手|第一次|進階|进阶|中級|中级|高級|高级|資深|资深/iu;

/** For whom a student wants a lesson to be. */
export const levelWished = (words: string): Level | undefined => (forWhom.test(words) ? readLevel(words) : undefined);
