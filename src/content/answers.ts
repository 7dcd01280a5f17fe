/** Reads the standing answers: one YAML file an answer under data/answers, and the shop's own under its answers folder. */
import { existsSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { z } from 'zod';
import type { StandingAnswer } from '../core/reading/answers.ts';
import { dangers } from '../core/reading/cues/cue-names.ts';
import { mistakeInPattern } from './cue-file.ts';
import { inEachLanguage } from './in-each-language.ts';
import { ContentMistake, readYaml } from './yaml-file.ts';

const line = z.string().trim().min(1);
const questions = z.array(line).min(1);

/** Written as data/reading/cues.yaml tells. */
const pattern = line.superRefine((text, context) => {
  const message = mistakeInPattern(text);
  if (message !== null) context.addIssue({ code: 'custom', message });
});

const answerSchema = z.strictObject({
  kind: z.enum(['care', 'safety', 'shop']),
  words: z.array(line).default([]),
  surely: z.array(pattern).default([]),
  'gives-way': z.boolean().default(false),
  explains: z.boolean().default(false),
  'of-brewing': z.boolean().default(false),
  'beside-a-brew': z.boolean().default(false),
  'of-taste': z.boolean().default(false),
  'of-care': z.boolean().default(false),
  danger: z.enum(dangers).nullable().default(null),
  sources: z.array(line).min(1, 'expected where this comes from, or "common practice, no source"'),
  questions: inEachLanguage(questions),
  text: inEachLanguage(line),
});

/** Every answer of data/answers, then the shop's own (`<shopDir>/answers`); of one id the shop's counts. Throws ContentMistake. */
export function readAnswers(dataDir: string, shopDir = join(dataDir, 'shop')): readonly StandingAnswer[] {
  const folders = [join(dataDir, 'answers'), join(shopDir, 'answers')];
  const mistakes: string[] = [];
  const answers = new Map<string, StandingAnswer>();
  for (const file of folders.flatMap(filesIn)) {
    try {
      const id = basename(file, '.yaml');
      const read = readYaml(file, answerSchema);
      const {
        'gives-way': givesWay,
        'of-brewing': ofBrewing,
        'beside-a-brew': besideBrew,
        'of-taste': ofTaste,
        'of-care': ofCare,
        ...answer
      } = read.value;
      const other = answer.danger && [...answers.values()].find((one) => one.danger === answer.danger && one.id !== id);
      if (other)
        throw new ContentMistake(`${read.at(['danger'])} danger: "${answer.danger}" is answered by ${other.id}`);
      answers.set(id, { id, givesWay, ofBrewing, besideBrew, ofTaste, ofCare, ...answer });
    } catch (error) {
      if (!(error instanceof ContentMistake)) throw error;
      mistakes.push(error.message);
    }
  }
  if (mistakes.length > 0) throw new ContentMistake(mistakes.join('\n'));
  return [...answers.values()];
}

function filesIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .toSorted()
    .map((name) => join(folder, name));
}
