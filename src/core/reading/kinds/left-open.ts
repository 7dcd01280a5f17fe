/** Whether a tea may be brewed in some way that nothing here knows of: "is sparkling water ok for sencha", 高山茶用電鍋泡可以嗎. */
import { readInfusion } from '../acts.ts';
import { unnamed } from '../answers/beside-name.ts';
import { readDrawn } from '../amounts/drawn.ts';
import type { Observation } from '../observation.ts';

const asksWhether =
  /可以|能不能|可不可以|可唔可以|能.{1,12}吗|行不行|得唔得|会不会|会唔会|好不好|[吗咩嘛][?？]*$|^(?:(?:hi|hello|so|and|hey|please|also|ok|but),? )*(?:can|could|do|does|is|are|will|would|should|may)\b(?! (?:you|u|i ask|someone)\b)/;

/** What a wish for the brew itself is made of: 我可以泡這茶嗎 asks nothing more. */
const wishForIt =
  /[我你您想要会能可以不唔行得好吗咩嘛呢啊呀的嘅了喇教帮算一下怎么样点泡冲沏煮喝饮请问在家今天现在而家就用给俾这茶先吧\p{P}\s]+|\b(?:can|could|do|does|is|are|will|would|should|may|i|we|it|brew|make|have|drink|try|this|steep|cook|please|the|a|some|now|today|here|at|home|tea|tell|know|how|to|me|get|ok|good|be|and|so|hi|hello|hey|also|but)\b/gu;

export function isLeftOpen(seen: Observation): boolean {
  const { words, teas, vessels, quantities, leafSpoons, cues } = seen;
  if (teas.length === 0 || vessels.some(({ meaning }) => meaning.is !== 'nothing') || leafSpoons !== null) return false;
  if (Object.values(quantities).some(({ value, mistake }) => value !== null || mistake)) return false;
  if (readInfusion(words) !== null || readDrawn(seen, { ofCup: false }) !== null) return false;
  // Rinsing has its own answer.
  if (cues.has('plan-rinse', words)) return false;
  return asksWhether.test(words) && unnamed(seen).replace(wishForIt, ' ').trim() !== '';
}
