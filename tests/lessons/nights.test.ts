/** What could not be sent by day is not sent by night: the whole house, a network that is gone for hours, and who sleeps. */
import { afterEach, describe, expect, test } from 'vitest';
import type { Instant } from '../../src/core/units.ts';
import { denverAt } from '../store/lesson-samples.ts';
import { kindsOf, LessonHouse } from './lesson-house.ts';

const second = 1_000;
const minute = 60 * second;
const hour = 60 * minute;

let house: LessonHouse;
afterEach(() => house.end());

/** Goes on until then; what was sent meanwhile. */
async function until(instant: Instant): Promise<readonly string[]> {
  const before = house.sent.length;
  await house.clock.pass(instant - house.clock.now());
  await house.app.settled();
  return kindsOf(house.sent.slice(before));
}

async function booked(lessonStarts: string, due: Instant): Promise<void> {
  house = await LessonHouse.with({ starts: lessonStarts });
  await house.books('ann');
  await house.at(due - minute);
}

const noNetwork = (): void => void house.web.outcomes.push(...Array.from({ length: 200 }, () => failed));
const failed = { outcome: 'retry', why: 'no network' } as const;
const networkBack = (): void => void house.web.outcomes.splice(0);

describe('when the network is gone', () => {
  test.each<[string, string, string, string, readonly string[], readonly string[]]>([
    ['by day: as soon as it is back', '05T19:00', '04T18:00', '04T19:30', ['evening-before'], []],
    ['into the night: in the morning', '05T19:00', '04T18:00', '04T21:30', [], ['evening-before']],
    ['into the night before a lesson at dawn: at night', '05T07:00', '04T20:45', '04T21:30', ['two-hours-before'], []],
    ['into the night, and a later one is due by morning', '05T10:00', '04T18:00', '04T21:30', [], ['two-hours-before']],
    ['when people are thanked: in the morning', '05T19:00', '05T20:45', '05T22:00', [], ['thanks']],
  ])('%s', async (_, lesson, due, back, atNight, inTheMorning) => {
    const [duePast, backAt] = [`2026-12-${due}`, `2026-12-${back}`].map(denverAt) as [Instant, Instant];
    await booked(`2026-12-${lesson}`, duePast);
    noNetwork();
    const tries = await until(backAt);
    expect(tries.length).toBeGreaterThan(1);
    networkBack();
    const morning = denverAt(`2026-12-${due.startsWith('04') ? '05' : '06'}T08:00`);
    expect(await until(Math.min(backAt + hour, morning - second))).toEqual(atNight);
    await house.at(morning - 10 * second);
    expect(await until(morning + minute)).toEqual(inTheMorning);
  });

  test('for a day and longer, the shop is told whom it could not reach', async () => {
    await booked('2026-12-05T22:00', denverAt('2026-12-04T18:00'));
    noNetwork();
    await until(denverAt('2026-12-05T18:30'));
    const kept = await house.store.exportOf((await house.store.find('web', 'ann')) ?? 0);
    expect(kept).toMatchObject({ task: [{ task: 'undelivered' }] });
  });
});

/** How often the next on the list was offered the seat. */
const offers = (): number => kindsOf(house.messages('ben')).filter((kind) => kind === 'offer').length;

describe('when a seat is given back at night', () => {
  const night = denverAt('2026-12-01T22:30');
  const morning = denverAt('2026-12-02T08:00');
  const givenBack = async (starts: string): Promise<void> => {
    house = await LessonHouse.with({ seats: 1, starts });
    await house.books('ann');
    await house.does('ben', 'book 1 seat in white tea');
    await house.does('ben', 'put me on the waiting list');
    await house.at(night);
    await house.does('ann', "I can't come");
  };

  test.each<[string, number, number, string]>([
    ['is rung at eight', morning - second, morning, '10:00'],
    ['is rung when the house is back', morning - second, morning + 3 * hour, '1:00'],
  ])('who is offered it %s, once', async (_, stopped, back, kept) => {
    await givenBack('2026-12-05T19:00');
    await house.at(stopped);
    expect(offers()).toBe(0);
    await house.sleep(back - house.clock.now());
    expect(house.messages('ben').at(-1)?.paragraphs[0]).toMatch(new RegExp(`come free.*until.*${kept}`));
    await house.crash();
    await house.clock.pass(minute);
    await house.app.settled();
    expect(offers()).toBe(1);
  });

  test('who is awake and looks is told, may take it, and is not rung', async () => {
    await givenBack('2026-12-05T19:00');
    expect(await house.does('ben', { kind: 'open', payload: 'lesson-white-evening' })).toContain('10:00');
    expect(await house.tap('ben', 'Take it')).toContain('The seat is yours');
    await house.at(morning);
    expect(offers()).toBe(0);
  });

  test('before a lesson at dawn, it is offered at once', async () => {
    await givenBack('2026-12-02T07:30');
    expect(offers()).toBe(1);
  });
});

describe('when the power goes in the evening and comes back at night', () => {
  test('what was being sent comes again in the morning', async () => {
    const nightfall = denverAt('2026-12-05T21:00');
    await booked('2026-12-05T19:14', nightfall - minute);
    house.web.outcomes.push({ ...failed, notBefore: nightfall - 20 * second });
    house.hang();
    await house.clock.pass(2 * minute + 5 * second);
    await house.crash();
    expect(await until(nightfall + hour)).toEqual([]);
    await house.at(denverAt('2026-12-06T07:59'));
    expect(await until(denverAt('2026-12-06T08:01'))).toEqual(['thanks']);
  });
});
