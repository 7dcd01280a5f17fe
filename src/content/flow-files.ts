/** Reads flows/*.yaml; what a file says wrong is told as file:line:column and what was expected. */
import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { z } from 'zod';
import type { Flow } from '../core/flow/book.ts';
import { parseFlow, type FlowProblem } from '../core/flow/parse.ts';
import type { RawActions, RawFlow } from '../core/flow/raw.ts';
import { ContentMistake, readYaml } from './yaml-file.ts';

const json = z.json();
const values = z.record(z.string(), json);
const names = z.array(z.string());
const textOrTexts = z.union([z.string(), names], 'expected the key of a sentence, or a list of them');

const condition = z.union([z.string(), names.nonempty()], 'expected a condition, or a list of those that must hold');

const actions = {
  when: condition.optional(),
  set: values.optional(),
  call: z.string().optional(),
  with: z
    .union([z.array(z.union([z.string(), values])), values], 'expected names of facts, or values by name')
    .optional(),
  keep: z.string().optional(),
  'if-wrong': z
    .union([z.string(), z.record(z.string(), z.string())], 'expected a place, or places by mistake code')
    .optional(),
  say: textOrTexts.optional(),
  show: values.optional(),
  remember: values.optional(),
  'tell-shop': z.string().optional(),
  withdraw: textOrTexts.optional(),
  wake: z.strictObject({ name: z.string(), at: json }).optional(),
  later: z
    .strictObject({
      name: z.string(),
      at: json,
      say: textOrTexts,
      slot: z.string().optional(),
      offers: z.boolean().optional(),
    })
    .optional(),
  go: z.string().optional(),
};

const line: z.ZodType<RawActions> = z.lazy(() =>
  z.preprocess(asLine, z.strictObject({ ...actions, do: lines.optional() })),
);
const lines = z.array(line);

/** A bare text is a sentence to say. */
const asLine = (found: unknown): unknown => (typeof found === 'string' ? { say: found } : found);

const choice = z.strictObject({
  id: z.string().optional(),
  label: z.string(),
  with: values.optional(),
  when: condition.optional(),
  each: z.string().optional(),
  gives: values.optional(),
  unseen: z.boolean().optional(),
  set: values.optional(),
  say: textOrTexts.optional(),
  remember: values.optional(),
  'tell-shop': z.string().optional(),
  withdraw: textOrTexts.optional(),
  do: lines.optional(),
  go: z.string().optional(),
});

const wakes = z.record(z.string(), lines);

const place = z.strictObject({
  asks: z.string().optional(),
  needs: z.record(z.string(), z.string()).optional(),
  do: lines.optional(),
  repeats: lines.optional(),
  choices: z.array(choice).optional(),
  hears: lines.optional(),
  wakes: wakes.optional(),
  leads: z.string().optional(),
  slot: z.string().optional(),
  once: z.boolean().optional(),
  passing: z.boolean().optional(),
});

const schema: z.ZodType<RawFlow> = z.strictObject({
  flow: z.string(),
  about: z.string(),
  starts: z.string(),
  news: z.string().optional(),
  passing: z.boolean().optional(),
  aside: z.boolean().optional(),
  'under-way': condition.optional(),
  'no-way-back': condition.optional(),
  together: z.record(z.string(), names).optional(),
  conditions: z.record(z.string(), condition).optional(),
  takes: names.optional(),
  listens: z.strictObject({ when: condition.optional(), facts: z.record(z.string(), names.nullable()) }).optional(),
  hears: lines.optional(),
  wakes: wakes.optional(),
  places: z.record(z.string(), place),
  front: z
    .strictObject({
      reads: z.string(),
      opens: z.string(),
      parts: z.string().optional(),
      'hands-on': condition.optional(),
      notices: lines.optional(),
      always: lines,
      otherwise: lines,
      sentences: z.strictObject({
        'stale-tap': z.string(),
        'already-so': z.string(),
        'nothing-before': z.string(),
        'flow-changed': z.string(),
        'one-at-a-time': z.string(),
      }),
    })
    .optional(),
});

export interface FlowFile {
  readonly flow: Flow;
  readonly text: string;
  readonly problems: readonly FlowProblem[];
  /** "flows/brew.yaml:12:7" of a path in the file. */
  at(path: FlowProblem['path']): string;
}

/** One flow file; throws ContentMistake when its shape is wrong. */
export function readFlowFile(file: string): FlowFile {
  const yaml = readYaml(file, schema);
  const hash = createHash('sha256').update(JSON.stringify(yaml.value)).digest('hex').slice(0, 16);
  return { ...parseFlow(yaml.value, hash), text: yaml.text, at: (path) => yaml.at(path) };
}

export interface FlowFiles {
  readonly files: readonly FlowFile[];
  readonly problems: readonly string[];
  /** The names of those of a wrong shape. */
  readonly unread: ReadonlySet<string>;
}

/** Every flow file of a folder. Files of a wrong shape come back as lines to read. */
export function readFlowFiles(flowsDir: string): FlowFiles {
  const files: FlowFile[] = [];
  const problems: string[] = [];
  const unread = new Set<string>();
  for (const name of flowFileNames(flowsDir)) {
    try {
      files.push(readFlowFile(join(flowsDir, name)));
    } catch (error) {
      if (!(error instanceof ContentMistake)) throw error;
      problems.push(error.message);
      unread.add(basename(name, '.yaml'));
    }
  }
  return { files, problems, unread };
}

function flowFileNames(flowsDir: string): readonly string[] {
  try {
    return readdirSync(flowsDir)
      .filter((name) => name.endsWith('.yaml'))
      .toSorted();
  } catch {
    throw new ContentMistake(`${flowsDir}:1:1 expected a folder of flow files, but it cannot be read`);
  }
}
