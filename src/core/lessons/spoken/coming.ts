/** "I'll be there", "oh great, yes please": yes to a reminder or an offer, in other words. */
import type { Sentence } from './sentence.ts';

/** Longer texts tell more than that. */
const longest = 60;

const isShort = ({ text }: Sentence): boolean => text.trim().length <= longest;

export const saysComing = (sentence: Sentence): boolean => isShort(sentence) && sentence.says('coming');

/** To a seat that is offered. */
export const saysYesTo = (sentence: Sentence): boolean => isShort(sentence) && sentence.says('takes-seat');
