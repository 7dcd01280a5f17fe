/** Times of lessons, through Telegram: each is marked where it stands, so that a phone shows it by its own clock. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { sayIn } from '../../../src/own-content.ts';
import {
  cancelledTidings,
  movedTidings,
  offerTidings,
  reminderTidings,
  writtenTidings,
} from '../../../src/core/lessons/tidings.ts';
import type { Tidings } from '../../../src/core/lessons/tidings.ts';
import { languages } from '../../../src/core/units.ts';
import { render } from '../../../src/delivery/render.ts';
import { content } from '../../the-content.ts';
import { bookingWith, denverAt, lessonWith } from '../../core/lessons/lesson-drafts.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { channelAt, until } from './harness.ts';
import { openHouse } from './house.ts';

const say = sayIn(content);

let server: StandIn;
beforeEach(async () => {
  server = await startStandIn();
});
afterEach(() => server.close());

interface Mark {
  readonly words: string;
  readonly at: number;
}

/** What is marked in the last message this person has. */
function marks(person: number): readonly Mark[] {
  const { text = '', entities = [] } = server.seenBy(person).at(-1) ?? {};
  return entities.flatMap((one) =>
    one.type === 'date_time'
      ? [{ words: text.slice(one.offset, one.offset + one.length), at: one.unix_time * 1000 }]
      : [],
  );
}

const starts = denverAt('2026-12-05T19:00');
const lesson = lessonWith();
const moved = lessonWith({ starts: '2026-12-06T18:00' });
const booking = bookingWith();
const offerUntil = denverAt('2026-12-03T12:00');

const tidings: readonly (readonly [string, Tidings, readonly number[]])[] = [
  ['a reminder', reminderTidings(lesson, booking, 'evening-before'), [starts]],
  ['a week before', reminderTidings(lesson, booking, 'week-before'), [starts]],
  ['two hours before', reminderTidings(lesson, booking, 'two-hours-before'), [starts]],
  ['a move', movedTidings(moved, lesson, booking), [starts, denverAt('2026-12-06T18:00')]],
  ['a cancellation', cancelledTidings(lesson, booking), [starts]],
  ['an offer', offerTidings(lesson, { ...booking, standing: 'offered', offerUntil }), [starts, offerUntil]],
  ['words of the shop', writtenTidings(lesson, 'Bring a towel.'), [starts]],
];

describe.each(languages)('what is told of a lesson, in %s', (language) => {
  it.each(tidings)('%s marks its times', async (_, { phrases, choices }, expected) => {
    const { channel } = channelAt(server);
    server.people.say(7, 'hello', 'en');
    const owed = {
      id: '1',
      person: 7,
      address: { channel: 'telegram', chat: '7' },
      language,
      saying: { phrases, choices },
      priority: 'reply',
      due: 0,
      claimedAt: 0,
      attempts: 0,
      replaces: null,
    } as const;
    expect(await channel.send(render(say, owed))).toMatchObject({ outcome: 'sent' });
    expect(marks(7).map(({ at }) => at)).toEqual(expected);
  });
});

it('a list of lessons, one of them, and a seat in it are marked in a conversation', { timeout: 30_000 }, async () => {
  const house = await openHouse(server, undefined, content.lessons);
  const answered = async (act: () => void): Promise<readonly Mark[]> => {
    const before = server.seenBy(7).length;
    act();
    await until(() => server.seenBy(7).length > before);
    await house.app.settled();
    return marks(7);
  };
  try {
    const list = await answered(() => server.people.say(7, 'which lessons are there?', 'en'));
    expect(list).toHaveLength(8);
    const [first] = list;
    const one = await answered(() => server.people.say(7, '1', 'en'));
    expect(one[0]).toEqual(first);
    expect(first?.words).toMatch(/^[A-Z][a-z]+day, [A-Z][a-z]+ \d+, \d+:\d\d [ap]m$/);
    await answered(() => server.people.say(7, 'book', 'en'));
    const seated = await answered(() => server.people.say(7, '1', 'en'));
    expect(seated).toHaveLength(2);
    expect(seated[0]).toEqual(first);
    expect(seated[1]!.at).toBeLessThan(first!.at);
  } finally {
    await house.close();
  }
});
