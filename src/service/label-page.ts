/** What a label, or the link of a lesson, shows before a word is said. */
import type { Content } from '../content.ts';
import { atTheShop } from '../content/shop-data.ts';
import type { Json } from '../core/flow/flow.ts';
import { step } from '../core/flow/step.ts';
import { listed, type Roster } from '../core/lessons/roster.ts';
import { lapseOffers } from '../core/lessons/seats.ts';
import type { Instant, Language } from '../core/units.ts';
import { render } from '../delivery/render.ts';
import type { Outgoing } from '../messages.ts';
import type { Owed } from '../store/contract.ts';

interface Label {
  /** "tea-tieguanyin", "lesson-12". */
  readonly payload: string;
  readonly language: Language;
  readonly now: Instant;
  /** Of the lessons to come. */
  readonly rosters: readonly Roster[];
}

/**
 * The plan for the shop's usual vessel, or what a lesson is: asked of the conversation itself as a stranger would, and
 * kept nowhere. Null for a tea unknown, and for a lesson that is not to come.
 */
export function labelPage(content: Content, { payload, language, now, rosters }: Label): Outgoing | null {
  const lessons = rosters
    .filter(({ lesson }) => lesson.status !== 'cancelled' && lesson.startsAt > now)
    .map((roster) => listed(lapseOffers(roster, now).roster));
  const known = [...content.teas.map(({ id }) => `tea-${id}`), ...lessons.map(({ id }) => `lesson-${id}`)];
  if (!known.includes(payload)) return null;
  const event = { kind: 'opened', payload } as const;
  const house = { lessons: lessons as unknown as Json, bookings: [] };
  const memory = atTheShop(content.shop);
  const { effects } = step(content.book, null, event, { nowMs: now, language, memory, house });
  const sayings = effects.flatMap((effect) => (effect.do === 'say' && !effect.saying.later ? [effect.saying] : []));
  const show = sayings.find((saying) => saying.show)?.show;
  const owed: Owed = {
    id: `label-${payload}`,
    person: 0,
    address: { channel: 'web', chat: '' },
    language,
    saying: { phrases: sayings.flatMap(({ phrases }) => phrases), choices: [], ...(show ? { show } : {}) },
    priority: 'reply',
    due: now,
    claimedAt: now,
    attempts: 0,
    replaces: null,
  };
  return render((as, phrase) => content.words.say(as, phrase), owed);
}
