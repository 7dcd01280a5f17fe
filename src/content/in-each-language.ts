/** The shape of what a file says in every language there is. */
import { z } from 'zod';
import { languages, type Language } from '../core/units.ts';

export function inEachLanguage<One extends z.ZodType>(one: One): z.ZodObject<Record<Language, One>, z.core.$strict> {
  return z.strictObject(Object.fromEntries(languages.map((language) => [language, one])) as Record<Language, One>);
}
