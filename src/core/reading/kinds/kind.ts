/** The kinds of question there are, and what a taste complaint says of the cup. */
import type { Cues } from '../cues/cues.ts';

export const kinds = ['brew', 'taste', 'lesson', 'care', 'shop', 'safety', 'offtopic', 'greeting'] as const;
export type Kind = (typeof kinds)[number];
export const tastes = ['bitter', 'weak', 'sour', 'flat', 'lost-scent', 'right'] as const;
export type Taste = (typeof tastes)[number];

/** What a text of kind taste complains of, or praises. */
export function readTaste(cues: Cues, said: string): Taste | null {
  const text = (asksHow.test(said) ? said : said.replace(noLongerInHan, ' '))
    .replace(noLonger, ' ')
    .replace(thinsIt, ' ');
  if (aheadOfIt.test(text) || fearsIt.test(text)) return null;
  // "A bit bitter, but I like that."
  if (cues.has('liked-so', text)) return 'right';
  const complaint = (['lost-scent', 'bitter', 'weak', 'sour', 'flat'] as const).find((taste) => cues.has(taste, text));
  return (
    complaint ?? (cues.has('right', text) && !cues.has('asks-remedy', text) && !asksIfGood.test(text) ? 'right' : null)
  );
}

/** 我用120cc的紫砂壺泡鐵觀音，第一泡總是太苦: what is amiss with the cup of a brew that is told; null where it is only feared. */
export const readComplaint = (cues: Cues, words: string): Taste | null => {
  if (
    !cues.has('tells-amiss', words) ||
    cues.has('prefer', words) ||
    cues.has('asks-bitter-ahead', words) ||
    cues.has('light', words)
  )
    return null;
  const taste = readTaste(cues, words);
  return taste === 'right' ? null : taste;
};

/** 會不會太苦: asked of what is to come. What was done, 放太多了會不會太濃, is asked of elsewhere. */
const aheadOfIt =
  /^(?:那|这样|這樣|咁|呢样|等下|之后|之後|泡出来|泡出來)*(?:会不会|會不會|会唔会|會唔會)(?:太|很|好|更|变|變)?(?:苦|涩|澀|浓|濃|淡|酸)[掉了啊呀呢]*[?？]*$/;

/** "Will it go bitter by lunch?": of a cup still to come. */
const fearsIt =
  /^(?:(?:and|but|so|ok|then) )*(?:will|wont|would|wouldnt|does|doesnt|might|could|is|isnt)(?: (?:it|this|that|the (?:tea|second|next|rest)|they))(?: not| just| all| still| really| ever)*(?: going to| gonna)? (?:go|get|turn|be|become|taste|come out|end up)\b/;

/** 哪一泡最好喝, 這茶好喝嗎: whoever asks for praise gives none. */
const asksIfGood =
  /(?:哪|边)(?:一|个|種|种|款|隻|只|泡|道|杯).{0,8}(?:好|香|甜|顺|正)|(?:好喝|好饮|好味|香|甜|顺|不错)[的嘅]?(?:吗|嘛|咩|不好喝|唔好饮|不香)[?？。 ]*$|(?:会不会|会唔会|是不是|系咪).{0,4}(?:好喝|好饮|香|甜|顺)/;

/** "Less bitter, but now it's watery": what it is no more is no complaint. */
const noLonger =
  /\b(?:less|not (?:so |as |that |too |very |really |at all |even |quite )*|no longer|isnt (?:so |as |that )?|wasnt (?:so |as |that )?|never|nor) ?(?:bitter|harsh|astringent|sour|weak)\w*\b(?! enough)|\b(?:dont|do not|doesnt|cant|never) (?:really |particularly |much )?(?:like|love|want|enjoy|drink|stand) (?:very |too |so |really )?(?:bitter|harsh|astringent|sour|strong)\b(?! (?:it|this|cup|brew)\b)/g;

/** 不苦了; but 怎麼才不苦 complains. */
const noLongerInHan =
  /(?:不再|[不唔冇没])(?:怎么|那么|这么|咁|太)?[苦澀涩濃浓淡酸][澀涩]?(?:了|喇|啦|咗|(?=$|[ ，,。]))/g;
const asksHow = /[怎咋點点]|如何|下次|想要?|有没有|换/;

/** "Can I thin it?" complains of no thin cup. */
const thinsIt = /\b(?:thin|water) (?:it|this|that|them)(?: down)?\b/g;

/** Latin words, and two Han characters for a word. */
export function wordCount(text: string): number {
  const latin = (text.match(/[a-z]+/g) ?? []).length;
  const han = (text.match(/\p{Script=Han}/gu) ?? []).length;
  return latin + Math.ceil(han / 2);
}
