// Runs the stand-in in a process of its own: node serve.mjs [--port N] [--flood]; says its address on one line, ends on a signal.
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { runnerImport } from 'vite';

const { values } = parseArgs({
  options: { port: { type: 'string', default: '0' }, flood: { type: 'boolean', default: false } },
});
const { module } = await runnerImport(fileURLToPath(new URL('process.ts', import.meta.url)), { configFile: false });
const standIn = await module.startControlled({ port: Number(values.port), flood: values.flood });
process.stdout.write(`${JSON.stringify({ root: standIn.root, token: standIn.token })}\n`);
for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => standIn.close().then(() => process.exit(0)));
