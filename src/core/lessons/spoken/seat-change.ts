/** How many more seats than there are, or fewer: "two more", "one of us can't come". Knows no booking. */
import { plain } from './cut.ts';
import { number, readNumber } from './numeral.ts';

/** Longer texts tell more than that. */
const longest = 60;

const more = [
  new RegExp(
    `^(?:(?:can|could|may) (?:i|we) (?:have|get|add|bring|book) |and |make it |add )?(?<n>${number}) (?:more|extra|further)\\b(?: seats?| places?| people| persons?)?`,
    'iu',
  ),
  new RegExp(`^(?:可以|能不能|能)?(?:再|多|再多)(?:加|來|来|要|訂|订|報|报)?(?<n>${number})(?:個|个|位|人|座)`, 'u'),
];

const notComing =
  "(?:can'?t|cannot|can not|won'?t|isn'?t|aren'?t|is not|are not|has to|is (?:sick|ill|away|busy)|are (?:sick|ill|away|busy))";
const notComingHan = '(?:不能|沒辦法|没办法|來不了|来不了|去不了|不來|不来|不去|病了|唔嚟)';
const kin =
  '(?:wife|husband|partner|friend|sister|brother|mother|mum|mom|father|dad|son|daughter|colleague|neighbou?r|flatmate|cousin|aunt|uncle)';
const fewer = [
  new RegExp(`\\b(?<n>${number}|a couple) of us ${notComing}`, 'iu'),
  new RegExp(`^(?:sorry,? |actually,? |oh no,? )*(?:my ${kin}|he|she) ${notComing}`, 'iu'),
  new RegExp(`(?:有|其中)(?<n>[一二两兩三四五\\d])(?:個|个)?(?:人|位).{0,4}${notComingHan}`, 'u'),
  new RegExp(
    `^我的?(?:太太|先生|老公|老婆|朋友|同事|女兒|女儿|兒子|儿子|媽媽?|妈妈?|爸爸?|姐姐?|妹妹?|哥哥?|弟弟?).{0,3}${notComingHan}`,
    'u',
  ),
];

/** Above nothing it is more, below it fewer; null when neither is said. */
export function seatsMore(sentence: string): number | null {
  const text = plain(sentence).replaceAll('’', "'");
  if (text.length > longest) return null;
  const found = more.map((pattern) => pattern.exec(text)?.groups?.['n']).find((n) => n !== undefined);
  return found === undefined ? null : (readNumber(found) ?? null);
}

export function seatsFewer(sentence: string): number | null {
  const text = plain(sentence).replaceAll('’', "'");
  const found =
    text.length > longest ? undefined : fewer.map((pattern) => pattern.exec(text)).find((one) => one !== null);
  return found ? (readNumber(found.groups?.['n'] ?? 'one') ?? 1) : null;
}
