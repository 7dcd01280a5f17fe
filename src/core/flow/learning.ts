/** How facts change: what is told replaces what was known, and takes with it what hung on that. */
import type { Listening } from './book.ts';
import { isKnown, isSame } from './evaluate.ts';
import type { Facts } from './flow.ts';

/** Null forgets a fact. */
export function withFacts(facts: Facts, more: Facts): Facts {
  return Object.fromEntries(Object.entries({ ...facts, ...more }).filter(([, value]) => isKnown(value)));
}

/** A fact that changes clears those that hung on it, unless they were told in the same breath. */
export function learned(facts: Facts, told: Facts, listens: Listening['facts']): Facts {
  const changed = Object.keys(told).filter((name) => !isSame(told[name] ?? null, facts[name] ?? null));
  const fallen = changed.flatMap((name) => listens[name]?.clears ?? []);
  return withFacts(facts, { ...Object.fromEntries(fallen.map((name) => [name, null])), ...told });
}

/** What a message holds of the facts a flow listens for. */
export function toldOf(heard: Facts, listens: Listening['facts']): Facts {
  return Object.fromEntries(Object.entries(heard).filter(([name, value]) => name in listens && isKnown(value)));
}
