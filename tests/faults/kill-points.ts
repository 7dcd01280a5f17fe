/** F2: the process ends exactly at a named point, and each point has its number of copies. */
import { join } from 'node:path';
import { comesTrue, sideBySide, Tally, unlike, type Fault, type Trial } from './fault.ts';
import { booksOf, die, EchoWorld, leaveOpen, tell } from './echo-world.ts';

interface Point {
  readonly name: string;
  readonly dieAt:
    { readonly before: string } | { readonly after: string } | { readonly committed: string } | { readonly said: true };
  /** How often the answer is said in the end. */
  readonly copies: 1 | 2;
  /** The message sets a timer, and it is the timer's answer that is counted. */
  readonly timer?: true;
}

const keeping = 'INSERT INTO inbox';
const moving = 'INSERT INTO conversation';
const owing = 'INSERT INTO outbox';
const setting = 'INSERT INTO wake';
const ringing = 'DELETE FROM wake';
const claiming = `UPDATE outbox SET status = 'sending'`;
const settling = `UPDATE outbox SET status = 'sent'`;

/** In the order a message lives through them. */
export const points: readonly Point[] = [
  { name: 'before it is kept', dieAt: { before: keeping }, copies: 1 },
  { name: 'kept, not committed', dieAt: { after: keeping }, copies: 1 },
  { name: 'kept, committed, not acknowledged', dieAt: { committed: keeping }, copies: 1 },
  { name: 'before the conversation moves', dieAt: { before: moving }, copies: 1 },
  { name: 'moved, nothing owed yet', dieAt: { after: moving }, copies: 1 },
  { name: 'before the answer is owed', dieAt: { before: owing }, copies: 1 },
  { name: 'owed, not committed', dieAt: { after: owing }, copies: 1 },
  { name: 'owed, committed', dieAt: { committed: owing }, copies: 1 },
  { name: 'before a timer is set', dieAt: { before: setting }, copies: 1, timer: true },
  { name: 'timer set, not committed', dieAt: { after: setting }, copies: 1, timer: true },
  { name: 'timer set, committed', dieAt: { committed: setting }, copies: 1, timer: true },
  { name: 'timer rung, before it goes', dieAt: { before: ringing }, copies: 1, timer: true },
  { name: 'timer gone, not committed', dieAt: { after: ringing }, copies: 1, timer: true },
  // An answer to what arrives is mostly taken for sending as it is owed; what a timer says is claimed.
  { name: 'before the answer is claimed', dieAt: { before: claiming }, copies: 1, timer: true },
  { name: 'claimed, not committed', dieAt: { after: claiming }, copies: 1, timer: true },
  { name: 'claimed, committed, nothing said', dieAt: { committed: claiming }, copies: 1, timer: true },
  { name: 'said, its outcome not heard', dieAt: { said: true }, copies: 2 },
  { name: 'said, before that is written down', dieAt: { before: settling }, copies: 2 },
  { name: 'written down, not committed', dieAt: { after: settling }, copies: 2 },
  { name: 'written down, committed', dieAt: { committed: settling }, copies: 1 },
];

export const killPoints: Fault = {
  id: 'F2',
  title: `killed at ${points.length} named points`,
  unit: 'deaths',
  counts: { few: 5, usual: points.length * 13, long: points.length * 200 },
  seconds: 110,
  untried: 'points inside a backup and a migration are F17 and F18; a checkpoint half done is F4',
  async run(trial) {
    const tally = new Tally();
    const perPoint: Record<string, number> = {};
    const from = trial.dice.below(points.length);
    await sideBySide(trial.count, 8, async (n) => {
      const point = points[(n + from) % points.length]!;
      // After a death what arrives is kept first, and handled then; else both in one transaction.
      const isWary = (n + Math.floor(n / points.length)) % 2 === 1;
      const wrong = await dieOnce(point, { n, isWary }, trial);
      tally.add(wrong.length > 0 && `${point.name}${isWary ? ', wary' : ''}: ${wrong.join('; ')}`);
      perPoint[point.name] = (perPoint[point.name] ?? 0) + 1;
    });
    return tally.found({ points: Object.keys(perPoint).length });
  },
};

/** A message, a death at the point, a life after it. */
async function dieOnce(
  { dieAt, copies, timer }: Point,
  { n, isWary }: { readonly n: number; readonly isWary: boolean },
  { folder, slack }: Trial,
): Promise<readonly string[]> {
  const world = new EchoWorld(join(folder, `${n}.sqlite`), 'telegram', 1);
  if (isWary) leaveOpen(world.file);
  const first = world.live({ watched: true });
  await first.ready;
  tell(first, JSON.stringify({ dieAt }));
  const rings = Date.now() + 100;
  const line = world.write(timer ? `wake ${rings}` : 'hello');
  tell(first, line);
  const patienceMs = 10_000 * slack;
  const giveUp = setTimeout(() => first.child.kill('SIGTERM'), patienceMs);
  const { signal } = await first.ended;
  clearTimeout(giveUp);
  if (signal !== 'SIGKILL') return ['never came to the point'];
  const second = world.live();
  await second.ready;
  // A channel delivers again what was not acknowledged; a repeat of what was kept changes nothing.
  tell(second, line);
  const wanted = timer ? 'timer' : 'hello';
  const answers = (): readonly number[] =>
    [...world.said].filter(([, { text }]) => text.endsWith(wanted)).map(([id]) => world.copies.get(id) ?? 0);
  const came = await comesTrue(() => answers().reduce((sum, one) => sum + one, 0) >= copies, patienceMs);
  // A copy too many would come with the next look.
  await new Promise((resolve) => setTimeout(resolve, 300));
  await die(second);
  const books = booksOf(world.file);
  return [
    came ? null : 'no answer came',
    unlike('copies', answers(), [copies]),
    unlike('integrity', books.integrity, 'ok'),
    unlike('unhandled', books.waiting, 0),
  ].filter((one) => one !== null);
}
