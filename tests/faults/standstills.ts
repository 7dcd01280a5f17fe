/** F13: the house was closed over what fell due, for seconds or for days. */
import { join } from 'node:path';
import { makeApp } from '../../src/app.ts';
import { dueReminders, replanReminders, type Reminder } from '../../src/core/lessons/reminders.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { keptLog, kettle, plainSay } from '../app/kettle.ts';
import { bookingWith, lessonWith } from '../core/lessons/lesson-drafts.ts';
import { fakeChannel, type FakeChannel } from '../delivery/fake-channel.ts';
import { fakeClock, rest, type FakeClock } from '../delivery/fake-clock.ts';
import { incoming, noon } from '../store/samples.ts';
import { Tally, unlike, type Fault, type Trial } from './fault.ts';

const hour = 3_600_000;
const closedMs = [1_000, 61_000, hour, 25 * hour, 8 * 24 * hour] as const;
const people = 20;

export const standstills: Fault = {
  id: 'F13',
  title: 'a house that was closed when things fell due',
  unit: 'standstills',
  counts: { few: 5, usual: 100, long: 1_000 },
  seconds: 40,
  untried:
    'lessons in a running house: here the rule alone; tests/lessons/year plays a house that is closed now and then',
  async run(trial) {
    const tally = new Tally();
    for (let i = 0; i < trial.count; i++) {
      const closed = closedMs[i % closedMs.length]!;
      tally.add(await overCalls(closed, i, trial), overReminders(closed, trial));
    }
    return tally.found({ 'calls each': people });
  },
};

async function open(file: string, clock: FakeClock) {
  const channel = fakeChannel();
  const store = openSqliteStore(file);
  const parts = { step: kettle, say: plainSay, clock, log: keptLog(), keepDays: 90 };
  const app = makeApp({ store, channels: [channel], ...parts });
  await app.start();
  return { app, channel };
}

/** Half are said at their instant, half ring and are answered; what fell due meanwhile comes with the start. */
async function overCalls(closed: number, n: number, { folder, dice }: Trial): Promise<string | null> {
  const file = join(folder, `${n}.sqlite`);
  const clock = fakeClock(noon);
  const first = await open(file, clock);
  // What falls due later is not waited for longer than a day: each minute of it the house looks.
  const openMs = Math.min(closed, 25 * hour);
  const dues = Array.from({ length: people }, () => 1 + dice.below(closed + openMs));
  for (const [i, due] of dues.entries()) {
    await first.channel.take(incoming(`p${i}`, `${i % 2 === 0 ? 'later' : 'wake'} ${due}`, { receivedAt: noon }));
  }
  await first.app.settled();
  await first.app.stop();
  await clock.pass(closed);
  const second = await open(file, clock);
  await rest();
  await second.app.settled();
  const overdue = dues.flatMap((due, i) => (due <= closed ? [`chat-of-p${i}`] : []));
  const caughtUp = unlike('said with the start', chatsOf(second.channel), overdue.toSorted());
  await clock.pass(openMs + 1_000);
  await second.app.settled();
  const all = unlike('said in all', chatsOf(second.channel), dues.map((_, i) => `chat-of-p${i}`).toSorted());
  await second.app.stop();
  return [caughtUp, all].filter((one) => one !== null).join('; ') || null;
}

const chatsOf = ({ sent }: FakeChannel): readonly string[] => sent.map(({ chat }) => chat).toSorted();

/** Never a burst: of one booking at most one reminder is owed, and none of a lesson that has begun but thanks. */
function overReminders(closed: number, { dice }: Trial): string | null {
  const lesson = lessonWith({ starts: '2026-12-05T14:00' });
  const booking = bookingWith();
  let kept: readonly Reminder[] = replanReminders([], lesson, booking, lesson.startsAt - 30 * 24 * hour);
  const sent: Reminder[] = [];
  let now = lesson.startsAt - 9 * 24 * hour + dice.below(24) * hour;
  for (
    let looks = 0;
    looks < 100 && now < lesson.endsAt + 5 * 24 * hour;
    looks++, now += closed < hour ? hour : closed
  ) {
    const { send, settle } = dueReminders(kept, lesson, booking, now);
    const settled = [...settle, ...(send ? [{ ...send, state: 'sent' as const }] : [])];
    kept = kept.map((one) => settled.find((other) => other.purpose === one.purpose) ?? one);
    if (send && send.purpose !== 'thanks' && now >= lesson.startsAt) return `${send.purpose} after the lesson began`;
    if (send) sent.push(send);
  }
  return new Set(sent.map(({ purpose }) => purpose)).size === sent.length ? null : 'a reminder was sent twice';
}
