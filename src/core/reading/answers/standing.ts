/** The standing answer to a message of a kind, and the one that may be meant. It reads nothing of a plan. */
import { generalSafety, makeCareFinder, type AnswerFinder, type FoundAnswer, type StandingAnswer } from '../answers.ts';
import { readTaste, type Kind } from '../kinds/kind.ts';
import type { Observation } from '../observation.ts';

/** So alike, what is heard as brewing and tells nothing for a plan is that answer's question. Judgement. */
const sureOfBrewing = 0.6;

/** So alike, a word of warning in it is no warning. Judgement. */
const sureOfCare = 0.75;

export interface FoundStanding {
  readonly answer: string | null;
  /** Where nothing else is understood. */
  readonly near: string | null;
  /** By few of its words, and by none that leads to it: in the midst of brewing something else is meant. */
  readonly isFaint: boolean;
}

/** Less alike, it is found faintly. Judgement: of 24 sentences beside a plan it parts those that were answered rightly from the others. */
const leastBeside = 0.5;

export const noAnswer: FoundStanding = { answer: null, near: null, isFaint: false };
const surely = (answer: string | null): FoundStanding => ({ answer, near: null, isFaint: false });
const maybe = (found: FoundAnswer | null): FoundStanding => ({
  answer: found?.id ?? null,
  near: null,
  isFaint: found !== null && found.likeness < leastBeside,
});

type Asked = Pick<Observation, 'words' | 'cues'>;

export function makeStanding(
  answers: readonly StandingAnswer[],
  answerFor: AnswerFinder,
): (kind: Kind, asked: Asked) => FoundStanding {
  const careFor = makeCareFinder(answers, answerFor);
  return (kind, { words, cues }) => {
    if (kind === 'brew') {
      const found = answerFor(words, 'care');
      if (found === null || found.likeness < sureOfBrewing)
        return {
          answer: null,
          near: (found?.likeness ?? 0) < leastBeside ? null : (found?.id ?? null),
          isFaint: false,
        };
      return surely(found.id);
    }
    if (kind === 'safety') {
      const [warning, care] = [answerFor(words, 'safety'), answerFor(words, 'care')];
      // "I burn my fingers every time": sounds like a mishap, and is word by word what care is asked.
      const isOfCare = care !== null && care.likeness >= sureOfCare && care.likeness > (warning?.likeness ?? 0);
      return surely(isOfCare ? care.id : (warning?.id ?? generalSafety));
    }
    if (kind === 'care') return maybe(careFor(words));
    // "Smells of seaweed, is that normal?": a word on the taste that names none of those we mend.
    if (kind === 'taste' && readTaste(cues, words) === null) return surely(answerFor(words, 'care')?.id ?? null);
    return kind === 'shop' ? surely(answerFor(words, kind)?.id ?? null) : noAnswer;
  };
}
