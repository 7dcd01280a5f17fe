/** What functions take from flows and give back: plain values of every kind, phrases, and refusals. */
import type { Outcome } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import type { Mistake } from '../units.ts';

export const textOf = (value: Json | undefined): string => (typeof value === 'string' ? value : '');
export const numberOf = (value: Json | undefined): number | null => (typeof value === 'number' ? value : null);
export const listOf = (value: Json | undefined): readonly Facts[] =>
  Array.isArray(value) ? (value as readonly Facts[]) : [];
export const phrase = (key: string, values: Facts = {}): { readonly key: string; readonly values: Facts } => ({
  key,
  values,
});
/** What the core gives is plain data, though its types don't say so. */
export const asFacts = (value: object): Facts => value as Facts;

/** The model calls the water waterC; in flow files it is tempC. */
export const refused = ({ code, field, values }: Mistake): Outcome => ({
  wrong: code,
  field: field === 'waterC' ? 'tempC' : field,
  values,
});

/** Of several mistakes the first is told. */
export function refusedBy([first]: readonly Mistake[]): Outcome {
  if (!first) throw new Error('the core refuses with a reason');
  return refused(first);
}
