/** What stands between a person and the shop, gathered for one turn. */
import type { Instant } from '../../core/units.ts';
import type { PersonId } from '../contract.ts';
import type { Desk } from '../desk-contract.ts';
import type { Questions } from './questions.ts';
import type { Shopkeepers } from './shopkeepers.ts';
import type { Tallies } from './tallies.ts';
import type { Tasks } from './tasks.ts';

export interface DeskParts {
  readonly questions: Questions;
  readonly shopkeepers: Shopkeepers;
  readonly tallies: Tallies;
  readonly tasks: Tasks;
}

/** `text` is what the person wrote, if this is about a text. */
export function deskOf(
  { questions, shopkeepers, tallies, tasks }: DeskParts,
  { person, text, now }: { readonly person: PersonId; readonly text: string | null; readonly now: Instant },
): Desk {
  const keeper = shopkeepers.has(person);
  return {
    keeper,
    code: keeper || text === null ? null : shopkeepers.judge(text, now),
    staffed: shopkeepers.met().length > 0,
    asked: questions.waitingOf(person),
    // Other people's words are read for a shopkeeper only.
    waiting: keeper ? questions.waiting() : [],
    waitingCount: keeper ? questions.waitingCount() : 0,
    answered: keeper ? questions.answered() : [],
    standing: questions.standing(),
    tallies: keeper ? tallies.recent(now) : [],
    undelivered: keeper ? tasks.undelivered() : [],
  };
}
