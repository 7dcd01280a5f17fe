/** Greetings, and orders to a machine. */
import type { Cues } from './cues.ts';

interface Scene {
  readonly text: string;
  readonly cues: Cues;
  readonly namesTea: boolean;
  readonly namesVessel: boolean;
  readonly hasVolume: boolean;
  readonly hasOther: boolean;
}

const order =
  /\b(?:ignore|disregard|forget|override|bypass)\b.{0,30}\b(?:instruction|prompt|rule|previous|above|guideline)|system prompt|drop table|<\s?script|忽略.{0,12}(?:指令|指示|规则)|无视.{0,12}(?:指令|指示|规则)|系统提示/;

export function isOrder(text: string): boolean {
  return order.test(text);
}

/** What may stand beside a greeting or thanks without asking anything. */
const politeWords =
  /\b(?:there|all|everyone|everybody|guys|friend|so|very|much|a|lot|for|the|your|you|help|again|that|was|is|its|it|great|nice|helpful|really|my|dear|sir|madam|maam|folks|team|ok|okay|bye|and|to|me|this|lovely|kind|of|im|new|here|just|saying|shop|keeper|shopkeeper|advice|answer|quick|reply|tea)\b|[你您们晚了晒啊呀哦啦呢吗的嘅哈帮忙助很非常真系是解答回复老板店主大家小姐先生各位朋友好早安再见有人]/g;

export function isGreeting({ text, cues, namesTea, namesVessel, hasVolume, hasOther }: Scene): boolean {
  if (namesTea || namesVessel || hasVolume || hasOther) return false;
  if (!cues.has('hello', text) && !cues.has('thanks', text)) return cues.is('yes', text) || cues.is('no', text);
  const rest = cues
    .without('thanks', cues.without('hello', text))
    .replace(politeWords, ' ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return rest.length <= 2;
}
