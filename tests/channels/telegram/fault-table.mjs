// Runs the table of faults many times over and prints it: node fault-table.mjs [times, 50 if not given].
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const times = Number(process.argv[2] ?? 50);
const { module } = await runnerImport(fileURLToPath(new URL('fault-table.ts', import.meta.url)), { configFile: false });
const rows = await module.runFaultTable(times);
process.stdout.write(`${module.faultReport(rows)}\n`);
process.exit(rows.some(({ wrong }) => wrong.length > 0) ? 1 : 0);
