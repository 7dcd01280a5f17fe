/** Reads the turns of phrase by which lessons are spoken of, the students' and the shopkeeper's. */
import { join } from 'node:path';
import { deskCueNames, lessonCueNames, type LessonCue } from '../core/lessons/spoken/sentence.ts';
import { readCues } from './cue-file.ts';

/** Throws ContentMistake. */
export function readLessonCues(dataDir: string): { readonly [cue in LessonCue]: readonly string[] } {
  const folder = join(dataDir, 'reading');
  return {
    ...readCues(join(folder, 'lesson-cues.yaml'), lessonCueNames),
    ...readCues(join(folder, 'desk-cues.yaml'), deskCueNames),
  };
}
