/** The standing answer to a message of a kind, and the one that may be meant. It reads nothing of a plan. */
import { generalSafety, makeCareFinder, type AnswerFinder, type StandingAnswer } from './answers.ts';
import { readTaste, type Kind } from './kind.ts';
import type { Observation } from './observation.ts';

/** So alike, what is heard as brewing and tells nothing for a plan is that answer's question. Judgement. */
const sureOfBrewing = 0.6;

/** So alike, a word of warning in it is no warning. Judgement. */
const sureOfCare = 0.75;

export interface FoundStanding {
  readonly answer: string | null;
  /** Where nothing else is understood. */
  readonly near: string | null;
}

export const noAnswer: FoundStanding = { answer: null, near: null };
const surely = (answer: string | null): FoundStanding => ({ answer, near: null });

type Asked = Pick<Observation, 'words' | 'cues'>;

export function makeStanding(
  answers: readonly StandingAnswer[],
  answerFor: AnswerFinder,
): (kind: Kind, asked: Asked) => FoundStanding {
  const careFor = makeCareFinder(answers, answerFor);
  return (kind, { words, cues }) => {
    if (kind === 'brew') {
      const found = answerFor(words, 'care');
      if (found === null || found.likeness < sureOfBrewing) return { answer: null, near: found?.id ?? null };
      return surely(found.id);
    }
    if (kind === 'safety') {
      const [warning, care] = [answerFor(words, 'safety'), answerFor(words, 'care')];
      // "I burn my fingers every time": sounds like a mishap, and is word by word what care is asked.
      const isOfCare = care !== null && care.likeness >= sureOfCare && care.likeness > (warning?.likeness ?? 0);
      return surely(isOfCare ? care.id : (warning?.id ?? generalSafety));
    }
    if (kind === 'care') return surely(careFor(words)?.id ?? null);
    // "Smells of seaweed, is that normal?": a word on the taste that names none of those we mend.
    if (kind === 'taste' && readTaste(cues, words) === null) return surely(answerFor(words, 'care')?.id ?? null);
    return kind === 'shop' ? surely(answerFor(words, kind)?.id ?? null) : noAnswer;
  };
}
