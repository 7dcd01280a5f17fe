/** Every fault of the Bot API against one sending, many times over: what was said of it, and how many copies arrived. */
import type { TelegramDeps } from '../../../src/channels/telegram/telegram.ts';
import type { Sent } from '../../../src/messages.ts';
import type { Trouble } from './bot-api/fault-plan.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { channelAt, outgoing } from './harness.ts';

interface Case {
  readonly name: string;
  readonly trouble: Trouble;
  /** What the channel must say of the first try. */
  readonly outcome: Sent['outcome'];
  /** How many copies a person may see in the end, with a delivery that resends a doubtful one once. */
  readonly copies: readonly [least: number, most: number];
  /** The fault meets an edit of what was sent before. */
  readonly edit?: boolean;
}

const refuse = (code: number, description: string, parameters = {}): Trouble => ({
  kind: 'refuse',
  code,
  description,
  parameters,
});

export const cases: readonly Case[] = [
  { name: 'no fault', trouble: { kind: 'delay', ms: 0 }, outcome: 'sent', copies: [1, 1] },
  { name: 'late answer', trouble: { kind: 'delay', ms: 20 }, outcome: 'sent', copies: [1, 1] },
  {
    name: '429 retry after 3',
    trouble: refuse(429, 'Too Many Requests: retry after 3', { retry_after: 3 }),
    outcome: 'retry',
    copies: [1, 1],
  },
  { name: '401 token refused', trouble: refuse(401, 'Unauthorized'), outcome: 'retry', copies: [1, 1] },
  {
    name: '409 conflict',
    trouble: refuse(409, 'Conflict: terminated by other getUpdates request'),
    outcome: 'retry',
    copies: [1, 1],
  },
  {
    name: '400 message is too long',
    trouble: refuse(400, 'Bad Request: message is too long'),
    outcome: 'refused',
    copies: [0, 0],
  },
  {
    name: '400 of a new kind',
    trouble: refuse(400, 'Bad Request: TEA_TOO_STRONG'),
    outcome: 'refused',
    copies: [0, 0],
  },
  {
    name: '400 chat not found',
    trouble: refuse(400, 'Bad Request: chat not found'),
    outcome: 'unreachable',
    copies: [0, 0],
  },
  {
    name: '403 blocked',
    trouble: refuse(403, 'Forbidden: bot was blocked by the user'),
    outcome: 'unreachable',
    copies: [0, 0],
  },
  {
    name: '403 deactivated',
    trouble: refuse(403, 'Forbidden: user is deactivated'),
    outcome: 'unreachable',
    copies: [0, 0],
  },
  { name: '413 too large', trouble: refuse(413, 'Request Entity Too Large'), outcome: 'refused', copies: [0, 0] },
  { name: '500 restart', trouble: refuse(500, 'Internal Server Error: restart'), outcome: 'unknown', copies: [1, 1] },
  {
    name: '502 page, not done',
    trouble: { kind: 'page', code: 502, processed: false },
    outcome: 'unknown',
    copies: [1, 1],
  },
  { name: '502 page, done', trouble: { kind: 'page', code: 502, processed: true }, outcome: 'unknown', copies: [2, 2] },
  { name: '504 page, done', trouble: { kind: 'page', code: 504, processed: true }, outcome: 'unknown', copies: [2, 2] },
  { name: 'no answer, not done', trouble: { kind: 'hang', processed: false }, outcome: 'unknown', copies: [1, 1] },
  { name: 'no answer, done', trouble: { kind: 'hang', processed: true }, outcome: 'unknown', copies: [1, 2] },
  {
    name: 'connection ended, not done',
    trouble: { kind: 'drop', processed: false },
    outcome: 'unknown',
    copies: [1, 1],
  },
  { name: 'connection ended, done', trouble: { kind: 'drop', processed: true }, outcome: 'unknown', copies: [2, 2] },
  { name: 'reset, not done', trouble: { kind: 'reset', processed: false }, outcome: 'unknown', copies: [1, 1] },
  { name: 'reset, done', trouble: { kind: 'reset', processed: true }, outcome: 'unknown', copies: [2, 2] },
  { name: 'answer cut in half', trouble: { kind: 'truncate' }, outcome: 'unknown', copies: [2, 2] },
  { name: 'one byte a second', trouble: { kind: 'slow', bytesPerSecond: 1 }, outcome: 'unknown', copies: [1, 2] },
  {
    name: 'group moved',
    trouble: refuse(400, 'Bad Request: group chat was upgraded to a supergroup chat', { migrate_to_chat_id: -1005 }),
    outcome: 'sent',
    copies: [1, 1],
  },
  {
    name: 'edit: no answer, done',
    trouble: { kind: 'hang', processed: true },
    outcome: 'retry',
    copies: [1, 1],
    edit: true,
  },
  {
    name: 'edit: reset, not done',
    trouble: { kind: 'reset', processed: false },
    outcome: 'retry',
    copies: [1, 1],
    edit: true,
  },
  {
    name: 'edit: 502, done',
    trouble: { kind: 'page', code: 502, processed: true },
    outcome: 'retry',
    copies: [1, 1],
    edit: true,
  },
  {
    name: 'edit: message gone',
    trouble: refuse(400, 'Bad Request: message to edit not found'),
    outcome: 'sent',
    copies: [1, 1],
    edit: true,
  },
  {
    name: 'edit: not modified',
    trouble: refuse(400, 'Bad Request: message is not modified: the same'),
    outcome: 'sent',
    copies: [0, 0],
    edit: true,
  },
];

export interface FaultRow {
  readonly name: string;
  readonly times: number;
  readonly outcomes: Readonly<Record<string, number>>;
  readonly why: string;
  readonly copies: readonly [least: number, most: number];
  readonly mostCalls: number;
  /** What broke the rule; empty when all was as it must be. */
  readonly wrong: readonly string[];
}

const chat = 1;
const movedTo = -1005;
/** Time for a call to arrive on a busy machine, and less where its answer never comes. */
const patienceMs = 30_000;
const impatienceMs = 600;

export async function runFaultTable(times: number): Promise<readonly FaultRow[]> {
  const rows: FaultRow[] = [];
  for (const one of cases) rows.push(await runFaultCase(one, times));
  return rows;
}

export async function runFaultCase(one: Case, times: number): Promise<FaultRow> {
  const server = await startStandIn();
  server.people.say(chat, 'hello');
  server.world.movedGroups.set(-5, movedTo);
  let aheadMs = 0;
  const waitsInVain = one.trouble.kind === 'hang' || one.trouble.kind === 'slow';
  const deps: Partial<TelegramDeps> = { sendTimeoutMs: patienceMs, now: () => Date.now() + aheadMs };
  const { channel } = channelAt(server, deps);
  const hasty = waitsInVain ? channelAt(server, { ...deps, sendTimeoutMs: impatienceMs }).channel : channel;
  const runs = [];
  for (let i = 0; i < times; i++) {
    const text = `${one.name} ${i}`;
    const before = await channel.send(outgoing(chat, { paragraphs: ['before'] }));
    const message = outgoing(chat, {
      paragraphs: [text],
      ...(one.edit && before.outcome === 'sent' ? { replaces: before.ref } : {}),
    });
    const callsBefore = server.record.calls.length;
    server.faults.add({ method: one.edit ? 'editMessageText' : 'sendMessage', text, trouble: one.trouble });
    const said = await deliver({
      first: () => hasty.send(message),
      again: () => channel.send(message),
      waitLong() {
        aheadMs += 61_000;
        // On a busy machine the first try may never have come so far as to meet it.
        server.faults.clear();
      },
    });
    runs.push({ ...said, copies: copiesOf(server, text), calls: server.record.calls.length - callsBefore });
  }
  await server.close();
  return rowOf(one, runs);
}

interface Sending {
  readonly first: () => Promise<Sent>;
  readonly again: () => Promise<Sent>;
  readonly waitLong: () => void;
}

/** As delivery does: what surely failed is tried again, what is in doubt once more. */
async function deliver({
  first: sendFirst,
  again,
  waitLong,
}: Sending): Promise<{ readonly first: Sent; readonly last: Sent }> {
  const first = await sendFirst();
  let last = first;
  for (let tries = 1, doubts = 0; tries < 5; tries++) {
    if (last.outcome === 'unknown') doubts++;
    if ((last.outcome !== 'retry' && last.outcome !== 'unknown') || doubts > 1) break;
    waitLong();
    last = await again();
  }
  return { first, last };
}

function copiesOf(server: StandIn, text: string): number {
  return [...server.seenBy(chat), ...server.seenBy(movedTo)].filter((message) => message.text === text).length;
}

interface Run {
  readonly first: Sent;
  readonly last: Sent;
  readonly copies: number;
  readonly calls: number;
}

function rowOf(one: Case, runs: readonly Run[]): FaultRow {
  const outcomes: Record<string, number> = {};
  for (const { first } of runs) outcomes[first.outcome] = (outcomes[first.outcome] ?? 0) + 1;
  const copies = runs.map((run) => run.copies);
  const wrong = runs.flatMap((run) => [
    ...(run.first.outcome === one.outcome ? [] : [`said ${run.first.outcome}, not ${one.outcome}`]),
    ...(run.copies >= one.copies[0] && run.copies <= one.copies[1] ? [] : [`${run.copies} copies`]),
    ...(one.copies[1] > 0 && run.last.outcome !== 'sent' ? [`ended ${run.last.outcome}`] : []),
  ]);
  const [{ first } = { first: { outcome: 'sent', ref: '' } as Sent }] = runs;
  const why = first.outcome === 'sent' ? '' : first.why;
  const mostCalls = Math.max(...runs.map((run) => run.calls));
  return {
    name: one.name,
    times: runs.length,
    outcomes,
    why,
    copies: [Math.min(...copies), Math.max(...copies)],
    mostCalls,
    wrong,
  };
}

export function faultReport(rows: readonly FaultRow[]): string {
  const lines = rows.map(({ name, times, outcomes, why, copies, mostCalls, wrong }) => {
    const said = Object.entries(outcomes).map(([outcome, n]) => `${outcome} ${n}/${times}`);
    const seen = copies[0] === copies[1] ? `${copies[0]}` : `${copies[0]}-${copies[1]}`;
    return [
      name.padEnd(28),
      said.join(', ').padEnd(20),
      why.padEnd(28),
      `copies ${seen}`,
      `calls ${mostCalls}`,
      ...new Set(wrong),
    ].join('  ');
  });
  return lines.join('\n');
}
