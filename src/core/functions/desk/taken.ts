/** What a shopkeeper's order holds, word for word: what is to be changed and to what, the words for all. Knows no lesson. */
import type { Facts } from '../../flow/flow.ts';
import { plain } from '../../lessons/spoken/cut.ts';
import { readRepeats } from '../../lessons/spoken/repeats.ts';
import { readLengthening, readShift } from '../../lessons/spoken/shift.ts';
import { begunSmall, groupsIn } from './words.ts';

/** Null where there is nothing to take, and so no such order. */
export type Take = (text: string) => Facts | null;

/** "Move Saturday to 11", 星期六改到八點: what is moved, and to when. */
const moves = [
  /^(?<what>.*?\p{L}.*?) (?<when>(?:to|until|till) .+)$/isu,
  /^(?:(?:and|please|now),? )*(?:start|begin) (?<what>it|this|that|the \p{L}+)? ?(?<when>at [\d:.]+ ?(?:[ap]\.?m\.?|o'clock)?)[.!]*$/iu,
  /^(?<what>.*?) (?:now )?(?:starts?|begins?|will start|will begin) (?<when>(?:at )?[\d:.]+ ?(?:[ap]\.?m\.?|o'clock)?)(?: instead\b.*| now)?[.!]*$/isu,
  /^(?<what>.*?)(?:[時时][間间])?(?:改|[換换]|[調调]|推[遲迟]|延[後后遲迟]?|提[前早])(?:在|到|成|為|为|至|回)?(?<when>(?:早上|上午|中午|下午|晚上|傍晚)?[\d一二三四五六七八九十兩两:]+[點点時时:].*)$/su,
  /^(?<what>.*?)(?:改(?:期)?|移|延|挪|換|换|調|调)(?:到|成|為|为|至)(?<when>.+)$/su,
];

/** By how much, where nothing tells to when; then the whole sentence names the lesson. */
export function moveTaken(text: string): Facts {
  const isShift = readShift(text) !== undefined || readLengthening(text) !== undefined;
  const { what, when } = isShift ? {} : (groupsIn(text, moves) ?? {});
  // "Make it 8 pm" tells only when; "push it to Sunday" has no day before it.
  const isPart = what !== undefined && when !== undefined;
  const isTime = !isPart && !isShift;
  return { value: isTime ? '' : (what ?? text), words: when ?? text };
}

/** "Cancel Saturday, I'm ill": why. It is shown before it goes out. */
const reasons = [
  /\b(?:cancel\w*|call|off|happening|happen|place)\b[^,;:]{0,60}?(?:[,;:–-]| because| since)\s+(?!(?:please|pls|thanks?|thank you|and|ok|will you|would you|can you)\b)(?<words>.{4,})$/isu,
  /^.{2,20}?[，,；：]\s*(?!謝|谢|麻煩|麻烦|請|请|好)(?<words>.{3,})$/su,
];

export const reasonTaken = (text: string): Facts => ({ words: groupsIn(text, reasons)?.['words']?.trim() ?? null });

/** "Change the price to 20 dollars", 費用改成20美元: what is to be changed, and to what. */
const changes = [
  /\b(?:change|set|make|put) (?:the |its )?(?<what>price|cost|fee|title|name|place|room|location|teacher) (?:of|for|on) .{2,50}? (?:to|into|at) (?<value>.{1,80}?)[.!]*$/iu,
  /\b(?:change|set|make|put) (?:the |its )?(?<what>price|cost|fee|title|name|place|room|location|teacher) (?:to|into|at)? ?(?<value>.{1,80}?)[.!]*$/iu,
  /(?<what>[費费]用|[價价][格錢钱]|[學学][費费]|名[稱称字]|[課课]名|老[師师])(?:[改換换變变調调][成為为回到]|[漲涨降]到)(?<value>.{1,40}?)[。!！]*$/u,
];
/** 蓋碗之夜改名叫蓋碗入門 */
const renames = [
  /^(?:(?:and|please|now),? )*rename .{2,60}? (?:to|into) [“"']?(?<value>.{1,60}?)[”"']?[.!]*$/iu,
  /改名(?:叫|為|为|成)[「“]?(?<value>.{1,30}?)[」”]?[。!！吧]*$/u,
];
/** "Raise the price of Saturday to 20 dollars." */
const prices = [
  /\b(?:price|cost|fee) (?:for|of|on) .{2,50}? (?:is|are) (?:now )?(?<value>(?:[$€£]\s?)?\d[\d.,]*\d?\s?(?:dollars?|bucks|usd|euros?|pounds?)?(?: (?:each|per person|a head))?)(?: from now on| now)?[.!]*$/iu,
  /\b(?:price|cost|fee)\b.{0,50}?\b(?:goes|go|going|changes|rises|drops|will be|should be|is now)\b(?: (?:up|down))?(?: to| at)? (?<value>(?:[$€£]\s?)?\d[\d.,]*\d?\s?(?:dollars?|bucks|usd|euros?|pounds?)?(?: (?:each|per person|a head|paid at the shop))?)(?: (?:from|as of|starting) [\p{L}\d ]{3,20}| now)?[.!]*$/iu,
  /^(?:(?:and|please|now),? )*(?:make|set) .{2,50}? (?<value>free(?: of charge)?(?: for [\p{L}\d ]{3,30})?)[.!]*$/iu,
  /^(?:(?:and|please|now|no|actually),? )*(?:it|that|this|.{3,50}?)(?:'?s| is| are| will be) (?:now )?(?<value>free (?:of charge|for [\p{L}\d ]{3,30}))[.!]*$/iu,
  /\b(?:raise|lower|increase|reduce|drop) the (?:price|cost|fee)\b.{0,40}? to (?<value>.{1,40}?)[.!]*$/iu,
  /(?:[漲涨升加降減减調调改收][價价費费]?(?:到|成|為|为|至|回)?|每[人位])(?<value>\s*(?:[a-z]{0,3}\$\s?)?[\d一二三四五六七八九十百兩两]+\s?(?:美元|美金|[塊块][錢钱]?|元|蚊|刀|[台港]幣|usd).{0,6}?)[。!！吧了]*$/iu,
];
/** "Saturday is going to be upstairs", 星期六改到樓上. */
const places = [
  /^(?:(?:and|please|now),? )*(?:move|shift|put|have) .{3,60} (?<value>upstairs|downstairs|outside|outdoors)[.!]*$/iu,
  /(?:\b(?:is|are|be|takes place|meets?|moves?|moved|moving|held|now)|'s)(?: to)? (?<value>upstairs|downstairs|outside|outdoors|in the (?:garden|back room|other room|kitchen|courtyard)|at the [\p{L} ]{3,30}?)(?: instead| this time| from now on| please| then)*[.!]*$/iu,
  /^(?:(?:and|please|now),? )*(?:move|shift|change|put) (?:it|that|this|the lesson|the class|everyone|us) (?:to|in|into|at) (?<value>(?:the )?(?:[\p{L}]+ ){0,2}(?:table|room|garden|terrace|yard|kitchen|hall|counter|upstairs|downstairs|outside|outdoors))(?: instead| then| please)*[.!]*$/iu,
  /(?:地[點点]|地方|[場场]地|教室|位置)(?:要|就)?[改換换移](?:成|到|在|為|为|去)?(?<value>.{1,30}?)[。!！吧]*$/u,
  /(?:[改換换移搬][到成去]|在)(?<value>[樓楼][上下](?:的?\p{Script=Han}{1,4}(?:室|[廳厅]|房|桌))?|\p{Script=Han}{1,5}(?:室|[樓楼]|院|[園园]|[廳厅]|房|桌))[。!！吧上課课了]*$/u,
];
/** "Let Bram teach it", "Bram teaches instead of Odalys", 讓羅莎教. */
const teachers = [
  /^(?:on \p{L}+,? )?(?<value>\p{Lu}[\p{L}'-]*(?: \p{Lu}[\p{L}'-]*)?) (?:is teaching|teaches|will teach|is taking|takes|is doing|does|stands in)\b.{0,40}?\b(?:instead|for \p{Lu})/u,
  /[,;.] ?(?:so |and |but )?(?<value>\p{Lu}[\p{L}'-]*(?: \p{Lu}[\p{L}'-]*)?) (?:does|teaches|takes|gives|runs|will do|will teach|will take|is doing|is taking) (?:it|that|the [\p{L} ]{0,30}(?:one|lesson|class|evening|workshop))\b/u,
  /(?:can'?t|cannot|won'?t|is (?:ill|sick|away|off)|has fallen ill)[^,.;]{0,30}[,.;] ?(?:so |and |but )?(?<value>\p{L}[\p{L}'-]+) (?:will|can|does|takes over|steps in)(?: instead| do it| it)?[.!]*$/iu,
  /(?:^|[,;.] ?(?:so |but |and )?)(?!(?:i|we|he|she|they|you|who|it|that|this|someone|somebody|nobody)\b)(?<value>\p{L}[\p{L}'-]+) (?:will|can|is going to) (?:do|teach|take|lead|give|run) (?:it|that|this|the (?:class|lesson))\b/iu,
  /\b(?:let|have) (?<value>\p{Lu}[\p{L}'-]*(?: \p{Lu}[\p{L}'-]*)?) (?:do|teach|take|lead|give) (?:it|that|this)\b/u,
  /(?:改由|[讓让]|[換换改][成由]?)(?<value>\p{Script=Han}{2,4}|\p{L}{2,12})[教帶带]/u,
  /(?:改由|[讓让由]|[換换改][成由]?)(?<value>(?![週周星禮礼上下早晚])(?:\p{Script=Han}{1,3}|[\p{Lu}][\p{L} ]{1,20}?))\s?(?:老師|老师)(?:來|来)?(?:[教帶带上]|代)(?:課|课)?[吧了好]*[。.!！]*$/u,
  /(?:代課|代课|代班|[換换]人)[^\p{L}\d]*(?:代課|代课)?[^\p{L}\d]*(?:是|由|[請请])?(?<value>\p{Script=Han}{1,3}(?:老師|老师))/u,
];

/** Counted beside those there are (spoken/seats-wanted.ts). */
const saysHowMany =
  /\b(?:\d+|one|two|three|four|five|six|a couple of) (?:more|extra|additional)\b|\bno (?:more|further)\b|\b(?:stop|close) |[加多]開?开?[\d一二兩两三四五六]|[收接]|[截停]止/iu;

/** In the names of the fields of a lesson. */
const fields: readonly (readonly [string, RegExp])[] = [
  ['price', /price|cost|fee|[費费價价]/iu],
  ['title', /title|name|名/iu],
  ['place', /place|room|location/iu],
  ['teacher', /teacher|老/iu],
];

/** A name typed small. */
const withCapital = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

export function changeTaken(text: string): Facts | null {
  const teacher = groupsIn(begunSmall(text), teachers)?.['value'] ?? groupsIn(text, teachers.slice(0, 1))?.['value'];
  if (teacher !== undefined) return { field: 'teacher', value: withCapital(teacher) };
  const place = groupsIn(text, places)?.['value'];
  if (place !== undefined) return { field: 'place', value: place };
  const title = groupsIn(text, renames)?.['value'];
  if (title !== undefined) return { field: 'title', value: title };
  const price = groupsIn(text, prices)?.['value'];
  if (price !== undefined) return { field: 'price', value: price.trim() };
  const { what = '', value } = groupsIn(text, changes) ?? {};
  const field = fields.find(([, words]) => words.test(what))?.[0];
  return value === undefined || field === undefined ? null : { field, value: value.trim() };
}

/** "Make it 10 seats", 改成12位; "add some seats" says no number. */
const counts = [
  /^(?:(?:please|and|now),? )*(?:raise|increase|lower|reduce|bump|up) (?:it|that|them|this)(?: up| down)? to (?<count>\d{1,3})[.!]*$/iu,
  /\b(?:gets?|takes|holds|should have|can have|has|will have) (?<count>\d{1,3}) (?:seats?|places?|spots?|people)\b/iu,
  /\b(?:limit|cap|max(?:imum)?|capacity|seats|places|number)\b.{0,40}?\bto (?<count>\d{1,3})\b(?! ?(?:[ap]m|:|st|nd|rd|th))/iu,
  /\b(?:cap|limit)\b.{0,30}?\b(?:at|to) (?<count>\d{1,3})\b/iu,
  /\b(?:make (?:it|that)|change (?:it|that) to|let'?s have) (?<count>\d{1,3}) (?:seats?|places?|people)\b/iu,
  /^(?:and |with |make (?:it|that) |so |for )*(?<count>\d{1,3}) (?:seats|places|people)(?: please| after all| instead| then)?[.!]*$/iu,
  /^(?:[還还]是|都係|就)?(?:要|改)?\s*(?<count>\d{1,3}|[一二兩两三四五六七八九十]{1,3})(?:個|个)?(?:位子|座位|名[額额])(?:好了|吧|就好)?[。!！]*$/u,
  /(?:座位|位子|名[額额]|人[數数])(?:要|都)?[改加增減减換换調调]?(?:成|到|為|为|至)(?<count>\d{1,3}|[一二兩两三四五六七八九十]{1,3})(?:個|个|位|人)?[。!！吧]*$/u,
  /上限[是要都改調调加降設设成到為为至在]*(?<count>\d{1,3}|[一二兩两三四五六七八九十]{1,3})(?:個|个|位|人)?[。!！吧]*$/u,
  /(?:^.{0,4}|[課课茶夜堂節节杯晚]的?)[改換换加增減减](?:加|少)?(?:成|到|為|为)(?<count>\d{1,3}|[一二兩两三四五六七八九十]{1,3})(?:個|个)?(?:位子?|座位?|人|名)[。!！吧]*$/u,
];

export function seatsTaken(text: string): Facts {
  const count = groupsIn(plain(text), counts)?.['count'];
  if (count !== undefined) return { field: 'seats', value: count };
  return saysHowMany.test(text) ? { field: 'seats', value: text } : {};
}

/** "Tell everyone that we begin at eleven", "tell them to bring a cup", 通知大家，請帶杯子. */
const toAll = 'all|everyone|everybody|students|them|coming|people|guests|folks|lot|group|class|whoever|anyone|anybody';
const words = [
  new RegExp(`\\b(?:${toAll})\\b(?: know)?(?:,? (?:that|please)|:)\\s*(?<words>.{6,})$`, 'isu'),
  /\b(?:let) [^:]{2,40}? know:? (?<words>.{6,})$/isu,
  new RegExp(`\\b(?:${toAll})\\b(?: (?:who|on|in|at|of|from|coming|for)\\b[^:,.]{1,40}?)? to (?<words>.{6,})$`, 'isu'),
  new RegExp(`\\b(?:${toAll})\\b[^:,.]{1,40}? that (?<words>.{6,})$`, 'isu'),
  new RegExp(`\\b(?:${toAll}|who(?:ever)? (?:is |are )?com(?:es|ing))\\b[^:]{1,40}: ?(?<words>.{6,})$`, 'isu'),
  /(?:大家|所有人|全[體体]|[學学][員员生]|[學学]生[們们]|各位|的人|客人)(?:[們们])?(?:[發发傳传](?:一?[個个條条則则封])?(?:[訊讯消]息|信|通知|短信|簡訊))?(?:[說说講讲][一聲声下]*|一[聲声])?[：:，,\s]*(?<words>.{3,})$/su,
];

/** What is to be told to all, where the sentence says it; it is asked before it goes out. `value`: what stands before it. */
export function wordsTaken(text: string): Facts {
  const said = groupsIn(text, words)?.['words'];
  return { words: said?.trim() ?? null, value: said === undefined ? text : text.slice(0, text.length - said.length) };
}

/** "Correct my last answer: we close at nine", 把剛才的回答改成：九點. */
const corrections = [
  /\b(?:answer|reply|response)\b[^:.]{0,20}(?::|\bto say(?: that)?\b)\s*(?<words>.{2,})$/isu,
  /(?:回答|答案|回[覆复]|答[覆复]|回[應应])[^：:]{0,8}(?:[：:]|[改換换](?:成|為|为)[：:]?)\s*(?<words>.{2,})$/su,
];

/** What an answer is to say instead, where the sentence tells it. It is asked before it goes out. */
export const correctionTaken = (text: string): Facts => ({
  words: groupsIn(text, corrections)?.['words']?.trim() ?? null,
});

/** Whether a sentence tells how often a lesson is to come again; "repeat it" alone does not. */
export const repeatTaken = (text: string): Facts => ({
  words: readRepeats(plain(text)).rule === undefined ? null : text,
});
