/** Short codes that bring a second device to a sheet: each good once, for a few minutes, and known here by its digest only. */
import { createHmac, randomBytes, randomInt } from 'node:crypto';

/** Digits, because a keyboard for Chinese is no place for letters. Eight of them: 26 bits. */
const digits = 8;
/** Judgement: long enough to fetch the other device. */
const goodForMs = 5 * 60_000;
/** More sheets than a shop's guests carry about in five minutes; the oldest code gives way. */
const mostAtOnce = 500;

export interface Pass {
  readonly code: string;
  readonly until: number;
}

export interface Passes {
  /** A new code for this sheet, in the place of any earlier one. */
  offer(chat: string): Pass;
  /** The sheet a code stands for; null when it is wrong, used up or too old. Whatever the answer, it works no second time. */
  redeem(typed: string): string | null;
  /** What was offered for this sheet opens nothing any more. */
  withdraw(chat: string): void;
}

interface Offered {
  readonly chat: string;
  readonly until: number;
}

/** Kept in memory only: after a restart a person asks for another code, and no file ever held one. */
export function makePasses(now: () => number): Passes {
  const key = randomBytes(32);
  const offered = new Map<string, Offered>();
  const digestOf = (code: string): string => createHmac('sha256', key).update(code).digest('base64url');
  const tidy = (): void => {
    for (const [digest, { until }] of offered) if (until <= now()) offered.delete(digest);
    if (offered.size >= mostAtOnce) offered.delete(offered.keys().next().value ?? '');
  };
  const withdraw = (chat: string): void => {
    for (const [digest, { chat: of }] of offered) if (of === chat) offered.delete(digest);
  };
  const freshCode = (): string => {
    const code = String(randomInt(10 ** digits)).padStart(digits, '0');
    return offered.has(digestOf(code)) ? freshCode() : code;
  };

  return {
    offer(chat) {
      withdraw(chat);
      tidy();
      const code = freshCode();
      const until = now() + goodForMs;
      offered.set(digestOf(code), { chat, until });
      return { code: `${code.slice(0, digits / 2)} ${code.slice(digits / 2)}`, until };
    },
    redeem(typed) {
      const code = codeIn(typed);
      if (code === null) return null;
      const digest = digestOf(code);
      const found = offered.get(digest);
      offered.delete(digest);
      return found && found.until > now() ? found.chat : null;
    },
    withdraw,
  };
}

/** As people type: with a gap anywhere, and in the wide digits of a Chinese keyboard. */
function codeIn(typed: string): string | null {
  const code = typed.slice(0, 40).normalize('NFKC').replace(/[\s-]/g, '');
  return new RegExp(`^[0-9]{${digits}}$`).test(code) ? code : null;
}
