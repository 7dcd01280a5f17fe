/**
 * Which standing answer a turn of phrase asks for by itself, whatever tea or vessel is named beside it and however the rest
 * weighs: `surely` of an answer. It weighs nothing, and finds nothing by likeness.
 */
import type { StandingAnswer } from '../answers.ts';
import { makeCueSet } from '../cues/cue-set.ts';
import type { Sieve } from '../cues/sieve.ts';

export type SureAnswer = Pick<StandingAnswer, 'id' | 'kind' | 'ofTaste'>;

/** Takes cueText of a text. Of two that fit, the one on safety is meant. */
export function makeSureFinder(answers: readonly StandingAnswer[], sieve: Sieve): (words: string) => SureAnswer | null {
  const sure = answers.filter(({ surely }) => surely.length > 0);
  const ofSafetyFirst = sure.toSorted((a, b) => Number(b.kind === 'safety') - Number(a.kind === 'safety'));
  const cues = makeCueSet<string>(Object.fromEntries(sure.map(({ id, surely }) => [id, surely])), sieve);
  return (words) => ofSafetyFirst.find(({ id }) => cues.has(id, words)) ?? null;
}
