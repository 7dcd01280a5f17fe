/** How many seats and how long, as a sentence says it. */
import { cut } from './cut.ts';
import { number, readNumber } from './numeral.ts';

export interface Amount {
  readonly amount?: number;
  readonly rest: string;
}

const seats = new RegExp(
  `(?:\\b(?:for|max\\.?|maximum|up to|at most)\\s+|限|最多)*(?<n>${number})\\s*(?:(?:free\\s+)?(?:seats?|places?|people|persons?|students?|guests?)\\b|(?:个|個)?\\s*(?:座位|座|位子|席位|席|位|人|名额|名額|名))`,
  'iu',
);

export function readSeats(text: string): Amount {
  return taken(text, seats, (groups) => readNumber(groups['n'] ?? ''));
}

const durations: readonly (readonly [RegExp, (n: number, more: number) => number])[] = [
  [
    /(?:\bfor\s+)?\b(?<n>an?|one|two|three|\d)(?:\s+and\s+a\s+half\s+hours?|\s+hours?\s+and\s+a\s+half)\b/iu,
    (n) => n * 60 + 30,
  ],
  [/(?:\bfor\s+)?\bhalf\s+an\s+(?<n>)hour\b/iu, () => 30],
  [new RegExp(`(?<n>${number})(?:个|個)半(?:小时|小時|钟头|鐘頭)`, 'u'), (n) => n * 60 + 30],
  [/(?<n>)半(?:个|個)?(?:小时|小時|钟头|鐘頭)/u, () => 30],
  [
    new RegExp(
      `(?:\\bfor\\s+)?(?<n>${number})\\s*(?:hours?\\b|hrs?\\b|(?:个|個)?(?:小时|小時|钟头|鐘頭))(?:\\s*(?:and\\s+)?(?<more>${number})\\s*(?:min(?:ute)?s?\\b|分钟|分鐘|分))?`,
      'iu',
    ),
    (n, more) => n * 60 + more,
  ],
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
