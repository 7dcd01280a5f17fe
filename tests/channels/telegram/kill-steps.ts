/** Kills the house between every two steps a message takes through Telegram, in and out, and counts what was lost or said twice. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { StoreMistake } from '../../../src/store/contract.ts';
import { startService, type Service } from '../../app/service.ts';
import { booksOf, leaveOpen } from '../../faults/echo-world.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';

type DieAt =
  | { readonly call: string; readonly when: 'before' | 'written' | 'answered' | 'read' }
  | { readonly before: string }
  | { readonly after: string }
  | { readonly committed: string };

export interface Step {
  readonly name: string;
  readonly dieAt: DieAt;
  /** What the person does, and what they must see of it. */
  readonly does: 'writes' | 'taps' | 'changes';
  /** How often the answer may stand in the chat in the end. */
  readonly copies: 1 | 2;
  /** It comes only where what arrives is kept before it is handled. */
  readonly wary?: true;
}

const keeping = 'INSERT INTO inbox';
const owing = 'INSERT INTO outbox';
const claiming = `UPDATE outbox SET status = 'sending'`;
const beginning = 'UPDATE outbox SET begun = 1';
const settling = `UPDATE outbox SET status = 'sent'`;

/** In the order a message lives through them. */
export const steps: readonly Step[] = [
  step('updates arrive', { call: 'getUpdates', when: 'answered' }),
  step('updates read', { call: 'getUpdates', when: 'read' }),
  step('before it is kept', { before: keeping }),
  step('kept, not committed', { after: keeping }),
  step('kept, committed', { committed: keeping }),
  step('before it is confirmed', { call: 'getUpdates', when: 'before' }),
  step('confirmed', { call: 'getUpdates', when: 'written' }),
  step('before a tap is answered', { call: 'answerCallbackQuery', when: 'before' }, 'taps'),
  step('a tap answered', { call: 'answerCallbackQuery', when: 'written' }, 'taps'),
  step('before the answer is owed', { before: owing }),
  step('owed, not committed', { after: owing }),
  step('owed, committed', { committed: owing }),
  { ...step('claimed, not committed', { after: claiming }), wary: true },
  { ...step('claimed, committed', { committed: claiming }), wary: true },
  step('begun, not committed', { after: beginning }),
  step('begun, committed', { committed: beginning }),
  step('before it is sent', { call: 'sendMessage', when: 'before' }),
  step('sent', { call: 'sendMessage', when: 'written' }, 'writes', 2),
  step('its outcome arrives', { call: 'sendMessage', when: 'answered' }, 'writes', 2),
  step('its outcome read', { call: 'sendMessage', when: 'read' }, 'writes', 2),
  step('before that is written down', { before: settling }, 'writes', 2),
  step('written down, not committed', { after: settling }, 'writes', 2),
  step('written down, committed', { committed: settling }),
  step('before an edit', { call: 'editMessageText', when: 'before' }, 'changes'),
  step('edited', { call: 'editMessageText', when: 'written' }, 'changes'),
  step('the outcome of an edit arrives', { call: 'editMessageText', when: 'answered' }, 'changes'),
];

function step(name: string, dieAt: DieAt, does: Step['does'] = 'writes', copies: Step['copies'] = 1): Step {
  return { name, dieAt, does, copies };
}

export interface Killed {
  readonly name: string;
  readonly lost: number;
  readonly repeated: number;
  readonly wrong: readonly string[];
}

const person = 7;
const script = fileURLToPath(new URL('wire-house.mjs', import.meta.url));
const watch = fileURLToPath(new URL('../../faults/watch.mjs', import.meta.url));
/** A copy too many would be on its way. */
const afterlifeMs = 300;

/** One death at this step, and a life after it. Every other time it was no first death: then what arrives is kept before it is handled. */
export async function killAt(
  { name, dieAt, does, copies, wary }: Step,
  patienceMs: number,
  nth: number,
): Promise<Killed> {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-steps-'));
  const file = join(folder, 'shop.sqlite');
  const server = await startStandIn();
  const live = (node: readonly string[]): Service =>
    startService({ script, node, args: [file, server.token, server.root] });
  if (wary || nth % 2 === 1) leaveOpen(file);
  const first = live(['--import', watch]);
  await first.ready;
  const before = await prepare(server, does, patienceMs);
  first.child.stdin.write(`${JSON.stringify({ dieAt })}\n`);
  await new Promise((resolve) => first.child.stdout.once('data', resolve));
  act(server, does);
  const giveUp = setTimeout(() => first.child.kill('SIGTERM'), patienceMs);
  const { signal } = await first.ended;
  clearTimeout(giveUp);
  const second = live([]);
  await second.ready;
  const answers = (): number => server.seenBy(person).filter(({ text }) => text === wanted[does]).length;
  const settled = (): boolean => isAtRest(file);
  await comes(() => answers() > 0 && server.queue.pending.length === 0 && settled(), patienceMs);
  await pause(afterlifeMs);
  const [seen, other] = [answers(), server.seenBy(person).length - answers()];
  second.child.kill('SIGTERM');
  await second.ended;
  await server.close();
  rmSync(folder, { recursive: true });
  const wrong = [
    signal === 'SIGKILL' ? '' : 'never came to the step',
    seen === 0 ? 'lost' : '',
    seen > copies ? `${seen} copies` : '',
    other === before ? '' : `${other} other messages, not ${before}`,
  ].filter((one) => one !== '');
  return { name, lost: Number(seen === 0), repeated: Math.max(0, seen - 1), wrong };
}

const wanted = { writes: 'said hello', taps: 'said chosen', changes: 'said edit two' } as const;

/** While the house writes, its books may be closed to others for longer than they wait: then it is not at rest. */
function isAtRest(file: string): boolean {
  try {
    const { open, waiting } = booksOf(file);
    return open === 0 && waiting === 0;
  } catch (error) {
    if (error instanceof StoreMistake && error.message.includes('SQLITE_BUSY')) return false;
    throw error;
  }
}

/** What stands in the chat before: a button to tap, or a message to change. Returns how much of it stays. */
async function prepare(server: StandIn, does: Step['does'], patienceMs: number): Promise<number> {
  if (does === 'writes') return 0;
  server.people.say(person, does === 'taps' ? 'first' : 'edit one');
  await comes(() => server.seenBy(person).length === 1 && server.queue.pending.length === 0, patienceMs);
  await pause(100);
  return does === 'taps' ? 1 : 0;
}

function act(server: StandIn, does: Step['does']): void {
  if (does === 'taps') server.people.tap(person, 'again');
  else server.people.say(person, does === 'writes' ? 'hello' : 'edit two');
}

async function comes(holds: () => boolean, withinMs: number): Promise<void> {
  for (const end = performance.now() + withinMs; !holds() && performance.now() < end;) await pause(20);
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
