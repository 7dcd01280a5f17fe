/** Updates a second of the six questions, everything durable with a sync, beside grammY's conversations and beside the floor. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { less, more, type Figure, type Row, type Size } from './figure.ts';
import { inTurns, median, Times } from './rounds.ts';
import { openFloor } from './six-questions/floor.ts';
import { openGrammy } from './six-questions/grammy.ts';
import { openHouse } from './six-questions/house.ts';
import { messages, type OpenTalk, type Talk } from './six-questions/questions.ts';

interface Round {
  readonly perSecond: number;
  readonly times: readonly number[];
}

/**
 * One way of holding the dialogue, opened once and asked for round after round, as a house that runs for months is. Each
 * round so many more people come, so many of them at once, each through the whole dialogue; its time ends when every answer is out.
 */
export async function openRounds(open: OpenTalk, people: number, atOnce: number) {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-bench-'));
  const talk = await open(folder);
  let next = 0;
  return {
    async round(): Promise<Round> {
      const times: number[] = [];
      const last = next + people;
      const began = performance.now();
      await Promise.all(
        Array.from({ length: atOnce }, async () => {
          while (next < last) await holdWith(talk, next++, times);
        }),
      );
      await talk.settled();
      const seconds = (performance.now() - began) / 1000;
      if (talk.said() !== next * messages.length) throw new Error(`${talk.said()} answers to ${next} people`);
      return { perSecond: times.length / seconds, times };
    },
    async close(): Promise<void> {
      await talk.close();
      rmSync(folder, { recursive: true });
    },
  };
}

async function holdWith(talk: Talk, person: number, times: number[]): Promise<void> {
  for (const text of messages) {
    const began = performance.now();
    await talk.tell(person, text);
    times.push(performance.now() - began);
  }
}

const perSecond = (rounds: readonly Round[]): number => median(rounds.map((round) => round.perSecond));
const p99 = (rounds: readonly Round[]): number => new Times(rounds.flatMap((round) => round.times)).p99;

async function compare(
  size: Size,
  atOnce: number,
  reach: { rival: number; floor: number },
): Promise<readonly Figure[]> {
  // A house runs for months: what has run for eight thousand updates is compiled, and counts from then on.
  const [rounds, people, warmUp] = size.quick ? [1, 2, 1] : [7, atOnce === 1 ? 300 : 640, 4];
  const opened = {
    house: await openRounds(openHouse, people, atOnce),
    grammy: await openRounds(openGrammy, people, atOnce),
    floor: await openRounds(openFloor, people, atOnce),
  };
  const contestants = {
    house: () => opened.house.round(),
    grammy: () => opened.grammy.round(),
    floor: () => opened.floor.round(),
  };
  const { house, grammy, floor } = await inTurns(rounds, contestants, warmUp);
  for (const one of Object.values(opened)) await one.close();
  const how = atOnce === 1 ? 'one after another' : `${atOnce} people at once`;
  const ours = perSecond(house);
  return [
    more({
      what: how,
      unit: 'updates/s',
      ours,
      who: 'grammY conversations',
      theirs: perSecond(grammy),
      atLeast: reach.rival,
    }),
    less({
      what: `${how}, p99`,
      unit: 'ms',
      ours: p99(house),
      who: 'grammY conversations',
      theirs: p99(grammy),
      atLeast: 1,
    }),
    more({
      what: how,
      unit: 'updates/s',
      ours,
      who: 'bare SQLite transaction',
      theirs: perSecond(floor),
      atLeast: reach.floor,
    }),
  ];
}

export const dialogue: Row = {
  name: 'dialogue',
  about: 'six questions, durable with a sync',
  measure: async (size) => [
    ...(await compare(size, 1, { rival: 4, floor: 0.7 })),
    ...(await compare(size, 64, { rival: 2.5, floor: 1 })),
  ],
};
