/** The part of a commit that is between a person and the shop; rights are looked up again in the same transaction. */
import type { Change, Commit } from '../contract.ts';
import type { Outbox } from './outbox.ts';
import type { Questions } from './questions.ts';
import type { Shopkeepers } from './shopkeepers.ts';

export interface ShopRows {
  readonly outbox: Outbox;
  readonly questions: Questions;
  readonly shopkeepers: Shopkeepers;
}

export type ShopChange = Extract<
  Change,
  { readonly do: 'ask' | 'tell-keepers' | 'answer' | 'keep-answer' | 'drop-answer' | 'use-code' }
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
    case 'keep-answer':
    case 'drop-answer':
      return rows.shopkeepers.has(person) && applyByKeeper(rows, commit, change);
    default:
      return change satisfies never;
  }
}

function applyByKeeper(
  { questions, outbox }: ShopRows,
  { person, now }: Commit,
  change: Extract<ShopChange, { readonly do: 'answer' | 'keep-answer' | 'drop-answer' }>,
): boolean {
  if (change.do === 'keep-answer') return questions.keep(change.id, change.question, now);
  if (change.do === 'drop-answer') return questions.drop(change.id);
  const asker = questions.answer(change.id, { text: change.text, by: person, now });
  if (!asker) return false;
  outbox.add({
    person: asker.person,
    address: asker,
    saying: change.saying,
    due: now,
    priority: 'reply',
    lasting: true,
  });
  return true;
}
