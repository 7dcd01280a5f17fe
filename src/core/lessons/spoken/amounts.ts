/** How many seats, how long and at what price, as a sentence says it. */
import { cut, mark } from './cut.ts';
import { number, readNumber } from './numeral.ts';

export interface Amount {
  readonly amount?: number;
  readonly rest: string;
}

const atMost = '(?:\\bmax\\.?\\s+|\\b(?:maximum|up to|at most)\\s+|限|最多)';
const seatWords = '(?:free\\s+)?(?:seats?|places?|people|persons?|students?|guests?)\\b';
const hanSeatWords = '(?:个|個)?\\s*(?:座位|座|位子|席位|席|位|人|名额|名額|名|组|組)';
const seats = new RegExp(`(?:\\bfor\\s+|${atMost})*(?<n>${number})\\s*(?:${seatWords}|${hanSeatWords})`, 'iu');

/** "Max 6", without saying six of what, but no hour and no time. */
const most = new RegExp(
  `${atMost}(?<n>${number})(?![\\d:.]|\\s*(?:[ap]\\.?m\\b|h(?:ou)?rs?\\b|min|[点點时時小分个個]))`,
  'iu',
);

/** "For 8" and no more, where that piece of the sentence ends: for two hours is a length, for 8 euros a price. */
const forSoMany = new RegExp(
  `\\bfor\\s+(?<n>${number})(?=\\s*(?:[,;.!?]|(?:on|at|this|next)\\b(?: the)?\\s*${mark}|${mark}|$))`,
  'iu',
);

/** 我報一個, and not 一個月, 一個人來的課. */
const hanSoMany = new RegExp(
  `(?:[報报訂订留])(?<n>${number})[個个](?=\\s*(?:[,，。!！?？吧啦啊呀嗎吗了]|${mark}|$))`,
  'u',
);

export function readSeats(text: string): Amount {
  const [found] = [seats, most, forSoMany, hanSoMany]
    .map((pattern) => taken(text, pattern, numberIn))
    .filter(({ amount }) => amount !== undefined);
  return found ?? { rest: text };
}

const numberIn = ({ n = '' }: Groups): number | undefined => readNumber(n);

const sign = '(?:(?:nt|hk|us)?\\$|[€£¥])';
const currency = '(?:euros?|dollars?|yuan|yen|francs?|eur|usd|gbp|chf|twd|hkd|cny|rmb)\\b';
const hanCurrency = '(?:[欧歐美日港]元|美金|英[镑鎊]|(?:新?[台臺]|港|人民)[币幣]|[块塊][钱錢]?|元)';
const aHead = '(?:\\s*(?:each|(?:a|per|for each) (?:person|head|seat))\\b|\\s*(?:每|一)[人位])?';
const sum = `(?:${sign}\\s?\\d+(?:[.,]\\d+)*|${number}\\s*(?:${sign}|${currency}|${hanCurrency}))`;
const before = '(?:\\b(?:for|at|costs?|price)\\b:?\\s*|费用|費用|学费|學費)';
/** 費用350, in the money of the shop. */
const hanFee = '(?:费用|費用|学费|學費|收费|收費|价钱|價錢)(?:是|為|为|收|每[人位])*[:：]?';
const price = new RegExp(
  `${before}?(?<price>(?:每[人位]\\s*)?${sum}${aHead}|每[人位]\\s*(?:\\d+|[一二兩两三四五六七八九]?[十百千][一二三四五六七八九十百]*)(?![\\d:.]|\\s*[個个位杯人分小])|\\d+\\s*(?:每|一)[人位])|${hanFee}\\s*(?<bare>\\d{2,5})(?![\\d:.]|\\s*[點点分位人])`,
  'iu',
);

/** In the words it was said in; it is paid at the shop. */
export function readPrice(text: string): { readonly price?: string; readonly rest: string } {
  const found = cut(text, price);
  const words = found?.groups['price'] ?? found?.groups['bare'];
  return found && words !== undefined ? { price: words.trim(), rest: found.rest } : { rest: text };
}

const hours = '(?:hours?\\b|hrs?\\b|(?:个|個)?(?:小时|小時|钟头|鐘頭))';
const andMinutes = `\\s*(?:and\\s+)?(?<more>${number})\\s*(?:min(?:ute)?s?\\b|分钟|分鐘|分)`;
const durations: readonly (readonly [RegExp, (n: number, more: number) => number])[] = [
  [
    /(?:\bfor\s+)?\b(?<n>an?|one|two|three|\d)(?:\s+and\s+a\s+half\s+hours?|\s+hours?\s+and\s+a\s+half)\b/iu,
    (n) => n * 60 + 30,
  ],
  [/(?:\bfor\s+)?\bhalf\s+an\s+(?<n>)hour\b/iu, () => 30],
  [new RegExp(`(?<n>${number})(?:个|個)半(?:小时|小時|钟头|鐘頭)`, 'u'), (n) => n * 60 + 30],
  [/(?<n>)半(?:个|個)?(?:小时|小時|钟头|鐘頭)/u, () => 30],
  [new RegExp(`(?:\\bfor\\s+)?(?<n>${number})\\s*${hours}(?:${andMinutes})?`, 'iu'), (n, more) => n * 60 + more],
  [new RegExp(`(?:\\bfor\\s+)?(?<n>${number})\\s*(?:min(?:ute)?s?\\b|分钟|分鐘)`, 'iu'), (n) => n],
];

/** In minutes. */
export function readDuration(text: string): Amount {
  for (const [pattern, minutes] of durations) {
    const found = taken(text, pattern, ({ n = '', more = '' }) =>
      Math.round(minutes(readNumber(n || 'a') ?? 0, readNumber(more) ?? 0)),
    );
    if (found.amount !== undefined) return found;
  }
  return { rest: text };
}

type Groups = { readonly [name: string]: string | undefined };

function taken(text: string, pattern: RegExp, read: (groups: Groups) => number | undefined): Amount {
  const found = cut(text, pattern);
  const amount = found && read(found.groups);
  return found && amount !== undefined ? { amount, rest: found.rest } : { rest: text };
}
