/** Learns what evidence weighs from data/reading/examples.yaml, the questions of data/answers and labelled sentences, and writes data/reading/weights.txt. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { readAnswers } from '../content/answers.ts';
import { readExamples, readReadingWords } from '../content/reading-words.ts';
import { readTeaNames, readTeas } from '../content/tea-data.ts';
import { evidenceIn } from '../core/reading/evidence.ts';
import { kinds, type Kind } from '../core/reading/kind.ts';
import { learn, type Lesson } from '../core/reading/learn.ts';
import { makeObserver } from '../core/reading/observation.ts';
import { makeSubjectFinder } from '../core/reading/subjects.ts';
import { writeWeights } from '../core/reading/weights.ts';
import { makeTeaFinder } from '../core/teas/find.ts';

const root = join(import.meta.dirname, '..', '..');
const nothingAsked = { language: null, asked: null };

interface Example {
  readonly kind: Kind;
  readonly text: string;
}

/** The table of weights as data/reading/weights.txt has it. */
export function learnt(dataDir: string, sentencesFile: string): string {
  const words = readReadingWords(dataDir);
  const names = readTeaNames(dataDir);
  const observe = makeObserver(makeTeaFinder(readTeas(dataDir), names), words, new Set(names.ordinary));
  const subjectsOf = makeSubjectFinder(words.subjects);
  const lessons = allExamples(dataDir, sentencesFile).map(({ kind, text }): Lesson => ({
    kind,
    evidence: evidenceIn(observe(text, nothingAsked), subjectsOf),
  }));
  return writeWeights(learn(lessons));
}

function allExamples(dataDir: string, sentencesFile: string): Example[] {
  const examples = readExamples(dataDir);
  const own = kinds.flatMap((kind) => examples[kind].map((text) => ({ kind, text })));
  // The shop's own answers change without the weights being learnt anew.
  const asked = readAnswers(dataDir, join(dataDir, 'no-shop')).flatMap(({ kind, questions }) =>
    Object.values(questions).flatMap((all) => all.map((text) => ({ kind, text }))),
  );
  return [...own, ...asked, ...labelled(readFileSync(sentencesFile, 'utf8'))];
}

/** Lines "language kind | text | facts" (tests/reading/sentences.txt). */
function labelled(text: string): Example[] {
  return text.split('\n').flatMap((line) => {
    if (line.startsWith('#') || line.trim() === '') return [];
    const [head = '', said = ''] = line.split('|').map((part) => part.trim());
    const kind = kinds.find((one) => one === head.split(' ')[1]?.replace('~', ''));
    return kind ? [{ kind, text: said }] : [];
  });
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const dataDir = join(root, 'data');
  writeFileSync(
    join(dataDir, 'reading', 'weights.txt'),
    learnt(dataDir, join(root, 'tests', 'reading', 'sentences.txt')),
  );
}
