/** How many drink: "for four", "me and two friends", "我同爸爸媽媽". A number must be said, or the people one by one. */
import { plainText } from '../teas/plain-text.ts';
import type { FoundNumber } from './numbers.ts';
import type { Measure } from './measures.ts';
import { before, isDenied } from './nearby.ts';
import type { PeopleWords } from './reading-words.ts';

type Sort = 'me' | 'one' | 'two' | 'many' | 'join';

interface Link {
  readonly sort: Sort | 'number';
  readonly text: string;
  readonly value: number;
  readonly start: number;
  readonly end: number;
}

const alone =
  /\b(?:just|only) (?:for )?me\b|\bfor (?:only |just )?myself\b|\bme only\b|\bby myself\b|\bon my own\b|\bdrinking alone\b|\bsolo\b|\bfor one\b(?! (?:cup|mug|pot|glass|gaiwan|litre|liter|more|minute|second|hour|infusion|person more))|(?<![同另换多加第每])一个人(?:喝|饮|用|泡|冲)?|自己一个|得我一个|净系我|只有我自己|我自己(?:饮|喝)|独饮|自己(?:饮|喝)/;
const inAll =
  /\b(?:for|family of|party of|group of|table of|me plus|me and|myself and|us plus|we are|we're|we will be|we'll be|people are|there are|there'll be|there will be|serves|serving)\s*$|(?:我们|我地|我哋|大家|一共|总共|屋企|家里|一家|(?:连|加|加埋|包括|连埋|连同|算上)我|夫妻|两公婆|公婆|母女|母子|父子|父女|姐妹|姊妹|兄弟|情侣|客人|人客|宾客|来宾)(?:有|系|是|共)?$/;
/** "for two" is people unless something countable follows; "我們三個" likewise. */
const notCounting =
  /^\s?(?:-|minutes?|seconds?|days?|hours?|infusions?|brews?|ml|g\b|oz|years?|cups?|pots?|teas?|gaiwans?|more (?:infusions|steeps|minutes)|different|types?|kinds?|(?:个|只|把)?(?:壶|杯|盖碗|茶|泡|月|钟))/;

interface Counted {
  readonly plain: string;
  readonly numbers: readonly FoundNumber[];
  readonly measures: readonly Measure[];
  /** The fact asked just now. */
  readonly asked: string | null;
}

export function makeGuestReader(people: PeopleWords): (counted: Counted) => Measure | null {
  const sorts = new Map<string, Sort>();
  const add = (words: readonly string[], sort: Sort): void => {
    for (const word of words) if (!sorts.has(plainText(word).plain)) sorts.set(plainText(word).plain, sort);
  };
  add(people.many, 'many');
  add(people.two, 'two');
  add(people.one, 'one');
  add(people.me, 'me');
  add(people.joins, 'join');
  const link = linkPattern([...sorts.keys()]);

  return ({ plain, numbers, measures, asked }) => {
    const counted =
      totalSaid(plain, measures) ??
      chainSum(plain, chains(plain, unmeasured(numbers, measures), sorts, link)) ??
      (asked === 'guests' ? numberAlone(plain, measures) : null);
    if (counted) return counted;
    const one = alone.exec(plain);
    return one && !isPriced(plain, one.index + one[0].length) ? people1(1, one.index, one.index + one[0].length) : null;
  };
}

function people1(value: number, start: number, end: number): Measure {
  return { dimension: 'bare', value, start, end, digits: false };
}

function linkPattern(words: readonly string[]): RegExp {
  const sorted = words.toSorted((a, b) => b.length - a.length).map((word) => word.replace(/[+]/g, '\\+'));
  const latin = sorted.filter((word) => /[a-z]/.test(word)).join('|');
  const others = sorted.filter((word) => !/[a-z]/.test(word)).join('|');
  return new RegExp(`(?<![a-z])(?:${latin})(?![a-z'])|${others}`, 'y');
}

/** "90 mil" measures a pot and counts no mothers-in-law. */
function unmeasured(numbers: readonly FoundNumber[], measures: readonly Measure[]): readonly FoundNumber[] {
  const measured = new Set(measures.filter(({ dimension }) => isAmount.has(dimension)).map(({ start }) => start));
  return measured.size === 0 ? numbers : numbers.filter(({ start }) => !measured.has(start));
}

const isAmount: ReadonlySet<Measure['dimension']> = new Set([
  'volume',
  'ounce',
  'mass',
  'spoon',
  'temperature',
  'length',
  'time',
]);

/** "Maybe 4", 一共四位, and nothing else: "does it end before 5?" and "on the 12th" count nobody. */
function numberAlone(plain: string, measures: readonly Measure[]): Measure | null {
  const bare = measures.filter(({ dimension }) => dimension === 'bare');
  const [one] = bare;
  if (one === undefined || bare.length > 1 || !isCount(one.value)) return null;
  return saysOnlyHowMany(plain, one) ? { ...one, value: seatsFor(one.value) } : null;
}

/** "OK, me and my husband": how many there are, and nothing else. */
export function saysOnlyHowMany(plain: string, { start, end }: Pick<Measure, 'start' | 'end'>): boolean {
  return `${plain.slice(0, start)} ${plain.slice(end)}`.replace(besideNumber, '').trim() === '';
}

/** 一個人18美元: a price. */
const isPriced = (plain: string, at: number): boolean =>
  /^\s?\d+\s?(?:元|块|美|港|台币|欧|英镑|蚊|刀)/.test(plain.slice(at, at + 8));

/** What may stand beside how many there are. */
const besideNumber =
  /\b(?:we|i|it|that|us|there)(?:'ll|'re|'d|'s|s)?\b|\b(?:are|is|be|will|would|could|might|may|need|want|like|make|think|guess|say|maybe|perhaps|probably|likely|about|around|just|only|actually|sorry|no|ok|okay|then|so|for|in|all|total|altogether|together|both|of|the|a|um|er|people|persons?|seats?|places?|spots?|adults?|pax|please|pls|plz|thanks|thank you|coming|bring|bringing|with|and|my|me|well|hi|hello|yes|yeah)\b|我们?|我地|我哋|咱们?|大家|一共|总共|合共|共|只有|只要|只|就|净系|和|跟|同|带|一起|有|是|系|要|来|个|位|名|口|席|座|人|大人|左右|大概|大约|可能|应该|也许|好的?|谢谢|麻烦|唔该|请|的|吧|啊|呢|啦|喔|哦|嗯|[^\p{L}\p{N}]/gu;

function totalSaid(plain: string, measures: readonly Measure[]): Measure | null {
  for (const m of measures) {
    if (m.dimension !== 'bare' || m.value > 99 || !isCount(m.value) || isDenied(plain, m.start)) continue;
    const told = inAll.test(before(plain, m.start)) && !notCounting.test(plain.slice(m.end, m.end + 16));
    const rest = plain.slice(m.end, m.end + 14);
    if (
      told &&
      !/^\s?(?:people|person|friends?|guests?|of )/.test(rest) &&
      /^\s?(?:个|位|人)?\s?(?:$|[^\p{L}\s]|people|please|pls|actually|now|here|tonight|today|with|using|in|at|and|who|here|饮|喝|用|一齐|一起|想|要|来|会|，|。)/u.test(
        rest,
      )
    )
      return { ...m, value: seatsFor(m.value) };
  }
  return null;
}

/** "two or three" comes as two and a half. */
const isCount = (value: number): boolean => Number.isInteger(value * 2);
/** There must be enough for those who may come. */
const seatsFor = (value: number): number => Math.ceil(value);

/** "one of the children", 同一個人 count nobody. */
const someOf = /^(?:one|1) of\b/;
const isSomeOf = (plain: string, at: number): boolean =>
  someOf.test(plain.slice(at, at + 12)) || plain.startsWith('同一个人', at - 1);

/** Runs of people and what joins them. */
function chains(
  plain: string,
  numbers: readonly FoundNumber[],
  sorts: ReadonlyMap<string, Sort>,
  link: RegExp,
): Link[][] {
  const found: Link[][] = [];
  const numberAt = new Map(numbers.map((number) => [number.start, number]));
  let chain: Link[] = [];
  const close = (): void => {
    if (chain.some((l) => l.sort !== 'join' && l.sort !== 'number')) found.push(chain);
    chain = [];
  };
  for (let i = 0; i < plain.length;) {
    const number = isSomeOf(plain, i) ? undefined : numberAt.get(i);
    const word = insideWord(plain, i) ? undefined : linkAt(link, plain, i);
    if (word && (!number || word.length > number.end - number.start)) {
      chain.push({ sort: sorts.get(word) ?? 'join', text: word, value: 0, start: i, end: i + word.length });
      i += word.length;
    } else if (number && number.end > i && isCount(number.value)) {
      chain.push({ sort: 'number', text: '', value: seatsFor(number.value), start: i, end: number.end });
      i = number.end;
    } else {
      if (plain.charAt(i) !== ' ') close();
      i++;
    }
  }
  close();
  return found;
}

function linkAt(link: RegExp, plain: string, at: number): string | undefined {
  link.lastIndex = at;
  return link.exec(plain)?.[0];
}

const isLetter = (character: string): boolean => character >= 'a' && character <= 'z';
const insideWord = (plain: string, at: number): boolean => isLetter(plain.charAt(at)) && isLetter(plain.charAt(at - 1));

/** "my sister and her two daughters join me" */
const joinsMe = /^ (?:(?:will|are|is) )?(?:join(?:s|ing)?|visit(?:s|ing)?) me\b/;

/** Who sleeps, or only says something, drinks none. */
const drinksNone = /^ (?:(?:are|is) )?(?:asleep|sleeping|in bed|at school|at work|says?|said|asks?|asked|told)\b/;

function chainSum(plain: string, all: readonly Link[][]): Measure | null {
  const sums = all.flatMap((chain) => {
    const sum = sumOf(plain, chain);
    const [first] = chain;
    if (sum === null || !first || isDenied(plain, first.start)) return [];
    const end = chain.findLast(({ sort }) => sort !== 'number' && sort !== 'join')?.end ?? first.end;
    if (drinksNone.test(plain.slice(end, end + 24)) || isPriced(plain, end)) return [];
    return [people1(joinsMe.test(plain.slice(end, end + 24)) ? sum + 1 : sum, first.start, end)];
  });
  return sums[0] ?? null;
}

function sumOf(plain: string, chain: readonly Link[]): number | null {
  const people = chain.filter((l) => l.sort !== 'join');
  if (
    /^(?:我)?一个人/.test(chain.map((l) => (l.sort === 'number' ? (l.value === 1 ? '一' : '几') : l.text)).join('')) &&
    people.length <= 3
  )
    return 1;
  const whole = countedThenNamed(chain);
  if (whole !== null) return whole;
  let sum = 0;
  let count: number | null = null;
  let said = 0;
  let numbered = false;
  let me = false;
  let kin = false;
  for (const [i, l] of people.entries()) {
    if (l.sort === 'number') count = l.value;
    else if (l.sort === 'me') {
      if (isPossessive(chain, l)) continue;
      me = true;
      said++;
    } else {
      // 一口 is a sip, "one more" a seat.
      if (count === 1 && /^(?:口|more)$/.test(l.text)) return null;
      // 同老婆兩個人: both counted already.
      if (count !== null && kin && isTotal(chain, l)) return count;
      const each = l.sort === 'two' ? 2 : 1;
      if (l.sort === 'many' && count === null) {
        // 我和同事四個人: all are counted at once.
        const [total, counted] = people.slice(i + 1);
        if (total?.sort === 'number' && counted && isTotal(chain, counted)) return total.value;
        // "friends" alone says no number, and then neither does the whole.
        if (i > 0 || people.length > 1) return null;
        continue;
      }
      sum += l.sort === 'two' ? each : (count ?? each);
      numbered ||= count !== null;
      kin ||= l.sort !== 'many' || /friend|朋友|同事|老友|同学|guest|客|colleague/.test(l.text);
      said++;
      count = null;
    }
  }
  const [first] = chain;
  const ahead = before(plain, first?.start ?? 0);
  const withMe =
    !me && kin && (/\bwith $/.test(ahead) || /^(?:同|和|跟|与)$/.test(first?.sort === 'join' ? first.text : ''));
  if (said === 0 || sum + (me ? 1 : 0) === 0 || (me && sum === 0)) return null;
  if (numbered || said >= 2 || withMe || (people.some((p) => p.sort === 'two') && /\bfor $/.test(ahead)))
    return sum + (me || withMe ? 1 : 0);
  return null;
}

/** 兩個人 我和我媽: how many, and then who they are. */
function countedThenNamed([number, many, me]: readonly Link[]): number | null {
  const isNamed = number?.sort === 'number' && /^(?:个人|人|位)$/.test(many?.text ?? '') && me?.sort === 'me';
  return isNamed ? number.value : null;
}

/** A number of people right after the people themselves, with nothing that joins. */
function isTotal(chain: readonly Link[], many: Link): boolean {
  const at = chain.indexOf(many);
  const told = chain[at - 2];
  return /^(?:个人|人|位)$/.test(many.text) && told !== undefined && told.sort !== 'join' && told.sort !== 'number';
}

/** 我太太 is "my wife"; 我同太太 is "I and my wife". */
function isPossessive(chain: readonly Link[], me: Link): boolean {
  const next = chain[chain.indexOf(me) + 1];
  return (
    me.text.startsWith('我') &&
    next !== undefined &&
    next.start === me.end &&
    (next.sort === 'one' || next.sort === 'two')
  );
}
