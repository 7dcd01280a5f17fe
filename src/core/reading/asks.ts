/** What a few words ask of a plan at hand: how hot, how long, how often, what a word means. It answers nothing. */
import type { PlanQuestion } from './plan-questions.ts';

export type Asks =
  | 'heat'
  | 'time'
  | 'leaf'
  | 'count'
  | 'leaf-out'
  | 'bitter-ahead'
  | 'too-much'
  | 'enough'
  | 'guide'
  | 'what-tea'
  | 'whole'
  | 'meaning'
  | 'unclear'
  | 'size'
  | PlanQuestion;

/** One line of the plan is the answer to each of these. */
const ofOneLine: {
  readonly [asks in 'heat' | 'time' | 'leaf' | 'count' | 'leaf-out' | 'bitter-ahead' | 'too-much']: RegExp;
} = {
  heat: /^(?:and |so |ok |just |with |the |its )*(?:fully )?boiling(?: hot)?(?: water)?,? (?:right|yes|yeah|ok|or not|or cooler|i (?:guess|suppose|assume))[?. ]*$|\bhow (?:do|will|would|can|should) (?:i|we|you) (?:know|tell|check|see|measure) (?:when |if |that |whether )?(?:its|it is|the waters?|the temp\w*|waters?)\b(?: is| s| at| about| around| reached| gets to)* ?(?:\d{2,3}|hot enough|that hot|the right temp\w*)|\bhow long (?:after|from) (?:the )?boil|\b(?:how long|when) .{0,24}\b(?:cool|off the boil|after (?:it )?boil)|(?:水开|烧开|滚|煮开).{0,4}(?:后|之后)?(?:等|放|凉)(?:多久|几耐|几分钟)|(?:放凉|晾|摊凉)(?:多久|几耐|几分钟)|(?:怎么|怎样|如何|点样?|咋)(?:才|会|能|可以|去|先)*(?:知道|晓得|判断|看|睇|量|测|估|抓)(?:得|出|到)?(?:到|是)?.{0,4}(?:水|温|度|热|滚)|(?:开|滚|沸|烧(?:开|好|滚)?的?)水?(?:可以|能|就)?直接(?:倒|冲|泡|浇|注|淋)(?:下去|进去|落去|上去|茶)?(?:可以|行|得|好|没问题|会不会|吗|嘛|不)|(?:\d{2,3}|[六七八九]十五?) ?(?:度|°c?)的?水?(?:要|该)?(?:怎么|怎样|点样?|如何|咋)(?:弄|得|来|做|调|整|搞|量|测|知|看|泡出)|\bhow (?:hot|warm)\b|\b(?:should|must) (?:the |my )?water be\b|\bdoes (?:the |my )?water (?:need|have) to be\b|\bwh?at temp\w*|\bwh?at(?:s| is)? (?:is |the |a |right |best |ideal |good |correct |water |brew\w* )*temp\w*|\bwhich temp\w*|\bhow many degrees\b|几度|多少度|多[热烫滚]|几[热烫滚]|水温(?:要|系|是)?(?:多少|几多|几)|水温(?:是不是|是否|不能|不可以|不要|别|要)?.{0,3}太?(?:高|低|热|烫)(?:对吧|是吧|吗|吧|对不对|是不是)|水(?:烧|煮)?(?:开|滚)了?[，, ]*(?:就|可以|能)?直接(?:倒|冲|泡)(?:下去|进去)?(?:吗|[?？]|行|可以|就行)|水(?:再)?(?:烧|煮)?(?:也|都|就)?(?:到|达|烧|煮)[不唔](?:了|到)\d*|^水温呢?$|(?:冷|凉|热|开|温)水(?:还是|定系|或).{0,4}(?:冷|凉|热|开|温|滚)水|水(?:是|系|要|用|需要|得|一定要)*(?:很|好)?(?:滚|开|沸|热|烫)的(?:吗|嘛|咩|还是|定系)|(?:滚|开|沸|热|烫)的?水?(?:还是|定系|定)(?:放|凉|晾|摊|等|温|冷|凉|冻)|\bis (?:water (?:at|of) )?\d{2,3} ?°? ?(?:c|f|celsius|degrees?)? ?(?:water )?(?:too (?:hot|cold|cool|warm)|(?:hot|warm|cool) enough)\b|\b(?:does|do|should|must|would) [a-z -]{2,24} (?:need|take|want|like|have|use|be (?:brewed|made) with) (?:fully |really |very )?(?:boiling|hot) water\b|(?:要|使唔使|需要|用唔用|要不要|可以|可唔可以)用?(?:滚|开|沸|烧开的)水(?:吗|泡吗|冲吗|泡|冲)?[?？]*$|水(?:要不要|使唔使|是不是要|系咪要|要|需要|不用|唔使|不需要|一定要)(?:先)?(?:烧|煮|煲)(?:到|得)?(?:很|好)?(?:滚|开|沸)(?:吗|吧|嘛|咩|呀|先得|才行|[?？。])*$|\d{2,3} ?(?:度|°c?).{0,8}(?:会不会|会唔会|系咪|是不是)太(?:热|烫|高|低|滚)/,
  time: /\b(?:it|that|this|it'll|itll|will|does|must|should)\b.{0,12}\b(?:takes?|needs?) (?:a bit |much |a little |even )?(?:longer|less time|more time)\b|\bwh?at(?:s| is)? (?:is |the |right |best |ideal |good |correct )*(?:brew\w*|steep\w*|infusion|infusing) times?\b|\bhow (?:long|many (?:sec\w*|min\w*))\b|几秒|多少秒|几多秒|几分钟|多少分钟|多久|几耐|多长时间/,
  leaf: /^(?:so |and |ok |well |but )*how much (?:then|should i (?:use|put in|take)|do i (?:use|need|put in|take)|to use)(?: then)?[?. ]*$|\bhow (?:much|many) (?:leaf|leaves|powder|matcha|tea\b(?! does| will)|grams?|spoons?\w*|scoops?|tsps?|teaspoons?)\b|\b(?:(?:how much|what) (?:is |s |would )?(?:that|this|it|an?|one|the|per)?(?: usual| normal)?(?: serving| portion| dose)?(?: be)?|whats (?:that|this|it)|^(?:and |so )?(?:that|this|it)?) ?in (?:tea ?spoons?|tsps?|spoons?(?:fuls?)?|grams?)\b|几克|多少克|几多克|(?:几多|多少)(?:茶叶|茶(?!水|汤))|(?:几|几多|多少)(?:茶|汤|大|小)?(?:勺|匙)|(?:冇|没有?|无)(?:茶匙|茶勺|匙羹|汤匙|勺子)|(?:手|用手)(?:抓|捏|拈)|一(?:小|大)?(?:把|撮|捏|抓)(?:大概|大约|差不多|等于|就|是|有|即系)*(?:多少|几多|几克|多重|几重)|抓一(?:把|撮)|(?:放|落|下|抓|加|投|丢)(?:几多|多少)(?!水|度|分|秒|次)|几[朵颗粒片](?!分)/,
  count:
    /\bhow (?:many|often) (?:more )?(?:times|infusions?|steeps?|brews?|rounds?)\b|\bhow (?:often|many more)\b|几泡|几多泡|多少泡|几次|几多次|多少次|几回|几冲|几道|续(?:几|多少)/,
  'leaf-out':
    /\b(?:take|fish|pull|lift|get|scoop) (?:the )?(?:leaf|leaves|flowers|petals|tea ?bag|bag|basket|them|it)? ?(?:back )?out\b|\b(?:leave|keep) (?:the )?(?:leaf|leaves|them|it|basket) in\b|茶叶.{0,6}(?:拿|捞|取|揿|攞|隔)(?:出|走|起|掉)|(?:拿|捞|取|攞)(?:出|走|起)(?:来|嚟)?茶叶|茶叶.{0,4}(?:留|摆)(?:在|喺)|叶子?.{0,4}一直(?:泡|浸|放|留)|一直(?:泡|浸|放|留|闷|焗)(?:着|住)?(?:在|喺)?(?:里|里面|入面|水里)?(?:行|可以|得|会|吗|呢|咩|没关系|冇事)|(?:要|需要|使唔使|都要|要不要|一定要)(?:全部|全|一次|一下子)?(?:倒|沥|滴|斟)(?:到)?(?:干|光|完|晒|尽)(?:净)?(?:吗|嘛|咩|呀|[?？])*(?:$| ?(?:还是|定系))|\b(?:leave|stay|sit)s? in (?:it |there )?(?:all the time|the whole time)/,
  'bitter-ahead':
    /\b(?:will|would|wont|going to|gonna|does|doesnt) (?:it |that |this )?(?:not )?(?:be |taste |get |turn |go |be going to be )?(?:too |very )?(?:bitter|strong|weak|harsh)\b|(?<!(?:放|落|下|加|搁|抓)(?:得|了|咗)?太?(?:多|少)(?:了|咗|点|啲)?.{0,3})会(?:不会|唔会)(?:太|很|好)?(?:苦|涩|浓|淡)|会(?:太|很|好)?(?:苦|涩|浓|淡)(?:吗|嘛|咩)|会(?:不会|唔会)?越.{1,2}越(?:苦|涩|浓|淡)/,
  'too-much':
    /\b(?:that|it|this) (?:seems|looks|sounds)(?: like)?(?: a bit| quite| rather| very| awfully)? (?:a lot|loads|lots|tons|much|little|long|short|hot)\b|\bthats (?:loads|lots|tons)\b|\b(?:less|more|fewer|shorter|longer|hotter|cooler|smaller|bigger|lower|higher)(?: \w+)? than (?:i|we|id|i'd) (?:thought|expected|would have|guessed|imagined|usually|normally|use|d have)|\btoo (?:long|short|hot|much|little|many|cold),? (?:isnt|is|no|innit|right)\b|\b(?:isnt|is|not) (?:that|it|this) (?:not )?(?:way )?(?:too much|too little|a lot|too long|too short|too hot)\b|\bthats (?:a lot|too much|so much|nothing|hardly any\w*|(?:a |such a |so )?tiny)\b|\bis that (?:a mistake|a joke)\b|(?<!\b(?:thanks?|thank you|thx|thnx|ty|cheers|ta|like it|love it|loved it|liked it|help\w*) )\bso (?:little|much|short|long)\b(?! (?:for|thanks|better))|(?<!\b(?:put|tipped|poured|dropped|added|threw|chucked|used|went|got) (?:[a-z]+ ){0,3})\btoo (?:many|much) (?:grams?|leaf|leaves)\b|太(?:多|少|长|短|久|耐)了?(?:吧|吗|啲|呀|啊|[?？])|(?<!(?:[舍捨]不得|不[舍捨]得?|心疼|肉痛).{0,6})(?:咁|这么|那么)(?:多|少|短|长|久)(?:嘅|的|啊|呀|吗|咩|吧|[?？])*$|(?:会不会|会唔会|系咪|是不是)太(?:多|少|短|长|久)/,
};

/** How long something keeps, or how much somebody may drink in a day, is no matter of the plan. */
const notOfThePlan =
  /\b(?:(?:stays?|keeps?|go(?:es)?) (?:warm|hot|cold|lukewarm)|keep|keeps|last|lasts|store|stored|good for|a day|per day|daily|every day|week|deliver\w*|arrive|reply|answer|class|lesson|book|seat|cost)\b|保存|存放|保质|摆得|放得|[能可以]放|能存|好放|每天|每日|一日|一天|送到|寄|回覆|回复|课|堂|位|钱|[蟹鱼虾]眼/;

const asksForWhole =
  /\bhow (?:do|should|can|would|shall|to|does one) ?(?:i |you |we |one )?(?:then )?(?:brew|make|steep|prepare|do)\b|\b(?:show|tell|give|say|repeat) (?:me )?(?:it|that|the plan|the recipe|the numbers|everything)(?: all)? (?:again|once more|slower|slowly)\b|\brepeat that\b|\bone more time\b|怎么(?:泡|冲|弄|沏|煮)|怎样(?:泡|冲)|点(?:冲|泡|整|样冲|样泡)|[冲泡]法(?:系|是|要)?(?:点|怎)|咋(?:泡|个泡|冲)|如何(?:泡|冲)|(?:再|重新)(?:说|讲|看|睇)(?:一次|一遍|多次)/;

/** With the tea named beside it: the plan, and then step by step. */
const asksForGuide =
  /\b(?:guide|walk|take|lead) me (?:through|step)?|\bguide me\b|\bstep by step\b|(?<!\bto )\b(?:lets go|lets start|lets brew|go|start)[.! ]*$|(?:带|引导|陪|领)(?:着|住|埋)?我(?:泡|冲|来|做|一步|一齐|一起)|一步一步|跟住你?(?:做|冲)|跟着你?(?:做|泡)/;

/** "What's dancong anyway?", 安吉白茶是白茶吗 */
const asksWhatTea =
  /^(?:[a-z]+[, ]+){0,3}?what(?:s| is| kind of tea is) (?!.*\b(?:my|for|of|to|with|on (?:the|this)|(?:in|from|with|at) (?:the|this|a))\b)[a-z -]{3,24}(?: anyway| exactly| then)?[?. ]*$|^is [a-z -]{3,24} (?:an? )?(?:kind of )?(?:green|white|black|red|yellow|dark|oolong|herbal|puer)(?: tea)?[?. ]*$|^[^，,。？? ]{2,8}(?:是|系)(?:啥|什么|咩|乜嘢?)(?:茶|东西|来的)?[啊呀]?(?: .{0,14})?$|^[^，,。？?]{2,8}(?:是|系|算)(?:不是|唔系|咩|什么|乜嘢?|哪种|边种|一种)?(?:绿|白|红|黑|黄|乌龙|青|花|普洱|什么|咩|乜嘢?|哪种|边种)?茶?(?:来的|嚟|嚟㗎)?[吗嘛咩呀啊]?[?？]*$/;

const asksIfEnough =
  /\b(?:is|will|would) (?:that|it|this) (?:be )?(?:enough|do) for\b|\benough for (?:all |the )?(?:of )?(?:us|[a-z]+|\d+)(?: of us| people)?\?*$|够不够(?!热|浓|味|甜|滚)|够(?:喝|饮)?吗|够唔够(?!热|浓|味|甜|滚)/;

const asksForMeaning =
  /^how (?:much|big) is an? (?:level )?(?:tea ?|table ?|tiny |small )?spoon(?:ful)?[?. ]*$|\bwhat (?:do|does|did|on earth do) (?:you|u|ya|it|that|this|[a-z' -]{1,24}) (?:mean|stand for)\b|\bmeaning of\b|\bwhat(?:s| is) the (?:point|use|purpose|reason) (?:of|in|for)\b|有(?:什么|咩|乜嘢?)用|(?:有什么|有咩)意义|\bwhats? (?:is )?meant by\b|^(?:[a-z]+[, ]+){0,4}?what(?:s| is| are) (?:an? |the |your )?[a-z -]{3,24}[?. ]*$|^what(?:s| is| are) (?:an? |the |your )?[a-z -]{3,24}[?,. ]+(?:and |but |cos |because )?(?:i|we) (?:dont|do not|havent|have not|never) (?:have|got|own|heard of|seen) (?:one|it|any|that|of it)\b|什么叫|什么是|啥是|啥叫|是啥(?!茶|时)|是什么(?:东西|来的|啊|呀)?[?？]*$|什么意思|啥意思|乜嘢?(?:系|叫)|咩(?:系|叫)|系咩(?!茶|牌)|系乜(?!茶|牌)|即系咩|点为之|(?:公道杯|公杯|茶海).{0,4}(?:一定|必须|非|需要|要不要|可以不|能不|不用).{0,8}$|(?:一定|必须|非|需要|要不要|可以不|能不能不|不)要?用?.{0,2}(?:公道杯|公杯|茶海).{0,4}$|\b(?:have to|need to|must i|do i need|really need) (?:use |have |get )?(?:an?|the) (?:sharing |fairness |serving )?pitcher\b|(?:茶匙|茶勺|匙|勺)(?:是|系|有|即系|即)?(?:多大|几大|多少|几多)|解释(?:一下|下)?(?:什么|咩|乜)/;

/** "Off to work now. Do I have to take the flowers out?" */
const asksToTakeOut =
  /\b(?:do|should|must|shall) (?:i|we) (?:have to |need to )?(?:take|fish|lift|pull) (?:the |my )?(?:leaf|leaves|flowers|petals|basket|bag|tea ?bag|strainer|them|it) (?:back )?out\b/;

/** "My kettle has 80, 90 and 100, which one?" */
const ofKettle =
  /\bkettles? (?:only |just )?(?:has|does|goes to|goes|can do|is set to|sets)(?: only| settings for| buttons for| marks for)? \d{2,3}.{0,12}\d{2,3}|\bkettles?\b.{0,40}\b(?:which|what) (?:one|setting|button|temp\w*|for|do i|should i)\b|\b(?:which|what) (?:setting|button) .{0,30}\bkettle\b/;

/** So short a time that it looks like a slip; "is 3 minutes not too long for green". */
const doubted =
  /\b(?:is|are|arent|isnt) .{2,28}\b(?:not|bit) too (?:much|long|short|little|few|many)\b|\bisnt .{2,28}\btoo (?:much|long|short|little|few|many)\b|\b(?:typo|typos|misprint)\b|\b(?:you|u|ya) (?:mean|meant) (?:minutes|mins)\b|\b(?:seconds|secs) (?:not|or|rather than) (?:minutes|mins)\b|(?:打错|写错|印错)了?(?:吧|吗|么|咩|呀|[?？])|(?:不是|唔系)分钟(?:吗|吧|咩|[?？])/;

/** "What's the difference between sheng and shou?" */
export const asksApart = /\bdiff(?:er\w*|s)?\b|差在|差别|分别|区别|不同|唔同|不一样/;

/** Not what a word means, but what all of it does. */
const unclear =
  /\bwhat (?:do|does|did) (?:you|u|ya|it|that|this|[a-z' -]{1,24}) (?:mean|stand for)\b|\b(?:dont|do not|didnt|cant) (?:get|understand|follow) (?:it|that|this|you|a word|a thing|any of (?:it|that|this))\b.{0,40}$|\b(?:say|tell|put|explain|give)\b.{0,12}\b(?:simpler|simple|simply|plainly|in (?:plain|simple) (?:words|english|terms))\b|\bdumb it down\b|\b(?:too|so|very) (?:complicated|technical|confusing)\b|\b(?:dont|do not|didnt|cant) (?:get|understand|follow)(?: (?:it|that|this|you|a word|any of (?:it|that)))?[ .!?]*$|^(?:huh|eh|come again|in english please|pardon)[ .!?]*$|什么意思|啥意思|咩意思|乜意思|(?:简单|直接|白话)(?:啲|点|一点|些)?(?:讲|说)|(?:讲|说)(?:得)?(?:简单|白话|重点|人话)|(?:更|再|比较|有没有|有冇|有无)(?:简单|容易|省事|方便)(?:一?点|啲|些)?(?:的|嘅)?(?:法子|办法|方法|泡法|冲法|做法|方式)|(?:听|看|睇|完全)?(?:不懂|唔明|不明白|唔识睇)(?:啊|呀|耶|欸|吗|喎|了|诶|ㄟ|[。.!！? ])*$|^(?:听|看)(?:无|嘸|呒|没)(?:[ ，,。.!！?？]|$)|雾煞煞|^(?:听|看|睇|完全)?(?:不懂|唔明|不明白|唔识睇)(?:啊|呀|耶|欸|吗|喎|了|[。.!！? ])*$/;

/** Longer texts say more than that. */
const longestAsked = 40;

interface AsksScene {
  /** A tea, a vessel or an amount is told with it, which no line of the plan at hand answers. */
  readonly named: boolean;
  /** So much leaf, and in no size of vessel. */
  readonly dosed: boolean;
  /** … one tea that we know, and no more. */
  readonly tea: boolean;
  /** The answer that tells what a word of the text means. */
  readonly explain: (words: string) => string | null;
  readonly danger: string | null;
  /** Asked only where it may be one. */
  readonly planQuestion: () => PlanQuestion | null;
}

export interface ReadAsks {
  readonly asks: Asks | null;
  readonly explained: string | null;
}

/** "5 g, what size gaiwan?": so much leaf is told, and what should hold it is asked. */
const asksSize =
  /\b(?:what|which|how) (?:size|big|large|small|many ml|much water)\b|\bwhat (?:sort|kind) of size\b|\b(?:which|what) (?:gaiwan|(?:tea ?)?pot|cup|mug|vessel|kyusu)\b|哪[一个只把种]{0,2}(?:盖碗|茶?壶|杯)|多大|几大|多少(?:毫升|ml|水)/;

export function readAsks(words: string, { named, tea, explain, danger, planQuestion, dosed }: AsksScene): ReadAsks {
  if (dosed && danger === null && words.length <= longestAsked * 2 && asksSize.test(words))
    return { asks: 'size', explained: null };
  if (tea && danger === null && words.length <= longestAsked && asksWhatTea.test(words))
    return { asks: 'what-tea', explained: null };
  const mayAsk = danger === null && (!named || dryOrWet.test(words));
  const question = mayAsk ? planQuestion() : null;
  if (question !== null && asksMore(words)) return { asks: 'whole', explained: null };
  const isWord = question !== null && asksForMeaning.test(words) && explain(words) !== null;
  const asks = (isWord ? null : question) ?? asksIn(words, named);
  if (asks !== 'meaning') return { asks, explained: null };
  const explained = danger === null ? explain(words) : null;
  return { asks: explained === null ? (unclear.test(words) ? 'unclear' : null) : asks, explained };
}

/** 7克是乾的還是濕的: of the plan's own weight. */
const dryOrWet = /(?:干|湿)(?:的|嘅|茶|叶)*(?:还是|定系|抑或|定)(?:湿|干)|\b(?:dry or wet|wet or dry)\b/;

/** 要洗茶嗎 然後可以泡幾次: another line of the plan, asked apart from the first. */
const asksMore = (words: string): boolean => {
  const parts = words.split(apart).filter((part) => part !== '');
  return parts.length > 1 && linesAsked(parts.at(-1) ?? '').some((line) => afterwards.has(line));
};
const apart = /[?？,，、。;；]\s*|(?<=\p{Script=Han})\s+(?=\p{Script=Han})|(?:还有|另外|同埋)|\b(?:and|also)\b/u;
const afterwards: ReadonlySet<string> = new Set(['heat', 'time', 'leaf', 'count']);

function asksIn(words: string, named: boolean): Asks | null {
  if (words.length <= longestAsked && asksSpoons.test(words)) return 'leaf';
  if (named && asksForGuide.test(words)) return 'guide';
  if (asksForWhole.test(words)) return 'whole';
  if (words.length <= longestAsked * 2 && asksApart.test(words)) return 'meaning';
  if (words.length <= longestAsked * 2 && doubted.test(words)) return 'too-much';
  if (words.length <= longestAsked * 2 && ofKettle.test(words)) return 'heat';
  if (!named && words.length <= longestAsked * 2 && unclear.test(words)) return 'meaning';
  if (!named && words.length <= longestAsked * 2 && ofOneLine['bitter-ahead'].test(words)) return 'bitter-ahead';
  if (!named && words.length <= longestAsked * 2 && asksToTakeOut.test(words)) return 'leaf-out';
  if (words.length > longestAsked) return null;
  if (asksIfEnough.test(words)) return 'enough';
  const asked = notOfThePlan.test(words) ? [] : linesAsked(words);
  // How hot the water is for a tea is known before all else is.
  if (named) return asked.length === 1 && asked[0] === 'heat' ? 'heat' : meaningIn(words);
  if (asked.length === 2 && asked.includes('time') && asked.includes('leaf-out')) return 'time';
  if (asked.length > 1) return 'whole';
  return asked[0] ?? meaningIn(words);
}

/** 1.5克是幾匙, 一匙是幾克: what the leaf is in the other measure. */
const asksSpoons =
  /\d(?:\.\d+)? ?(?:克|g)(?:是|系|大概|大约|等于|有|即系|差不多|约)*(?:几|多少|几多)(?:个|平|小)?(?:茶)?(?:匙|勺)|(?:^|[ ，,])(?:一|1)(?:平|小|茶)*(?:匙|勺)(?:是|系|大概|大约|等于|有|差不多|约)*(?:几|多少|几多)(?:克|g)/;

const meaningIn = (words: string): 'meaning' | null =>
  asksForMeaning.test(words) || unclear.test(words) ? 'meaning' : null;

const linesAsked = (words: string): (keyof typeof ofOneLine)[] => {
  const all = (Object.keys(ofOneLine) as (keyof typeof ofOneLine)[]).filter((one) => ofOneLine[one].test(words));
  // How long it cools is how it comes to be so hot.
  return all.includes('heat') && coolsDown.test(words) ? ['heat'] : all;
};

const coolsDown = /\b(?:cool|boil)|凉|晾|开|滚/;
