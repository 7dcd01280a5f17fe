/**
 * Reads files of cues that are written as patterns (data/reading/cues.yaml tells how): every cue the program knows, and no
 * other. Those that are plain words, each under the place where it must stand, are read by talk-phrases.ts.
 */
import { join } from 'node:path';
import { z } from 'zod';
import { deskCueNames, lessonCueNames, type LessonCue } from '../core/lessons/spoken/sentence.ts';
import { sourceOf } from '../core/reading/cues/cue-set.ts';
import { readYaml } from './yaml-file.ts';

type Lines = { readonly [name: string]: readonly string[] };

/** Throws ContentMistake. */
export function readCues<Name extends string>(
  file: string,
  names: readonly Name[],
): { readonly [cue in Name]: readonly string[] } {
  const { words, cues } = partsOf(readYaml(file, schemaOf(names)).value);
  const inFull = (lines: readonly string[]): readonly string[] => lines.map((line) => spelledOut(line, words));
  return Object.fromEntries(Object.entries(cues).map(([cue, lines]) => [cue, inFull(lines)])) as {
    [cue in Name]: readonly string[];
  };
}

/** How lessons are spoken of, by the students and by the shopkeeper. Throws ContentMistake. */
export function readLessonCues(dataDir: string): { readonly [cue in LessonCue]: readonly string[] } {
  const folder = join(dataDir, 'reading');
  return {
    ...readCues(join(folder, 'lesson-cues.yaml'), lessonCueNames),
    ...readCues(join(folder, 'desk-cues.yaml'), deskCueNames),
  };
}

function partsOf(whole: object): { readonly words: Lines; readonly cues: Lines } {
  const { words = {}, ...cues } = whole as { readonly words?: Lines };
  return { words, cues };
}

const lines = z.array(z.string().trim().min(1)).min(1);

const schemaOf = (names: readonly string[]) =>
  z.strictObject({ words: z.record(z.string(), lines).optional(), ...shapeOf(names) }).superRefine((whole, context) => {
    const { words, cues } = partsOf(whole);
    for (const [cue, told] of Object.entries(cues))
      for (const [n, line] of told.entries()) {
        const message = mistakeIn(line, words);
        if (message !== null) context.addIssue({ code: 'custom', path: [cue, n], message });
      }
  });

const shapeOf = (names: readonly string[]): { readonly [cue: string]: typeof lines } =>
  Object.fromEntries(names.map((name) => [name, lines]));

function mistakeIn(line: string, words: Lines): string | null {
  const unknown = [...line.matchAll(named)].find(([, name = '']) => !(name in words))?.[1];
  if (unknown !== undefined) return `expected a name that "words" of this file knows, not {${unknown}}`;
  return mistakeInPattern(spelledOut(line, words));
}

/** What is wrong with a pattern, or null. */
export function mistakeInPattern(pattern: string): string | null {
  try {
    void RegExp(sourceOf(pattern).source);
    return null;
  } catch (error) {
    return `expected a pattern: ${(error as Error).message}`;
  }
}

/** One pattern, as data/reading/cues.yaml tells at its head. */
export const cuePattern = z
  .string()
  .min(1)
  .superRefine((line, context) => {
    const message = mistakeInPattern(line);
    if (message !== null) context.addIssue({ code: 'custom', message });
  });

const named = /\{([a-z][a-z-]*)\}/g;

/** `{name}` is any of the words of that name. */
function spelledOut(line: string, words: Lines): string {
  return line.replace(named, (_, name: string) => `(${(words[name] ?? []).join('|')})`);
}
