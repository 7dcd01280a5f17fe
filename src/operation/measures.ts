/** What is measured of this house, counted as it passes into the store and out of it. Never who, never what was said. */
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { statSync } from 'node:fs';
import type { Instant } from '../core/units.ts';
import type { Owed, Store } from '../store/contract.ts';
import type { Health } from './health.ts';
import { gauge, makeMetrics, total } from './metrics.ts';

export interface Measures {
  /** The same store; what passes through is counted. */
  counted(store: Store): Store;
  text(health: Health): string;
  stop(): void;
}

/** Seconds. A call to pour is promised within 0.1 s; replies wait for the channel's pace. */
const latenessBounds = [0.01, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 15, 60, 300];

export function makeMeasures(databaseFile: string, startedAt: Instant): Measures {
  const metrics = makeMetrics();
  const incoming = metrics.counter('ninthpour_incoming_total', 'What arrived, by channel; seen: a repeat.');
  const turns = metrics.counter(
    'ninthpour_turns_total',
    'Events handled; moved: read again, because another came first.',
  );
  const sendings = metrics.counter('ninthpour_sendings_total', 'Sendings by channel and what became of them.');
  const lateness = metrics.histogram(
    'ninthpour_delivery_lateness_seconds',
    'How long after it was due a message was out, when the first sending succeeded.',
    latenessBounds,
  );
  const loop = monitorEventLoopDelay({ resolution: 10 });
  loop.enable();
  const underWay = new Map<string, Owed>();

  return {
    counted: (store) => ({
      ...store,
      async record(one, atOnce) {
        const recorded = await store.record(one, atOnce);
        incoming.add({ channel: one.channel, outcome: recorded.outcome });
        if (recorded.handled) turns.add({ outcome: recorded.handled.outcome });
        if (recorded.taken) underWay.set(recorded.taken.id, recorded.taken);
        return recorded;
      },
      async commit(commit) {
        const outcome = await store.commit(commit);
        turns.add({ outcome: outcome === 'moved' ? outcome : commit.outcome });
        return outcome;
      },
      async claim(claim) {
        const claimed = await store.claim(claim);
        for (const owed of claimed) underWay.set(owed.id, owed);
        return claimed;
      },
      async settle(id, settlement, now) {
        const owed = underWay.get(id);
        underWay.delete(id);
        await store.settle(id, settlement, now);
        sendings.add({ channel: owed?.address.channel ?? '', outcome: settlement.kind });
        if (!owed || settlement.kind !== 'sent' || owed.attempts > 0) return;
        lateness.observe(Math.max(0, now - owed.due) / 1000, { priority: owed.priority });
      },
    }),
    text: (health) => metrics.text() + ofHouse(health) + ofProcess(loop, startedAt) + ofFiles(databaseFile),
    stop: () => void loop.disable(),
  };
}

function ofHouse({ ready, vitals, oldestUndeliveredS, backupAgeS, lastPollAgeS }: Health): string {
  const polls = Object.entries(lastPollAgeS).flatMap(([channel, value]) =>
    value === null ? [] : [{ labels: { channel }, value }],
  );
  return [
    gauge('ninthpour_ready', '1 when the store answers.', [{ value: ready ? 1 : 0 }]),
    gauge('ninthpour_last_poll_age_seconds', 'Since the last answered poll.', polls),
    gauge(
      'ninthpour_backup_age_seconds',
      'Age of the newest backup.',
      backupAgeS === null ? [] : [{ value: backupAgeS }],
    ),
    gauge('ninthpour_oldest_undelivered_seconds', 'How long the oldest message is overdue.', [
      { value: oldestUndeliveredS },
    ]),
    ...(vitals === null
      ? []
      : [
          gauge('ninthpour_undelivered', 'Messages due and not sent.', [{ value: vitals.undelivered }]),
          gauge('ninthpour_unhandled', 'Incomings not handled.', [{ value: vitals.unhandled }]),
          gauge('ninthpour_questions_waiting', 'Questions that wait for the shop.', [{ value: vitals.questions }]),
          gauge('ninthpour_tasks_open', 'What was passed to the shop and is open.', [{ value: vitals.tasks }]),
        ]),
  ].join('');
}

function ofProcess(loop: ReturnType<typeof monitorEventLoopDelay>, startedAt: Instant): string {
  const { user, system } = process.cpuUsage();
  const delays = [50, 99, 100].map((percent) => ({
    labels: { share: String(percent / 100) },
    value: seconds(loop.percentile(percent)),
  }));
  loop.reset();
  return [
    gauge('ninthpour_event_loop_delay_seconds', 'How late the event loop came round since last asked.', delays),
    gauge('process_resident_memory_bytes', 'Memory in use.', [{ value: process.memoryUsage.rss() }]),
    total('process_cpu_seconds_total', 'Processor time used.', (user + system) / 1e6),
    gauge('process_start_time_seconds', 'When the process started.', [{ value: startedAt / 1000 }]),
  ].join('');
}

/** Nothing was sampled yet: the recorder says NaN. */
const seconds = (ns: number): number => (Number.isFinite(ns) ? ns / 1e9 : 0);

function ofFiles(databaseFile: string): string {
  const samples = ['', '-wal'].map((ending) => ({
    labels: { part: ending === '' ? 'database' : 'log' },
    value: statSync(`${databaseFile}${ending}`, { throwIfNoEntry: false })?.size ?? 0,
  }));
  return gauge('ninthpour_file_bytes', 'Size of the database and of its write-ahead log.', samples);
}
