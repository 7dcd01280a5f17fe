/** A single day that is told by a feast: "on Christmas Eve", "the Saturday before Christmas", 平安夜那天. */
import { addDays, weekdayOf, type WallDate } from '../calendar.ts';
import { cut } from './cut.ts';
import { feastDay, feastName, hanFeastName } from './feasts.ts';
import { fullWeekdays, hanWeekdays, weekdayIn } from './weekdays.ts';

const beside = [
  new RegExp(`\\b(?:the )?(?:last |first )?(?<weekday>${fullWeekdays}) (?<which>before|after) ${feastName}`, 'iu'),
  new RegExp(
    `${hanFeastName}(?<which>[前後后])(?:的|嘅|那|嗰)(?:那|嗰)?(?:個|个)?(?:週|周|星期|禮拜|礼拜)(?<weekday>[${hanWeekdays}天])`,
    'u',
  ),
];
/** "At Christmas" may be any day of the week; the eve, or on it, is one. */
const itself = [
  new RegExp(`\\b(?:on |the |for )?(?=[a-z' ]*\\beve\\b)${feastName}`, 'iu'),
  new RegExp(`\\bon ${feastName}`, 'iu'),
  new RegExp(`${hanFeastName}[那當当嗰](?:天|日|晚|堂|節|节)`, 'u'),
];

export interface FeastDay {
  readonly date: WallDate;
  readonly rest: string;
}

export function readFeastDay(text: string, today: WallDate): FeastDay | undefined {
  for (const pattern of [...beside, ...itself]) {
    const found = cut(text, pattern);
    const feast = found && feastDay(found.groups['feast'] ?? '', today);
    if (found && feast) return { date: nextTo(feast, found.groups), rest: found.rest };
  }
  return undefined;
}

function nextTo(feast: WallDate, { weekday, which }: { readonly [name: string]: string | undefined }): WallDate {
  if (weekday === undefined) return feast;
  const ahead = (weekdayIn(weekday) - weekdayOf(feast) + 7) % 7;
  const isBefore = which === 'before' || which === '前';
  return addDays(feast, isBefore ? ahead - 7 : ahead === 0 ? 7 : ahead);
}
