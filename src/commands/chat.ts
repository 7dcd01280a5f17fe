/** `npm run chat`: the conversation at a terminal; with `--script FILE …` it plays transcripts and tells the first differences. */
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import { contentOf } from '../own-content.ts';
import { readConfig, type Config } from '../config.ts';
import { PlainMistake, requireUtc, runCommand } from '../start.ts';
import { makeChat, play } from './play.ts';

async function converse(config: Config, language: string | null): Promise<void> {
  const content = contentOf(config);
  const prompt = createInterface({ input: process.stdin, output: process.stdout, prompt: '> ' });
  // Taken before anything is waited for: lines piped in would be over by then.
  const typed = prompt[Symbol.asyncIterator]();
  let isOpen = true;
  prompt.once('close', () => (isOpen = false));
  const show = (lines: readonly string[]): void => {
    process.stdout.write(`\r${lines.join('\n')}\n\n`);
    // From Node 24 on a prompt whose input is over throws.
    if (isOpen) prompt.prompt();
    else process.stdout.write(prompt.getPrompt());
  };
  const chat = makeChat({ config, content, deviceLanguage: language ?? config.deviceLanguage, show });
  await chat.start();
  await chat.terminal.open();
  for await (const line of typed) {
    await chat.terminal.enter(line);
    // All of the answer stands there before the next line, though lines be piped in faster than anybody writes.
    await chat.settled();
  }
  await chat.stop();
}

async function playAll(files: readonly string[], config: Config): Promise<boolean> {
  const content = contentOf(config);
  let well = true;
  for (const file of files) {
    const difference = await play(file, content, config);
    if (difference === null) continue;
    well = false;
    process.stderr.write(`${difference}\n`);
  }
  return well;
}

function readArguments(): { readonly files: readonly string[]; readonly language: string | null } {
  try {
    const options = { script: { type: 'boolean' }, language: { type: 'string' } } as const;
    const { values, positionals } = parseArgs({ options, allowPositionals: true });
    const files = values.script ? positionals : [];
    if (positionals.length > 0 === (values.script ?? false)) return { files, language: values.language ?? null };
  } catch {
    // Told below, as any other misuse.
  }
  throw new PlainMistake('npm run chat [-- --language TAG]   or   npm run chat -- --script FILE …');
}

await runCommand(async () => {
  requireUtc();
  const { files, language } = readArguments();
  const config = readConfig(process.env);
  if (files.length === 0) await converse(config, language);
  else process.exitCode = (await playAll(files, config)) ? 0 : 1;
});
