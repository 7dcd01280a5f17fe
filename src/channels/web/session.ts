/** Who writes on which sheet: a random number in a cookie. Its hash, never itself, is what the house knows. */
import { createHash, randomBytes } from 'node:crypto';

/** 256 bits, base64url; of a further device two of them, the sheet's name and the device's own number. */
const shape = /^(?:[A-Za-z0-9_-]{43}\.)?[A-Za-z0-9_-]{43}$/;
/** Longer than a tea drinker stays away; the longest browsers keep a cookie is 400 days. */
const keptSeconds = 180 * 24 * 60 * 60;

export interface Session {
  readonly id: string;
  /** Stands for the person in every row and log; the cookie cannot be worked out from it. */
  readonly chat: string;
  /** Stands for this device, as the chat does for the person. */
  readonly device: string;
  /** Whether the sheet was begun on this device: its name is then worked out from the number, else it must have been let in. */
  readonly isFirst: boolean;
}

export const newSession = (): Session => sessionOf(newNumber());

/** The same sheet on one more device, with a number of its own. */
export const anotherDevice = (chat: string): Session => sessionOf(`${chat}.${newNumber()}`);

const newNumber = (): string => randomBytes(32).toString('base64url');
const digest = (text: string): string => createHash('sha256').update(text).digest('base64url');

function sessionOf(id: string): Session {
  const [chat, further] = id.split('.') as [string, string?];
  const isFirst = further === undefined;
  return { id, chat: isFirst ? digest(`sheet ${id}`) : chat, device: digest(`device ${id}`), isFirst };
}

/** The __Host- prefix makes browsers refuse the cookie from any other host, path or plain connection. */
export const sessionCookie = (secure: boolean): string => (secure ? '__Host-sheet' : 'sheet');

/** The session of a Cookie header, or null when there is none of the right shape. */
export function readSession(cookies: string | undefined, secure: boolean): Session | null {
  const id = readCookie(cookies, sessionCookie(secure));
  return id !== null && shape.test(id) ? sessionOf(id) : null;
}

// Lax, not Strict: a label's link opened from a message must find the person's own sheet.
export function writeSession(session: Session, secure: boolean): string {
  const parts = [
    `${sessionCookie(secure)}=${session.id}`,
    'Path=/',
    `Max-Age=${keptSeconds}`,
    'HttpOnly',
    'SameSite=Lax',
  ];
  return [...parts, ...(secure ? ['Secure'] : [])].join('; ');
}

/** The value of one cookie. A name given twice is not trusted. */
export function readCookie(cookies: string | undefined, name: string): string | null {
  const values = (cookies ?? '')
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part.startsWith(`${name}=`))
    .map((part) => part.slice(name.length + 1));
  return values.length === 1 ? (values[0] ?? null) : null;
}
