/** What kind a message is by its shape alone: brought along, bought, pried from a cake. It weighs nothing. */
import { opensWithWhy } from './acts.ts';
import { buysByWeight, buysInHan } from './buys.ts';
import type { Kind } from './kind.ts';
import type { Observation } from './observation.ts';
import { bringsAlong } from './visitors.ts';

/** What a message is by its shape, whatever its words weigh. */
export function toldKind(seen: Observation, explained: string | null): Kind | null {
  if (explained !== null) return 'care';
  if (bringsAlong(seen.words)) return 'lesson';
  if (usedBefore.test(seen.words) || usedBeforeInHan.test(seen.words)) return 'care';
  if (priesCake.test(seen.words)) return 'care';
  if (keptFor.test(seen.words) || opensPot.test(seen.words)) return 'care';
  if (roastsAnew.test(seen.words)) return 'care';
  if (changesLeaf.test(seen.words)) return 'brew';
  if (ofBubbles.test(seen.words) || (seen.teas.length === 0 && ofMilkTea.test(seen.words))) return 'care';
  if (tellsOfBadCups(seen)) return 'taste';
  if (complainsOfCups.test(seen.words) && !seen.cues.has('safety', seen.words)) return 'taste';
  return buysByWeight(seen) || buysInHan(seen) ? 'shop' : null;
}

/** "I used this pot for puer before, is that ok": no puer is to be brewed. */
const usedBefore =
  /\b(?:used|brewed|made|had) (?:\w+ )?(?:this|the|my|that|it|same)(?: \w+)?(?: \w+)? (?:for|with|in) .{2,24}\b(?:before|already|previously|until now|last (?:time|week|month|year))\b/;

/** 鐵觀音放兩年了，還可以喝嗎: how long leaf keeps, and nothing of a cup that stood. */
const keptFor =
  /(?:放|存|摆|藏)(?:了|咗|着)?.{0,4}(?:[一二两三四五六七八九十\d几多半]+)(?:个月|年).{0,8}(?:还|仲)?(?:能不能|可不可以|可以|能|得唔得|饮得|喝得)(?:再)?(?:喝|饮|泡|冲)/;

/** 啱啱買咗個壺用嚟沖水仙，點開壺: what is brewed in it comes later. */
const opensPot = /(?:怎么|怎样|点样?|如何|咋|要不要|需要|使唔使)(?:才|去|来|先)?(?:开|养)(?:新)?壶/;

/** 想自己烘茶，烤箱要幾度: no water is asked of. */
const roastsAnew =
  /(?:自己|在家|拿来|想要?|怎么|点样?)(?:烘|焙|炒|复焙|覆焙)(?:茶|一下|焙)|(?:烤箱|烘焙机|烘箱|气炸锅|空气炸锅).{0,8}(?:烘|焙|烤|茶)|(?:烘|焙)茶叶?.{0,6}(?:烤箱|几度)/;

/** 給我減到3克: so much of the leaf, and none of it bought. */
const changesLeaf =
  /(?:减|降|加|增|改|调|换)(?:少|多)?(?:到|成|为|至)\s?(?:\d+(?:\.\d+)?|[一二两三四五六七八九十半]{1,3}) ?(?:公克|克|g)(?![a-z])/;

/** 水要燒到冒蟹眼是幾度: what the bubbles in a kettle tell. */
const ofBubbles = /[蟹鱼虾]眼(?!睛|圈|糕|豆|干线|巷)|(?:看|睇|靠)(?:水)?气泡|\b(?:crab|fish|shrimp) eyes?\b/;

/** 港式奶茶點沖: with no tea named, which goes with milk comes first. */
const ofMilkTea = /奶茶(?!店|妹)/;

/** All of the brew, and how its cups come out. */
const tellsOfBadCups = ({ teas, vessels, cues, words }: Observation): boolean =>
  teas.length > 0 &&
  vessels.length > 0 &&
  cues.has('came-out-amiss', words) &&
  !cues.has('safety', words) &&
  !stillToCome.test(words);
const stillToCome =
  /\b(?:if|so (?:that )?it|will|wont|won't|before|until|without)\b.{0,30}\b(?:bitter|weak|harsh|sour|flat)\b/;

/** 剛剛泡那個第一泡就苦到不行, 銀針老是泡不出味: of cups that were drunk, whatever is told of the brew with it. */
const complainsOfCups =
  /(?:刚刚|刚才|头先|啱啱|昨天|寻日|上次|每次|次次|老是|总是|一直|成日)(?!.{0,3}想).{0,14}(?:泡|冲|煮|喝|饮).{0,16}(?:苦(?:到|得|死|掉)|太苦|好苦|很苦|太涩|好涩|很涩|[没冇]什?么?味|[不唔]出(?:什么)?[味香]|太淡|好淡|很淡|发酸|好酸|很酸|[没冇]香)/;

/** 這壺我之前泡過烏龍 */
const usedBeforeInHan =
  /(?:这|那|呢|嗰)(?:个|把|只|隻)?壶.{0,6}(?:之前|以前|原来|一直|平时|本来|都).{0,4}(?:泡|沏|冲)(?:过|的|的是|的都是)?.{1,8}$/;

/** 我有一餅生普，怎麼撬開: how a cake comes apart, and not yet how it is brewed. */
const priesCake =
  /(?:怎么|怎样|点样?|如何|咋|用什么|拿什么|从哪里?|哪里)(?:才|能|去|可以|会)*(?:撬|掰|敲开|敲碎|拆开|拆散|剥开|凿)(?!.*(?:泡|冲|几克|多少克|毫升))|\bhow (?:do|can|should|would) (?:i|you|we) (?:even |ever |best |actually )?(?:break|pry|prise|chip|loosen) .{0,20}\b(?:cake|brick|tuo|disc|beeng|bing)\b|\b(?:cake|brick|tuo)\b.{0,12}\bhow (?:do|can|should|would) (?:i|you|we) (?:even |ever |best |actually )?(?:break|pry|prise|chip|loosen|open) (?:it|into|this)/;

/** "Why not boiling for green?": the tea named in it is to be explained, not brewed. */
export const asksWhy = ({ words, vessels, plain, teas }: Observation): boolean =>
  vessels.length === 0 &&
  (opensWithWhy.test(words) ||
    whyAfterTea.test(words) ||
    teas.some(({ end }) => whyBehindTea.test(plain.slice(end, end + 12))));
const whyBehindTea = /^(?:茶|叶|汤|水)?[ ，,]*(?:到底|究竟|都|又)?(?:点解|为什么|为何|为啥|干嘛|怎么会)/u;
const whyAfterTea = /^\p{Script=Han}{1,6}(?:点解|为什么|为何|为啥)/u;
