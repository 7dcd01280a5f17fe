/** What kind of question a text is, from its cues and from what it names. Safety comes first. */
import type { Cues } from './cues.ts';

export const kinds = ['brew', 'taste', 'lesson', 'care', 'shop', 'safety', 'offtopic', 'greeting'] as const;
export type Kind = (typeof kinds)[number];
export const tastes = ['bitter', 'weak', 'sour', 'flat', 'lost-scent', 'right'] as const;
export type Taste = (typeof tastes)[number];

export interface KindScene {
  /** cueText of what was written. */
  readonly text: string;
  readonly cues: Cues;
  /** A tea, a family, or a tea we don't have. */
  readonly namesTea: boolean;
  readonly namesVessel: boolean;
  readonly hasVolume: boolean;
  /** Leaf, temperature, elevation, style, guests. */
  readonly hasOther: boolean;
  /** Something was asked just now. */
  readonly asked: boolean;
}

export function readTaste({ text, cues }: KindScene): Taste | null {
  const taste = tastes.find(
    (t) =>
      t !== 'right' &&
      cues.has(t === 'bitter' || t === 'weak' || t === 'sour' || t === 'flat' ? t : 'lost-scent', text),
  );
  if (cues.has('lost-scent', text)) return 'lost-scent';
  if (!taste) return cues.has('right', text) && cues.has('complaint', text) ? 'right' : null;
  return taste;
}

export function readKind(scene: KindScene): { kind: Kind; taste: Taste | null } {
  const { text, cues } = scene;
  const says = (cue: Parameters<Cues['has']>[0]): boolean => cues.has(cue, text);
  const brews = says('brew');
  const names = scene.namesTea || says('has-tea');
  const brewFacts = scene.namesTea && (scene.namesVessel || scene.hasVolume || brews);
  const taste = readTaste(scene);
  const none = (kind: Kind): { kind: Kind; taste: null } => ({ kind, taste: null });

  if (isGreeting(scene)) return none('greeting');
  if (isOrder(text)) return none('offtopic');
  if (says('offtopic') && !scene.namesTea && !says('lesson') && !(names && (brews || scene.namesVessel)))
    return none('offtopic');
  const chills = says('cold') || (says('fridge') && (brews || scene.namesVessel));
  const stores = /\b(?:keep|store|storing|stored)\b|保存|存放|收藏|储存/.test(text);
  if (says('safety') || (says('overnight') && (!says('fridge') || says('safety-weak')))) return none('safety');
  if (says('lesson')) return none('lesson');
  const complains = taste !== null && !wishes(scene, brews);
  if (
    says('shop') &&
    !(complains && !/\b(?:buy|sell|price|recommend)|买|卖|推荐/.test(text)) &&
    !(brewFacts && onlyMild(scene))
  )
    return none('shop');
  if (says('care-strong') && !(complains && !names) && (stores || !chills)) return none('care');
  if (complains) return { kind: 'taste', taste };
  if (says('safety-weak')) return none('safety');
  if (
    says('care-weak') &&
    !(brewFacts && (scene.hasVolume || /how (?:long|much|many|hot)|几耐|多久|几度|几秒/.test(text)))
  )
    return none('care');
  if (says('shop-weak') && !scene.namesVessel && !scene.hasVolume && !/temp|long|much|水温/.test(text))
    return none('shop');
  return none(isBrew(scene, brews, names) ? 'brew' : 'offtopic');
}

/** A shop word such as "for", "gift" or "bought" in a sentence that asks how to brew. */
function onlyMild({ text, cues, hasVolume, namesVessel }: KindScene): boolean {
  const asks =
    /how (?:long|hot|many (?:grams|seconds|minutes|infusions)|do i (?:brew|make|steep))|what temp|brew|steep|怎么泡|怎样泡|点冲|点泡|点样冲|点样泡|几耐|水温|怎么冲/.test(
      text,
    );
  return (
    asks &&
    (namesVessel || hasVolume || cues.has('having', text)) &&
    !/how much (?:is|are|does|for)|price|do you (?:sell|have|stock)|open|几钱|多少钱|有没有卖|有冇得卖|营业/.test(text)
  );
}

/** "not too bitter, please" is a wish for the brew, not a complaint. */
function wishes({ text, cues }: KindScene, brews: boolean): boolean {
  return (
    cues.has('prefer', text) &&
    (brews || !/\b(?:came out|turned out|tastes?|tasted|is so|was|too bitter|still)\b/.test(text)) &&
    !/(?:泡|冲)(?:出来|出嚟)|点解|为什么|怎么回事|怎么办|点算/.test(text)
  );
}

function isOrder(text: string): boolean {
  return /\b(?:ignore|disregard|forget|override|bypass)\b.{0,30}\b(?:instruction|prompt|rule|previous|above|guideline)|system prompt|drop table|<\s?script|忽略.{0,12}(?:指令|指示|规则)|无视.{0,12}(?:指令|指示|规则)|系统提示/.test(
    text,
  );
}

function isGreeting({ text, cues, namesTea, namesVessel, hasVolume, hasOther }: KindScene): boolean {
  if (namesTea || namesVessel || hasVolume || hasOther) return false;
  if (!cues.has('hello', text) && !cues.has('thanks', text)) return cues.is('yes', text) || cues.is('no', text);
  const rest = cues
    .without('thanks', cues.without('hello', text))
    .replace(
      /\b(?:there|all|everyone|everybody|guys|friend|so|very|much|a|lot|for|the|your|you|help|again|that|was|is|its|it|great|nice|helpful|really|my|dear|sir|madam|maam|folks|team|ok|okay|bye|and|to|me|this|lovely|kind|very|of|im|new|here|just|saying|shop|keeper|shopkeeper|advice|answer|quick|reply|tea)\b|[你您们晚了晒啊呀哦啦呢吗嗎的嘅哈晒帮忙助很非常真系是解答回答老板店主大家小姐先生各位朋友好早安再见有人]/g,
      ' ',
    )
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return rest.length <= 2;
}

function isBrew(scene: KindScene, brews: boolean, names: boolean): boolean {
  const { text, cues, namesTea, namesVessel, hasVolume, hasOther, asked } = scene;
  if (asked && (namesTea || namesVessel || hasVolume || hasOther || text.length <= 30)) return true;
  if (namesTea)
    return brews || namesVessel || hasVolume || hasOther || wordCount(text) <= 7 || cues.has('having', text);
  if (namesVessel && (hasVolume || brews || names)) return true;
  if (namesVessel) return wordCount(text) <= 4;
  if (hasVolume) return wordCount(text) <= 7 || names || brews;
  return (
    (names && (brews || wordCount(text) <= 5 || hasOther)) ||
    (hasOther && wordCount(text) <= 8) ||
    ((brews || cues.has('strong', text) || cues.has('light', text)) && wordCount(text) <= 9)
  );
}

/** Latin words, and two Han characters for a word. */
export function wordCount(text: string): number {
  const latin = (text.match(/[a-z]+/g) ?? []).length;
  const han = (text.match(/\p{Script=Han}/gu) ?? []).length;
  return latin + Math.ceil(han / 2);
}
