/** `npm run --silent read -- --json`: JSON lines of sentences in, JSON lines of what they say and what a new customer would be answered out. */
import { createInterface } from 'node:readline';
import { join } from 'node:path';
import { z } from 'zod';
import { systemClock } from '../clock.ts';
import { readContent, type Content } from '../content.ts';
import { spokenFrom } from '../conversation/answer.ts';
import { step } from '../core/flow/step.ts';
import type { Reading } from '../core/reading/reading.ts';
import { teaInItself } from '../core/teas/find.ts';
import { languages, type Language } from '../core/units.ts';
import { projectRoot } from '../project-root.ts';
import { isStarted, runCommand } from '../start.ts';

const askSchema = z.object({
  id: z.union([z.string(), z.number()]),
  text: z.string(),
  lang: z.enum(languages).optional(),
});
type Ask = z.output<typeof askSchema>;

/** One line of input as a question, or what is wrong with it. */
export function parseAsk(line: string, lineNumber: number): Ask | { readonly mistake: string } {
  let json: unknown;
  try {
    json = JSON.parse(line);
  } catch {
    return { mistake: `line ${lineNumber}: expected JSON such as {"id": 1, "text": "…"}` };
  }
  const parsed = askSchema.safeParse(json);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  return {
    mistake: `line ${lineNumber}: ${issue?.path.join('.') || 'line'}: ${issue?.message ?? 'expected an object'}`,
  };
}

export function answerLine(content: Content, { id, text, lang }: Ask): object {
  const reading = content.read(text, { language: lang ?? null, asked: null });
  return { id, ...shownOf(content, reading), reply: replyTo(content, text, reading.language) };
}

/** Of a tea known by its kind alone the family. */
function shownOf({ finder }: Content, { language, ...reading }: Reading): object {
  const { kind, family, vessel, volumeMl, leafG, guests, tempC, elevationM, style, missing } = reading;
  const tea = teaInItself(finder, reading.tea);
  return { lang: language, kind, tea, family, vessel, volumeMl, leafG, guests, tempC, elevationM, style, missing };
}

/** What a customer never met before is answered, in words. */
export function replyTo(content: Content, text: string, language: Language): string {
  const around = { nowMs: systemClock.now(), language, memory: {} };
  const { effects } = step(content.book, null, { kind: 'text', text, language }, around);
  const spoken = spokenFrom(effects) ?? language;
  const sayings = effects.flatMap((effect) => (effect.do === 'say' && !effect.saying.later ? [effect.saying] : []));
  return sayings.flatMap(({ phrases }) => phrases.map((phrase) => content.words.say(spoken, phrase))).join('\n\n');
}

async function main(): Promise<void> {
  const json = process.argv.includes('--json');
  const content = readContent({
    flowsDir: join(projectRoot, 'flows'),
    dataDir: join(projectRoot, 'data'),
    shopDir: join(projectRoot, 'data', 'shop'),
  });
  let lineNumber = 0;
  for await (const line of createInterface({ input: process.stdin })) {
    lineNumber++;
    if (line.trim() === '') continue;
    const ask = json ? parseAsk(line, lineNumber) : { id: lineNumber, text: line };
    if ('mistake' in ask) {
      process.stderr.write(`${ask.mistake}\n`);
      process.exitCode = 2;
    } else {
      process.stdout.write(`${JSON.stringify(answerLine(content, ask))}\n`);
    }
  }
}

if (isStarted(import.meta.url)) await runCommand(main);
