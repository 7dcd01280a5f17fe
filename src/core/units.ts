/** The vocabulary of quantities, and the languages there are. It imports nothing and computes nothing. */

/** Degrees Celsius, ITS-90. */
export type Celsius = number;
/** Grams. */
export type Grams = number;
/** Millilitres. */
export type Millilitres = number;
/** Seconds of elapsed time. */
export type Seconds = number;
/** Metres above mean sea level. */
export type Metres = number;
/** Pascals. */
export type Pascals = number;
/** Milliseconds since 1970-01-01T00:00:00Z. */
export type Instant = number;

/** The languages every sentence exists in, as BCP 47 tags. */
export const languages = ['en', 'zh-Hant', 'zh-Hans'] as const;
export type Language = (typeof languages)[number];

/** What survives a JSON round trip. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** What a person got wrong: a stable code, the field, and the values its sentence needs. Never thrown. */
export interface Mistake {
  readonly code: string;
  readonly field: string;
  readonly values: { readonly [name: string]: string | number };
}
