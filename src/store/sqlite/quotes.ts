/** Puts words that are kept elsewhere into a saying as it is taken out: so that they are kept once, and gone at once. */
import type { Json, Phrase, Saying } from '../../core/flow/flow.ts';
import type { PersonId } from '../contract.ts';
import type { Quote } from '../quote.ts';

export interface QuoteSources {
  quoted(id: Quote['quoteOf'], part: Quote['part']): string | null;
  exportOf(person: PersonId): Json;
}

/** Inside a JSON text a quotation mark is escaped: nobody's words can look like this. */
const marks = ['"quoteOf":', '"exportOf":'];

const isQuoting = (text: string): boolean => marks.some((mark) => text.includes(mark));

/** Of what was just written down: the same, without reading it again where nothing is quoted. */
export function filledAsWritten(
  { saying, text }: { readonly saying: Saying; readonly text: string },
  person: PersonId | null,
  sources: QuoteSources,
): Saying {
  return isQuoting(text) ? filled(text, person, sources) : saying;
}

export function filled(text: string, person: PersonId | null, sources: QuoteSources): Saying {
  const saying = JSON.parse(text) as Saying;
  if (!isQuoting(text)) return saying;
  const told = (value: Json): Json => {
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map(told);
    if ('quoteOf' in value) return quote(value as unknown as Quote, sources);
    if ('exportOf' in value) return person === null ? '' : JSON.stringify(sources.exportOf(person), null, 1);
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, told(inner)]));
  };
  const toldOf = ({ key, values }: Phrase): Phrase => ({ key, values: told(values) as typeof values });
  const phrases = saying.phrases.map(toldOf);
  return saying.subject === undefined
    ? { ...saying, phrases }
    : { ...saying, phrases, subject: toldOf(saying.subject) };
}

const quote = ({ quoteOf, part, gone }: Quote, sources: QuoteSources): Json => sources.quoted(quoteOf, part) ?? gone;
