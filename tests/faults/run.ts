/** Runs the faults, each in a process of its own, a few side by side, and reports what was tried and what held. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import { projectRoot } from '../../src/project-root.ts';
import { dice } from './counts.ts';
import { sideBySide, type Counts, type Fault, type Findings } from './fault.ts';
import { faults } from './faults.ts';
import { asText, closingLine, type Outcome, type Report } from './report.ts';

const runner = join(projectRoot, 'tests/faults/run.mjs');
const usage = 'npm run faults [-- [--long | --few] [--only F7,F9] [--seed N] [--into report.json]]\n';

type Scale = keyof Counts;

interface Order {
  readonly chosen: readonly Fault[];
  readonly seed: number;
  readonly scale: Scale;
  readonly into: string;
  /** This process is the one that tries: it writes its outcome into `into`. */
  readonly tries: boolean;
}

/** Resolves with the exit code. */
export async function run(args: readonly string[]): Promise<number> {
  const order = readOrder(args);
  if (order === null) {
    process.stderr.write(usage);
    return 2;
  }
  if (order.tries) return tryHere(order);
  return tryAll(order);
}

function readOrder(args: readonly string[]): Order | null {
  const options = {
    long: { type: 'boolean', default: false },
    few: { type: 'boolean', default: false },
    only: { type: 'string' },
    seed: { type: 'string' },
    into: { type: 'string', default: 'var/faults.json' },
    tries: { type: 'boolean', default: false },
  } as const;
  try {
    const { values } = parseArgs({ args: [...args], options });
    const names = values.only?.toUpperCase().split(',') ?? faults.map(({ id }) => id);
    const chosen = faults.filter(({ id }) => names.includes(id));
    const seed = Number(values.seed ?? Date.now() % 1_000_000);
    if (chosen.length !== names.length || !Number.isSafeInteger(seed)) return null;
    const scale = values.long ? 'long' : values.few ? 'few' : 'usual';
    return { chosen, seed, scale, into: values.into, tries: values.tries };
  } catch {
    return null;
  }
}

async function tryAll({ chosen, seed, scale, into }: Order): Promise<number> {
  const began = performance.now();
  process.stdout.write(`seed ${seed}\n`);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, endAll);
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-faults-'));
  // What takes longest first, so that the lanes end together; most of them wait now and then.
  const lanes = Math.max(2, availableParallelism()) + 1;
  const slowestFirst = chosen.toSorted((a, b) => (b.seconds ?? 0) - (a.seconds ?? 0));
  const outcomes = await sideBySide(slowestFirst.length, lanes, async (n) => {
    const outcome = await tryElsewhere(slowestFirst[n]!, { seed, scale, into: join(folder, `${n}.json`) });
    process.stdout.write(asText(outcome));
    return outcome;
  });
  rmSync(folder, { recursive: true });
  const inOrder = chosen.map(({ id }) => outcomes.find((outcome) => outcome.id === id)!);
  const report: Report = {
    at: new Date().toISOString(),
    node: process.version,
    seed,
    scale,
    seconds: Math.round((performance.now() - began) / 1000),
    faults: inOrder,
  };
  mkdirSync(dirname(into), { recursive: true });
  writeFileSync(into, `${JSON.stringify(report, null, 1)}\n`);
  process.stdout.write(`${closingLine(report)}; all of it is in ${into}\n`);
  return inOrder.every(({ held }) => held) ? 0 : 1;
}

/** Trials under way. */
const running = new Set<ChildProcess>();

function endGroup(child: ChildProcess): void {
  running.delete(child);
  try {
    if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
  } catch {
    // Nobody is left in it.
  }
}

function endAll(): never {
  for (const child of running) endGroup(child);
  process.exit(1);
}

async function tryElsewhere(
  { id, title, unit, untried }: Fault,
  { seed, scale, into }: Pick<Order, 'seed' | 'scale' | 'into'>,
): Promise<Outcome> {
  const args = [
    runner,
    '--tries',
    '--only',
    id,
    '--seed',
    String(seed),
    '--into',
    into,
    ...(scale === 'usual' ? [] : [`--${scale}`]),
  ];
  // In a group of its own: what a trial that broke off has left running ends with it, and holds up nobody.
  const child = spawn(process.execPath, ['--expose-gc', ...args], {
    stdio: ['ignore', 'inherit', 'pipe'],
    detached: true,
  });
  running.add(child);
  child.once('exit', () => endGroup(child));
  let told = '';
  child.stderr.on('data', (chunk) => (told += String(chunk)));
  const code = await new Promise<number | null>((resolve) => child.once('close', resolve));
  const findings: Findings & Pick<Outcome, 'seconds'> =
    code === 0
      ? (JSON.parse(readFileSync(into, 'utf8')) as Findings & Pick<Outcome, 'seconds'>)
      : { tried: 0, broken: [`the trial itself broke off: ${told.slice(-2_000)}`], seconds: 0 };
  const held = findings.tried > 0 && findings.broken.length === 0;
  return { id, title, unit, seed, held, ...findings, ...(untried === undefined ? {} : { untried }) };
}

async function tryHere({ chosen: [fault], seed, scale, into }: Order): Promise<number> {
  if (!fault) return 2;
  const folder = mkdtempSync(join(tmpdir(), `ninthpour-${fault.id}-`));
  try {
    const began = performance.now();
    const findings = await fault.run({ count: fault.counts[scale], dice: dice(seed), folder, slack: 3 });
    writeFileSync(into, JSON.stringify({ ...findings, seconds: Math.round((performance.now() - began) / 100) / 10 }));
    return 0;
  } catch (error) {
    process.stderr.write(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
