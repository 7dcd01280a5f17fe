// Times plans and re-plans of the built program: node --expose-gc tests/bench/plan-bench.mjs. Prints, asserts nothing.
import { readBrewingData } from '../../dist/content/brewing-data.js';
import { planBrew } from '../../dist/core/brewing/schedule.js';
import { beginBrew, pour, replan } from '../../dist/core/brewing/session.js';

const data = readBrewingData('data');
const rounds = 4000;

function timed(run) {
  for (let i = 0; i < rounds; i++) run();
  const times = Array.from({ length: rounds }, () => {
    const from = performance.now();
    run();
    return performance.now() - from;
  }).toSorted((a, b) => a - b);
  return `median ${times[rounds / 2].toFixed(3)} ms, p99 ${times[Math.floor(rounds * 0.99)].toFixed(3)} ms`;
}

function bytes(run) {
  globalThis.gc?.();
  const before = process.memoryUsage().heapUsed;
  for (let i = 0; i < 50; i++) run();
  return Math.round((process.memoryUsage().heapUsed - before) / 50);
}

const brews = [
  ['oolong', 'ball-rolled', 'gaiwan', 110, 'gongfu'],
  ['dark', 'compressed', 'gaiwan', 110, 'gongfu'],
  ['green', 'flat', 'mug', 300, 'western'],
  ['green', 'flat', 'tumbler', 350, 'grandpa'],
  ['green', 'flat', 'cold-jar', 1000, 'cold'],
];
for (const [family, form, vessel, volumeMl, style] of brews) {
  const leaf = { family, form };
  const request = { tea: null, family, vessel, volumeMl, style };
  const plan = () => planBrew(data, leaf, request);
  const count = plan().infusions.length;
  console.log(`plan ${style} ${form}, ${count} infusions: ${timed(plan)}, about ${bytes(plan)} bytes`);
  const brewing = { data, leaf, request };
  const session = pour(brewing, beginBrew(brewing), { seconds: plan().infusions[0].seconds });
  console.log(`re-plan after the first: ${timed(() => replan(brewing, session))}`);
}

for (const infusions of [2, 4, 8, 12]) {
  const families = structuredClone(data.families);
  families.dark.styles.gongfu.infusions = infusions;
  const request = { tea: null, family: 'dark', vessel: 'gaiwan', volumeMl: 110 };
  const leaf = { family: 'dark', form: 'compressed' };
  const run = () => planBrew({ ...data, families }, leaf, request);
  console.log(`plan of ${run().infusions.length} infusions: ${timed(run)}`);
}
