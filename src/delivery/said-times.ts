/** Finds where sentences say an instant, by saying once more the phrases among their values that do. */
import type { Instant, Json } from '../core/units.ts';
import type { Phrase, SaidTime } from '../messages.ts';

interface Moment {
  readonly at: Instant;
  readonly shows: SaidTime['shows'];
  readonly text: string;
}

/** In the order of the paragraphs. Words that could stand for two instants are left as they are. */
export function saidTimes(
  phrases: readonly Phrase[],
  paragraphs: readonly string[],
  tell: (phrase: Phrase) => string,
): readonly SaidTime[] {
  return phrases.flatMap(({ values }, i) => {
    const found = clearOnes(momentsIn(values, tell)).flatMap((moment) => placesOf(moment, paragraphs[i]!, i));
    return found
      .filter((one, k) => !found.slice(0, k).some((longer) => overlap(one, longer)))
      .toSorted((a, b) => a.offset - b.offset);
  });
}

function momentsIn(value: Json, tell: (phrase: Phrase) => string): readonly Moment[] {
  if (typeof value !== 'object' || value === null) return [];
  const within = Object.values(value).flatMap((part) => momentsIn(part, tell));
  if (!isPhrase(value)) return within;
  const { instantMs, shows } = value.values;
  if (typeof instantMs !== 'number') return within;
  return [...within, { at: instantMs, shows: showsOf(shows), text: tell(value) }];
}

function isPhrase(value: object): value is Phrase {
  return 'key' in value && typeof value.key === 'string' && 'values' in value && typeof value.values === 'object';
}

function showsOf(value: Json | undefined): SaidTime['shows'] {
  return value === 'day' || value === 'time' ? value : 'day-and-time';
}

/** Those whose words mean one instant only; the longest first, as a time of day may stand within a whole date. */
function clearOnes(moments: readonly Moment[]): readonly Moment[] {
  const byText = new Map(moments.map((moment) => [moment.text, moment]));
  const clear = [...byText.values()].filter(({ text, at }) =>
    moments.every((one) => one.text !== text || one.at === at),
  );
  return clear.filter(({ text }) => text !== '').toSorted((a, b) => b.text.length - a.text.length);
}

function placesOf({ at, shows, text }: Moment, paragraph: string, index: number): readonly SaidTime[] {
  const places: SaidTime[] = [];
  for (let offset = paragraph.indexOf(text); offset !== -1; offset = paragraph.indexOf(text, offset + text.length)) {
    places.push({ paragraph: index, offset, length: text.length, at, shows });
  }
  return places;
}

function overlap(a: SaidTime, b: SaidTime): boolean {
  return a.offset < b.offset + b.length && b.offset < a.offset + a.length;
}
