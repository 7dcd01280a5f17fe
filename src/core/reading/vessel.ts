/** The vessel a person has, and what it is made of. Two that fit come to none. */
import { makeNameIndex, type Mention, type Name } from '../teas/name-index.ts';
import { plainText } from '../teas/plain-text.ts';
import { before, isLacking } from './nearby.ts';
import type { ReadingWords } from './reading-words.ts';

export type VesselMeaning =
  | { readonly is: 'vessel'; readonly vessel: string | null; readonly material: string | null; readonly faint: boolean }
  | { readonly is: 'material'; readonly material: string; readonly pot: string }
  | { readonly is: 'nothing' };
export type VesselMention = Mention<VesselMeaning>;

export interface FoundVessel {
  readonly vessel: string | null;
  readonly material: string | null;
  /** Two or more that are equally meant. */
  readonly several: readonly string[];
  /** Only by a word said of many a thing: a cup, a glass, a pot. */
  readonly faint: boolean;
}

export function makeVesselFinder(
  words: ReadingWords,
  ordinary: ReadonlySet<string>,
): (plain: string) => VesselMention[] {
  const names: Name<VesselMeaning>[] = [];
  const add = (texts: readonly string[], id: string, meaning: VesselMeaning): void => {
    for (const text of texts) names.push({ text: plainText(text).plain, id, meaning });
  };
  for (const { words: texts, ...row } of words.vessels)
    add(texts, `${row.vessel} ${row.material}`, { is: 'vessel', ...row });
  for (const { words: texts, ...row } of words.materials) add(texts, row.material, { is: 'material', ...row });
  add(words.notVessels, 'nothing', { is: 'nothing' });
  const index = makeNameIndex(
    names,
    ordinary,
    words.alike.map((group) => plainText(group).plain),
  );
  return (plain) =>
    index.mentions(plain).map((mention) => (isSizedPot(plain, mention) ? { ...mention, meaning: aPot } : mention));
}

/** 一壺400cc: so much of it is one pot, and no number of pots. */
const aPot: VesselMeaning = { is: 'vessel', vessel: 'porcelain-pot', material: null, faint: true };
const isSizedPot = (plain: string, { start, end, meaning }: VesselMention): boolean =>
  meaning.is === 'nothing' && plain.slice(start, end) === '一壶' && sizeBehind.test(plain.slice(end));
const sizeBehind = /^(?:大概|大约|约|差不多|是|有|装|放)*\s?\d{3,4}(?![\d:.年元块度])/;

/** "Water from a thermos that is an hour old": what it is poured from, and not on what. */
const holdsTheWater =
  /\b(?:water|kettle)(?: (?:that|which) (?:is|was|has been))?(?: (?:kept|stored|sitting|stood|standing|straight))? (?:from|out of|(?<!\b(?:with|use|using|pour|put|add) (?:the )?(?:hot |boiled |boiling )?water )in) (?:an?|the|my|our) $/;

/** 用保溫壺的水行嗎 as well. */
const waterOfIt = /^(?:保温|暖|热水)(?:水)?(?:瓶|壶|杯)(?:子)?(?:里面?|入面)?[的嘅](?:热|开|滚)?水(?![温位量])/;

/** 大概四個小杯的量: how much a pot holds, in cups. */
const isCounted = (plain: string, { start, end, meaning }: VesselMention): boolean =>
  meaning.is === 'vessel' &&
  meaning.faint &&
  /(?:[二两三四五六七八九十几]|\d)(?:个|只)?小?$/.test(before(plain, start)) &&
  /^(?:的?[分容]?量|多|左右|份)/.test(plain.slice(end, end + 3));

/** 平時用玻璃杯，今次想試蓋碗: of two, the one they want now. */
const isWished =
  /(?:[这今]次(?:想|要|就)?(?:用|试|改用)?|想(?:试|改|换)(?:下|一下|试)?(?:用)?|改用|改成|换成|转用|改做|换)(?:个|只|把|隻)?(?:大|小|新)?(?:一?点的)?\s?$/;

/** "A mason jar of hot water": none for the refrigerator. */
const poursHot =
  /\b(?:hot|boil\w*|kettle|western|grandpa|gong ?fu)\b(?! (?:day|weather|afternoon|summer|outside|out|here|today|in here))|[热滚烫沸]|开水/;
const keepsCold = /\b(?:cold|iced?|chilled|fridge|refrigerator|overnight|over night)\b|[冷冰冻凉]|过夜|隔夜|雪柜/;
export const jarFor = (found: FoundVessel, words: string): FoundVessel =>
  found.vessel === 'cold-jar' && poursHot.test(words) && !keepsCold.test(words) ? { ...found, vessel: 'jar' } : found;

/** Which of two. */
const whichOf =
  /哪[个一种只把隻]{0,2}.{0,6}(?:好|合适|适合|香|方便|省事|推荐)|边[个只隻种].{0,4}(?:好|啱|方便)|(?:还是|定系).{1,8}(?:好|合适|适合|方便)|\bwhich (?:one |of (?:them|the two) )?(?:is|would be|brews?|works?|tastes?) |\b(?:better|best)\?/;

type Told = Extract<VesselMeaning, { is: 'vessel' }>;

/** "Thermos no", "gaiwan: none". */
const saidToLack =
  /^(?:[ ,:=-]+)(?:no|none|nope|nah|dont have|i dont have|not)[ ,.;!]*$|^(?:[ ,:=-]+)(?:no|none|nope)[,.;]/;

/** "No idea about clay or not" tells of no clay. */
const knowsNotOf = /\b(?:no idea|not sure|don'?t know|unsure|idk|dunno)(?: about| if| whether| it'?s| it is| of)* $/;
const isUnsure = (plain: string, { start, end, meaning }: VesselMention): boolean =>
  meaning.is === 'material' &&
  (knowsNotOf.test(before(plain, start, 40)) || /^ or (?:not|what)\b/.test(plain.slice(end)));

export function concludeVessel(plain: string, named: readonly VesselMention[]): FoundVessel {
  const mentions = named.filter((m) => !isUnsure(plain, m));
  const meant = mentions.filter(
    (m) =>
      m.meaning.is === 'vessel' &&
      !isLacking(plain, m.start) &&
      !saidToLack.test(plain.slice(m.end, m.end + 20)) &&
      !isCounted(plain, m) &&
      !isGivenUp(plain, m, mentions) &&
      !holdsTheWater.test(before(plain, m.start, 40)) &&
      !waterOfIt.test(plain.slice(m.start, m.end + 8)) &&
      !/\binto (?:an?|the|my|your)? ?$/.test(before(plain, m.start)),
  );
  const wished = meant.filter((m) => isWished.test(before(plain, m.start)));
  const told = wished.length > 0 ? wished : meant;
  const heads = told.filter((m, i) => !isQualifier(m, told[i + 1]));
  const all = heads.flatMap((m) => (m.meaning.is === 'vessel' ? [m.meaning] : []));
  const vessels = settle(all.some((v) => !v.faint) ? all.filter((v) => !v.faint || v.vessel === 'infuser-mug') : all);
  const faint = all.every((v) => v.faint);
  const material = materialOf(mentions, all, vessels);
  // 玻璃杯和蓋碗哪個好: neither is chosen yet.
  const asked = meant.flatMap((m) =>
    m.meaning.is === 'vessel' && m.meaning.vessel !== null ? [m.meaning.vessel] : [],
  );
  if (new Set(asked).size > 1 && whichOf.test(plain)) return { vessel: null, material, several: [], faint };
  if (vessels.size !== 1) return { vessel: null, material, several: [...vessels], faint };
  const [vessel = null] = vessels;
  const pot = mentions.flatMap((m) => (m.meaning.is === 'material' ? [m.meaning.pot] : []))[0];
  const genericPot = vessel === 'porcelain-pot' && all.every((v) => v.material === null);
  return { vessel: genericPot && pot ? pot : vessel, material, several: [], faint };
}

/** 蓋碗太小了，有個壺 400: another is named in its place. */
const isGivenUp = (plain: string, { start, end }: VesselMention, all: readonly VesselMention[]): boolean =>
  notGood.test(plain.slice(end, end + 8)) &&
  all.some((other) => other.start > start && other.start > end && other.meaning.is === 'vessel');
const notGood = /^子?(?:太[大小]|不够|唔够|破|裂|坏|碎|打烂|漏|丢|不见|没带|借出去)/;

/** "yixing gaiwan", "glass thermos": right before another vessel, the first only qualifies. */
function isQualifier(mention: VesselMention, next: VesselMention | undefined): boolean {
  if (mention.meaning.is === 'vessel' && mention.meaning.vessel === 'infuser-mug') return false;
  return next?.meaning.is === 'vessel' && !next.meaning.faint && next.start - mention.end <= 1;
}

/** What is said of one thing together: a mug with a basket is one vessel, a pot with a strainer stays a pot. */
function settle(told: readonly Told[]): Set<string> {
  const vessels = new Set(told.flatMap((v) => (v.vessel === null ? [] : [v.vessel])));
  if (vessels.has('tumbler') && vessels.has('porcelain-pot') && told.every((v) => v.faint))
    return new Set(['glass-pot']);
  if (vessels.has('infuser-mug')) {
    const others = [...vessels].filter((v) => v !== 'infuser-mug' && v !== 'mug' && v !== 'tumbler');
    return others.length > 0 ? new Set(others) : new Set(['infuser-mug']);
  }
  if (vessels.size > 1 && told.every((v) => v.faint)) vessels.delete('cold-jar');
  return vessels;
}

function materialOf(
  mentions: readonly VesselMention[],
  told: readonly Told[],
  vessels: ReadonlySet<string>,
): string | null {
  const own = told.find((v) => v.vessel !== null && vessels.has(v.vessel) && v.material !== null)?.material;
  const said = mentions.flatMap((m) => (m.meaning.is === 'material' ? [m.meaning.material] : []))[0];
  const beside = mentions.flatMap((m) =>
    m.meaning.is === 'vessel' && m.meaning.material !== null ? [m.meaning.material] : [],
  )[0];
  return own ?? said ?? beside ?? null;
}
