/** How facts change: what is told replaces what was known, and takes with it what hung on that. */
import type { Listening } from './book.ts';
import { isKnown, isSame } from './evaluate.ts';
import type { Facts, Json } from './flow.ts';

/** Null forgets a fact, so that facts hold none. */
export function withFacts(facts: Facts, more: Facts): Facts {
  const all = { ...facts, ...more };
  if (Object.values(more).every(isKnown)) return all;
  return Object.fromEntries(Object.entries(all).filter(([, value]) => isKnown(value)));
}

/**
 * A fact that changes clears those that hung on it, unless they were told in the same breath. The first answer to what a
 * place asks clears only its rivals, those that would clear it: a size told before the vessel is that vessel's.
 */
export function learned(
  facts: Facts,
  told: Facts,
  { listens, asked }: { readonly listens: Listening['facts']; readonly asked: string | null },
): Facts {
  const fallen: string[] = [];
  // What is told with the answer is as new as the answer: a tea's family.
  const answers = asked !== null && isKnown(told[asked] ?? null) && !isKnown(facts[asked] ?? null);
  for (const name of Object.keys(told)) {
    const known = facts[name] ?? null;
    if (isSame(told[name] ?? null, known)) continue;
    const clears = listens[name]?.clears ?? [];
    const isFirst = answers && !isKnown(known);
    fallen.push(...(isFirst ? clears.filter((other) => listens[other]?.clears.includes(name)) : clears));
  }
  if (fallen.length === 0) return withFacts(facts, told);
  return withFacts(facts, { ...Object.fromEntries(fallen.map((name) => [name, null])), ...told });
}

/** What a message holds of the facts a flow listens for. */
export function toldOf(heard: Facts, listens: Listening['facts']): Facts {
  const told: { [name: string]: Json } = {};
  for (const name of Object.keys(heard)) {
    if (Object.hasOwn(listens, name) && isKnown(heard[name])) told[name] = heard[name] ?? null;
  }
  return told;
}
