/** Hears a sentence by the cues of the data, as lessons need it. What a cue leads to is theirs. */
import { lazily } from '../lazily.ts';
import type { LessonCue, Listen, Sentence } from '../lessons/spoken/sentence.ts';
import { makeCueSet } from '../reading/cues/cue-set.ts';
import { cueText } from '../reading/cues/cues.ts';
import { plainText } from '../teas/plain-text.ts';

/** Longer than any wish; it bounds the cost of a long story. */
const longestHeard = 400;

/** Where people type 加到 10 個, the figure stands as near as in 加到10個. */
const besideFigure = /(?<=\p{Script=Han}) (?=\d)|(?<=\d) (?=\p{Script=Han})/gu;

export function makeListen(cues: { readonly [cue in LessonCue]: readonly string[] }): Listen {
  const cueSet = lazily(() => makeCueSet(cues));
  const listen = (text: string): Sentence => {
    const heard = lazily(() => ({
      words: cueText(plainText(text.slice(0, longestHeard).replace(besideFigure, '')).plain),
    }));
    return {
      text,
      says: (cue) => cueSet().has(cue, heard().words),
      without: (cue) => listen(cueSet().without(cue, heard().words)),
      part: listen,
    };
  };
  return listen;
}
