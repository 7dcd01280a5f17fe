/** What a label shows before a word is said. */
import type { Content } from './content.ts';
import { atTheShop } from './content/shop-data.ts';
import { step } from './core/flow/step.ts';
import type { Instant, Language } from './core/units.ts';
import { render } from './delivery/render.ts';
import type { Outgoing } from './messages.ts';
import type { Owed } from './store/contract.ts';

interface Label {
  readonly teaId: string;
  readonly language: Language;
  readonly now: Instant;
}

/** The plan for the shop's usual vessel: asked of the conversation itself, and kept nowhere. Null for a tea unknown. */
export function labelPage(content: Content, { teaId, language, now }: Label): Outgoing | null {
  if (!content.teas.some(({ id }) => id === teaId)) return null;
  const event = { kind: 'opened', payload: `tea-${teaId}` } as const;
  const { effects } = step(content.book, null, event, { nowMs: now, language, memory: atTheShop(content.shop) });
  const sayings = effects.flatMap((effect) => (effect.do === 'say' && !effect.saying.later ? [effect.saying] : []));
  const show = sayings.find((saying) => saying.show)?.show;
  const owed: Owed = {
    id: `label-${teaId}`,
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
