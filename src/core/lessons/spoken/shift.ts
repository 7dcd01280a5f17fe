/** By how much a lesson is to begin later or earlier, or to be longer: "half an hour later", 提早一個小時, 加長半小時. A time it is moved to is read elsewhere. */
import { readDuration } from './amounts.ts';
import { plain } from './cut.ts';

const later = /\b(?:later|back|delay(?:ed)?|postponed?)\b|[延推押][後后遲迟]|[遲迟晚](?=[\d一二兩两三四五十半])/iu;
const earlier = /\b(?:earlier|forward|sooner)\b|提[早前]|早(?=[\d一二兩两三四五十半])/iu;

/** In minutes, fewer than none for earlier; undefined where it says no such thing. */
export function readShift(sentence: string): number | undefined {
  const text = plain(sentence);
  const { amount } = readDuration(text);
  if (amount === undefined || later.test(text) === earlier.test(text)) return undefined;
  return later.test(text) ? amount : -amount;
}

const longer = /\blonger\b|[延加拉][長长]|[長长](?=[\d一二兩两三四五十半])/iu;
const shorter = /\bshorter\b|[縮缩]短|短(?=[\d一二兩两三四五十半])/iu;

/** In minutes, fewer than none for shorter; undefined where it says no such thing. */
export function readLengthening(sentence: string): number | undefined {
  const text = plain(sentence);
  const { amount } = readDuration(text);
  if (amount === undefined || longer.test(text) === shorter.test(text)) return undefined;
  return longer.test(text) ? amount : -amount;
}
