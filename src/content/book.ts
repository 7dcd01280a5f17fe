/** Makes the book of flows from its files: reads them all and checks them against the functions and sentences there are. */
import { join, relative } from 'node:path';
import type { Calls, Flow, FlowBook } from '../core/flow/book.ts';
import { checkFlow, type CheckAgainst } from '../core/flow/check.ts';
import { rememberedIn } from '../core/flow/outline.ts';
import type { FlowProblem } from '../core/flow/parse.ts';
import { callNames } from '../core/functions.ts';
import { heardNames, houseNames, rememberedByNoFlow } from '../core/functions/names.ts';
import { languages, type Language } from '../core/units.ts';
import type { Words } from '../core/words/words.ts';
import { readFlowFiles, type FlowFile } from './flow-files.ts';
import { wrongIds, type Ids } from './flow-ids.ts';
import { noteTogether, rightTogether } from './kept.ts';
import type { WordFiles } from './words.ts';

const front = 'front';

export interface ReadFlows {
  readonly flows: FlowBook['flows'];
  /** Every problem of every flow, one a line. */
  readonly problems: readonly string[];
}

/** Reads every flow and checks it against the functions, the sentences and the ids there are. */
export function readFlows(flowsDir: string, words: WordFiles, ids: Ids = {}): ReadFlows {
  const { files, problems, unread } = readFlowFiles(flowsDir);
  const flows: { readonly [name: string]: Flow } = Object.fromEntries(files.map(({ flow }) => [flow.name, flow]));
  const entrance = relative(process.cwd(), join(flowsDir, 'front.yaml'));
  const missing = flows[front] || unread.has(front) ? [] : [`${entrance}:1:1 expected the flow "front"`];
  const texts = [JSON.stringify(ids), ...[...files, ...Object.values(words.sources)].map(({ text }) => text)];
  if (rightTogether(texts)) return { flows, problems };
  const keys = new Set(words.keys);
  const against: CheckAgainst = {
    flows,
    unread,
    front,
    calls: callNames,
    heard: heardNames,
    house: new Set(houseNames),
    memory: new Set([...rememberedByNoFlow, ...Object.values(flows).flatMap(rememberedIn)]),
    hasSentence: (key) => keys.has(key),
    variables: (key) => words.variables(key),
  };
  const found = [...problems, ...missing, ...files.flatMap((file) => problemsOf(file, against, ids))];
  if (found.length === 0) noteTogether(texts);
  return { flows, problems: found };
}

function problemsOf(file: FlowFile, against: CheckAgainst, ids: Ids): readonly string[] {
  const told = ({ path, expected }: FlowProblem): string => `${file.at(path)} ${path.join('.')}: expected ${expected}`;
  return [...file.problems, ...checkFlow(file.flow, against), ...wrongIds(file.flow, ids)].map(told);
}

export const makeBook = (flows: FlowBook['flows'], calls: Calls, words: Words): FlowBook => ({
  flows,
  front,
  calls,
  words: flowWords(words),
});

/** The engine knows languages only as names. */
const flowWords = (words: Words): FlowBook['words'] => ({
  languages,
  say: (language, phrase) => words.say(language as Language, phrase),
  typed: (language, key) => words.typed(language as Language, key),
  variables: (key) => words.variables(key),
});
