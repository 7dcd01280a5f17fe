/** Who writes on which sheet: a random number in a cookie. Its hash, never itself, is what the house knows. */
import { createHash, randomBytes } from 'node:crypto';

/** 256 bits, base64url. */
const shape = /^[A-Za-z0-9_-]{43}$/;
/** Longer than a tea drinker stays away; the longest browsers keep a cookie is 400 days. */
const keptSeconds = 180 * 24 * 60 * 60;

export interface Session {
  readonly id: string;
  /** Stands for the person in every row and log; the cookie cannot be worked out from it. */
  readonly chat: string;
}

export function newSession(): Session {
  return sessionOf(randomBytes(32).toString('base64url'));
}

function sessionOf(id: string): Session {
  return { id, chat: createHash('sha256').update(`sheet ${id}`).digest('base64url') };
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
