/** A word on how the cup tasted, as a change of the next one. */
import { usualHotC } from '../../brewing/leaf-profile.ts';
import { adjust, usualTaste, type Taste, type TasteChange } from '../../brewing/taste.ts';
import type { Around, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { complaintOf, leafFor, tastesOf } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { tasteParts } from '../own.ts';
import { asFacts, numberOf, phrase, textOf } from '../values.ts';

/** The cause, the change in numbers, and the tastes to remember if it is wished. */
export function tasteAdjusted(content: CoreContent, given: Facts, { memory }: Around): Outcome {
  const leaf = leafFor(content, given);
  const said = textOf(given['taste']);
  const plan = given['plan'] as Facts | null;
  const tastes = tastesOf(memory);
  const before = tastes[leaf.family] ?? usualTaste;
  const usualC = usualHotC(content.brewing, leaf) + before.waterC;
  const waterC = numberOf(plan?.['waterC']) ?? usualC;
  const boilsAtC = numberOf(plan?.['boilsAtC']) ?? 100;
  const context = { family: leaf.family, waterC, boilsAtC };
  const { taste, change } = adjust(before, complaintOf(said, plan?.['style'] === 'cold'), context);
  return {
    gives: {
      cause: tasteCause(said),
      change: changePhrase(change, { waterC, unit: memory['unit'] ?? null, said }),
      isChanged: change !== null,
      tempC: change?.field === 'waterC' ? waterC + change.to - change.from : null,
      strength: change?.field === 'strength' ? change.to / change.from : null,
      leaf: change?.field === 'leaf' ? change.to / change.from : null,
      mended: change && phrase('taste-mended', { taste: said, parts: tasteParts(alone(change)) }),
      tastes: { ...asFacts(tastes), [leaf.family]: asFacts(taste) },
    },
  };
}

/** Holds for every tea. */
export const tasteCause = (said: string): Facts => phrase(`taste-cause-${said}`);

/** What this change alone makes of a usual taste. */
const alone = ({ field, from, to }: TasteChange): Taste => ({
  ...usualTaste,
  [field]: field === 'waterC' ? to - from : to / from,
});

function changePhrase(
  change: TasteChange | null,
  { waterC, unit, said }: { waterC: number; unit: Json; said: string },
): Json {
  if (!change) return phrase(said === 'right' ? 'taste-stays' : 'taste-far-enough');
  const { field, from, to } = change;
  const direction = to > from ? 'up' : 'down';
  if (field === 'waterC')
    return phrase(`taste-water-${direction}`, { waterC: waterC + to - from, fromC: waterC, unit });
  return phrase(`taste-${field}-${direction}`, { share: Math.abs(to - from) / from });
}
