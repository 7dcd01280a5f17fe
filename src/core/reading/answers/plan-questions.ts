/** What is asked of a plan that stands, by the cues "plan-…" of data/reading/cues.yaml. It answers nothing. */
import type { Cues } from '../cues/cues.ts';

/** Of two that fit, the first is meant. */
export const planQuestions = [
  'rinse-water',
  'rinse',
  'once',
  'in-all',
  'dry',
  'boil',
  'for-whole',
  'ounces',
  'ending',
  'half-full',
  'warm',
  'fill',
  'too-long',
  'stays-warm',
  'follows',
  'strength',
  'about',
  'begin',
] as const;
export type PlanQuestion = (typeof planQuestions)[number];

export const cueOfQuestion = (question: PlanQuestion): `plan-${PlanQuestion}` => `plan-${question}`;

export const isPlanQuestion = (asks: string | null): asks is PlanQuestion =>
  planQuestions.some((question) => question === asks);

/** Longer texts say more than that. */
const longestQuestion = 72;

/** "Would it be better to steep longer?" has forgotten nothing in the pot. */
const asksIfBetter = /\b(?:better|nicer)\b|(?:更|比较|会)好|好(?:喝|饮)?(?:一?点|些|啲)/;

/** 半杯就好 wishes for it. */
const wishesHalf = /半[壶杯碗](?:水|茶)?(?:就好|就够|就行|就得|够了|够喇|好了)[了啦吧喇]?[。!！ ]*$/;

/** Takes cueText of a text. */
export function readPlanQuestion(words: string, cues: Cues): PlanQuestion | null {
  if (words.length > longestQuestion) return null;
  const isElse = (question: PlanQuestion): boolean =>
    (question === 'too-long' && asksIfBetter.test(words)) || (question === 'half-full' && wishesHalf.test(words));
  const mayBe = planQuestions.filter((question) => !isElse(question));
  return mayBe.find((question) => cues.has(cueOfQuestion(question), words)) ?? null;
}
