/** Which step of a brew hands have done, and which went late, told in other words than a button's. It moves no brew. */
import { readNumber } from '../lessons/spoken/numeral.ts';

/** In the order of a brew; `drunk` is told where nothing is poured off. */
export type Step = 'warmed' | 'leaf-in' | 'rinsed' | 'filled' | 'poured' | 'drunk';

/** The first that fits: water poured in is no tea poured off. */
const done: readonly (readonly [Step, RegExp])[] = [
  [
    'filled',
    /\b(?:re)?filled\b|\b(?:water|its|it is) (?:is |s )?(?:on|all in)\b|\bwaters? (?:is |are )?in\b|\bpoured (?:the |some |hot |boiling |my )*water|\bpoured (?:it |everything )?(?:in|on)\b|\btopped (?:it |them )?(?:back )?up\b|\b(?:its|it is|theyre|put it|went|now|gone) (?:in|into|back in) the (?:fridge|refrigerator)|^(?:its |it is )?(?:brewing|steeping|drawing) now\b|(?:注|加|倒|泡|落|添|续|下)(?:好|满|完|上|入|进)?(?:了(?:满|热|开|滚|冷|冻|冰)?水|(?:满|热|开|滚|冷|冻|冰)?水(?:了|进去了))|(?:注|加|倒|添|续)(?:好|满)(?:热|开|冷|冰)?水|水(?:都|已经|也)?(?:加|倒|注|落|放)(?:好|满|进去|入去|下去)?了|注(?:好|满)了|(?:泡|浸)(?:上|下去|住|着)了|(?:放|摆|塞|收)(?:好|进|入)?(?:去)?(?:冰箱)(?:里|度|入面)?了|进冰箱了/,
  ],
  [
    'leaf-in',
    /^(?:ok |all |its )?in$|\b(?:leaf|leaves|leafs|tea|teas|leaves are|leaf is|its|it is|theyre|they are|all|thats|everythings) (?:is |are |all |s )?in(?: there| it| the (?:pot|gaiwan|mug|cup|glass|jar|bottle|basket|kyusu|teapot|bowl))?\b(?! (?:an?|my|her|his|your|our|this|that|tea|hot|cold|\d))|\bin (?:it|they) goe?s?\b|\b(?:put|added|dropped|threw|tipped|chucked|popped|got) (?:the |my |all |some )*(?:leaf|leaves|tea|it|them)(?: all)?(?: in)?\b(?! (?:on|down|out|away))|(?:放|投|下|落|加|倒|置|摆|拨|丢)(?:好|完|了)?(?:茶叶|茶|叶子?|干茶)(?:了|进去|入去|落去|下去)|^[我都已经就把先茶叶子也]*(?:放|投|落|摆|丢)(?:好|进去|入去|落去|下去|进)*了/,
  ],
  [
    'rinsed',
    /\brins(?:ed|e (?:is )?done)\b|洗(?:好|完|过|掉)?(?:一?(?:次|遍|道))?茶?(?:了|过了)|润(?:好|完|过)?茶?了|醒(?:好|完|过)?茶?了/,
  ],
  [
    'warmed',
    /\b(?:warmed|preheated|pre heated|heated)\b|\b(?:pot|gaiwan|cups?|vessel|mug|glass|its|everything|all)(?: is| are|s)? (?:all |nice and )?(?:warm|warmed|hot)(?: now| enough)?$|(?:温|烫|热|暖|预热)(?:好|完|过)?(?:杯|壶|碗|盖碗|具|器)*(?:子)?(?:好|完|过)?了/,
  ],
  [
    'poured',
    /\b(?:poured|strained|decanted|drained)\b|\b(?:took|lifted|fished|pulled) (?:the )?(?:it|them|leaf|leaves|basket|bag|infuser)(?: back)? out\b|\bits out(?: now)?$|\bpoured off\b|(?:倒|出|滤)(?:好|完|出来|掉|干)?(?:汤|茶)?(?:了|出来了)|(?:拿|捞|取)(?:出来|起来|走)了/,
  ],
  [
    'drunk',
    /\b(?:drank|drunk|finished) (?:it|this one|that one|that|the (?:cup|glass|mug)|down|mine)\b|\bdrunk$|(?:喝)(?:完|光|掉|好|到.{0,4})?(?:这杯|这泡|一半)?了/,
  ],
];

/** Not yet, not at all, or only asked about. */
const notSo =
  /[?？]|\b(?:not|havent|hasnt|didnt|dont|doesnt|wont|cant|never|should|shall|when|how|if|will|would|can i|could|must|before|after|until|while|without|instead of|forgot to|about to|going to|want to)\b|^(?:is|are|do|does|did|has|have) |还没|没有?(?:[倒出泡放洗注]|温)|未|如果|要不要|什么时候|啥|咋|几时|几点|多久|哪|何时|等下|等等|想|应该|可以|能不能|怎么|为什么|吗|不(?!小心)|忘/;
/** Whoever tells of hands and asks what is next has done the step. */
const whatNext =
  /[,，、. ]*(?:(?:and |so |ok |now )*(?:what(?:s| is)? (?:now|next|then)|next)|(?:那)?(?:然后|接下来|接着|下一步|跟住|之后)(?:呢|怎么(?:做|办)|做什么)?)[?？ ]*$/;
/** Longer texts tell more than that. */
const longest = 60;

/** `words` as cues are written, in one Chinese. */
export function stepDone(words: string): Step | null {
  const told = words.replace(whatNext, '');
  if (told.length > longest || notSo.test(told)) return null;
  return done.find(([, pattern]) => pattern.test(told))?.[0] ?? null;
}

const late =
  /\b(?:poured|pouring|pour|was|were|am|im|bit|little|too|far|way|much|sorry|oops)\b.{0,20}\b(?:late|too long|too slow(?:ly)?)\b|\b(?:stood|sat|steeped|brewed|drew|in there|left it(?: in)?|let it (?:go|sit|stand|steep))\b.{0,16}\b(?:too long|for ages|forever|way over|over|longer)\b|\bforgot (?:to pour|it|about it|about the (?:tea|pot|time)|the (?:tea|time|pot))|\b(?:overdid|oversteeped|over steeped|overbrewed|over brewed)\b|\blost (?:count|track)|(?:倒|汤|泡|浸|焗|闷|出)(?:得|到)?(?:太|有点|有些|好|真|又|实在|稍微|稍)*(?:慢|迟|晚|久|耐)(?:了|点|些)|(?:慢|迟|晚)(?:倒|出(?:汤)?)?了|(?:超时|过头|泡过了|泡过头)(?:了)?|(?:忘记?|不记得|顾着|光顾)(?:了)?(?:要)?(?:倒|出汤|这壶|时间|看时间|它)|(?:闷|焗|泡|浸)(?:了)?(?:好久|太久|很久)/;
const over =
  /(?<n>\d{1,3}|an?|one|two|three|five|ten|fifteen|twenty|thirty|half a|[一二两三四五六七八九十半]{1,3}) ?个? ?(?<unit>s(?:ec(?:ond)?s?)?\b|秒|min(?:ute)?s?\b|分(?:钟)?)(?:钟)?/;
/** Of the wait before it, not of a wait to come. */
const ofWhatComes = /[?？]|\b(?:can|could|should|shall|may|next|would|will)\b|下一泡|要不要|可以|可不可以|能不能|吗$/;
const longestLate = 90;

/** By how many seconds the last or the present infusion went late; `unsaid` where only that is told. */
export function lateBy(words: string): number | 'unsaid' | null {
  if (words.length > longestLate || ofWhatComes.test(words) || !late.test(words)) return null;
  const { n, unit = '' } = over.exec(words)?.groups ?? {};
  if (n === undefined) return 'unsaid';
  const count = /^(?:half a|半)$/.test(n) ? 0.5 : (readNumber(n) ?? null);
  return count === null ? 'unsaid' : count * (/^(?:min|分)/.test(unit) ? 60 : 1);
}
