/** What a message means only because of the talk it stands in, and the reader alone cannot tell. It corrects what was heard; it answers nothing. */
import type { Facts, Json } from '../flow/flow.ts';
import { readNumber } from '../lessons/spoken/numeral.ts';
import { cueText } from '../reading/cues.ts';
import { oneChinese } from '../reading/one-chinese.ts';
import { boilingC } from '../reading/warmth.ts';
import { plainText } from '../teas/plain-text.ts';
import { coldAsked } from './cold.ts';
import { pouredAgoS } from './hands.ts';
import { asksOwnBrews, asksRefill, asksWhere, skippedTo, steered } from './steering.ts';
import { lateBy, stepDone } from './steps.ts';

/** A tea is told by its label, whatever the bag is good for. */
const byItsName =
  /\b(?:it (?:says|reads)|(?:bag|label|tin|packet|box|card) (?:says|reads)|it'?s called|it is called|called)\s+["“']?(?<name>[\p{L}\d' -]{2,40})|(?:袋子?|標籤|标签|包裝|包装|罐子?|盒子?)上?(?:寫|写)(?:著|着|的)?(?:是)?|(?:叫做|叫作|名字叫)(?<han>\p{Script=Han}{2,12})/iu;
/** No more of it, no more to say. */
const letItBe =
  /^(?:never ?mind|forget it|(?:it )?does ?n[o']?t matter|算了|算啦|沒事了?|没事了?|冇嘢|不用了)[\s.!。！～~]*$/iu;
const hadEnough =
  /^(?:stop|quit|exit|enough|that'?s enough|停|結束|结束|(?:我)?(?:不喝了|喝完了|喝夠了|喝够了|唔飲喇|飲完喇))[.。！!]*$/iu;
const asksWhenAnswered =
  /\bhow long\b.*\b(?:answer|reply|hear|respond|wait)\b|\bwhen (?:will|do|can) (?:they|you|she|he|i|the shop|someone)\b.*\b(?:answer|reply|hear|respond)\b|多久.{0,3}(?:回|覆|复|等)|等多久|(?:什麼|什么|幾|几)(?:時候|时候|時|时)?.{0,4}(?:回覆|回复|回我|答覆|答复)|幾時覆/iu;
const grumble =
  /\b(?:useless|ridiculous|waste of (?:my )?(?:time|money)|rip-?off|complain(?:t|ing)?|doesn'?t help|not help(?:ful|ing)|i am (?:so )?(?:angry|annoyed))\b|[沒没]用的?東?东?西?$|廢物|废物|投訴|投诉|氣死|气死|[騙骗]人|太[爛烂]|[爛烂]死/iu;

/** On top of who drinks already. */
const moreGuests =
  /\b(?:more|extra|other) (?:people|guests|friends|persons)\b|\b(?:people|guests|friends) (?:more|came|arrived|joined)\b|(?:多了?|又)[來来加]?了?.{0,3}[個个位]/iu;

/** "One more just came", where nobody says of what. */
const oneMore =
  /\b(?<n>one|another|two|three) more (?:has |have |just |only )*(?:came|come|arrived?|arriving|joined|joining|turned up|showed up|is here)\b|(?:又|再|多)(?:來|来|咗|了|到)+(?:了|咗)?(?<han>[一兩两三])(?:個|个|位)(?:人|客)?(?:[喇了啦喎]|$)/iu;

function moreDrink(plain: string, guests: Json): Json {
  if (moreGuests.test(plain) && guests !== null) return guests;
  const { n, han } = oneMore.exec(plain)?.groups ?? {};
  const words = n ?? han;
  return words === undefined ? null : words.toLowerCase() === 'another' ? 1 : (readNumber(words) ?? null);
}

/** To be kept for the next time, and nothing else said. */
const savesInEnglish =
  /^(?:(?:ok|yes|please|can you|could you|i want to|i'd like to|let's)[\s,]*)*(?:save|keep|remember|store|bookmark)(?: (?:this|it|that|these|the|my|brew|plan|recipe|one|settings?|numbers?|for (?:me|later|next time|the next time)|as (?:my )?(?:usual|favou?rite|default)|please))*[\s.!?]*$|^(?:can|could|may) i (?:save|bookmark) (?:this|it|that|the (?:plan|brew|recipe))(?: for (?:later|next time))?[\s.!?]*$|^(?:make|set) (?:this|it|that) (?:as )?(?:my )?(?:usual|default|favou?rite)[\s.!?]*$/iu;
const savesInChinese =
  /^(?:[請请幫帮我好的就把替麻煩烦，, ]|[這这](?:[個个]|種|种|[樣样])?(?:泡法)?)*(?:[記记存](?:下來|下来|起來|起来|住|好|下)|保存|收藏|[儲储]存)(?:[這这](?:[個个樣样次]|種|种)?(?:泡法)?|一下)?[吧了啦]*[\s。.！!]*$|^就?(?:[當当]作?|[設设][成為为])我(?:平常|平時|平时|常用)的?(?:泡法)?[\s。.！!]*$/u;
const saves = (text: string): boolean => text.length <= 60 && (savesInEnglish.test(text) || savesInChinese.test(text));

/** How much tea there will be. */
const asksYield =
  /^(?:and |so )?how (?:many cups|much (?:tea )?(?:does (?:it|that|this) (?:make|give|yield)|will (?:it|that|this) (?:make|give)|do i get))\b|^(?:這樣|这样|一共|總共|总共)?(?:可以|能|會|会)?(?:泡|出|有|沖|冲)?(?:[幾几]|多少)杯(?:茶)?[呢呀]?[?？]?$|多少(?:茶湯|茶汤|毫升)[?？]?$/iu;
/** The step before, as a machine would call it. */
const undo = /^(?:undo|revert|undo (?:that|it)|take (?:it|that) back|撤[銷销]|復原|复原|還原|还原|撤回)[\s.!。！]*$/iu;

/** Neither tea nor vessel nor amount: what is said is all there is to it. */
const tellsOfABrew = (heard: Facts): boolean =>
  ['tea', 'family', 'vessel', 'volumeMl', 'leafG', 'tempC', 'taste', 'turn'].some(
    (name) => (heard[name] ?? null) !== null,
  );

/** Of tea that stood about already, or that somebody is unsure of. */
const stoodAbout =
  /\b(?:left|stood|sat|out|counter|table|room|car|yesterday|days?|safe|okay|ok|can|may|still|drink|bad|sour|mou?ld|cloudy)\b|[?？]|放|擺|摆|桌|室[溫温]|昨|隔夜|能|可|飲得|還|还|忘|壞|坏|酸/iu;

/** A style of brewing and no other word is no danger; nor is a cold infusion that is yet to be made. */
const styleAlone =
  /^(?:gong ?fu|kung ?fu|western|grandpa|cold ?brew(?:ed)?|cupping|whisked)(?: (?:style|way|please|then))*[.!]*$|^(?:[功工]夫|西式|老[爺爷]|冷泡|冷萃|冷沖|冷冲|浸泡|大杯)(?:[泡沖冲]?法|茶|式|泡|的|吧|好了)*[。！]*$/iu;
const isStyleAlone = ({ kind, answer, style }: Facts, text: string): boolean =>
  kind === 'safety' &&
  style !== null &&
  text.length <= 40 &&
  ((answer === 'safety-general' && styleAlone.test(text)) ||
    (answer === 'cold-brew-left-out' && style === 'cold' && !stoodAbout.test(text)));

/** Of what hands do at a brew, and of nothing else: any other word keeps the answer of safety. */
const handiwork =
  /^(?:(?:ok|so|now|then|there|here|i|we|i've|it|it's|its|is|are|the|my|all|and|in|into|off|out|up|on|goes|go|went|put|pour(?:ed|ing)?|add(?:ed|ing)?|fill(?:ed|ing)?|strain(?:ed|ing)?|rins(?:ed|ing)|warm(?:ed|ing)|done|leaf|leaves|tea|water|lid|pot|cup)[\s,.!]*)+$|^[我都已經经就把先再]{0,4}(?:茶[葉叶]?|[熱热]?水)?(?:放|注|倒|加|[沖冲]|洗|[溫温]|[蓋盖]|[濾滤]|[撈捞])(?:好|[進进]|去|出|[來来]|水|茶|[湯汤]|掉|完|上|[蓋盖]){0,3}[了咗啦]{0,2}[\s.。！!]*$/iu;
const isHandsAtWork = ({ kind, answer }: Facts, text: string, flow: Json): boolean =>
  (flow === 'guide' || flow === 'brew') &&
  kind === 'safety' &&
  answer === 'safety-general' &&
  text.length <= 40 &&
  handiwork.test(text);

/** Asked while it draws: whether it is ready, or told that it was drunk; nothing else is said. */
const readyYet =
  /^(?:(?:so|and|ok|is it|is the tea|can i|can we|may i|shall i|should i|do i|drink|pour|serve|it|ready|done|now|yet|already|off)\b[\s?]*)+$|^(?:那|现在|現在|这样|這樣|茶)*(?:可以|能|可唔可以|可不可以|好)(?:喝|飲|饮|倒|出[湯汤])?(?:了|未|咗|得)?(?:[嗎吗沒没未呢])?[?？]*$|^(?:都|已經|已经|我)?(?:喝|飲|饮)(?:了|咗|完了?|好了|光了)[。.]*$/iu;
const isOfThisPot = ({ kind, answer }: Facts, text: string, flow: Json): boolean =>
  flow === 'guide' && kind === 'safety' && answer === 'safety-general' && text.length <= 40 && readyYet.test(text);

/** Asked beside a plan, boiling water is a wish for the plan with it; elsewhere it is a question about tea. */
const withBoilingInEnglish =
  /^(?:(?:and|so|but|ok|hey|what|how|if|happens|about|can|could|may|should|is|it|okay|to|i|i'll|i'd|i'm|we|will|want|rather|let|me|let's|just|use|used|using|brew|brewed|pour|with|on|on it)[\s,]+)*(?:the )?(?:fully )?boiling (?:hot )?water(?:[\s,]+(?:instead|straight|from|the|kettle|for|this|it|tea|though|then|ok|okay|please))*[\s.?!]*$/iu;
const withBoilingInChinese =
  /^(?:那|如果|要是|我|就|想|可不可以|可唔可以|可以|能不能|能|直接|全部|都)*(?:改用|換成|换成|用|拿|攞)(?:剛|刚|啱)?(?:[煮燒烧])?(?:滾|滚|開|开|沸)水(?:[來来去]?(?:泡|沖|冲))?(?:可以|可不可以|可唔可以|行不行|行|得唔得|得|好|會怎[樣样]|会怎样|會點|[呢吧嗎吗嘛呀啊的])*[\s？?。!！]*$/u;
const wishesBoiling = (text: string): boolean =>
  text.length <= 80 && (withBoilingInEnglish.test(text) || withBoilingInChinese.test(text));

/** "That's a ripe puer": what it is, and no word on how it tastes. */
const saysWhatItIs = /^(?:that|this|it)(?:'s| is) (?:an? |the |some )?|^[這这那]?是/iu;

export interface Talk {
  readonly house: Facts | undefined;
  readonly flow: Json;
  /** What the place asks for, if it asks. */
  readonly asked?: Json;
}

export function inTalk(heard: Facts, text: string, { house, flow, asked = null }: Talk): Facts {
  const plain = text.slice(0, 200).trim().replaceAll('’', "'");
  const waits = Number(house?.['asked'] ?? 0) > 0 && asksWhenAnswered.test(plain);
  const grumbles = !waits && plain.length <= 80 && grumble.test(plain) && !tellsOfABrew(heard) && !isCare(heard);
  const pouredAgo = flow === 'guide' ? pouredAgoS(plain) : null;
  const guestsMore = flow === 'guide' ? moreDrink(plain, heard['guests'] ?? null) : null;
  const marked: Facts = {
    ...heard,
    ...ofHands(heard, plain, { house, flow, asked }),
    waits: waits || null,
    grumbles: grumbles || null,
    pouredAgo,
    guestsMore,
  };
  if (marked['steers'] === 'remind') return { ...marked, kind: 'brew', act: null, answer: null };
  if (flow === 'brew' && asked === null && wishesBoiling(plain))
    return { ...marked, kind: 'brew', act: null, taste: null, answer: null, tempC: boilingC };
  if (saves(plain)) return { ...marked, kind: 'brew', act: null, taste: null, answer: null, saves: true };
  if (undo.test(plain)) return { ...marked, kind: 'greeting', act: 'back', taste: null, answer: null };
  if (asksYield.test(plain) && heard['kind'] !== 'safety')
    return { ...marked, kind: 'brew', answer: null, asksYield: true };
  if (letItBe.test(plain)) return { ...marked, kind: 'greeting', act: 'no' };
  if (hadEnough.test(plain)) return { ...marked, kind: 'greeting', act: 'goodbye', answer: null };
  if (isStyleAlone(heard, plain) || isHandsAtWork(heard, plain, flow) || isOfThisPot(heard, plain, flow))
    return { ...marked, kind: 'brew', answer: null };
  if (heard['kind'] === 'taste' && heard['taste'] === null && heard['tea'] !== null && saysWhatItIs.test(plain))
    return { ...marked, kind: 'brew' };
  const named = byItsName.exec(plain);
  return named === null || heard['kind'] === 'safety' ? marked : { ...marked, ...teaByName(heard, named) };
}

/** In the midst of a brew, and before it, beside a plan. */
const brewing: ReadonlySet<Json> = new Set(['guide', 'brew']);

/** What hands have done and where the brew shall go; no name of a tea, and nothing where somebody may be hurt. */
function ofHands(heard: Facts, plain: string, { flow, asked = null }: Talk): Facts {
  const words = oneChinese(cueText(plainText(plain).plain));
  const done = heard['kind'] === 'safety' && !isUnsureSafety(heard, words) ? null : stepDone(words);
  const unknownTea = done === null ? (heard['unknownTea'] ?? null) : null;
  if (asked !== null && flow !== 'guide') return { unknownTea };
  const steers = steered(words);
  const late = lateBy(words);
  return {
    unknownTea,
    hands: done,
    isLate: late === null ? null : true,
    lateS: late === 'unsaid' ? null : late,
    steers: steers === 'remind' && !brewing.has(flow) ? null : steers,
    coldAsk: mayBeCold(heard) ? coldAsked(words) : null,
    asksRefill: asksRefill(words) || null,
    asksOwnBrews: asksOwnBrews(words) || null,
    asksWhere: asksWhere(words) || null,
    skipTo: steers === 'skip' ? skippedTo(words) : null,
  };
}

/** Nothing but a word of danger that hands may mean as well: "燙過了". */
const isUnsureSafety = ({ answer }: Facts, words: string): boolean => answer === 'safety-general' && words.length <= 20;

/** Where a word on safety is of the jar's own. */
const ofTheJar: ReadonlySet<Json> = new Set(['safety-general', 'cold-brew-left-out', null]);
const mayBeCold = ({ kind, answer = null }: Facts): boolean => kind !== 'safety' || ofTheJar.has(answer);

const isCare = (heard: Facts): boolean => heard['kind'] === 'safety' || heard['kind'] === 'lesson';

/** One we have is known already; the name of another is kept as it was written, and a colour in it is no family. */
function teaByName(heard: Facts, { groups }: RegExpExecArray): Facts {
  const name: Json = groups?.['name']?.trim() ?? groups?.['han'] ?? null;
  if (heard['tea'] !== null || heard['teas'] !== null) return { kind: 'brew', answer: null, taste: null };
  return name === null ? {} : { kind: 'brew', answer: null, taste: null, family: null, unknownTea: name };
}
