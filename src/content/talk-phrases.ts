/** Reads data/reading/talk: cues that are plain words, each under the place where it must stand; patterns are read by cue-file.ts. */
import { join } from 'node:path';
import { z } from 'zod';
import { cuePlaces, phraseSource, type TalkPhrases } from '../core/talk/talk-cues.ts';
import { talkCueFiles, type TalkCueFile } from '../core/talk/talk-cue-names.ts';
import { readYaml } from './yaml-file.ts';

/** What would make a pattern of a phrase. */
const noise = /[[\]\\^$+.]|\(\?|\{(?!n\})/;

const phrase = z
  .string()
  .trim()
  .min(1)
  .superRefine((text, context) => {
    const sign = noise.exec(text)?.[0];
    if (sign !== undefined) context.addIssue({ code: 'custom', message: `expected plain words, not "${sign}"` });
    else if (!isWhole(text))
      context.addIssue({ code: 'custom', message: 'expected a ) for every (, and a word before ?' });
  });

function isWhole(text: string): boolean {
  try {
    void RegExp(phraseSource(text).source);
    return true;
  } catch {
    return false;
  }
}

const places = Object.fromEntries(cuePlaces.map((place) => [place, z.array(phrase).min(1).optional()]));
const cueSchema = z.strictObject(places).refine((cue) => Object.keys(cue).some((place) => place !== 'unless'), {
  message: 'expected one of anywhere, opening, ending, alone, mainly, only',
});

/** Throws ContentMistake. */
export function readTalkPhrases(dataDir: string): TalkPhrases {
  const files = Object.keys(talkCueFiles) as TalkCueFile[];
  const read = files.map((file) => {
    const schema = z.record(z.enum(talkCueFiles[file]), cueSchema);
    return readYaml(join(dataDir, 'reading', 'talk', `${file}.yaml`), schema).value;
  });
  return Object.assign({}, ...read) as TalkPhrases;
}
