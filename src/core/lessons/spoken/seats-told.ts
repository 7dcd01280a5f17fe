/** How many seats someone on a list is to have, as the shop is told of it: "they're three now", "bringing his wife", 多帶一個人. Knows no booking. */
import { plain } from './cut.ts';
import { number, readNumber } from './numeral.ts';

/** In all, or so many more than there are (below nothing: fewer). */
export type SeatsTold = { readonly seats: number } | { readonly more: number };

const few = '(?:\\d{1,2}|two|three|four|five|six|seven|eight)';
const one = `(?:${few}|one)`;
const behind = '(?:個|个)?(?:人|位|座|名|席)';
const kinHan =
  '(?:朋友|家人|同[學学事]|太太|先生|老[婆公]|媽媽?|妈妈?|爸爸?|女兒|女儿|[兒儿]子|姐姐?|妹妹?|哥哥?|弟弟?|孩子|人)';

const more: readonly RegExp[] = [
  new RegExp(`\\b(?<n>${one}|an?) (?:more|extra|additional)\\b`, 'iu'),
  /\b(?<n>another) (?!day|time|date|lesson|class|week|one)/iu,
  new RegExp(`\\bplus (?<n>${number})\\b`, 'iu'),
  new RegExp(`(?:再|多|加|添)(?:加|[帶带]|[來来]|要|[訂订]|[報报])?(?<n>${number})${behind}`, 'u'),
  new RegExp(`[帶带](?:多|埋|上|著|着)?(?:[她他佢](?:的|嘅)?)?(?<n>${number})?(?:個|个|位)?${kinHan}`, 'u'),
];
const fewer: readonly RegExp[] = [
  new RegExp(`\\b(?<n>${one}|an?) (?:seats? )?(?:less|fewer)\\b`, 'iu'),
  new RegExp(`(?:少|減|减)(?:了|去|掉|[來来])?(?<n>${number})${behind}`, 'u'),
];
const alone =
  /\b(?:alone|by (?:him|her|them)sel(?:f|ves)|on (?:his|her|their) own)\b|(?:只有|就|剩)?(?:自己)?一[個个]人|只有?(?:她|他|佢|自己)/iu;
const inAll: readonly RegExp[] = [
  new RegExp(`\\b(?<n>${one}|an?) (?:seats?|places?|spots?|people|persons?|guests?|of them|of us)\\b`, 'iu'),
  new RegExp(
    `(?:\\b(?:are|be|make|to|needs?|wants?|takes?|gets?|have|has|for|only|just)|'re|'s) (?:it |that |them |him |her |just |only |now )*(?<n>${one})\\b(?! ?(?:[:.]\\d|o'clock|[ap]m|minutes?|hours?|weeks?|days?))`,
    'iu',
  ),
  new RegExp(`(?<n>${number})${behind}`, 'u'),
];

/** Who is brought along: "his wife", "two friends", "her sister and a colleague". */
const brings = /\b(?:bring(?:s|ing)?|com(?:es?|ing) with|with)\b(?: along)? (?<whom>.{2,60})$/iu;
const someone = new RegExp(
  `^(?:(?<n>${number}|a couple of|another)? ?(?:of )?(?:(?:his|her|their|the|some) )?(?:(?:old|good|best|other) )?)(?<who>[a-z-]+)`,
  'iu',
);

/** "No, three." */
const notSo = /^\s*(?:(?:no|sorry|actually|oh|不|不是|不對|不对)[,，.。 ]+)+/iu;

/** Null where no number can be told from it. */
export function seatsTold(text: string): SeatsTold | null {
  const said = plain(text).replaceAll('’', "'").replace(notSo, '');
  const ahead = countIn(more, said) ?? broughtIn(said);
  if (ahead !== undefined) return { more: ahead };
  const behindThem = countIn(fewer, said);
  if (behindThem !== undefined) return { more: -behindThem };
  if (alone.test(said)) return { seats: 1 };
  const seats = countIn(inAll, said) ?? readNumber(said.replace(/[.!。！]+$/u, ''));
  return seats === undefined ? null : { seats };
}

function countIn(patterns: readonly RegExp[], text: string): number | undefined {
  const found = patterns.map((pattern) => pattern.exec(text)).find((match) => match !== null);
  return found ? countOf(found.groups?.['n'] ?? 'one') : undefined;
}

const countOf = (words: string): number | undefined =>
  words === 'another' ? 1 : words.startsWith('a couple') ? 2 : readNumber(words);

/** "Friends" may be any number; "parents" are two. */
function broughtIn(text: string): number | undefined {
  const whom = brings.exec(text)?.groups?.['whom'];
  const parts =
    whom?.split(/ and (?=(?:an?|his|her|their|one|two|the)\b)/iu).map((part) => someone.exec(part)?.groups) ?? [];
  const counts = parts.map((groups) => {
    const { n, who = '' } = groups ?? {};
    if (n !== undefined) return countOf(n.toLowerCase());
    return who === 'parents' ? 2 : /[^s]s$|^(?:children|people)$/u.test(who) || who === '' ? undefined : 1;
  });
  if (counts.length === 0 || counts.includes(undefined)) return undefined;
  return counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
}
