/** What each of the lessons to come costs, where a message asks no more than that. */
import type { Around } from '../../flow/book.ts';
import type { Json } from '../../flow/flow.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import { lessonValues } from '../../lessons/tidings.ts';
import { upcomingIn } from './in-house.ts';
import { phrase } from '../values.ts';

/** Longer than any such question needs; it bounds the reading's time. */
const longest = 120;

/** One line a title; null where no price is asked for, or none is told. */
export function lessonPrices(sentence: Sentence, around: Around): Json {
  if (sentence.text.length > longest || !sentence.says('asks-price')) return null;
  const priced = upcomingIn(around).filter(({ price }) => price.en !== '');
  const titles = [...new Set(priced.map(({ title }) => title.en))];
  const lines = titles.map((one) => priced.find(({ title }) => title.en === one)!).map(lessonValues);
  return lines.length === 0 ? null : lines.map((values) => phrase('lesson-costs', values));
}
