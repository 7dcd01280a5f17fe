/** How many drink: "for four", "me and two friends", "我同爸爸媽媽". A number must be said, or the people one by one. */
import { plainText } from '../../teas/plain-text.ts';
import type { Signs } from './beside-number.ts';
import type { FoundNumber } from './numbers.ts';
import type { Measure } from './measures.ts';
import { before, isDenied } from '../nearby.ts';
import { seatsFor, sumOf, type Link, type Sort } from './people-sum.ts';
import type { PeopleWords } from '../reading-words.ts';

const alone =
  /\b(?:just|only) (?:for )?me\b|\bfor (?:only |just )?myself\b|\bme only\b|\bby myself\b|\bon my own\b|\bdrinking alone\b|\bsolo\b|\bfor one\b(?! (?:cup|mug|pot|glass|gaiwan|litre|liter|more|minute|second|hour|infusion|person more))|(?<![同另换多加第每])一个人(?:喝|饮|用|泡|冲)?|自己一个|得我一个|剩(?:下|返)?我(?:自己|一个|一人)|净系我|只有我自己|我自己(?:饮|喝)|独饮|自己(?:饮|喝)/;
interface Counted {
  readonly plain: string;
  readonly signs: Signs;
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

  return (scene) => {
    const { plain, numbers, measures, asked } = scene;
    const counted =
      totalSaid(scene) ??
      chainSum(plain, chains(withoutAmounts(plain, measures), unmeasured(numbers, measures), sorts, link)) ??
      (asked === 'guests' ? numberAlone(plain, measures) : null);
    if (counted) return counted;
    const one = alone.exec(plain);
    return one && !isPriced(plain, one.index, one.index + one[0].length)
      ? people1(1, one.index, one.index + one[0].length)
      : null;
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

/** "90 mil and I" tells of a pot and of no mother-in-law: what is measured parts those before it from those after. */
const withoutAmounts = (plain: string, measures: readonly Measure[]): string =>
  measures
    .filter(({ dimension }) => amounts.has(dimension))
    .reduce((text, { start, end }) => text.slice(0, start) + '#'.repeat(end - start) + text.slice(end), plain);

function unmeasured(numbers: readonly FoundNumber[], measures: readonly Measure[]): readonly FoundNumber[] {
  const measured = new Set(measures.filter(({ dimension }) => amounts.has(dimension)).map(({ start }) => start));
  return measured.size === 0 ? numbers : numbers.filter(({ start }) => !measured.has(start));
}

const amounts: ReadonlySet<Measure['dimension']> = new Set([
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

/** 一個人18美元, 幾錢一位: a price. */
const isPriced = (plain: string, start: number, end: number): boolean =>
  /^\s?\d+\s?(?:元|块|美|港|台币|欧|英镑|蚊|刀)/.test(plain.slice(end, end + 8)) ||
  (/(?:钱|元|块|蚊|美金|台币|港币|(?:几多|多少|几)钱?)\s?$/.test(before(plain, start)) &&
    /^(?:一|1)\s?[个位人]/.test(plain.slice(start, end)));

/** What may stand beside how many there are. */
const besideNumber =
  /\b(?:we|i|it|that|us|there)(?:'ll|'re|'d|'s|s)?\b|\b(?:are|is|be|will|would|could|might|may|need|want|like|make|think|guess|say|maybe|perhaps|probably|likely|about|around|just|only|actually|sorry|no|ok|okay|then|so|for|in|all|total|altogether|together|both|of|the|a|um|er|people|persons?|seats?|places?|spots?|adults?|pax|please|pls|plz|thanks|thank you|coming|bring|bringing|with|and|my|me|well|hi|hello|yes|yeah)\b|我们?|我地|我哋|咱们?|大家|一共|总共|合共|共|只有|只要|只|就|净系|和|跟|同|带|一起|有|是|系|要|来|个|位|名|口|席|座|人|大人|左右|大概|大约|可能|应该|也许|好的?|谢谢|麻烦|唔该|请|的|吧|啊|呢|啦|喔|哦|嗯|[^\p{L}\p{N}]/gu;

function totalSaid({ plain, signs, measures }: Counted): Measure | null {
  const scene = { plain, vessels: [], teas: [] };
  const told = measures.find(
    (m) =>
      m.dimension === 'bare' &&
      m.value <= mostCounted &&
      isCount(m.value) &&
      !isDenied(plain, m.start) &&
      !signs.tell('no-guests', scene, m) &&
      signs.tell('guests-in-all', scene, m),
  );
  return told ? { ...told, value: seatsFor(told.value) + (besideMe.test(before(plain, told.start)) ? 1 : 0) } : null;
}

/** "Me plus one" are two. */
const besideMe = /\b(?:me|myself) (?:plus|and)\s*$/;

/** "two or three" comes as two and a half. */
const isCount = (value: number): boolean => Number.isInteger(value * 2);

/** "one of the children", 同一個人 count nobody. */
const someOf = /^(?:one|1) of\b/;
const isSomeOf = (plain: string, at: number): boolean =>
  someOf.test(plain.slice(at, at + 12)) ||
  plain.startsWith('同一个人', at - 1) ||
  /^[一1]人[一1半]?[小大]?[杯份碗]/.test(plain.slice(at, at + 5));

/** "A glass pot 500 and guests 4": so many come to no table, unless they are called people. */
const mostCounted = 99;

/** "250 grandpa style" */
const wayToBrew = /^gran(?:d|d?pa)(?:pa)?'?s?[ -](?:style|way|method)\b/;
const isWayToBrew = (plain: string, at: number): boolean => wayToBrew.test(plain.slice(at, at + 20));

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
  const isOfMany = (end: number): boolean =>
    sorts.get(linkAt(link, plain, plain.charAt(end) === ' ' ? end + 1 : end) ?? '') === 'many';
  const close = (): void => {
    if (chain.some((l) => l.sort !== 'join' && l.sort !== 'number')) found.push(chain);
    chain = [];
  };
  for (let i = 0; i < plain.length;) {
    const number = isSomeOf(plain, i) ? undefined : numberAt.get(i);
    const word = insideWord(plain, i) || isWayToBrew(plain, i) ? undefined : linkAt(link, plain, i);
    if (word && (!number || word.length > number.end - number.start)) {
      chain.push({ sort: sorts.get(word) ?? 'join', text: word, value: 0, start: i, end: i + word.length });
      i += word.length;
    } else if (
      number &&
      number.end > i &&
      isCount(number.value) &&
      (number.value <= mostCounted || isOfMany(number.end))
    ) {
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
const drinksNone =
  /^ (?:(?:are|is) )?(?:asleep|sleeping|in bed|at school|at work|says?|said|asks?|asked|told)\b|^(?:们|刚刚?|上次|昨天|以前|之前|都|也|有)?(?:送|给|俾|畀|寄|推荐|介绍|教|说|讲|话|叫我|跟我说)(?:了|咗|我|的|过|嘅|返)/;

/** 原本兩個人改成三個人 */
const changedTo = /(?:改(?:成|为|做)?|变成?|转做|(?:增|加)(?:加)?到)\s?$/;

/** 老闆我要…: who is spoken to drinks none. */
const addressed =
  /^(?:老板|老板娘|店长|店家|店员|老师|师傅|老细|掌柜|小姐|先生|阿姨|阿伯|大叔|大姐|大哥|帅哥|美女|靓女|靓仔|亲|boss)$/;
const withoutAddressed = ([first, me, ...rest]: readonly Link[]): readonly Link[] => {
  const speaksTo = first && me?.sort === 'me' && me.start === first.end && addressed.test(first.text);
  return speaksTo ? [me, ...rest] : [first, me, ...rest].filter((link) => link !== undefined);
};

/** "Gaiwan 300, two people": a number right before another counts nobody. */
const beginOf = (chain: readonly Link[]): number =>
  Math.max(
    0,
    chain.findLastIndex((link, n) => isNumber(link) && isNumber(chain.slice(0, n).findLast(isNoJoin))),
  );
const isNumber = (link: Link | undefined): boolean => link?.sort === 'number';
const isNoJoin = ({ sort }: Link): boolean => sort !== 'join';

function chainSum(plain: string, all: readonly Link[][]): Measure | null {
  const sums = all.map(withoutAddressed).flatMap((chain) => {
    const sum = sumOf(plain, chain);
    const first = chain[beginOf(chain)];
    if (sum === null || !first || isDenied(plain, first.start)) return [];
    const end = chain.findLast(({ sort }) => sort !== 'number' && sort !== 'join')?.end ?? first.end;
    if (drinksNone.test(plain.slice(end, end + 24)) || isPriced(plain, first.start, end)) return [];
    return [people1(joinsMe.test(plain.slice(end, end + 24)) ? sum + 1 : sum, first.start, end)];
  });
  return sums.find(({ start }) => changedTo.test(before(plain, start))) ?? sums[0] ?? null;
}
