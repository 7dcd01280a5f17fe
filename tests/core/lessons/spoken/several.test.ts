import { expect, it } from 'vitest';
import { severalMeant } from '../../../../src/core/lessons/spoken/several.ts';
import { hearWish } from '../../../../src/core/lessons/spoken/wish.ts';
import { listen } from '../heard-here.ts';
import { denver, denverAt, lessonWith } from '../lesson-drafts.ts';

/** A Tuesday. */
const now = denverAt('2026-12-01T12:00');
const titled = (id: string, en: string, han: string, starts: string) =>
  lessonWith({ id, title: { en, 'zh-Hant': han, 'zh-Hans': han }, starts });
const lessons = [
  titled('cup', 'The first cup', '第一杯茶', '2026-12-05T10:30'),
  titled('gaiwan', 'An evening with the gaiwan', '盖碗之夜', '2026-12-10T18:30'),
  titled('cup-2', 'The second cup', '第二杯茶', '2026-12-12T10:30'),
  titled('rock', 'Roast and rock', '火与岩', '2026-12-12T14:00'),
];
const meantBy = (text: string) => severalMeant(listen(text), hearWish(listen(text), now, denver), lessons);

it.each<[string, readonly string[]]>([
  ['周六的两节课我都想上', ['cup-2', 'rock']],
  ['12號兩堂都要報', ['cup-2', 'rock']],
  ['both lessons on Saturday please', ['cup-2', 'rock']],
  ['盖碗之夜和火与岩我都想报', ['gaiwan', 'rock']],
  ['報週六的課', []],
  ['我们两个人都想上盖碗之夜', []],
  ['周六的课都满了吗', []],
])('%s', (text, ids) => {
  expect(meantBy(text).length > 1 ? meantBy(text) : []).toEqual(ids);
});
