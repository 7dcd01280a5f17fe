/** F11, F12 and F14: wall times in every zone, a running house across the change of the clocks, and rules that change. */
import { join } from 'node:path';
import { makeApp } from '../../src/app.ts';
import type { Clock } from '../../src/clock.ts';
import { instantOf } from '../../src/core/lessons/calendar.ts';
import { freshLesson, recomputeLesson, type Lesson } from '../../src/core/lessons/lesson.ts';
import { purposes, replanReminders, type Reminder } from '../../src/core/lessons/reminders.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { keptLog, kettle, plainSay } from '../app/kettle.ts';
import { bookingWith, lessonWith } from '../core/lessons/lesson-drafts.ts';
import { fakeChannel } from '../delivery/fake-channel.ts';
import { fakeClock } from '../delivery/fake-clock.ts';
import { compareZones } from '../lessons/zones.ts';
import { incoming } from '../store/samples.ts';
import { Tally, unlike, type Fault, type Trial } from './fault.ts';

export const everyZone: Fault = {
  id: 'F11',
  title: 'wall times in every zone around every change of the clocks 2024–2034, by two implementations',
  unit: 'wall times',
  counts: { few: 20_000, usual: 500_000, long: 10_000_000 },
  seconds: 30,
  run({ count }) {
    const { cases, zones, transitions, shown, differences } = compareZones(count);
    const figures = { zones, transitions, 'never shown': shown.never, 'shown twice': shown.twice };
    return Promise.resolve({ tried: cases, broken: differences, figures });
  },
};

/** 2026, each with its own rule; Lord Howe changes by half an hour. */
const homes = [
  'UTC',
  'Europe/Berlin',
  'America/New_York',
  'Australia/Lord_Howe',
  'America/Havana',
  'America/Santiago',
] as const;
const alsoLong = ['Pacific/Chatham', 'Africa/Cairo', 'Asia/Beirut', 'Africa/Casablanca'] as const;
const times = ['00:00', '00:30', '01:30', '02:00', '02:30', '03:00', '18:30'] as const;

const dayMs = 86_400_000;
const mostWakesAMinute = 100;

export const acrossChanges: Fault = {
  id: 'F12',
  title: 'a running house across both changes of the clocks, whatever zone the process was started in',
  unit: 'calls',
  counts: {
    few: 14,
    usual: homes.length * times.length * 2,
    long: (homes.length + alsoLong.length) * times.length * 2,
  },
  untried:
    'a lesson’s own reminders: what rings here is set by the conversation; tests/lessons/year plays a shop’s year of lessons',
  async run(trial) {
    const tally = new Tally();
    const zones = [...homes, ...alsoLong].slice(0, Math.ceil(trial.count / (times.length * 2)));
    const before = process.env['TZ'];
    let most = 0;
    for (const zone of zones) {
      process.env['TZ'] = zone;
      for (const at of changesOf(zone)) most = Math.max(most, await across(zone, at, trial, tally));
    }
    process.env['TZ'] = before;
    return tally.found({ zones: zones.length, 'most wakes a minute': Math.round(most) });
  },
};

/** The two of 2026; for UTC the two of Berlin, where nothing must happen. */
function changesOf(zone: string): readonly number[] {
  const found: number[] = [];
  const named = zone === 'UTC' ? 'Europe/Berlin' : zone;
  const offsetAt = (at: number): string =>
    new Intl.DateTimeFormat('en', { timeZone: named, timeZoneName: 'longOffset' }).format(at).split('GMT')[1] ?? '';
  for (let at = Date.UTC(2026, 0, 1); at < Date.UTC(2027, 0, 1); at += 3_600_000) {
    if (offsetAt(at) !== offsetAt(at + 3_600_000)) found.push(at);
  }
  return found.slice(0, 2);
}

/** Calls at all these wall times of the day before, the day and the day after; how often the clock was asked a minute. */
async function across(zone: string, changeAt: number, { folder }: Trial, tally: Tally): Promise<number> {
  const start = changeAt - 2 * dayMs;
  const clock = fakeClock(start);
  let wakes = 0;
  const counting: Clock = { now: () => clock.now(), wakeAt: (at, call) => ((wakes += 1), clock.wakeAt(at, call)) };
  const channel = fakeChannel();
  const store = openSqliteStore(join(folder, `${zone.replaceAll('/', '-')}-${changeAt}.sqlite`));
  const app = makeApp({
    store,
    step: kettle,
    say: plainSay,
    channels: [channel],
    clock: counting,
    log: keptLog(),
    keepDays: 90,
  });
  await app.start();
  const dues = new Map<string, number>();
  for (const day of [-1, 0, 1]) {
    const date = new Date(changeAt + day * dayMs).toISOString().slice(0, 10);
    for (const time of times) {
      const due = instantOf(`${date}T${time}`, zone);
      const from = `${date}-${time}`;
      dues.set(from, due);
      await channel.take(incoming(from, `later ${due - start}`, { receivedAt: start }));
    }
  }
  await app.settled();
  const rung = new Map<string, number[]>();
  let heard = 0;
  for (let minutes = 0; minutes < 5 * 24 * 60; minutes += 30) {
    await clock.pass(30 * 60_000);
    for (const { chat } of channel.sent.slice(heard)) rung.set(chat, [...(rung.get(chat) ?? []), clock.now()]);
    heard = channel.sent.length;
  }
  for (const [from, due] of dues) {
    const [at = 0, ...more] = rung.get(`chat-of-${from}`) ?? [];
    // Looked at every half an hour; what was due before the house began is said as it begins.
    const onTime = at >= due && at - Math.max(due, start) <= 30 * 60_000;
    tally.add(
      more.length > 0 && `${zone} ${from}: rung ${more.length + 1} times`,
      !onTime && `${zone} ${from}: rung at ${at}, due ${due}`,
    );
  }
  await app.stop();
  const perMinute = wakes / (5 * 24 * 60);
  tally.wrong(perMinute > mostWakesAMinute && `${zone}: ${perMinute} wakes a minute`);
  return perMinute;
}

export const changedRules: Fault = {
  id: 'F14',
  title: 'rules of a zone that move by an hour under planned lessons',
  unit: 'lessons',
  counts: { few: 5, usual: 20, long: 200 },
  untried: 'the start of a house with newer rules: tests/lessons/rules.test.ts',
  run({ count, dice }) {
    const tally = new Tally();
    for (let i = 0; i < count; i++) {
      const day = String(1 + dice.below(28)).padStart(2, '0');
      const draft = lessonWith({ starts: `2026-12-${day}T${String(10 + dice.below(9)).padStart(2, '0')}:30` });
      const hour = dice.pick([-1, 1]) * 3_600_000;
      const right = freshLesson(draft, 'new');
      const old: Lesson = { ...right, startsAt: right.startsAt + hour, endsAt: right.endsAt + hour, tzVersion: 'old' };
      const booking = bookingWith();
      const now = right.startsAt - 3 * dayMs;
      const kept = replanReminders([], old, booking, now - 10 * dayMs).map((one) =>
        one.dueAt <= now ? { ...one, state: 'sent' as const } : one,
      );
      const again = recomputeLesson(old, 'new');
      const after = rows(kept, replanReminders(kept, again, booking, now));
      const wanted = rows(
        kept,
        replanReminders([], right, booking, now).filter((one) => one.dueAt > now),
      );
      tally.add(
        unlike('start', again.startsAt, right.startsAt),
        unlike(
          'dues to come',
          after.filter((one) => one.state === 'planned'),
          wanted.filter((one) => one.state === 'planned'),
        ),
        unlike(
          'those sent',
          after.filter((one) => one.state === 'sent'),
          kept.filter((one) => one.state === 'sent'),
        ),
      );
    }
    return Promise.resolve(tally.found());
  },
};

/** The kept rows with the written ones in their places. */
const rows = (kept: readonly Reminder[], written: readonly Reminder[]): readonly Reminder[] =>
  purposes.flatMap((purpose) => {
    const named = (one: Reminder): boolean => one.purpose === purpose;
    return written.find(named) ?? kept.find(named) ?? [];
  });
