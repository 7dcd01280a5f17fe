/** Questions that what is told of a lesson answers: when, where, who, how long, how much, what to bring. Chooses no lesson. */
import { plain } from './cut.ts';

/** Longer than any such question needs; it bounds the reading's time. */
const longest = 120;

const details: readonly RegExp[] = [
  /\b(?:when|what time|which day)\b.*\b(?:is (?:it|that)|(?:does|will) (?:it|that|(?:the|my)(?: [\w'-]+){1,5}) (?:begin|start|end|finish|take place))/iu,
  /\b(?:does|will) (?:it|that|(?:the|my)(?: [\w'-]+){1,5}) (?:begin|start|end|finish|be over)\b/iu,
  /\b(?:what|anything|something|need) .*\bbring\b|\bbring (?:my|our|along|a|an|the)(?: own)? (?:gaiwan|(?:tea)?pot|pot|cups?|mug|kettle|notebook)\b/iu,
  /\b(?:need|have) to be (?:any )?(?:good|experienced|an? expert)\b|\b(?:know|need|have) (?:to know )?(?:anything|something|any experience|experience|the basics|some experience)\b|\bfor (?:total |complete |absolute )?beginners\?|\b(?:ok|okay|suitable|good|right) for (?:a )?(?:total |complete |absolute )?beginners?\b|(?:適合|适合).{1,12}[嗎吗呢?？]|\bsuitable for\b|(?:要|需要|用)(?:有)?(?:什麼|什么)?(?:基[礎础]|經驗|经验)|[會会]不[會会][太很]?[難难]|[難难]不[難难]|新手可以/iu,
  /\b(?:when|what time)\b.*\b(?:(?:do|should|must) (?:i|we) (?:have to |need to )?(?:be there|arrive|come|get there|turn up|show up))\b|[幾几][點点](?:要|該|该)?(?:到|去|來|来)/iu,
  /\bwho (?:teaches|is teaching|gives|leads|holds|will teach)\b|\bwhere (?:is|does) (?:it|that)\b/iu,
  /\bhow (?:long|much) (?:is|are|does|do|will) (?:it|that|they|these|those|one|a seat|the \w+)\b|\b(?:the|its|what) (?:price|cost)\b|\bwhat (?:does|do|will|would) (?:it|that|one|they|the \w+|a seat) cost\b|\bwh(?:ich|at) (?:kind of )?teas?\b.*\b(?:drink|brew|taste|try|make|served?)\b|\bwhich teas\b/iu,
  /(?:dollars?|euros?|pounds?|[$€£]\s?\d+|\d\s?[€£]) (?:each|per|a (?:head|person|seat))\b|(?:元|[塊块]|美金|[鎊镑])(?:[錢钱])?(?:一(?:位|個人|个人)|[嗎吗])/iu,
  /[點点](?:前|半)?[會会能]?(?:[結结]束|[開开]始|下[課课]|完)/u,
  /\b(?:how (?:big|many|large)\b.*\b(?:groups?|class(?:es)?|people)|how many (?:people|of us|others)|small groups?)\b|[幾几]個人一[班堂]|[幾几]个人一[班堂]|小班|一[班堂]多少人/iu,
  /\b(?:have|need|got|must) to (?:leave|go|be (?:back|gone|home|out|off|away))\b.*\b(?:by|at|before)\b|\bleave (?:early|sooner|before)\b|(?:提早|提前|早)(?:走|離|离|溜)|[點点]半?(?:前|之前|就)?(?:要|得)(?:走|離|离|接|回|趕|赶)|[點点]半?我?(?:有事|有約|有约)|[趕赶]得[上及]/iu,
  /[幾几]點|[幾几]点|什麼時候|什么时候|何時|何时|[幾几]時|[幾几]时/u,
  /(?:帶|带)(?:什麼|什么|咩|些什麼|些什么)|(?:什麼|什么).{0,4}(?:帶|带)|要(?:帶|带)|(?:準備|准备)啲?(?:些)?(?:什麼|什么|咩)/u,
  /(?:誰|谁|邊個|边个|哪位).{0,4}(?:教|帶|带|上|老師|老师)|老師是|老师是/u,
  /多久|多長|多长|多少錢|多少钱|[幾几][錢钱]|學費|学费|收費|收费|在哪|(?:喝|泡|品|試|试)(?:什麼|什么|哪些|咩)茶/u,
];

/** Whether there is room, and how long the waiting list is. */
const room =
  /\b(?:any|still|enough)\b.*\b(?:room|seats?|spots?|space|places?)\b|\b(?:seats?|spots?|places?|room|space)\b.*\b(?:left|free|available)\b|\b(?:is|are) (?:it|they|that|that one) (?:full|sold out|fully booked)\b|\bhow many (?:are )?(?:waiting|in front)\b|(?:[還还]|仲)有(?:[沒没冇]有)?空?(?:位|名[額额])|有[沒没冇]有?(?:空?位|名[額额])|[滿满]了?[沒没嗎吗]|[滿满]座|\bhow likely\b|\bchances?\b|有[沒没]?有?[機机][會会]|排得?到/iu;

export const asksForRoom = (sentence: string): boolean => room.test(plain(sentence.slice(0, longest)));

export const asksDetail = (sentence: string): boolean => {
  const text = plain(sentence.slice(0, longest));
  return room.test(text) || details.some((detail) => detail.test(text));
};

/** "How much is it?" and no more: it can only be of what was spoken of. */
const bare =
  /^(?:and |so |ok |okay )*(?:when|what time|what|who|where|how (?:long|much))\b[ a-z']{0,32}$|^[那請请問问]*(?:[幾几][點点時时]|什麼時候|什么时候|何[時时]|要?[帶带](?:什麼|什么|咩)|[誰谁]|[邊边][個个]|哪位老[師师]|多久|多[長长]|多少[錢钱]|[幾几][錢钱]|[學学][費费]|在哪)\p{Script=Han}{0,4}$/iu;

export function asksDetailAlone(sentence: string): boolean {
  const text = plain(sentence.slice(0, longest))
    .trim()
    .replace(/[?？!.。！呢嗎吗]+$/u, '');
  return bare.test(text) && asksDetail(text);
}
