/** The part of a commit that is between a person and the shop; rights are looked up again in the same transaction. */
import type { Saying } from '../../core/flow/flow.ts';
import type { Instant } from '../../core/units.ts';
import type { Change, Commit } from '../contract.ts';
import { notReached, type Outbox } from './outbox.ts';
import type { Asker, Questions } from './questions.ts';
import type { Shopkeepers } from './shopkeepers.ts';
import type { Tasks } from './tasks.ts';

export interface ShopRows {
  readonly outbox: Outbox;
  readonly questions: Questions;
  readonly shopkeepers: Shopkeepers;
  readonly tasks: Tasks;
}

export type ShopChange = Extract<
  Change,
  { readonly do: 'ask' | 'tell-keepers' | 'answer' | 'correct-answer' | 'keep-answer' | 'drop-answer' | 'use-code' }
>;

/** False when the ground has moved: no shopkeeper any more, answered by another, another code tried. */
export function applyShopChange(rows: ShopRows, commit: Commit, change: ShopChange): boolean {
  const { person, address, now } = commit;
  switch (change.do) {
    case 'ask':
      rows.questions.add({ ...change, ...address, person, now });
      return true;
    case 'tell-keepers':
      for (const { person: keeper, ...place } of rows.shopkeepers.met()) {
        rows.outbox.add({
          person: keeper,
          address: place,
          saying: change.saying,
          due: now,
          priority: 'reply',
          lasting: true,
        });
      }
      return true;
    case 'use-code':
      return rows.shopkeepers.useCode(person, address, { ...change, now });
    case 'answer':
    case 'correct-answer':
    case 'keep-answer':
    case 'drop-answer':
      return rows.shopkeepers.has(person) && applyByKeeper(rows, commit, change);
    default:
      return change satisfies never;
  }
}

type ByKeeper = Extract<ShopChange, { readonly do: 'answer' | 'correct-answer' | 'keep-answer' | 'drop-answer' }>;

function applyByKeeper(rows: ShopRows, { person: by, now }: Commit, change: ByKeeper): boolean {
  const { questions } = rows;
  switch (change.do) {
    case 'keep-answer':
      return questions.keep(change.id, change.question, now);
    case 'drop-answer':
      return questions.drop(change.id);
    case 'answer':
      return tellAsker(rows, questions.answer(change.id, { text: change.text, by, now }), change.saying, now);
    case 'correct-answer': {
      const { id, before, text, saying } = change;
      return tellAsker(rows, questions.correct(id, { before, text, by, now }), saying, now);
    }
    default:
      return change satisfies never;
  }
}

/** It waits for whoever has turned the house away; the shop hears that it does. */
function tellAsker({ outbox, tasks }: ShopRows, asker: Asker | null, saying: Saying, now: Instant): boolean {
  if (!asker) return false;
  const { person, reachable, ...address } = asker;
  const about = saying.subject ? { ...saying.subject } : null;
  if (!reachable) tasks.add({ person, task: 'undelivered', facts: { why: notReached, about }, now });
  outbox.add({ person, address, saying, due: now, priority: 'reply', lasting: true });
  return true;
}
