/** Settles the kind where no cue tells it: by a standing answer asked for almost word by word, or by likeness to examples. */
import { plainText } from '../teas/plain-text.ts';
import type { AnswerFinder, StandingAnswer } from './answers.ts';
import { cueText } from './cues.ts';
import { kinds, type Kind } from './kind.ts';
import { makeLikeness, type Example } from './likeness.ts';
import type { ReadingWords } from './reading-words.ts';

/** Almost word by word. */
const sureLikeness = 0.7;
/** About e⁺² times likelier than the next kind. Chosen on the tuning half of tests/reading/sentences.txt. */
const sureLead = 2;

/** `clear`: something else told the kind already. */
export function makeKindSettler(
  examples: ReadingWords['examples'],
  answers: readonly StandingAnswer[],
  answerFor: AnswerFinder,
): (kind: Kind, words: string, clear: boolean) => Kind {
  const likeliest = makeLikeness(examplesOf(examples, answers));
  return (kind, words, clear) => {
    if (clear) return kind;
    const found = answerFor(words, null);
    if (found && found.likeness >= sureLikeness) return found.kind;
    const likely = likeliest(words);
    return likely && likely.lead >= (kind === 'brew' ? 2 * sureLead : sureLead) ? likely.kind : kind;
  };
}

function examplesOf(examples: ReadingWords['examples'], answers: readonly StandingAnswer[]): Example<Kind>[] {
  const own = kinds.flatMap((kind) => examples[kind].map((text) => ({ kind, text })));
  const asked = answers.flatMap(({ kind, questions }) =>
    Object.values(questions).flatMap((all) => all.map((text) => ({ kind, text }))),
  );
  return [...own, ...asked].map(({ kind, text }) => ({ kind, text: cueText(plainText(text).plain) }));
}
