/** The house with its real flows, a lesson on a Saturday evening, and a clock that begins days before. */
import type { LessonDraft } from '../../src/core/lessons/lesson.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Outgoing } from '../../src/messages.ts';
import { ShopHouse } from '../conversation/shop-house.ts';
import { day, lessonOf } from '../store/lesson-samples.ts';

export class LessonHouse extends ShopHouse {
  protected override opens(): Instant {
    return day;
  }

  /** In which the lesson with these differences is planned. */
  static async with(more: Partial<LessonDraft> = {}, ...shopkeepers: string[]): Promise<LessonHouse> {
    const house = new LessonHouse(...shopkeepers);
    house.lessons = { lessons: [lessonOf(more)], series: [] };
    await house.open();
    return house;
  }

  /** At this instant, as after a sleep. */
  async at(instant: Instant): Promise<readonly Outgoing[]> {
    return this.sleep(Math.max(0, instant - this.clock.now() - 2_000));
  }

  async books(who: string, seats = 1): Promise<string> {
    return this.does(who, `I'd like to book ${seats} seats in white tea`);
  }
}

/** The beginnings of what is told of a lesson, by which it is known. */
const beginnings: readonly (readonly [string, RegExp])[] = [
  ['week-before', /^A lesson of yours is coming up/],
  ['evening-before', /^Your lesson is near/],
  ['two-hours-before', /^See you soon/],
  ['thanks', /^Thank you for coming/],
  ['offer', /come free/],
  ['lapsed', /^The time to take the seat/],
];

export function kindsOf(messages: readonly Outgoing[]): readonly string[] {
  return messages.map(
    ({ paragraphs: [first = ''] }) => beginnings.find(([, words]) => words.test(first))?.[0] ?? first,
  );
}
