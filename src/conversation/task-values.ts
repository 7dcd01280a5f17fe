/** Reads the values a flow hands to the shop. Throws when a flow hands what its own checks should have ruled out. */
import type { Facts } from '../core/flow/flow.ts';

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
