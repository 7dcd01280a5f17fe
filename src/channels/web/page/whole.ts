/** Cuts a text where a line may not break: between a number and what it counts. Pure. */
import type { Said } from './wire.ts';

const number = String.raw`\d(?:[\d.,:]*\d)?[½¼¾⅓⅔]?`;
const counted = String.raw`(?: ?°[CF]?| ?%| ?(?:[分小毫][鐘钟時时升克](?:/毫升)?|\p{Script=Han})| \p{Script=Latin}{1,3}(?:/\p{Script=Latin}{1,2})?(?!\p{L}))`;
/** A day with what it is called: "12月5日（星期六）", "December 5", and so "Infusion 3". */
const day = String.raw`\d{1,2}月\d{1,2}日（\p{Script=Han}{2,3}）|\p{Lu}\p{Ll}{2,8} \d{1,2}(?![\d\p{L}]|[.:]\d)`;
/** A few words that end a text are not torn apart, nor left alone by half: "慢慢倒。", "– 8 seats free", "：還有 8 個座位". */
const lastWords = String.raw`(?<=[，；：、])\p{Script=Han}{2,4}。$|(?<=– )[^–]{1,16}$|(?<=：)[\p{Script=Han}\d ]{2,10}$`;
/** A number with its unit or the Han character after it, and such pairs in a row: "1 min 40 s", "第 3 泡", "± 1 °C". */
const pairs = String.raw`(?:[第±] ?)?${number}${counted}(?: ?${number}${counted}){0,2}`;
/** What parts a text ends a line, and begins none: "Porcelain pot ·", "the long table –". */
const parted = String.raw`[^\s·]{1,24} [·–](?= )`;
const together = new RegExp(`${day}|${pairs}(?: [·–](?= ))?|${lastWords}|${parted}`, 'gu');

/** The parts of a text in order; every second one must stay on one line. */
export function wholes(text: string): readonly string[] {
  const parts: string[] = [];
  let from = 0;
  for (const { index, 0: whole } of text.matchAll(together)) {
    parts.push(text.slice(from, index), whole);
    from = index + whole.length;
  }
  return [...parts, text.slice(from)];
}

/** About how much room a text takes, in letters: a Han character is as wide as two. */
export const breadth = (text: string): number => text.length + (text.match(/[\u2e80-\uffff]/g)?.length ?? 0);

/** One of a numbered list: "3. The first cup". */
export function itemOf(text: string): { readonly count: string; readonly text: string } | null {
  const [, count, rest] = /^(\d{1,3}\.) (.+)$/s.exec(text) ?? [];
  return count === undefined || rest === undefined ? null : { count, text: rest };
}

/** What a plan is for stands over it in a few words, mostly first, else below a remark; other ladders come with whole sentences. */
export function isPlanName({ ladder, paragraphs }: Pick<Said, 'ladder' | 'paragraphs'>, n: number): boolean {
  if (ladder === undefined) return false;
  const name = paragraphs.findIndex((text) => !/[.。]$/.test(text));
  const text = paragraphs[name] ?? '';
  return n === name && breadth(text) < 60 && (n === 0 || text.includes(' · '));
}
