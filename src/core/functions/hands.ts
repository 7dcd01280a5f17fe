/** What hands have done, told in other words than a button's: poured off, and how long ago. It moves no brew. */
const toldPoured =
  /\b(?:poured|strained|decanted)\b(?! (?:the |more |hot |boiling )*(?:water|in|over|into)\b)|(?:倒|出|濾|滤)(?:好|完|出[來来]|掉)?(?:[湯汤茶])?(?:了|咗)/iu;
/** Not yet, not at all, or only asked about. */
const notSo =
  /[?？]|\b(?:not|haven't|hasn't|didn't|should|shall|when|how|if|will|before|water|can i|must)\b|[還还][沒没]|[沒没]有?[倒出]|未|如果|要不要|什麼時候|什么时候|水/iu;
const ago =
  /(?<n>\d{1,3}|a|an|one|two|three|half a|一|兩|两|三|半)\s*(?:個|个)?\s*(?<unit>s(?:ec(?:ond)?s?)?\b|秒|min(?:ute)?s?\b|分鐘|分钟|分)(?:鐘|钟)?\s*(?:ago|前|earlier)/iu;
const amounts: { readonly [words: string]: number } = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  'half a': 0.5,
  一: 1,
  兩: 2,
  两: 2,
  三: 3,
  半: 0.5,
};
/** Longer texts tell more than that. */
const longest = 60;

/** Seconds since it was poured, 0 when nothing is said of that; null when nothing was poured. */
export function pouredAgoS(text: string): number | null {
  if (text.length > longest || !toldPoured.test(text) || notSo.test(text)) return null;
  const { n = '', unit = '' } = ago.exec(text)?.groups ?? {};
  const count = amounts[n.toLowerCase()] ?? Number(n);
  return count * (/^(?:min|分)/iu.test(unit) ? 60 : 1);
}
