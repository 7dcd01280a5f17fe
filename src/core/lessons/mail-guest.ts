/** Someone without a chat, as a shopkeeper writes them down in one line: a name, perhaps a mail address, perhaps a number of seats. */
import type { Mistake } from '../units.ts';
import { mistake } from './lesson.ts';
import { readSeats } from './spoken/amounts.ts';
import { readNumber } from './spoken/numeral.ts';

export interface MailGuest {
  readonly name: string;
  /** The part behind the @ in small letters; null: nothing that is sent reaches them. */
  readonly mail: string | null;
  readonly seats: number;
  /** A telephone number stood there. It is not kept: nothing here could call it. */
  readonly hasPhone: boolean;
}

export const longestName = 60;

const addressPattern = /[^\s@<>()[\]",:;\\，；、：（）<>「」]{1,64}@[\p{L}\p{N}.-]+\.[\p{L}]{2,63}/u;

/** The same for every way of writing it, as far as that is certain: the part before the @ is the receiver's own affair. */
export function plainAddress(text: string): string | null {
  const found = new RegExp(`^${addressPattern.source}$`, 'u').exec(text.trim())?.[0];
  if (found === undefined || found.length > 254 || found.includes('..')) return null;
  const at = found.lastIndexOf('@');
  return found.slice(0, at) + found.slice(at).toLowerCase();
}

/** Six figures and more, as numbers are written in any country, with the word that often stands before them. */
const phonePattern =
  /(?:(?:\b(?:tele)?phone|\btel|\bmobile|手[機机]|[電电][話话])\.?\s*[:：]?\s*)?(?:\+|\(\s*)?\d(?:[ \t()./–-]*\d){5,}/iu;

/** "Mrs Lee paid", "what's on next week": a sentence, and nobody's name. */
const tellsMore =
  /(?:^|\s)(?:can['’]?t|cannot|won['’]?t|didn['’]?t|doesn['’]?t|isn['’]?t|paid|pays|needs?|wants?|came|comes|coming|called|is|are|was|were|has|have|what['’]?s?|who['’]?s?|which|when|where|how|any|does|did|do)(?:\s|$)/iu;

export function hearGuest(
  line: string,
): { readonly guest: MailGuest } | { readonly mistakes: readonly [Mistake, ...Mistake[]] } {
  const written = addressPattern.exec(line)?.[0] ?? null;
  const mail = written === null ? null : plainAddress(written);
  const meant = /\S*@\S*/u.exec(line)?.[0];
  if (mail === null && meant !== undefined) return { mistakes: [mistake('guest-mail', 'mail', { words: meant })] };
  const said = readSeats(written === null ? line : line.replace(written, ' , '));
  const uncalled = said.rest.replace(phonePattern, ' , ');
  const pieces = uncalled
    .replace(/\s(?=\d{1,5}\s*$)/u, ',')
    .split(/[,;，；、|<>()（）\n\u241F]/u)
    .map((piece) => piece.trim());
  const number = pieces.map((piece) => (piece === '' ? undefined : readNumber(piece))).find((n) => n !== undefined);
  const name = pieces.filter((piece) => /\p{L}/u.test(piece) && readNumber(piece) === undefined).join(' ');
  if (name === '' || tellsMore.test(name)) return { mistakes: [mistake('guest-no-name', 'name')] };
  if (name.length > longestName) return { mistakes: [mistake('guest-name-long', 'name', { most: longestName })] };
  return { guest: { name, mail, seats: said.amount ?? number ?? 1, hasPhone: uncalled !== said.rest } };
}
