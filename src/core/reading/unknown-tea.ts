/** Words that look like the name of a tea nobody here knows. */

/** "Does it include tea?" names none. */
const latinName =
  /(?<![a-z])(?<!\b(?:does|do|did|will|can) (?:it|that|this|they|you|we) )((?:[a-z]{3,}[ -]){0,2}[a-z]{3,})(?= (?:tea|oolong|puer|green|black|white)\b)/;
/** In the name of no tea. */
const neverInNames =
  /有.有|都有|[的嘅啲些什咩么乜个种款杯壶好喝饮你我返去来嚟唔不没冇第怎几吗嘛应该谁多少了过着先放再还倒]|[一二两三四五六七八九十半几](?:块|片|包|袋|盒|罐|筒|条|坨|饼|些|点|泡|斤|枚|颗|粒|小|大)|[一二两三四五六七八九十百千半](?:ml|cc|毫升|公升|升|西西|公克|克|g|度|人|位|两|钱|斤|勺|匙|汤匙|茶匙|安士|盎司)/;
const hanName = /(?:泡|冲|有|买了|买咗|系|是|叫)([\u4e00-\u9fff]{2,4}茶)/;

/** `plain` holds no known tea or family; `ordinary` are everyday words and cue words, never a tea's name. */
export function unknownTea(shown: string, plain: string, ordinary: ReadonlySet<string>, asked: boolean): string | null {
  const latin = latinName.exec(plain);
  if (latin?.[1]) {
    const name = lastStrangers(latin[1], ordinary);
    if (name) return shown.slice(latin.index + latin[1].length - name.length, latin.index + latin[1].length);
  }
  const made =
    /\b(?:brew|steep|infuse|make)\s+(?:(?:a|an|some|my|this|the)\s+)*([a-z]{3,}(?: [a-z]{2,}){0,2})(?= (?:in|with|for|at|using)\b|[?.!,]|$)/.exec(
      plain,
    );
  if (made?.[1] && made[1].split(' ').every((word) => !ordinary.has(word)))
    return shown.slice(made.index + made[0].length - made[1].length, made.index + made[0].length);
  const han = hanName.exec(plain);
  const named = han?.[1] ?? '';
  if (han && !neverInNames.test(named))
    return shown.slice(han.index + han[0].length - named.length, han.index + han[0].length);
  const whole = plain.trim();
  const brief = whole.length >= 2 && whole.length <= 30 && whole.split(/\s+/).length <= 3;
  const nameLike =
    asked && brief && !/\d|^[零〇一二两三四五六七八九十百千半]+$/.test(whole) && !neverInNames.test(whole);
  if (nameLike && !whole.split(/\s+/).some((word) => ordinary.has(word))) return shown.trim();
  return null;
}

function lastStrangers(words: string, ordinary: ReadonlySet<string>): string | null {
  const strangers: string[] = [];
  for (const word of words.split(/[ -]/).toReversed()) {
    if (ordinary.has(word)) break;
    strangers.unshift(word);
  }
  return strangers.length > 0 ? strangers.join(' ') : null;
}
