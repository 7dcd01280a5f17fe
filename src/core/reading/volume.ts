/** What the vessel holds, from the measures of a text. The size of a kettle or a tasting cup is not it. */
import { cupsTold } from './cups-told.ts';
import type { Measure } from './measures.ts';
import { flOzMl } from './measures.ts';
import { after, before, isDenied } from './nearby.ts';

interface Span {
  readonly start: number;
  readonly end: number;
}

export interface QuantityScene {
  readonly plain: string;
  readonly measures: readonly Measure[];
  /** Where vessels are named. */
  readonly vessels: readonly Span[];
  /** Where teas and families are named. */
  readonly teas: readonly Span[];
  /** A correction: the last one counts. */
  readonly corrected: boolean;
  /** The fact asked just now: a bare number is that. */
  readonly asked: string | null;
}

const otherThings =
  /^\s?(?:-|s)?\s?(?:l |litre |liter )?(?:electric |gooseneck |kitchen )?(?:kettle|boiler|bottle of|(?:of )?(?:hot |warm |cold |oat |soy |whole )?milk|牛奶|鲜奶|燕麦奶|cups\b|tasting|sharing|fairness|pitcher for pouring|品茗|小杯|公道|热水壶|电热|电水|水煲|烧水|煮水|快煮)/;
const otherThingsBefore =
  /(?:kettle(?: is| holds| of| takes)?|boiler|热水壶|电热壶|水煲|烧水壶|快煮壶|牛奶|鲜奶|燕麦奶|奶|\bmilk|公道杯|品茗杯|每一?[小茶]?杯(?:大概|大约|约|差不多)*|tasting cups?(?: are)?)\s*(?:is |holds |系|是|容量)?$/;
/** A number without a unit is a size in this range, beside a vessel. */
const bareMl = { least: 30, most: 5000 };

/** "A 400 ml glass, half full": so much water, and no more. */
const halfFull =
  /\bhalf[- ]?(?:full|filled)\b(?! of (?:leaf|leaves|tea))|\bfill(?:ed|ing|s)? (?:it |that |them )?(?:up )?(?:only |just |about |around |maybe |roughly |to )*(?:the )?(?:half|half ?way|halfway)(?: full| up)?\b(?! (?:with|of) (?:leaf|leaves|tea))/;
/** "150 ml, but I only fill it to 120": so much water, and no more. */
const isFilledTo =
  /\bfill(?:ed|ing|s)? (?:it |that |them |mine )?(?:up )?(?:only |just |ever |about |around |maybe |roughly |like |to |with |at |till |until |the )*$/;
/** 180的蓋碗，只裝半碗 */
const halfInHan = /(?:装|倒|泡|冲|注|加水到|用)(?:个|一|到)?半(?:碗|壶|杯|满)(?!茶叶)/;
const ofSomethingElse = /\b(?:kettle|tin|bag|pack|packet|caddy|box|flask of water|bottle of water)\b/;

export function readVolume(scene: QuantityScene): Measure | null {
  const size = readSize(scene);
  const isHalf =
    size !== null && (halfFull.test(scene.plain) || halfInHan.test(scene.plain)) && !ofSomethingElse.test(scene.plain);
  return isHalf ? { ...size, value: size.value / 2 } : size;
}

function readSize(scene: QuantityScene): Measure | null {
  const { plain } = scene;
  const cups = cupsTold(plain, scene.asked);
  if (cups !== null) return { dimension: 'volume', value: cups, start: 0, end: plain.length, digits: false };
  const sizes = scene.measures.flatMap((measure) => {
    const ml = millilitres(scene, measure);
    return ml === null ? [] : [{ ...measure, dimension: 'volume' as const, value: ml }];
  });
  const meant = sizes.filter(
    (m) =>
      !isDenied(plain, m.start) &&
      !otherThings.test(after(plain, m.end)) &&
      !otherThingsBefore.test(before(plain, m.start)),
  );
  const filled = meant.findLast((m) => isFilledTo.test(before(plain, m.start, 40)));
  if (filled !== undefined && !ofSomethingElse.test(plain)) return filled;
  if (meant.length <= 1 || scene.corrected) return meant.at(-1) ?? null;
  return meant.toSorted((a, b) => gapTo(scene.vessels, a) - gapTo(scene.vessels, b))[0] ?? null;
}

function millilitres(scene: QuantityScene, measure: Measure): number | null {
  if (measure.dimension === 'volume') return measure.value;
  if (measure.dimension === 'ounce' && !isLeafOunce(scene, measure))
    return Math.round(measure.value * flOzMl * 100) / 100;
  if (measure.dimension !== 'bare' || isHeat(scene.plain, measure) || isAge(scene.plain, measure)) return null;
  if (scene.asked === 'vessel' && isSizeAlone(scene.plain, measure)) return measure.value;
  if (scene.asked === 'volumeMl') return measure.digits || measure.value >= bareMl.least ? measure.value : null;
  const fits = measure.value >= bareMl.least && measure.value <= bareMl.most && !isYear(scene.plain, measure);
  return fits && (besideVessel(scene, measure) || onlyCorrects(scene, measure)) ? measure.value : null;
}

/** 水溫90 蓋碗110, 八十幾度 */
const isHeat = (plain: string, { value, start, end }: Measure): boolean =>
  value <= 100 &&
  (/(?:水温|温度|水热)(?:是|系|用|大概|大约|约|[:： ])*$/.test(before(plain, start)) ||
    /^[几多]度/.test(after(plain, end)));

/** "I am 82", and what it holds is not told by that. */
const isAge = (plain: string, { start, end }: Measure): boolean =>
  /\b(?:i am|i'?m|(?:he|she) is|(?:he|she)'?s|aged?|turned|turning)(?: nearly| almost| only| over)? $/.test(
    before(plain, start),
  ) && /^\s*(?:$|[,.!?]|and\b|now\b|so\b|but\b|years?\b|yrs?\b)/.test(after(plain, end));

/** "250", "about 300", asked what one brews in: its size. */
const isSizeAlone = (plain: string, { value }: Measure): boolean => value >= 50 && value <= 2000 && plain.length <= 12;

/** "I said 150, not 250": of what may be corrected, only a size is so large. */
function onlyCorrects({ plain, corrected, measures }: QuantityScene, measure: Measure): boolean {
  return corrected && plain.length <= 40 && measure.value > 100 && measures.every((m) => m.dimension === 'bare');
}

/** "a 2012 cake", "sheng 2019, clay pot": not a size, which is round when it is so large. */
function isYear(plain: string, { value, start, end }: Measure): boolean {
  if (value < 1900 || value > 2100) return false;
  const isRound = value % 50 === 0;
  return (
    !isRound ||
    /\b(?:from|in|a|the|since|my) $/.test(before(plain, start)) ||
    /^ ?(?:年|vintage|harvest)/.test(after(plain, end))
  );
}

/** With nothing but small words between: "110 gaiwan", "gaiwan is about 110", "蓋碗110". */
function besideVessel(scene: QuantityScene, measure: Measure): boolean {
  const { plain, vessels } = scene;
  // "8 g in 120"
  if (/\d ?(?:g|gr|grams?|克)(?: of [a-z]+)?(?: ?(?:in|to|per|for|\/|对|比|配) ?)$/.test(before(plain, measure.start)))
    return true;
  // "4 g 200 90 sec"
  if (measure.digits && measure.value > 100 && /\d ?(?:g|gr|grams?),? $/.test(before(plain, measure.start)))
    return true;
  // 這把壺老了，大概兩百五
  if (
    vessels.length > 0 &&
    measure.value >= 50 &&
    /(?:大概|大约|约|差不多|也就|顶多|其实才|其实只有|碗有|壶有|杯有)$/.test(before(plain, measure.start))
  )
    return true;
  // "150, but I only fill it to 120"
  if (measure.value >= bareMl.least && isFilledTo.test(before(plain, measure.start, 40))) return true;
  // "genmaicha 350", behind a pot that is named
  if (vessels.length > 0 && endsBehindTea(scene, measure)) return true;
  // "my gaiwan leaks, so about 90"
  if (vessels.length > 0 && measure.value >= 50 && isNamedLast(plain, measure)) return true;
  // "A mug with a lid, not too full, assam, 300"
  if (vessels.length > 0 && isClauseAlone(plain, measure)) return true;
  // 蓋碗怎麼泡，一百二的
  if (vessels.length > 0 && measure.value >= 50 && /^[的嘅](?:$|[\s,，.。?？!！])/.test(after(plain, measure.end)))
    return true;
  // 三百五的保溫辦公杯
  if (measure.value >= 50 && vessels.some((vessel) => isDescribed(plain.slice(measure.end, vessel.start)))) return true;
  // "three mugs, 300 each"
  if (vessels.length > 0 && measure.value >= 50 && /^ ?(?:ml )?each\b/.test(after(plain, measure.end))) return true;
  // 杯子裡300水
  if (measure.digits && measure.value > 100 && /^ ?(?:的)?水/.test(after(plain, measure.end))) return true;
  // 我每次就泡150
  if (
    measure.digits &&
    measure.value > 100 &&
    measure.value <= 1500 &&
    /(?:(?:泡|冲|倒|加|装|喝)(?:个|到|了|大概|大约|约)?|[大小]一?点的?)\s?$/.test(before(plain, measure.start)) &&
    /^\s*(?:$|[，,。！!？? ]|左右|就|吧|啊|呀|的样子)/.test(after(plain, measure.end))
  )
    return true;
  // 寶特瓶600
  if (measure.value >= 100 && /(?:瓶|樽|\bbottle(?: is| holds| of)?) ?$/.test(before(plain, measure.start)))
    return true;
  // 750的瓶子
  if (
    measure.value >= 100 &&
    /^ ?(?:的|嘅)?(?:大|小|玻璃|塑料|塑胶|矿泉水|密封)?(?:瓶|樽|罐子)|^ (?:glass |water |plastic )?(?:bottle|flask|jug|jar)\b/.test(
      after(plain, measure.end),
    )
  )
    return true;
  // 500的 她都泡熟普
  if (opensWithSize(plain, measure)) return true;
  // "silver needle grandpa style 350"
  if (measure.digits && measure.value > 100 && afterStyle.test(before(plain, measure.start))) return true;
  // 還是110的那個, "the 110 one"
  if (measure.digits && measure.value >= 50 && measure.value < 1900 && isThatOne(plain, measure)) return true;
  return vessels.some((vessel) => {
    const between =
      vessel.start >= measure.end ? plain.slice(measure.end, vessel.start) : plain.slice(vessel.end, measure.start);
    return (
      between.length <= 24 &&
      /^(?:[\s,.:(=~约大概系一样同也还是装容量嘅的有能可以够到满个只得才是好细小隻把支先就都连有带盖附]|of|his|hers?|mine|ours|theirs|bigger|smaller|one|says|it says|holds?|is|its|it's|about|around|approx|size|capacity|roughly|ish|an?|my|the|maybe|small|little|big|glass|porcelain|clay|white|i think|takes|fits|that|which|can|will|should|say|maybe|like|perhaps|probably|full|filled|to the (?:brim|top|rim)|when|if|with|w|lid|lidded|handle|no|tall|round|flat|cute|new|old|black|blue|brown|red|green|ceramic|metal|steel)*$/.test(
        between,
      )
    );
  });
}

/** What kind of cup it is may stand between its size and its name. */
const isDescribed = (between: string): boolean => /^[的嘅](?!茶(?![壶杯碗])|水|课)\p{Script=Han}{0,8}$/u.test(between);

/** A heat is told in such numbers as well. */
const ofHeat = /\b(?:water|hot|heat|temp\w*|degrees?|boil\w*|cool\w*|kettle)\b|°/;
const isNamedLast = (plain: string, { start, end }: Measure): boolean =>
  /(?:\bso|\blike|\babout|\baround|\bmaybe|\broughly|\bcall it|\bsay),? $/.test(before(plain, start)) &&
  /^ ?(?:i think|i guess|i reckon|or so|ish|max|tops|then)?[ .!]*$/.test(after(plain, end)) &&
  !ofHeat.test(plain);

/** Larger than any heat that is meant, and last in a clause that names the tea and no more. */
const endsBehindTea = ({ plain, teas }: QuantityScene, { value, start, end, digits }: Measure): boolean =>
  digits &&
  value > boilingF &&
  value <= 1500 &&
  teas.some((tea) => tea.end < start && /^(?: tea)?[ :]+$/.test(plain.slice(tea.end, start))) &&
  /^ ?(?:$|[.,;!?])/.test(after(plain, end));

/** Larger than any heat that is meant, and nothing else in its clause. */
const isClauseAlone = (plain: string, { value, start, end, digits }: Measure): boolean =>
  digits &&
  value > 100 &&
  value <= 1500 &&
  /[,;，；、/] ?(?:(?:about|around|roughly|approx|maybe|like|its|it's|it is|it holds|holds|capacity|size|大概|大约|约) ?)*$/.test(
    before(plain, start),
  ) &&
  /^ ?(?:ish|or so|左右)?(?:$|[ .]*$|[,;，；、/!?！？])/.test(after(plain, end)) &&
  !(value <= boilingF && ofHeat.test(plain));
/** A kettle may be set by such numbers in Fahrenheit. */
const boilingF = 212;

const opensWithSize = (plain: string, { start, end, value }: Measure): boolean =>
  start === 0 && value >= 100 && value <= 1500 && /^[的嘅](?:$|[\s,，。])/.test(after(plain, end));

const afterStyle = /\b(?:gr[ae](?:nd?|m)?[ -]?pa|gong ?fu|western)(?: style| way)?,? $/;

const isThatOne = (plain: string, { start, end }: Measure): boolean =>
  /^ ?[的嘅]?(?:那|这|嗰|呢)[个只把]/.test(after(plain, end)) ||
  (/\b(?:the|my) $/.test(before(plain, start)) && /^ one\b/.test(after(plain, end)));

/** An ounce beside a vessel is water, beside leaf it is leaf. Up to an ounce and no vessel: leaf. */
export function isLeafOunce({ plain, vessels, teas }: QuantityScene, measure: Measure): boolean {
  if (
    /^\s?(?:of )?(?:the |my |dry |loose )?(?:leaf|leaves|tea\b|bag|pack|tin|pouch|sample|cake|茶叶|茶)/.test(
      after(plain, measure.end),
    )
  )
    return !/^\s?tea ?(?:pot|cup)/.test(after(plain, measure.end));
  if (/(?:bought|ordered|leaf|leaves|tea:?)\s(?:is |about )?(?:an? )?$/.test(before(plain, measure.start))) return true;
  const toVessel = gapTo(vessels, measure);
  const toTea = gapTo(
    teas.filter((tea) => tea.start >= measure.end),
    measure,
  );
  if (toVessel <= 12 && toVessel <= toTea) return false;
  // Tea is sold by a few ounces and drunk by more.
  if (toTea <= 4) return measure.value < 5;
  return vessels.length === 0 ? measure.value < 2 : measure.value < 1.5;
}

export function gapTo(spans: readonly Span[], at: Span): number {
  return Math.min(
    Infinity,
    ...spans.map((span) => (span.start >= at.end ? span.start - at.end : Math.max(0, at.start - span.end) + 1)),
  );
}
