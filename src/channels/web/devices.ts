/**
 * Which devices open which sheet: the first one by its number alone, any other since it was let in, and none that put its
 * sheet away. What was written down of a cookie's number by anyone opens nothing from then on (ASVS 5.0.0 7.4.1).
 */
import { anotherDevice, readSession, type Session } from './session.ts';

/** Names that are kept across restarts; each is a digest, and none is a person's. */
export interface Marks {
  add(name: string): Promise<void>;
  has(name: string): Promise<boolean>;
}

export interface Devices {
  /** Null when the cookies name no sheet, or one that this device may not open. */
  of(cookies: string | undefined): Promise<Session | null>;
  /** One more device of this sheet. */
  letIn(chat: string): Promise<Session>;
  /** This device's number is worth nothing any more; those of the sheet's other devices go on. */
  putAway(session: Session): Promise<void>;
}

export function makeDevices(marks: Marks, secure: boolean): Devices {
  return {
    async of(cookies) {
      const session = readSession(cookies, secure);
      if (session === null || (await marks.has(away(session)))) return null;
      return session.isFirst || (await marks.has(letIn(session))) ? session : null;
    },
    async letIn(chat) {
      const session = anotherDevice(chat);
      await marks.add(letIn(session));
      return session;
    },
    putAway: (session) => marks.add(away(session)),
  };
}

const away = ({ device }: Session): string => `away ${device}`;
const letIn = ({ device }: Session): string => `device ${device}`;
