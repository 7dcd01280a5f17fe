/** The real flows and words, and what must hold after every step of a talk. */
import type { Phrase } from '../../src/core/flow/flow.ts';
import type { Stepped } from '../../src/core/flow/step.ts';
import { languages } from '../../src/core/units.ts';
import { content } from '../the-content.ts';

const { book, words } = content;
export { book };

/** What must hold after every step. Told by throwing: an assertion each, a million times over, took half of the walk. */
export function holdsFor(stepped: Stepped): void {
  const { flow, place } = stepped.state;
  const broken = brokenIn(stepped);
  if (broken !== null) throw new Error(`${flow}/${place}: ${broken}`);
}

function brokenIn({ state, effects }: Stepped): string | null {
  if (!survivesJson(state)) return 'its state is no plain value';
  if (state.trail.length > 20) return `a trail of ${state.trail.length}`;
  if (state.parked.length > 3) return `${state.parked.length} flows parked`;
  const place = book.flows[state.flow]?.places[state.place];
  if (place === undefined) return 'there is no such place';
  const sayings = effects.flatMap((e) => (e.do === 'say' ? [e.saying] : []));
  if (sayings.some(({ phrases }) => phrases.length === 0)) return 'a saying without phrases';
  const phrases = sayings.flatMap((saying) => [...saying.phrases, ...saying.choices.map(({ label }) => label)]);
  const unsayable = phrases.map(unsaid).find((wrong) => wrong !== null);
  if (unsayable !== undefined) return unsayable;
  const offers = (sayings.at(-1)?.choices.length ?? 0) > 0 || place.asks !== null || place.hears.length > 0;
  return offers ? null : 'offers no way on';
}

/** What comes back from JSON as it went; what is undefined is as good as left out. */
function survivesJson(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object') return typeof value === 'string' || typeof value === 'boolean';
  if (value === null) return true;
  if (Array.isArray(value)) return value.every(survivesJson);
  const isPlain = Object.getPrototypeOf(value) === Object.prototype;
  return isPlain && Object.values(value).every((one) => one === undefined || survivesJson(one));
}

/** The same phrase is worded the same however often it comes. */
const worded = new Set<string>();

/** How a phrase reads in a language that has no good words for it. */
function unsaid(phrase: Phrase): string | null {
  const told = withWords(phrase);
  const key = JSON.stringify(told);
  if (worded.has(key)) return null;
  worded.add(key);
  // A standing answer is the shop's own prose.
  const isOurs = phrase.key !== 'standing-answer';
  for (const language of languages) {
    const text = words.say(language, { ...told, values: { lateS: 0, late: 'no', ...told.values } });
    if (text.trim() === '' || /[{}]|undefined|NaN|Infinity|\[object/.test(text) || (isOurs && /\bnone\b/.test(text)))
      return `${phrase.key} in ${language} reads "${text}"`;
  }
  return null;
}

/** The store puts the words in. */
const withWords = (phrase: Phrase): Phrase =>
  JSON.parse(JSON.stringify(phrase), (_, value: unknown) =>
    typeof value === 'object' && value !== null && 'quoteOf' in value ? 'their words' : value,
  ) as Phrase;
