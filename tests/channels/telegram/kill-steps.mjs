// Kills the house between every two steps of Telegram, so many times each: node kill-steps.mjs [times, 10 if not given].
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

process.env.TZ = 'UTC';
const times = Number(process.argv[2] ?? 10);
const atOnce = 3;
const patienceMs = 120_000;
const { module } = await runnerImport(fileURLToPath(new URL('kill-steps.ts', import.meta.url)), { configFile: false });
const sums = { kills: 0, lost: 0, repeated: 0 };
for (const step of module.steps) {
  const runs = [];
  while (runs.length < times) {
    const batch = Math.min(atOnce, times - runs.length);
    const killed = Array.from({ length: batch }, (_, n) => module.killAt(step, patienceMs, runs.length + n));
    runs.push(...(await Promise.all(killed)));
  }
  const sum = (of) => runs.reduce((total, run) => total + run[of], 0);
  const wrong = [...new Set(runs.flatMap((run) => run.wrong))];
  sums.kills += times;
  sums.lost += sum('lost');
  sums.repeated += sum('repeated');
  const told = [`${times} kills`, `lost ${sum('lost')}`, `said again ${sum('repeated')}`, ...wrong];
  process.stdout.write(`${[step.name.padEnd(32), ...told].join('  ')}\n`);
}
process.stdout.write(`${sums.kills} kills: ${sums.lost} lost, ${sums.repeated} said again\n`);
