/** Reads the values a flow hands to the shop, and what the turn itself adds. Throws when a flow hands what its own checks should have ruled out. */
import type { Facts } from '../core/flow/flow.ts';
import type { Instant } from '../core/units.ts';
import type { Turn } from '../store/contract.ts';

export function textOf(values: Facts, name: string): string {
  const value = values[name];
  if (typeof value !== 'string' || value === '') throw new Error(`"${name}" must be a text to be told to the shop`);
  return value;
}

export const optionalText = (values: Facts, name: string): string | null =>
  values[name] === null || values[name] === undefined ? null : textOf(values, name);

export function numberOf(values: Facts, name: string): number {
  const value = values[name];
  if (typeof value !== 'number') throw new Error(`"${name}" must be a number to be told to the shop`);
  return value;
}

export const optionalNumber = (values: Facts, name: string): number | null =>
  values[name] === null || values[name] === undefined ? null : numberOf(values, name);

export function oneOf<Word extends string>(values: Facts, name: string, words: readonly Word[]): Word {
  const found = words.find((word) => word === values[name]);
  if (found === undefined) throw new Error(`"${name}" must be one of ${words.join(', ')} to be told to the shop`);
  return found;
}

/** When the person did it, or the timer fell due. */
export const whenDone = ({ receivedAt, event }: Turn): Instant => receivedAt ?? (event.kind === 'wake' ? event.at : 0);

/** One message makes one booking at most. */
export function bookingId({ event }: Turn): string {
  if (event.kind === 'wake') throw new Error('a booking comes from a person, not from a timer');
  return String(event.seq);
}
