/** What is meant of the shop and its lessons and sounds like something else: a language asked for, somebody on their way. It books nothing. */
import { mayBeNoDanger } from './harmless.ts';
import { says, type Scene } from './scene.ts';

/** 用中文講嗎, where lessons are talked of: in which language it is held. */
export function asksLanguageOfLesson(scene: Scene): boolean {
  const isOfLessons = scene.flow === 'lesson' || says('of-lessons')(scene);
  return isOfLessons && scene.heard['act'] === 'language' && asksIt.test(scene.words);
}
const asksIt = /[?？嗎吗么麼]$|[?？]/;

/** 那我明天過去; of a lesson that is booked it tells who comes. */
export function visits(scene: Scene): boolean {
  const { heard, house, flow, words } = scene;
  const hasBooked = Array.isArray(house?.['bookings']) && house['bookings'].length > 0;
  const mayBe = heard['kind'] === 'offtopic' || heard['kind'] === 'shop' || heard['kind'] === 'lesson';
  return (
    mayBe && !hasBooked && flow !== 'lesson' && flow !== 'lesson-desk' && !asksIt.test(words) && says('visits')(scene)
  );
}

/** 女兒七歲可以一起來嗎, where lessons are talked of or booked: a question to the shop, and none of what a child may drink. */
export function bringsChild(scene: Scene): boolean {
  const { heard, house, flow, words } = scene;
  const hasBooked = Array.isArray(house?.['bookings']) && house['bookings'].length > 0;
  const isOfLessons = flow === 'lesson' || hasBooked || says('of-lessons')(scene);
  const isOfChildren = heard['kind'] === 'safety' && heard['answer'] === 'children';
  return isOfLessons && isOfChildren && comesAlong.test(words) && !drinks.test(words);
}
const comesAlong = /参加|报名|上课|带|[来去上到]|\b(?:come|bring|join|attend|take part|sit in)/;
const drinks = /[喝饮]|\b(?:drink|sip|have (?:some )?tea)/;

/** 阿明說他不能來了, of a lesson: nobody is unwell. */
export function staysAway(scene: Scene): boolean {
  const { heard, house, flow, words } = scene;
  const hasBooked = Array.isArray(house?.['bookings']) && house['bookings'].length > 0;
  return mayBeNoDanger(heard) && (flow === 'lesson' || hasBooked) && staysAwayInHan.test(words);
}
const staysAwayInHan = /(?:不能|不会|没法|没办法)[来去](?:上课)?(?:了|$)|[来去]不(?:了|到)|不[来去]了?$/;

/** 開始學喝茶，150的小壺茶葉放多少: how to brew, and no word of a lesson. */
export const learnsAlone = (scene: Scene): boolean =>
  scene.heard['kind'] === 'lesson' &&
  scene.flow !== 'lesson' &&
  scene.heard['vessel'] !== null &&
  scene.heard['volumeMl'] !== null &&
  !says('of-lessons')(scene) &&
  leafAsked.test(scene.words);
const leafAsked = /茶叶(?:要|该)?(?:放|抓|铺|投|落)|几克|多少克|水温|几度|几秒|多久/;
