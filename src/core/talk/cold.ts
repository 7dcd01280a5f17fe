/** What is asked of a cold infusion: when to begin it, how long it may stand, whether it may come along. It reckons nothing. */
import { readNumber } from '../lessons/spoken/numeral.ts';

export type ColdAsk = 'begin-for' | 'begun-at' | 'stands' | 'on-the-way' | 'strain' | 'taste-early' | 'lid' | 'ice';

const asksWhen =
  /\b(?:when|what time|how (?:early|late|long before|far ahead)|by when)\b|\bin time for\b|\bready (?:by|for|at|in time)\b|什么时候|几点|何时|多早|提前多久|要提前|来得及|赶得(?:上|及)|来不来得及/;
const begins =
  /\b(?:start|begin|make|prepare|put|steep|fridge|ready|in time)\b|开始|泡|浸|放|做|弄|准备|下水|动手|提前|来得及|赶/;
/** Told, not asked: "so I start tonight at nine?" */
const tellsBegin =
  /\b(?:i|ill|i will|we|if i|can i|could i|should i|shall i|lets|and)\b.{0,16}\b(?:start|begin|make|put|set|pop|stick|do)\b|\bstarting\b|^(?:so )?(?:start|put it in)\b|(?:开始|放(?:进)?(?:冰箱)?|泡|浸|做|弄)(?:的话|可以|行|好|吧|啦|就)?/;
const atSomeTime =
  /\b(?:at|by|around|about|from)? ?\d{1,2}(?::\d{2})? ?(?:am|pm|oclock)\b|\b(?:at|by|around|about) \d{1,2}\b|\bmidnight\b|\btonight\b|\bbedtime\b|[一二两三四五六七八九十\d]{1,3} ?点|今晚|晚上|睡前/;

/** "And for dinner tonight?" */
const goesOn =
  /^(?:(?:and|what about|how about|ok|or|那|如果|要是|那么)[, ]*)*(?:for|by|(?:我)?(?:要|想)(?:是)?)? ?(?:dinner|lunch|breakfast|supper|tonight|tomorrow|tomorrow (?:morning|noon|afternoon|evening)|(?:at )?\d{1,2} ?(?:am|pm)|(?:明天|今天|今晚|后天|明早|早上|中午|下午|晚上|早餐|午餐|晚餐|早饭|午饭|晚饭)+(?:喝|要)?)(?: tonight| tomorrow| today)?(?:呢)?[?？ ]*$/;

const stands =
  /\bhow long (?:can|may|could|should|do) (?:it|i|they)(?: be| stay| stand| keep| leave| sit)*\b|\b(?:stay|stays|leave|left|keep|sit|stand|steep|infuse|brew|in there|in the (?:fridge|refrigerator)|overnight|all night|longer than)\b.{0,40}\b(?:\d{1,2}|ten|twelve|eight|twenty)? ?(?:hours?|hrs?|h\b|overnight|all night|all day|days?|too long|longer)\b|\b(?:more|longer) than \d{1,2} ?h|\bovernight\b.{0,16}\b(?:ok|okay|alright|fine|too)\b|(?:泡|放|浸|摆|超过|多过)(?:到|了|足|够)?(?:超过)?.{0,4}(?:小时|个钟|钟头|一晚|一夜|整晚|整夜|过夜|隔夜|一整天|一天|两天)|过夜(?:可以|行|会)/;
const onTheWay =
  /\b(?:car|boot of the|trunk|back ?pack|rucksack|bag with me|handbag|on the train|on the beach|at the beach|on a picnic|on the picnic table|out of the fridge|outside the fridge|without (?:a )?(?:fridge|cooler)|take it (?:with|along|to)|bring it|carry it|cool(?:er)? ?(?:box|bag)|ice packs?)\b|车(?:上|里|内|厢|度|入面)|后备箱|后车厢|车尾箱|背包|书包|袋里|带(?:去|出|到|出门|上山|在路上)|路上|不放冰箱|没(?:有)?冰箱|离开冰箱|保冷|保温(?:袋|箱)|冰桶|海滩|野餐(?:垫|时|的时候).{0,6}放/;
/** It has been, and somebody asks whether it may still be drunk: that is a question of safety. */
const hasBeen =
  /\b(?:left it|was left|had it|stood|sat|has been|been (?:in|out)|forgot|yesterday|still (?:safe|ok|good|drink))\b|(?:放|摆|忘|丢|留)(?:在|了).{0,8}(?:了|过|一天|一晚|半天|成日)|还(?:能|可以)喝|昨天|昨晚/;
const strain =
  /\bhow (?:do|should|can|would) i (?:strain|filter|get the leaves out|take the leaves out|separate)\b|\b(?:strain|filter|sieve) (?:it|them|the leaves)\b|怎么(?:滤|过滤|隔|把茶叶)|要(?:不要)?(?:过滤|滤)(?:茶叶|掉|出来)?|滤(?:掉|出来)(?:吗|么)/;
const tasteEarly =
  /\b(?:can|may|could) i (?:have|drink|try|taste|sip)(?: some| a bit| it| a sip| a glass)*(?: of it)?(?: already| now| yet| early| before)+\b|\b(?:try|taste) (?:it|some) (?:already|now|early)\b|(?:现在|先|已经)(?:可以|能)?(?:先)?(?:喝|试|尝)(?:一口|一点|一下|些)?(?:吗|了吗|行吗|得吗)|可以先(?:喝|试|尝)/;
const ice = /\b(?:ice|iced) (?:water|cubes?)\b|\badd ice\b|冰(?:块|水|粒)/;
const lid = /\blid\b|\bcover(?:ed)?\b|\bseal(?:ed)?\b|盖(?:子|好|上|紧)|(?:要|用)不(?:要|用)盖|密封/;

const ofTheShop =
  /\b(?:open(?:ing)?|closed?|lessons?|class(?:es)?|workshops?|deliver\w*|arrives?|shipping|answer|reply)\b|课|堂|营业|开门|关门|送货|寄|回复/;
const longest = 120;

/** `words` as cues are written, in one Chinese. The first that fits. */
export function coldAsked(words: string): ColdAsk | null {
  if (words.length > longest || ofTheShop.test(words)) return null;
  if (onTheWay.test(words) && !asksWhen.test(words)) return hasBeen.test(words) ? null : 'on-the-way';
  if (asksWhen.test(words) && begins.test(words)) return 'begin-for';
  if (strain.test(words)) return 'strain';
  if (tasteEarly.test(words)) return 'taste-early';
  if (stands.test(words) && !hasBeen.test(words)) return 'stands';
  if (lid.test(words)) return 'lid';
  if (ice.test(words)) return 'ice';
  if (goesOn.test(words)) return 'begin-for';
  return tellsBegin.test(words) && atSomeTime.test(words) ? 'begun-at' : null;
}

const hours =
  /(?<n>\d{1,3}|[一二两三四五六七八九十]{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty) ?(?:个)?(?<unit>hours?\b|hrs?\b|h\b|小时|钟头?|days?\b|天)/;
/** From the evening to the morning. Common practice, no source. */
const nightH = 10;

/** "14 hours", "over night", 兩天. */
export function hoursSaid(words: string): number | null {
  const { n = '', unit = '' } = hours.exec(words)?.groups ?? {};
  const count = n === 'twenty' ? 20 : readNumber(n);
  if (count !== undefined && n !== '') return /^(?:day|天)/.test(unit) ? count * 24 : count;
  if (/\ball day\b|一整天|一天/.test(words)) return 24;
  return /\b(?:overnight|over night|all night|night)\b|一晚|一夜|整晚|整夜|过夜|隔夜/.test(words) ? nightH : null;
}
