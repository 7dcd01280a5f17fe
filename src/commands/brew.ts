/** `npm run brew`: a plan from flags or JSON, to read or as JSON; or what a brew that was made gave. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { readBrewingData } from '../content/brewing-data.ts';
import { readTeaNames, readTeas } from '../content/tea-data.ts';
import { readWordFiles } from '../content/words.ts';
import { ContentMistake } from '../content/yaml-file.ts';
import { asBrewed } from '../core/brewing/as-brewed.ts';
import { isMistake, planBrew } from '../core/brewing/schedule.ts';
import { makeTeaFinder } from '../core/teas/find.ts';
import type { Tea } from '../core/teas/tea.ts';
import { languages, type Language, type Mistake } from '../core/units.ts';
import { makeWords, type NameOf, type Words } from '../core/words/words.ts';
import { projectRoot } from '../project-root.ts';
import { isStarted, runCommand } from '../start.ts';
import { readAsBrewed, readObject, readRequest, type Shelf } from './brew-request.ts';
import { chartOf, reasonsOf, sheetOf, type PlannedBrew, type Tell } from './brew-sheet.ts';

const options = {
  tea: { type: 'string' },
  family: { type: 'string' },
  vessel: { type: 'string' },
  volume: { type: 'string' },
  leaf: { type: 'string' },
  water: { type: 'string' },
  elevation: { type: 'string' },
  style: { type: 'string' },
  guests: { type: 'string' },
  warmed: { type: 'boolean' },
  'no-warm': { type: 'boolean' },
  strength: { type: 'string' },
  lang: { type: 'string' },
  why: { type: 'boolean' },
  chart: { type: 'string' },
  json: { type: 'boolean' },
  'as-brewed': { type: 'string' },
} as const;

/** Flags that carry a field of the request. */
const fields: { readonly [flag: string]: string } = {
  tea: 'tea',
  family: 'family',
  vessel: 'vessel',
  volume: 'volumeMl',
  leaf: 'leafG',
  water: 'waterC',
  elevation: 'elevationM',
  style: 'style',
  guests: 'guests',
  strength: 'strength',
};
const numeric = new Set(['volumeMl', 'leafG', 'waterC', 'elevationM', 'guests', 'strength']);

interface Command {
  readonly json: boolean;
  readonly language: Language;
  readonly raw: { readonly [field: string]: unknown } | Mistake;
  readonly brewed: string | undefined;
  readonly why: boolean;
  /** Where the chart goes. */
  readonly chart: string | undefined;
}

interface Answer {
  readonly out: string;
  readonly error: string;
  readonly code: number;
}

/** Runs one command line. Nothing is printed here; the chart's file is written. */
export function brew(args: readonly string[]): Answer {
  const command = readCommand(args);
  const { shelf, words } = (house ??= loadHouse());
  if (isMistake(command)) {
    const json = args.some((arg) => arg.startsWith('--json') || arg.startsWith('--as-brewed'));
    return told(words, { json, language: 'en' }, command);
  }
  if (command.brewed !== undefined) return asJson(words, command, brewedBack(shelf, command.brewed));
  const brewed = planned(shelf, command);
  if (isMistake(brewed)) return told(words, command, brewed);
  const tell: Tell = (key, values) => words.say(command.language, { key, values });
  if (command.chart !== undefined && !written(command.chart, chartOf(brewed, tell))) {
    return told(words, command, { code: 'chart-unwritable', field: 'chart', values: { file: command.chart } });
  }
  if (command.json) return asJson(words, command, brewed.plan);
  const why = command.why ? `\n\n${reasonsOf(brewed, tell)}` : '';
  return { out: `${sheetOf(brewed, tell)}${why}`, error: '', code: 0 };
}

function written(file: string, text: string): boolean {
  try {
    writeFileSync(file, text);
    return true;
  } catch {
    return false;
  }
}

function asJson(words: Words, command: Command, result: object): Answer {
  return isMistake(result) ? told(words, command, result) : { out: JSON.stringify(result), error: '', code: 0 };
}

function planned(shelf: Shelf, command: Command): PlannedBrew | Mistake {
  if (isMistake(command.raw)) return command.raw;
  const asked = readRequest(shelf, command.raw);
  if (isMistake(asked)) return asked;
  const plan = planBrew(shelf.data, asked.leaf, asked.request);
  return isMistake(plan) ? plan : { data: shelf.data, leaf: asked.leaf, request: asked.request, plan };
}

function brewedBack(shelf: Shelf, text: string): object {
  const raw = readObject(text, 'as-brewed');
  if (isMistake(raw)) return raw;
  const asked = readAsBrewed(shelf, raw);
  return isMistake(asked) ? asked : asBrewed(shelf.data, asked.leaf, asked.request);
}

function told(words: Words, { language, json }: Pick<Command, 'language' | 'json'>, mistake: Mistake): Answer {
  const message = words.say(language, { key: `mistake-${mistake.code}`, values: mistake.values });
  const { code, field } = mistake;
  const error = json ? JSON.stringify({ error: { code, field, message } }) : `${field}: ${message}`;
  return { out: '', error, code: 2 };
}

function readCommand(args: readonly string[]): Command | Mistake {
  const { flags, body } = takeJson(joinNegative(args));
  const parsed = parse(flags);
  if ('code' in parsed) return parsed;
  const { values } = parsed;
  const language = values.lang ?? 'en';
  if (!isLanguage(language))
    return { code: 'language-unknown', field: 'lang', values: { allowed: languages.join(', ') } };
  return {
    json: values.json === true || values['as-brewed'] !== undefined,
    language,
    raw: body === undefined ? fromFlags(values) : readObject(body, 'json'),
    brewed: values['as-brewed'],
    why: values.why === true,
    chart: values.chart,
  };
}

function parse(args: readonly string[]): { values: Values } | Mistake {
  try {
    return parseArgs({ args: [...args], options, strict: true });
  } catch {
    const known = new Set(Object.keys(options).map((name) => `--${name}`));
    const flags = args.filter((arg) => arg.startsWith('-'));
    const field = flags.find((flag) => !known.has(flag.split('=')[0] ?? '')) ?? args.at(-1) ?? '';
    return { code: 'flag-unknown', field: field.slice(0, 40), values: { allowed: [...known].join(' ') } };
  }
}

type Values = ReturnType<typeof parseArgs<{ options: typeof options }>>['values'];

function fromFlags(values: Values): { readonly [field: string]: unknown } {
  const given = Object.entries(values).flatMap(([flag, value]): [string, unknown][] => {
    const field = fields[flag];
    if (field === undefined || typeof value !== 'string') return [];
    return [[field, numeric.has(field) ? numberOrText(value) : value]];
  });
  const warmed = values['no-warm'] === true ? { warmed: false } : values.warmed === true ? { warmed: true } : {};
  return { ...Object.fromEntries(given), ...warmed };
}

/** "--volume -5" names a number, not a flag. */
function joinNegative(args: readonly string[]): readonly string[] {
  return args.reduce<string[]>((joined, arg) => {
    const last = joined.at(-1);
    if (!/^-[\d.]/.test(arg) || !last?.startsWith('--') || last.includes('=')) return [...joined, arg];
    return [...joined.slice(0, -1), `${last}=${arg}`];
  }, []);
}

/** Text that is no number stays text, so that its field is named in the mistake. */
function numberOrText(text: string): number | string {
  return text.trim() === '' || Number.isNaN(Number(text)) ? text : Number(text);
}

/** `--json` stands alone or is followed by a request. */
function takeJson(args: readonly string[]): { readonly flags: readonly string[]; readonly body: string | undefined } {
  const at = args.findIndex((arg) => arg === '--json' || arg.startsWith('--json='));
  if (at < 0) return { flags: args, body: undefined };
  const joined = args[at]?.startsWith('--json=') ? args[at].slice('--json='.length) : undefined;
  const next = args[at + 1];
  const body = joined ?? (next === undefined || next.startsWith('--') ? undefined : next);
  const after = joined === undefined && body !== undefined ? at + 2 : at + 1;
  return { flags: [...args.slice(0, at), '--json', ...args.slice(after)], body };
}

function isLanguage(text: string): text is Language {
  return languages.some((language) => language === text);
}

interface House {
  readonly shelf: Shelf;
  readonly words: Words;
}

/** Read once, whoever asks how often. */
let house: House | undefined;

function loadHouse(): House {
  const dataDir = join(projectRoot, 'data');
  const teas = readTeas(dataDir);
  const shelf = { teas, data: readBrewingData(dataDir), finder: makeTeaFinder(teas, readTeaNames(dataDir)) };
  return { shelf, words: loadWords(teas) };
}

function loadWords(teas: readonly Tea[]): Words {
  const { sources, problems } = readWordFiles(join(projectRoot, 'flows'));
  if (problems.length > 0) throw new ContentMistake(problems.join('\n'));
  const teaName: NameOf = (kind, id, language) =>
    kind === 'tea' ? (teas.find((tea) => tea.id === id)?.names[language] ?? null) : null;
  return makeWords(sources, teaName);
}

function main(): void {
  const answer = brew(process.argv.slice(2));
  if (answer.out !== '') process.stdout.write(`${answer.out}\n`);
  if (answer.error !== '') process.stderr.write(`${answer.error}\n`);
  process.exitCode = answer.code;
}

if (isStarted(import.meta.url)) await runCommand(main);
