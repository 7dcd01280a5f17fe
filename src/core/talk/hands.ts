/** What hands have done, told in other words than a button's: poured off, and how long ago. It moves no brew. */
import { readNumber } from '../lessons/spoken/numeral.ts';

const toldPoured =
  /\b(?:poured|strained|decanted)\b(?! (?:the |more |hot |boiling )*(?:water|in|over|into)\b)|(?:倒|出|濾|滤)(?:好|完|出[來来]|掉)?(?:[湯汤茶])?(?:了|咗)/iu;
/** Not yet, not at all, or only asked about. */
const notSo =
  /[?？]|\b(?:not|haven't|hasn't|didn't|should|shall|when|how|if|will|before|water|can i|must)\b|[還还][沒没]|[沒没]有?[倒出]|未|如果|要不要|什麼時候|什么时候|水/iu;
const ago =
  /(?<n>\d{1,3}|a|an|one|two|three|half a|一|兩|两|三|半)\s*(?:個|个)?\s*(?<unit>s(?:ec(?:ond)?s?)?\b|秒|min(?:ute)?s?\b|分鐘|分钟|分)(?:鐘|钟)?\s*(?:ago|前|earlier)/iu;
/** Longer texts tell more than that. */
const longest = 60;

/** Seconds since it was poured, 0 when nothing is said of that; null when nothing was poured. */
export function pouredAgoS(text: string): number | null {
  if (text.length > longest || !toldPoured.test(text) || notSo.test(text)) return null;
  const { n = '', unit = '' } = ago.exec(text)?.groups ?? {};
  const count = /^(?:half a|半)$/iu.test(n) ? 0.5 : (readNumber(n) ?? 0);
  return count * (/^(?:min|分)/iu.test(unit) ? 60 : 1);
}
