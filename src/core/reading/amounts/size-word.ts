/** "The big one", "an ordinary one", "the other one": a size without a number, meant beside those that are known or shown. */

export type SizeWord = 'big' | 'middle' | 'small' | 'other';

const before = String.raw`^(?:(?:no|nah|nope|oh|er|um|its|it is|ok|okay|just|wait|actually|sorry|i mean|i meant|dunno|dont know|i dont know|idk|no idea|not sure|im not sure|like|about|about medium|kind of|kinda|sort of|maybe|probably|id say|i guess|guess|use|with|in|and|well|the|an?|my|our|really|very|quite|rather|pretty|fairly)[ ,.!]+)*`;
const after = String.raw`(?: (?:one|size|sized|kind))?(?:[ ,.!]+(?:please|then|i think|i guess|actually|of course))*[ .!]*$`;
/** What it is the size of may be said once more: "an ordinary mug". */
const thing = ' (?:mug|cup|glass|pot|teapot|flask|jar|gaiwan|kyusu|thermos|bottle)';
const hanThing = '(?:一?[点啲些]的?嘅?)?(?:(?:玻璃|马克|茶|保温|瓷)?(?:杯子?|壶|碗|盅)|盖碗)';
const inEnglish = (words: string, named = '(?!)'): RegExp => new RegExp(`${before}(?:${words})(?:${named})?${after}`);
const inHan = (words: string, named = '(?!)'): RegExp =>
  new RegExp(
    `^(?:不是?|唔系|不对|噢|呃|哦|系|是|就|要|用|换成|换|改成|改|拣|选|那个?|嗰个?|这个?|呢个?|多大来[著着]|好似|应该|大概|最|好|很|比较|较|几|[，, ])*(?:${words})(?:${named})?(?:嘅|的|啲|一?点|个|只|隻|把|号|型|那|嗰|款|种|大小|尺寸|size|咗|一)*(?:啦|吧|呀|啊|喇|咯|囉|了|呢|[。.!！?？ ])*$`,
  );

const patterns: { readonly [word in SizeWord]: readonly RegExp[] } = {
  big: [inEnglish('big|bigger|biggest|large|larger|largest|huge', thing), inHan('大', hanThing)],
  small: [inEnglish('small|smaller|smallest|little|littler|tiny', thing), inHan('细细?|小小?|迷你', hanThing)],
  middle: [
    inEnglish('normal|usual|regular|standard|average|ordinary|medium|middle|middling|common', thing),
    // Who leaves it to us.
    /^(?:whatever(?: size)?|whichever(?: size)?|any(?: size| one)?(?: will do)?|you (?:choose|decide|say|pick)|up to you|you tell me|what(?: size)? (?:is|would be) (?:best|right|good|usual))(?: then| please)?[ ?.!]*$/,
    inHan('普通|一般|正常|标准|平常|中等?|中间', hanThing),
    /^(?:那|就|都)?(?:随便(?:吧|啦|都行|都得)?[，, ]*(?:有(?:什么|啥|乜|咩)(?:就)?用(?:什么|啥|乜|咩))?|有(?:什么|啥|乜|咩)(?:就)?用(?:什么|啥|乜|咩)|你定|你说|你话|你拣|你决定|都行|都得|都可以|多大(?:比较|最)?(?:合适|好|适合)|几大(?:先)?(?:啱|好)|哪个(?:比较)?(?:合适|好)|边个好)[吧啦呀啊嘛?？。]*$/,
  ],
  other: [inEnglish('other|different'), inHan('另一|另外|第二|第个')],
};

/** "大" opens many a word; so short a text is nothing but the size. */
const longestSaid = 40;

function readSizeWord(words: string): SizeWord | null {
  if (words.length > longestSaid) return null;
  const all = Object.keys(patterns) as SizeWord[];
  return all.find((word) => patterns[word].some((pattern) => pattern.test(words))) ?? null;
}

/** Beside a vessel that is named: "a mug with a basket, normal size". */
const ordinarySize =
  /\b(?:normal|usual|regular|standard|average|ordinary|medium)[ -]?(?:size[ds]?|kind|sort|one|mug|cup|glass|gaiwan|teapot|pot)\b|(?:普通|一般|正常|标准|平常)(?:的|嘅)?(?:大小|尺寸|玻璃杯|马克杯|茶杯|保温杯|茶壶)/;

const otherSize = /\b(?:small|tiny|little|big|large|huge)\b|[小细大]的/;

export function sizeWordIn(words: string, namesVessel: boolean): SizeWord | null {
  return readSizeWord(words) ?? (namesVessel && ordinarySize.test(words) && !otherSize.test(words) ? 'middle' : null);
}
