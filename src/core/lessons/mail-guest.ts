/** Someone without a chat, as a shopkeeper writes them down in one line: a name, a mail address, perhaps a number of seats. */
import type { Mistake } from '../units.ts';
import { mistake } from './lesson.ts';
import { readSeats } from './spoken/amounts.ts';
import { readNumber } from './spoken/numeral.ts';

export interface MailGuest {
  readonly name: string;
  /** The part behind the @ in small letters. */
  readonly mail: string;
  readonly seats: number;
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

export function hearGuest(
  line: string,
): { readonly guest: MailGuest } | { readonly mistakes: readonly [Mistake, ...Mistake[]] } {
  const written = addressPattern.exec(line)?.[0] ?? '';
  const mail = plainAddress(written);
  if (mail === null) return { mistakes: [mistake('guest-no-address', 'mail')] };
  const rest = line.replace(written, ' , ');
  const said = readSeats(rest);
  const pieces = said.rest.split(/[,;，；、|<>()（）\n\u241F]/u).map((piece) => piece.trim());
  const number = pieces.map((piece) => (piece === '' ? undefined : readNumber(piece))).find((n) => n !== undefined);
  const name = pieces.filter((piece) => /\p{L}/u.test(piece) && readNumber(piece) === undefined).join(' ');
  if (name === '') return { mistakes: [mistake('guest-no-name', 'name')] };
  if (name.length > longestName) return { mistakes: [mistake('guest-name-long', 'name', { most: longestName })] };
  return { guest: { name, mail, seats: said.amount ?? number ?? 1 } };
}
