/** Makes the book of flows from its files: reads them all, checks them against functions and words, and tells every mistake. */
import { join, relative } from 'node:path';
import type { Calls, Flow, FlowBook } from '../core/flow/book.ts';
import { checkFlow } from '../core/flow/check.ts';
import type { FlowProblem } from '../core/flow/parse.ts';
import { heardNames } from '../core/functions.ts';
import { languages, type Language } from '../core/units.ts';
import type { Words } from '../core/words/words.ts';
import { readFlowFiles, type FlowFile } from './flow-files.ts';
import { ContentMistake } from './yaml-file.ts';

const front = 'front';

export interface FlowSurroundings {
  readonly calls: Calls;
  readonly words: Words;
}

/** Throws ContentMistake with every problem of every flow, one a line. */
export function readAllFlows(flowsDir: string, { calls, words }: FlowSurroundings): FlowBook {
  const { files, problems } = readFlowFiles(flowsDir);
  const flows: { readonly [name: string]: Flow } = Object.fromEntries(files.map(({ flow }) => [flow.name, flow]));
  const found = files.flatMap((file) => problemsOf(file, { flows, calls, words }));
  const missing = flows[front]
    ? []
    : [`${relative(process.cwd(), join(flowsDir, 'front.yaml'))}:1:1 expected the flow "front"`];
  const all = [...problems, ...missing, ...found];
  if (all.length > 0) throw new ContentMistake(all.join('\n'));
  return { flows, front, calls, words: flowWords(words) };
}

function problemsOf(
  file: FlowFile,
  using: FlowSurroundings & { readonly flows: FlowBook['flows'] },
): readonly string[] {
  const checked = checkFlow(file.flow, {
    flows: using.flows,
    front,
    calls: new Set(Object.keys(using.calls)),
    heard: heardNames,
    hasSentence: (key) => using.words.has(key),
    variables: (key) => using.words.variables(key),
  });
  const told = ({ path, expected }: FlowProblem): string => `${file.at(path)} ${path.join('.')}: expected ${expected}`;
  return [...file.problems, ...checked].map(told);
}

/** The engine knows languages only as names. */
const flowWords = (words: Words): FlowBook['words'] => ({
  languages,
  say: (language, phrase) => words.say(language as Language, phrase),
  typed: (language, key) => words.typed(language as Language, key),
  variables: (key) => words.variables(key),
});
