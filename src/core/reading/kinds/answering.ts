/** Whether a message may answer what was asked just before it. It weighs nothing. */
import type { Observation } from '../observation.ts';

/** What a tea is no answer to. */
const asksForOther: ReadonlySet<string> = new Set(['vessel', 'volumeMl', 'leafG', 'tempC']);
const opensAsking =
  /^(?:(?:and|but|so|ok|wait|also|hi|oh|by the way|btw),? )*(?:how|what|why|where|when|which|do|does|did|should|can|could|is|are|will|would|may)\b|怎么|怎样|点样|如何|[吗咩嘛][?？]?$/;

/** Asked in return, it answers nothing. */
const asksBack =
  /^(?:which|what|do you|have you|can you|are you|where|when|who)\b|边只|边款|哪款|哪种|推荐|推介|\b(?:lessons?|class(?:es)?|workshops?|courses?)\b|有什么|有咩|有乜|几钱|多少钱|几点|营业|开门|关门|打烊|地址/;
/** So short a text is an answer, whatever it says. */
const shortAnswer = 30;

/** Whether this may answer what was just asked. */
export function isAnswering({ asked, plain, teas, vessels, quantities, strangeTea }: Observation): boolean {
  if (asked === null) return false;
  // "How do I store keemun?", asked for the vessel: of a tea, and no answer.
  if (teas.length > 0 && vessels.length === 0 && asksForOther.has(asked) && opensAsking.test(plain)) return false;
  const told = teas.length > 0 || vessels.length > 0 || (asked === 'tea' && strangeTea !== null);
  const short = plain.length <= shortAnswer && !asksBack.test(plain);
  return told || short || Object.values(quantities).some((q) => q.value !== null || q.mistake);
}
