/** A small turn at what is planned already: hotter, less leaf, longer, hot again. Says by which way, never by how much. */
import type { Cues } from './cues.ts';
import { likesDiffer } from './wishes.ts';

export const turns = [
  'hotter',
  'cooler',
  'more-leaf',
  'less-leaf',
  'half-pot',
  'half-leaf',
  'double-leaf',
  'longer',
  'shorter',
  'other-size',
  'other-tea',
  'hot',
  'stronger',
  'lighter',
] as const;
export type Turn = (typeof turns)[number];

const patterns: { readonly [turn in Exclude<Turn, 'stronger' | 'lighter'>]: RegExp } = {
  hot: /\bhot (?:again|instead|after all|then|please)\b|\b(?:make|brew|have) it hot\b|^(?:no,? |but |i (?:mean|meant|want it|wanted it) )*(?:hot,? not cold|not cold,? (?:but )?hot|not cold|hot)(?: tea| one| please)?$|^(?:要|我要|改)?热(?:的|嘅)$|热泡|改热|(?:用|饮|喝)(?:返|回)热|返热嘅|要热的|要热嘅|不要冷泡|唔要冻泡/,
  hotter:
    /\b(?:hotter|warmer|(?:higher|more) (?:temp\w*|heat))\b|热(?:啲|点|一点|些)|烫(?:啲|点|一点)|(?<!刚)滚(?:啲|一点|点(?!样|解))|(?:水温|温度)(?:再|要不要|该不该|需不需要|使唔使|要|可以|是不是|系咪|应该|该|需要)*(?:调|提|升|加)?高(?!山)|(?:提高|升高|调高|加高|拉高|升)(?:一?[点下啲些])?(?:水温|温度)/,
  cooler:
    /\b(?:cooler|less hot|lower temp\w*|not so hot)\b|^(?:and |a bit |a little |even |much |still |the water |make it |make the water )*colder\b|(?:凉|冻)(?:啲|点|一点|些)|(?:水温|温度)(?:再|要不要|该不该|需不需要|使唔使|要|可以|是不是|系咪|应该|该|需要)*(?:调)?低|水温.{0,2}(?:降|调|放)(?:低|下|点|一点|些)|(?:降低|调低|降)(?:一?[点下啲些])?(?:水温|温度)/,
  'half-pot':
    /^(?:and |so |ok |no |actually |maybe |i |we |we'd |id |i'd |what about |how about |what if i |(?:can|could|may|shall|should) (?:i|we) |only |just |like |want |need |make |do |brew |fill |use |it |have |to |drink )*half (?:of )?(?:an?|the|my|this|that) (?:tea ?)?(?:pot|potful|teapot|gaiwan|mug|cup|glass|jar|flask|batch|amount of water)(?: full)?(?: of (?:it|tea|water))?(?: (?:for now|now|today|tonight|this time|instead|then|please|is enough))*[?.! ]*$|^(?:and |so |ok |just |only |make |do |brew |i want |i need |we need )*half (?:of it|it|that)? ?(?:for now|right now|today|tonight|this time)[?.! ]*$|^(?:and |so |ok |no |just |actually |i |ill |we |drink |have |want |need |make |do |brew )*only (?:want |need |make |do |brew )?half (?:of it|of that|that|it)(?: please| then)?[?.! ]*$|^(?:and |so |ok |just |only |i |can i |fill |it |to )*(?:fill (?:it |the pot )?(?:only |just )?(?:half ?way|half)|half ?full|half ?filled)(?: please| then| only)?[?.! ]*$|(?:^|[ ，,。])(?:那|就|只|咁|如果|我|想|要|先)*(?:泡|冲|沏|做|倒)?半(?:壶|杯|碗)(?:就好|就够|就行|就可以|好了|够了|呢|行吗|可以吗|得唔得)?[了啦吧]?(?:[ ，,。]+(?:因为|今天|家里|只有|就|只|净系|得|我|我们|咱)*(?:自己|[一两俩二12]个?人)(?:喝|饮|而已|在|在家|了)*)?[？?。! ]*$/,
  'half-leaf':
    /^(?:and |so |ok |okay |then |well |what about |how about |what if i |(?:can|could|may|shall|should) (?:i|we) |i will |ill |lets |only |just |use |with |make it |make |do |take |put |in )*(?:half(?: (?:the amount|the leaf|the leaves|the tea|the dose|of (?:it|that)|that|as much|as much (?:leaf|tea)))?|halve (?:it|that|the (?:leaf|leaves|amount|tea|dose)|everything))(?: instead| then| please)?[?.! ]*$|^(?:那|就|只|咁|如果|茶叶|放|用)*(?:减半|(?:放)?一半)(?:就好|好了|呢|行吗|可以吗|得唔得)?[？?。! ]*$/,
  'double-leaf':
    /^(?:and |what about |how about |what if i |use |with |make it |do |take )*(?:double|twice)(?: (?:it|that|the amount|the leaf|the leaves|the tea|as much|as much (?:leaf|tea)))?[?.! ]*$|^(?:那|就|咁|如果|茶叶|放|用)*(?:加倍|双倍|两倍|多一倍)(?:的茶叶)?(?:呢|行吗|可以吗|得唔得)?[？?。! ]*$/,
  'more-leaf':
    /(?<!\b(?:used|put in|put|added|took|had|got|made) (?:a bit |a little |way |much |even |too )?)\bmore (?:leaf|leaves|tea)\b|^(?:so |ok |and |then |well |i |we |(?:should|shall|could|can|must|need to|have to) )*(?:use|put|put in|take|add) (?:way |a lot |lots |much |a bit |a little |some |even )*more(?: then| in| of it)?[?.! ]*$|茶叶(?:再)?(?:放|落|加)?多(?:啲|点|一点|些)|(?<![太好很咁几么])多(?:放|加|落)?(?:点|啲|些|一点)?(?:茶叶|茶)|加(?:点|啲|些)茶|^(?:那|就|咁|再)?(?:多(?:放|落|加|下)(?:点|啲|些|一点)|(?:放|落|加|下)多(?:点|啲|些|一点))[吧啦呀嘛了]*$/,
  'less-leaf':
    /(?<!\b(?:used|put in|put|added|took|had|got|made) (?:a bit |a little |way |much |even |too )?)\b(?:less|fewer) (?:leaf|leaves|tea)\b|茶叶(?:再)?(?:放|落)?少(?:啲|点|一点|些)|(?<![多太好很咁么])少(?:放|落)?(?:点|啲|些|一点)?(?:茶叶|茶)|(?:[舍捨]不得|不[舍捨]得?|心疼|肉痛).{0,4}(?:放|下|落|投|用).{0,3}多|(?:^|要|想|就|那|就是|先|今天|这次|下次|[ ，,])(?:那|就|咁|再)?(?:少(?:放|落|加|下)(?:点|啲|些|一点)|(?:放|落|加|下)少(?:点|啲|些|一点))(?:好了|就好|[吧啦呀嘛了])*(?=$|[ ，,。])/,
  longer:
    /(?<!how much |how |(?:take|takes|taking|need|needs) (?:a bit |a little |even |much )?)\blonger\b|(?:久|耐|长)(?:啲|点|一点|些)|(?:晚|迟)(?:啲|点|一点|些|几秒|.{1,3}秒)(?:再|先|才)?(?:倒|出|斟)|(?<!太|最)多(?:泡|浸|焗|等|闷|焖|坐)(?:啲|点|一点|一下|一阵|一?会儿?|几秒|.{1,3}秒)/,
  shorter:
    /\b(?:shorter|less time)\b|(?:短|快)(?:啲|点|一点|些)|(?:提早|提前|早)(?:啲|点|一点|些|几秒|.{1,3}秒)?(?:倒|出汤|出水|斟|收)|(?<!多)少(?:泡|浸|焗|等|闷|焖|坐)(?:啲|点|一点|一下|一?会儿?|几秒|.{1,3}秒)/,
  'other-tea':
    /^(?:no,? )?(?:an?other|a different|different|some other|the other|(?:a )?new|(?:the )?next|(?:change|switch|swap)(?: the)?) tea\b|^(?:something|a tea) else$|换(?:过)?(?:一)?(?:种|款|个|隻|只|第隻|第只)?茶(?!叶|具|壶|杯)|(?:另|别的?|第二)(?:一|外)?(?:种|款|个|隻|只)?茶(?!叶|具|壶|杯)|换(?:个|杯|一)?(?:别的|另外的?)(?:茶)?(?!叶|具|壶|杯|器)/,
  'other-size':
    /\b(?:less|more) water\b|^(?:and |so |but |ok |only \w+ of (?:me|us) |its only (?:me|one) |just me |(?:can|could|may|shall|should) (?:i|we) |id like to |i want to |to )*(?:make|do|brew) (?:a (?:bit |little )?)?(?:less|a smaller (?:amount|pot|batch|one)|a small(?:er)? (?:amount|pot|batch))(?: of it| than that| tea)?(?: instead| then| please| maybe)?[?.! ]*$|^(?:and |maybe |how about |what about )*a smaller amount(?: maybe| please| then)?[?.! ]*$|(?:少|多)(?:啲|点|一点|些)?水|水(?:再)?(?:放|加|倒)?(?:少|多)(?:啲|点|一点|些)/,
};

/** Longer texts say more than that. */
const longestTurn = 40;

/** 濃少少, 熱d: a little, as it is said and typed in Hong Kong. */
const littleMore = /(?<=[热烫凉冻浓淡久耐长短快多少高低大细])(?:少少|小小|d)(?![a-z])/g;

export function readTurn(cues: Cues, written: string): Turn | null {
  if (written.length > longestTurn || likesDiffer(cues, written)) return null;
  const words = written.replace(littleMore, '啲');
  const told = Object.entries(patterns).find(([, pattern]) => pattern.test(words))?.[0];
  if (told) return turns.find((turn) => turn === told) ?? null;
  if (/(?:^|\b(?:bit|little|touch) )less(?: please| then)?$/.test(words) || cues.has('light', words)) return 'lighter';
  return /(?:^|\b(?:bit|little|touch) )more(?: please| then)?$/.test(words) || cues.has('strong', words)
    ? 'stronger'
    : null;
}
