// Measures what goes through the house by Telegram and prints it: node throughput.mjs [people, 1000 if not given].
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

process.env.TZ = 'UTC';
const people = Number(process.argv[2] ?? 1000);
const { module } = await runnerImport(fileURLToPath(new URL('throughput.ts', import.meta.url)), { configFile: false });
process.stdout.write(`${JSON.stringify(await module.measureTurnover(people))}\n`);
process.stdout.write(`${JSON.stringify(await module.measureReminders(people))}\n`);
