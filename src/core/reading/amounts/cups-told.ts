/** How much a vessel holds, told in cups or by what is as big. */
import type { KnownSizes } from './known-sizes.ts';
import { cupMl, mugMl } from './measures.ts';
import { findNumbers } from './numbers.ts';

/** "about a cup and a half", "two mugs worth", 大概兩杯, asked how much it holds: recipe cups, and mugs as they mostly are. */
const inCups =
  /^(?:(?:it (?:holds|takes|is|makes)|its|holds|id say|i'd say|id guess|say|erm|um|hmm|well|approx|approximately|just|just over|just under|im not sure|i'm not sure|dunno|not sure|no idea|i dont know|i don't know|i think|i guess|but|maybe|about|bout|abt|around|roughly|perhaps|probably|like|or so|enough for)[ ,.]+)*(?:a )?(an?|one|two|three|four|five|six|half(?: of)? an?|(?:two[ -]thirds?|three[ -]quarters?|a third|a quarter|[1-3]\/[2-4])(?: of)? an?|\d(?:\.\d+)?(?: of an?)?) (?:and a half )?(?:big |full |small |large |coffee |normal |ordinary |tea |regular )?((?:espresso |demitasse )?cup|mug)(?:s|fuls?)?( and a half)?\b(?! (?:tea ?)?pots?\b)/;
const inCupsOfHan =
  /^(?:不知道|不清楚|大概|大约|约|差不多|应该|可能|可以|能|装得下|装|[是有 ,.，。])*([一二两三四半]|\d)个?[大小]?(马克杯|杯)(?:左右|的?水|的?[容分]?量|上下|[吧满多了啦喔 ])*[ .。]*$/;
/** "A mug", and not how many of them. */
const isAnotherVessel =
  /\b(?:an?|the|my|one) (?:big |small |large |coffee )?mug\b(?! (?:worth|and a half))(?<!\b(?:holds|takes|makes|fills) .*)(?<!\b(?:of|half) an? (?:big |small |large |coffee )?mug)/;

/** Judgement: filled, and not only with a shot. */
const espressoMl = 70;

interface Sized {
  readonly plain: string;
  /** The fact asked just now. */
  readonly asked: string | null;
  readonly sizes: KnownSizes;
}

export function cupsTold({ plain, asked, sizes }: Sized): number | null {
  const alike = asked === 'volumeMl' ? sizes.ofThing(plain) : null;
  if (alike !== null) return alike;
  const isTold = asked === 'volumeMl' && plain.length <= 80 && !isAnotherVessel.test(plain);
  const said = isTold ? plain.trim() : '';
  const told = inCups.exec(said) ?? inCupsOfHan.exec(said);
  const count = told && countOf(told[1] ?? '');
  if (count && /^(?:espresso|demitasse)/.test(told?.[2] ?? '')) return Math.round(count * espressoMl);
  const each = told?.[2] === 'mug' || told?.[2] === '马克杯' ? mugMl : cupMl;
  return count ? Math.round((count + (told?.[0].includes('and a half') ? 0.5 : 0)) * each) : null;
}

const parts: readonly (readonly [RegExp, number])[] = [
  [/^(?:half|半|1\/2)/, 0.5],
  [/^(?:two[ -]third|2\/3)/, 2 / 3],
  [/^(?:three[ -]quarter|3\/4)/, 0.75],
  [/^(?:a third|1\/3)/, 1 / 3],
  [/^(?:a quarter|1\/4)/, 0.25],
];

function countOf(words: string): number {
  const part = parts.find(([said]) => said.test(words));
  if (part !== undefined) return part[1];
  return /^an?$/.test(words) ? 1 : (findNumbers(words)[0]?.value ?? 0);
}
