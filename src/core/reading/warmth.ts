/** Water temperature and elevation, from the measures of a text. The weather is neither. */
import type { Cues } from './cues.ts';
import { celsius, type Measure } from './measures.ts';
import { after, before, isDenied } from './nearby.ts';
import type { QuantityScene } from './volume.ts';

/** A bare "degrees" above this can only be Fahrenheit. */
const certainlyFahrenheit = 121;
const weather =
  /^ ?out\b(?! of)|\b(?:outside|weather|today|room|sunny|summer|indoors|oven|angle|below)\b|户外|室温|天气|出面|气温|外面|低过|角/;

/** "It's 40 C here": of the day, and no water so cool is told so. */
const hottestDayC = 50;
const ofTheDay = /^ ?(?:here|heat|in here|already|in the shade)\b/;

/** What a label says is not what the kettle does. */
const printed =
  /\b(?:box|bag|label|packet|pack|package|tin|instructions?) (?:says?|said|reads)\b.{0,12}$|(?:包装|盒上|袋上|说明|标签)(?:上)?(?:写|说|标|话)(?:著|着|住|的|嘅)?$/;

/** 水燒不到一百度: how hot it does not get. A size or a weight 不到 so much is a little less than that. */
const fallsShort = /(?:不到|未到|唔到)$/;
/** How hot water boils up there is no wish. */
const boilsThere =
  /\b(?:boils|boiling point(?: is)?)(?: here| up here| there| at my place| where (?:i|we) (?:live|am|are)| at home| at ours| for (?:me|us))? (?:at|is)(?: only| like| about| around| just)* $/;
/** 水燒到八十八度就開了 */
const boilsInHan = /^ ?(?:左右|上下|多)?(?:就|便|就会|已经|就已经)(?:会|烧|煮)?(?:开|滚|沸)(?!始)/;
/** A kettle that only boils is like any other, and what it boils is let stand. */
const onlyBoils = /\bkettle (?:only |just )(?:does|has|goes to|gets to|makes) (?:to )?$/;

/** As hot as it gets; where water boils cooler, the plan says so. */
export const boilingC = 100;
const boiling: Measure = { dimension: 'temperature', value: boilingC, start: 0, end: 0, digits: false };

export function readTemperature(scene: QuantityScene, cues: Cues, words: string): Measure | null {
  const found = scene.measures.flatMap((m) => {
    const degrees = degreesOf(scene, m);
    if (degrees === null || isDenied(scene.plain, m.start) || weather.test(after(scene.plain, m.end, 12))) return [];
    if (m.value <= hottestDayC && ofTheDay.test(after(scene.plain, m.end, 12))) return [];
    const ahead = before(scene.plain, m.start, 50);
    if ([printed, fallsShort, boilsThere].some((pattern) => pattern.test(ahead))) return [];
    if (boilsInHan.test(after(scene.plain, m.end))) return [];
    if (m.value > 98 && onlyBoils.test(ahead)) return [];
    return [{ ...m, dimension: 'temperature' as const, value: degrees }];
  });
  const boils = cues.has('used-boiling', words) || (scene.asked === 'tempC' && cues.has('boiling', words));
  return (scene.corrected ? found.at(-1) : found[0]) ?? (boils ? boiling : null);
}

function degreesOf(scene: QuantityScene, m: Measure): number | null {
  if (m.dimension === 'temperature') return m.value;
  if (m.dimension === 'bare' && m.value >= leastInWords && m.value < 100 && oddDegrees.test(after(scene.plain, m.end)))
    return m.value + middleOfTen;
  const bare = m.dimension === 'bare' && (m.digits || m.value >= leastInWords);
  if (bare && m.value > 100 && m.value < 230 && /\bfahrenheit\b|华氏/.test(scene.plain)) return celsius(m.value);
  const told = m.dimension === 'degree' || (bare && (scene.asked === 'tempC' || besideWater(scene, m)));
  if (!told || (bare && !m.digits && orAnother.test(after(scene.plain, m.end)))) return null;
  return m.value >= certainlyFahrenheit ? celsius(m.value) : m.value;
}

/** 八十幾度: the middle of what it may be. */
const oddDegrees = /^[几多]度/;
const middleOfTen = 5;
/** A smaller number in words counts something else. */
const leastInWords = 50;
/** 九十五與一百: which of two is asked, and neither is told. */
const orAnother = /^\s?(?:与|和|或|还是|定|跟|同|and|or)/;
/** With one of these, "at 65" is no hour. */
const waterTalk = /\b(?:wa?te?r|temp\w*|cool|hot|steep\w*|brew\w*|boil\w*|kettles?)\b/;

/** "Can I do it at 80?", 用80可以嗎: no clock says so. */
const isNoHour = (plain: string, { value, end }: Measure): boolean =>
  value >= 60 &&
  /^\s?(?:$|[.,?!]|(?:instead|then|ok|okay|please|or|too|as well|in|with|and)\b)/.test(after(plain, end));

/** "Is 88 right for silver needle?": of a tea, and of no vessel. */
const isWeighed = (plain: string, { value, start, end }: Measure): boolean =>
  value >= 60 &&
  value <= 100 &&
  /\b(?:is|are|would|will|isn'?t) (?:only |about |around )?$/.test(before(plain, start)) &&
  /^\s?(?:be )?(?:really |still )?(?:ok|okay|fine|al+ ?right|right|good|(?:hot |warm )?enough|sensible|correct|too (?:hot|cold|cool|warm|high|low|much))\b(?! (?:ml|grams?)\b)(?!.*\b(?:gaiwan|pot|cup|mug|kyusu|guests|people)\b)/.test(
    after(plain, end, 80),
  );

function besideWater({ plain, teas }: QuantityScene, m: Measure): boolean {
  const ahead = before(plain, m.start);
  const named =
    /(?:\btemp(?:erature)?s?|\bwater(?: is| temp)? at|\bwater is|\bboils|\bheated? to|\bset (?:to|at)|\b(?:minutes?|mins?|seconds?|secs?) at|\b(?:gets|goes|reaches|climbs|go|get) (?:up )?to|\b(?:gets?|goes?) (?:past|above|over|beyond)|\bkettle (?:is |set )?(?:at|to)|\bkettle (?:only |just )?(?:does|has|makes|manages|reaches|stops at|max(?:es)?(?: out)?(?: at)?|tops out at)(?: only| just)?|(?:只能?|最多|最高|净系|得)(?:烧|煮|滚|去)?(?:到|得到)|(?:饮水机|水机|热水器|水壶|热水壶|电水壶|保温壶里?的?水|水).{0,4}(?:只有|净系得|得返|最高|最多|固定|出来是|出嚟系)|水温|温度|调到|设到|水?(?:烧|煮|滚|放凉|晾|降)到)\s?(?:is|at|to|of|:|=|about|around|系|是|大概|约|大约)?\s?$/.test(
      ahead,
    );
  if (m.value >= 60 && m.value <= 100 && m.digits && (isOfKettle(plain, m) || isSaidInHan(plain, m))) return true;
  if (m.digits && teas.length > 0 && isWeighed(plain, m)) return true;
  if (m.value >= 60 && m.value <= 100 && m.digits && isAfterTheBoil(plain, m)) return true;
  if (m.value >= 60 && m.value <= 100 && m.digits && teas.length > 0 && isChosen(plain, m)) return true;
  if (m.value >= 60 && m.value <= 100 && atMost.test(after(plain, m.end, 40))) return true;
  if (m.value >= 60 && m.value <= 100 && fromTheTap.test(before(plain, m.start, 60))) return true;
  const talkedOf = /\bat $/.test(ahead) && m.value >= 40 && (waterTalk.test(plain) || isNoHour(plain, m));
  const used =
    /(?:^|[^\p{Script=Han}]|[可以改直接那就都我想只])用$/u.test(ahead) &&
    /^\s?(?:的(?:热|开|温)?水|来|去)?(?:泡|冲|可以|行|得|呢|$)/.test(after(plain, m.end));
  if (used && m.value >= 60 && m.value <= 100) return true;
  return (named && m.value >= 30 && m.value <= 212) || (talkedOf && m.value <= 100);
}

/** 水溫會不會太高，我朋友說85；照他說的85 */
const isSaidInHan = (plain: string, { value, start, end }: Measure): boolean => {
  const ahead = before(plain, start, 24);
  const isOfHeat = /(?:水温|温度|太[高热烫低]).{0,14}$/.test(ahead);
  const isAsAdvised = value < 100 && /(?:照|按|听|依|跟)[^ ，,]{0,6}(?:说|讲|话|建议|教)的?\s?$/.test(ahead);
  return (
    (isOfHeat || isAsAdvised) && /^\s?(?:$|[.,?!，。？！]|就|左右|吧|行|好|可以|比较|呢|了)/.test(after(plain, end))
  );
};

/** "Water 70", "I'll use 75", "the kettle has cooled, that's probably 85 now" */
const isOfKettle = (plain: string, { start, end }: Measure): boolean =>
  (/\bwater(?:'?s)?(?: of| to| about| around| maybe| like| probably| roughly| say| at| is| was| only| just| down)* $/.test(
    before(plain, start, 40),
  ) &&
    !/^\s?(?!now\b|is (?:that|it|this)\b|right\b|ok(?:ay)?\b|correct\b)\w/.test(after(plain, end))) ||
  (/\b(?:ill|i'll|i will|lets|let's|i) (?:use|do|take|go with|try) (?:about |around )?$/.test(
    before(plain, start, 30),
  ) &&
    /^\s?(?:then|instead|now)?[.! ]*$/.test(after(plain, end))) ||
  (/\b(?:kettle|water)\b.{0,40}\b(?:its|it's|thats|that's|is|should be|must be)(?: at| about| around| probably| maybe| like| now)* $/.test(
    before(plain, start, 70),
  ) &&
    /^\s?(?:now|by now|or so|i think|i guess)?[.! ]*$/.test(after(plain, end)));

/** "If I use 90 instead of 80 for biluochun" */
const isChosen = (plain: string, { start, end }: Measure): boolean =>
  /\b(?:use|using|at|with|try|do|take|go) (?:about |for )?$/.test(before(plain, start)) &&
  /^\s?(?:instead of|rather than|and not|not|over) (?:the )?\d{2,3}\b/.test(after(plain, end));

/** "How long do I wait after boiling for 90?", "how much cold water into boiling to get 80" */
const isAfterTheBoil = (plain: string, { start, end }: Measure): boolean =>
  /\b(?:boil\w*|kettle)\b.{0,50}\b(?:to (?:get|reach|hit|make)(?: (?:it |water )?(?:to|at))?|(?:cools?|drops?|down|is|gets) to|for|until(?: its)?|till(?: its)?)(?: about| around)? $/.test(
    before(plain, start, 80),
  ) && /^\s?(?:$|[.?!,])/.test(after(plain, end));

/** "93, that's the max it gets" */
const atMost =
  /^,? ?(?:is |thats |that's |that is |its |it's )?(?:the |about |as )?(?:max(?:imum)?|most|hottest|highest|hot as)\b(?! (?:i|we|people|guests|ml|grams?)\b)(?! (?:i|we) (?:have|own|drink|put|use))/;

/** "The dispenser at work, it's about 90" */
const fromTheTap =
  /\b(?:dispenser|boiler|urn|hot tap|hot water tap|water cooler|water machine|hot machine|machine for (?:hot )?water|coffee machine|coffee maker|hotpot|hot pot|instant tap|boiling tap)\b(?:[^.?!]{0,30}?\b(?:is|its|it's|gives|does|comes out|makes|only|set))?(?: at| to| only| about| around| roughly| like| maybe| set| comes out| is| water)* $/;

const places = /(?:elevation|altitude|height|海拔|高度)(?: of| is| at|:|系|是|大概|约|大约|about|around| )*$/;
const metresInAFoot = 0.3048;
/** The highest town stands at about 5,100 m: a larger bare number is feet. From memory. */
const highestTownM = 5200;
/** So few metres are a distance, unless the words say height. */
const leastUntoldM = 300;

export function readElevation(scene: QuantityScene, cues: Cues, words: string): Measure | null {
  const tells = cues.has('altitude', words);
  const found = scene.measures.flatMap((m) => {
    const metres = metresOf(scene, m, tells);
    return metres === null || isDenied(scene.plain, m.start)
      ? []
      : [{ ...m, dimension: 'length' as const, value: metres }];
  });
  const boils = found.length === 0 ? scene.measures.find((m) => boilsAt(scene, m) !== null) : undefined;
  if (boils) return { ...boils, dimension: 'length', value: heightOf(boilsAt(scene, boils) ?? boilingC) };
  if (found.length === 0 && cues.has('mile-high', words)) {
    return { dimension: 'length', value: 1609, start: 0, end: 0, digits: false };
  }
  return (scene.corrected ? found.at(-1) : found[0]) ?? null;
}

/** How hot water boils where it is told, in °C. */
function boilsAt(scene: QuantityScene, m: Measure): number | null {
  if (!boilsInHan.test(after(scene.plain, m.end)) && !boilsThere.test(before(scene.plain, m.start, 50))) return null;
  const told = degreesOf(scene, m);
  const some = told !== null && /[多几]度$/.test(scene.plain.slice(m.start, m.end)) ? middleOfTen : 0;
  return told !== null && told >= leastBoilingC && told < boilingC ? told + some : null;
}
/** As it boils where people live highest, and a little less. */
const leastBoilingC = 80;
/** A degree less every 300 m: a rule of thumb, within 100 m of ISO 2533 up to 4,000 m. */
const heightOf = (boilsAtC: number): number => Math.round((boilingC - boilsAtC) * 300);

function metresOf(scene: QuantityScene, m: Measure, tells: boolean): number | null {
  const asked = scene.asked === 'elevationM';
  if (m.dimension === 'length') {
    const told =
      asked || tells || /^\s?(?:elevation|altitude|above|up\b|high|asl|海拔)/.test(after(scene.plain, m.end));
    return told || m.value >= leastUntoldM ? Math.round(m.value) : null;
  }
  if (m.dimension !== 'bare' || !(asked || places.test(before(scene.plain, m.start)))) return null;
  return Math.round(m.value > highestTownM ? m.value * metresInAFoot : m.value);
}
