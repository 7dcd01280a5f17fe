/** What stands right before and after a place in a text: negation, mostly. */

export function before(plain: string, start: number, length = 24): string {
  return plain.slice(Math.max(0, start - length), start);
}

export function after(plain: string, end: number, length = 24): string {
  return plain.slice(end, end + length);
}

const notThis =
  /(?:\b(?:not|isn'?t|wasn'?t|instead of|rather than|no longer|forget(?: about)?)(?: (?:an?|the|my|really|just|in|in an?|in the))*\s*|(?:(?<!是)不是|(?<!系)唔系|并非|而不是|而唔系|不要|唔要|唔用|不用|不再用|不想|唔想|不会|唔识|懒得|代替|别)(?:用)?\s*|(?:[烧煮达升加]?到[不唔](?:了|到)|[烧煮达升加热][不唔]到)\s*)$/;
const lacking =
  /(?:\b(?:no|don'?t (?:have|own|use)|swap(?:ping|ped)?|(?:chang|switch|mov)(?:e|ed|ing) from|do not have|have not|haven'?t|has no|without|haven'?t got|lost my|broke my|never had)(?: (?:an?|any|my|the))*(?: [a-z]+(?: [a-z]+)?(?:,? (?:n?or|and))(?: (?:an?|any|my|the))*)?\s*|(?:没有|没|冇|无)(?:个|把|只|任何)?\s*|(?:塞|放|装|摆)(?:不|唔)(?:进|下|入|落|到)(?:去|来)?\s*)$/;

const takenBack =
  /\b(?:no,? sorry|no,? wait|oh no|sorry,?|i mean|i meant|or rather|scratch that|make that|correction:?)\b|(?:说|讲|打|写|记|搞)错(?:了|咗)?|不对|唔啱|唔系|更正|不是(?=[,，、 ])/g;

/** Where what was said before is taken back ("chamomile, no sorry, chrysanthemum"), or 0. */
function takenBackUntil(plain: string): number {
  return [...plain.matchAll(takenBack)].at(-1)?.index ?? 0;
}

/** Those said last, where some were taken back and others said instead. */
export function stillMeant<T extends { readonly start: number }>(plain: string, named: readonly T[]): readonly T[] {
  const until = takenBackUntil(plain);
  const later = named.filter((one) => one.start > until && !isDenied(plain, one.start));
  return until > 0 && later.length > 0 ? later : named;
}

/** "not 200", "instead of the raw one", "不是". */
export function isDenied(plain: string, start: number): boolean {
  const ahead = before(plain, start);
  return notThis.test(ahead) && !opensWithNo.test(ahead);
}

/** "不是 八百", and nothing before it: no, it is that. */
const opensWithNo = /^(?:不是|唔系|唔是|不对|no)[,，、. ]+$/;

/** "祁門沒有，用滇紅": what is used up is not meant. */
export function isUsedUp(plain: string, start: number, end: number): boolean {
  return (
    /^\s?(?:没有了?|没得|没了|冇晒|冇咗|冇|喝完了?|饮晒|用完了?)[,，、。]/.test(after(plain, end)) ||
    /(?:(?:^|[,.;!]|\b(?:am|is|are|was|were|be|been|ran|run|running|all|just|right|clean|fresh|totally|completely|almost|nearly)|[i'][mrs]e?) ?out of|\bno more)(?: the| my)? $/.test(
      before(plain, start, 32),
    )
  );
}

/** Denied, or said to be missing: "I have no gaiwan". */
export function isLacking(plain: string, start: number): boolean {
  return isDenied(plain, start) || lacking.test(before(plain, start, 48));
}
