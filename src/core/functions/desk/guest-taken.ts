/** Who is to be written down on a list, and with how many seats, word for word from a shopkeeper's order. Knows no lesson. */
import type { Facts } from '../../flow/flow.ts';
import { readSeats } from '../../lessons/spoken/amounts.ts';
import { plain } from '../../lessons/spoken/cut.ts';
import { number, readNumber } from '../../lessons/spoken/numeral.ts';
import { begunSmall, groupsIn } from './words.ts';

/** 幫羅莎留兩位: a name and its seats. */
const hanGuestSeats =
  /^(?:[請请])?[幫帮替給给](?<who>\p{Script=Han}{2,4}?)(?:加|留|訂|订|報|报)(?<seats>[一兩两三四五六\d]+)(?:個|个)?(?:位子?|座位?|人|名)/u;

export function guestSeatsTaken(text: string): Facts | null {
  const named = groupsIn(text, [nameAndSeats]);
  if (named !== undefined) return { who: `${named['who']}, ${named['seats']} seats` };
  const { who, seats } = groupsIn(text, [hanGuestSeats]) ?? {};
  return who === undefined ? null : { who: `${who}${seats}位` };
}

/** "Peter Smith 3 seats for the 12th" */
const nameAndSeats =
  /^(?<who>\p{Lu}[\p{L}'’-]+ \p{Lu}[\p{L}'’-]+),? (?<seats>\d{1,2}|one|two|three|four|five|six) (?:seats?|places?|spots?|people) (?:for|on|at|in|next|this)\b/u;

const ontoList = '(?:on|onto|down|in|into|to|for)\\b';
/** A name begins with a capital: "Rosa and two friends". */
const names = `\\p{Lu}[\\p{L}'’-]*(?:,? (?!${ontoList})[\\p{L}\\d'’-]+)*?`;
const guests = [
  new RegExp(
    `^(?:please )?(?:put|add|write|sign|book) (?:up |down )?(?<who>${names}(?:[ ,]+[^\\s,@]+@[^\\s,]+)?)[ ,]+(?:up |down )?${ontoList}`,
    'u',
  ),
  // "Add Tom Baker, 2 seats, tom@example.org, Saturday"
  new RegExp(
    `^(?:please )?(?:put|add|write|sign|book) (?:up |down )?(?<who>\\p{Lu}[\\p{L}'’-]*(?: \\p{Lu}[\\p{L}'’-]*)*)(?=[ ,]+(?:${number} (?:seats?|places?|people)\\b|[^\\s,@]+@))`,
    'u',
  ),
  /^(?:請|请)?[幫帮替把](?<who>[^\s@,，]{1,12}[\s,，]*[^\s@,，]+@[\w.-]+)[\s,，]*(?:報名|报名|加[到進进入]|登[記记])/u,
  /^(?:請|请)?[幫帮替把](?<who>\p{Script=Han}{2,4}?(?:[一兩两三四五\d]+(?:位|個人|个人))?)(?:報名|报名|加[到進进入]|登[記记])/u,
];

/** Someone who rang or came by: "a Mrs Okafor phoned, she wants two seats", 陳太太打電話來要兩個位子. */
const callers = [
  /^(?<who>\p{Lu}[\p{L}'’-]*(?: \p{Lu}[\p{L}'’-]*)*)(?= and (?:his|her|their) \p{Ll}+,? )/u,
  /^(?:[Aa]n? |[Tt]he )?(?<who>(?:(?:[Mm]rs?|[Mm]s|[Mm]iss|[Dd]r)\.? )?\p{Lu}[\p{L}'’-]*(?: \p{Lu}[\p{L}'’-]*)*) (?:has )?(?:just )?(?:phoned|rang|called|came|stopped|dropped|wrote|emailed|asked|wants|would like|needs)\b/u,
  /^(?<who>(?:[Mm]rs?|[Mm]s|[Mm]iss|[Dd]r)\.? \p{L}[\p{L}'’-]*(?: \p{Lu}[\p{L}'’-]*)*)(?=,? \w+ (?:seats?|places?|spots?|people)\b)/u,
  /^(?<who>(?!我|大家)\p{Script=Han}{2,4}?)(?:[現现][場场]|[當当][場场]|[臨临][時时])(?:[報报]名?|加[報报])/u,
  /^(?:有一?[位個个])?(?<who>\p{Script=Han}{2,4}?)(?:[剛刚]?[剛刚才]?打(?:了)?(?:[電电][話话])?(?:[來来过過])?|[來来][電电]|[來来](?:店|[說说問问])|[說说]?(?:想|要)(?:[訂订]|[報报]|留|[兩两一二三四五六\d]))/u,
  /^(?<who>(?![請请幫帮替給给])\p{Script=Han}{1,3}(?:先生|小姐|太太|女士|同[學学]|阿姨|叔叔|姐姐|大哥))也?(?:[說说]?要)?[報报訂订]/u,
  /^(?:[請请])?[幫帮替給给](?<who>(?!我|大家)\p{Script=Han}{2,8}?)(?:[報报訂订留])(?!名)/u,
];
const address = /[,，;；]?\s*(?<mail>[^\s,，;；@]+@[\w.-]+\w)/u;
/** "Two white tea seats", 兩個冬日烏龍的位子: what is counted stands further on. */
const seatsFurtherOn = /(?<n>[一兩两二三四五六\d]+)[個个位][^,，。]{1,14}的(?:位子?|座位)/u;

export function guestTaken(text: string): Facts | null {
  const mail = address.exec(text);
  const plainly = mail ? text.replace(mail[0], '') : text;
  const taken = whoTaken(text) ?? whoTaken(plainly) ?? callerTaken(plainly) ?? (mail ? besideAddress(plainly) : null);
  if (taken === null) return null;
  const isMissing = mail && !taken.includes('@');
  return { who: isMissing ? `${taken}, ${mail.groups?.['mail'] ?? ''}` : taken };
}

/** 16號的給李娜留兩位, with an address: the name is what is left when day, seats and order are taken off. */
const hanDays =
  /(?:\d{1,2}\s?[月/])?\d{1,2}\s?[日號号]|\d{1,2}\/\d{1,2}|[這这下本]?[個个]?(?:[周週]|星期|[禮礼]拜)[一二三四五六日天末]|[今明後后]天|[早晚]上|上午|下午/gu;
const hanOrder =
  '(?:的|那?[場场堂節节]|[請请]|[幫帮替給给把將将]|再|多|加[上入進进個个]?|登[記记]|[記记][上下]|[報报]名|[訂订留]位?|名[單单]|客人|[:：,，、\\s\u241F])*';
const besideMail = new RegExp(
  `^${hanOrder}(?<who>\\p{Script=Han}{2,6}?)(?=[要想也會会來来報报留訂订加說说打有的和跟到去進进登,，、\\s\\d\u241F]|$)`,
  'u',
);

function besideAddress(text: string): string | null {
  const { amount, rest } = readSeats(plain(text));
  const who = groupsIn(rest.replace(hanDays, ''), [besideMail])?.['who'];
  const seats = amount ?? (/夫[婦妇]|[兩两]口子|[兩两]公婆/u.test(who ?? '') ? 2 : undefined);
  return who === undefined ? null : seats === undefined ? who : `${who}, ${seats}`;
}

function callerTaken(text: string): string | null {
  const who = groupsIn(text, callers)?.['who'];
  if (who === undefined) return null;
  const rest = plain(text.replace(who, ' ').replace(hanDays, ' '));
  const seats = readSeats(rest).amount ?? readNumber(seatsFurtherOn.exec(rest)?.groups?.['n'] ?? '') ?? withKin(rest);
  // 張偉和他老婆: two of them.
  return seats === undefined || seats === 1 ? withSeats(who) : `${who}, ${seats}`;
}

/** "Tom called, he and his brother come on Saturday." */
const kin = new RegExp(
  `\\b(?:and|with|plus|bringing) (?:(?:his|her|their|a|an) )?(?:(?<n>${number}) )?(?:friends?|brothers?|sisters?|wife|husband|mother|mum|mom|father|dad|sons?|daughters?|partner|girlfriend|boyfriend|colleagues?|neighbou?rs?|cousins?|kids?|children)\\b`,
  'iu',
);

function withKin(text: string): number | undefined {
  const found = kin.exec(text);
  return found === null ? undefined : 1 + (readNumber(found.groups?.['n'] ?? 'one') ?? 1);
}

function whoTaken(text: string): string | null {
  const who = groupsIn(begunSmall(text), guests)?.['who'];
  if (who === undefined) return null;
  // "Put Mei down for Saturday, 2 seats."
  const rest = plain(text.replace(who, ' ').replace(hanDays, ' '));
  const seats = readSeats(rest).amount ?? readNumber(seatsLast.exec(rest)?.groups?.['n'] ?? '');
  return seats === undefined || withSeats(who) !== who ? withSeats(who) : `${who}, ${seats}`;
}

/** "Book Ann Lee, ann@example.org, Saturday, 2". */
const seatsLast = /[,，] ?(?<n>\d{1,2})$/u;

/** "Rosa and two friends", three seats. */
function withSeats(who: string): string {
  if (/\d|[位個个]/u.test(who)) return who;
  const parts = who.split(/ and | & |, |[和跟與与]/u);
  const seats = parts.reduce((sum, part) => sum + (readNumber(part.split(' ')[0] ?? '') ?? 1), 0);
  return seats === 1 ? who : `${who}, ${seats}`;
}
