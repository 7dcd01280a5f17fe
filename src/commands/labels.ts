/** `npm run labels`: a sheet to print, one label for each tea on the shelf, with the plan for the shop's usual vessel. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Content } from '../content.ts';
import { contentOf, stepIn } from '../own-content.ts';
import { systemClock } from '../clock.ts';
import { readConfig } from '../config.ts';
import { projectRoot } from '../project-root.ts';
import { atTheShop } from '../content/shop-data.ts';
import { readShelf } from '../content/shelf.ts';
import type { Plan } from '../core/brewing/plan.ts';
import { isMistake } from '../core/brewing/schedule.ts';
import type { Tea } from '../core/teas/tea.ts';
import { languages, type Instant, type Language, type Mistake } from '../core/units.ts';
import type { Label } from '../pictures/label-sheet-face.ts';
import { labelSizes, papers, type LabelSize } from '../pictures/label-sheet-size.ts';
import { labelSheet } from '../pictures/label-sheet.ts';
import { isStarted, runCommand } from '../start.ts';
import type { Tell } from './brew-sheet.ts';

const options = {
  size: { type: 'string' },
  paper: { type: 'string' },
  out: { type: 'string' },
  origin: { type: 'string' },
  bot: { type: 'string' },
  lang: { type: 'string' },
} as const;

export interface Sheet {
  readonly language: Language;
  readonly sizeName: string;
  readonly size: LabelSize;
  readonly file: string;
  readonly origin: string;
  /** The bot's name on Telegram, to print a link to it too. */
  readonly bot: string | null;
}

interface Answer {
  readonly out: readonly string[];
  readonly error: readonly string[];
  readonly code: number;
}

type Environment = Parameters<typeof readConfig>[0];

/** Runs one command line and writes the sheet; nothing is printed here. */
export async function labels(args: readonly string[], environment: Environment, now: Instant): Promise<Answer> {
  const config = readConfig(environment);
  const content = contentOf(config);
  const flags = readFlags(args);
  const asked = isMistake(flags) ? flags : readSheet(flags, config.origin);
  const language = isMistake(flags) || !isLanguage(flags.lang) ? 'en' : flags.lang;
  const tell: Tell = (key, values) => content.words.say(language, { key, values });
  const wrong = ({ code, values }: Mistake): Answer => ({ out: [], error: [tell(code, values)], code: 2 });
  if (isMistake(asked)) return wrong(asked);
  const made = await labelSheet({
    labels: readShelf(config.shopFolder, content.teas).map((tea) => labelOf(content, tea, { ...asked, now })),
    size: asked.size,
    title: tell('label-sheet-title', { shop: content.shop.name[language] }),
    now,
  });
  if (!written(asked.file, made.pdf))
    return wrong({ code: 'label-unwritable', field: 'out', values: { file: asked.file } });
  const { printed: count, pages } = made;
  return {
    out: [tell('label-made', { count, pages, file: asked.file }), tell('label-print-as-is', {})],
    error: made.unfit.map(({ id, text, why }) =>
      tell(`label-left-out-${why}`, { tea: id, text, size: asked.sizeName }),
    ),
    code: made.unfit.length === 0 ? 0 : 1,
  };
}

/** The label says what its page will say: the plan is asked of the same conversation, in the same way. */
export function labelOf(
  content: Content,
  tea: Tea,
  { language, origin, bot, now }: Pick<Sheet, 'language' | 'origin' | 'bot'> & { readonly now: Instant },
): Label {
  const event = { kind: 'opened', payload: `tea-${tea.id}` } as const;
  const memory = atTheShop(content.shop);
  const { state } = stepIn(content)(null, event, { nowMs: now, language, memory });
  const { vessel, leafG, waterC, rinse, infusions } = state.facts['plan'] as unknown as Plan;
  const tell: Tell = (key, values) => content.words.say(language, { key, values });
  const first = infusions.slice(0, 3).map(({ seconds }) => seconds);
  const count = infusions.length;
  const longest = Math.max(...infusions.map(({ seconds }) => seconds));
  const strongest = Math.max(...infusions.map(({ strengthMgPerMl }) => strengthMgPerMl));
  return {
    id: tea.id,
    names: tea.names,
    language,
    vessel: tell('label-vessel', { vessel, volumeMl: content.shop.usual.volumeMl }),
    plan: tell('label-plan', {
      leafG,
      waterC,
      rinseS: rinse?.seconds ?? null,
      first,
      shown: first.length,
      more: count > first.length,
      count,
    }),
    scan: tell('label-scan', {}),
    address: `${origin}/tea/${tea.id}`,
    ...(bot === null ? {} : { link: `t.me/${bot}?start=tea-${tea.id}` }),
    rungs: infusions.map((one) => ({ length: one.seconds / longest, ink: one.strengthMgPerMl / strongest })),
  };
}

function readSheet(flags: Flags, settledOrigin: string | null): Sheet | Mistake {
  const { lang: language = 'en', out = join(projectRoot, 'var', 'labels.pdf') } = flags;
  if (!isLanguage(language)) return mistake('mistake-language-unknown', { allowed: languages.join(', ') });
  const size = readSize(flags);
  if (isMistake(size)) return size;
  const given = flags.origin ?? settledOrigin;
  if (given === null) return mistake('label-origin-missing', {});
  const origin = readOrigin(given);
  if (origin === null) return mistake('label-origin-wrong', { origin: given });
  const bot = flags.bot?.replace(/^@/, '') ?? null;
  if (bot !== null && !/^[a-z]\w{4,31}$/i.test(bot)) return mistake('label-bot-wrong', { bot });
  return { language, ...size, file: out, origin, bot };
}

const mistake = (code: string, values: Mistake['values']): Mistake => ({ code, field: code, values });

type Flags = ReturnType<typeof parseArgs<{ options: typeof options }>>['values'];

function readFlags(args: readonly string[]): Flags | Mistake {
  try {
    return parseArgs({ args: [...args], options, strict: true }).values;
  } catch {
    const allowed = Object.keys(options).map((name) => `--${name}`);
    return mistake('mistake-flag-unknown', { allowed: allowed.join(' ') });
  }
}

/** A size tells its paper; a paper alone is taken to be of its first size. */
function readSize({ paper, size: name }: Flags): Pick<Sheet, 'size' | 'sizeName'> | Mistake {
  if (paper !== undefined && !Object.hasOwn(papers, paper)) {
    return mistake('label-paper-unknown', { paper, allowed: Object.keys(papers).join(', ') });
  }
  const fitting = Object.entries(labelSizes).filter(([, size]) => paper === undefined || size.paper === paper);
  const found = fitting.find(([known]) => name === undefined || known === name);
  if (found) return { sizeName: found[0], size: found[1] };
  const allowed = fitting.map(([known]) => known).join(', ');
  return mistake('label-size-unknown', { size: name ?? '', paper: paper ?? Object.keys(papers).join(', '), allowed });
}

/** As the page's own links begin: without the slash that people like to write after it. */
function readOrigin(text: string): string | null {
  if (!/^https?:/.test(text) || !URL.canParse(text)) return null;
  const { origin, href } = new URL(text);
  return href === `${origin}/` ? origin : null;
}

function isLanguage(text: string | undefined): text is Language {
  return languages.some((language) => language === text);
}

function written(file: string, pdf: Uint8Array): boolean {
  try {
    if (dirname(file) === join(projectRoot, 'var')) mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, pdf);
    return true;
  } catch {
    return false;
  }
}

async function main(): Promise<void> {
  const { out, error, code } = await labels(process.argv.slice(2), process.env, systemClock.now());
  for (const line of out) process.stdout.write(`${line}\n`);
  for (const line of error) process.stderr.write(`${line}\n`);
  process.exitCode = code;
}

if (isStarted(import.meta.url)) await runCommand(main);
