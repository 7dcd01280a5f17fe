/** "No thanks, I have to pick up the kids": no, and why not. Nothing else is wanted instead. */
import { plain } from './cut.ts';

/** Longer than that, more is told. */
const longest = 100;

const no =
  /^(?:(?:oh|ah|hm+|well|ok|okay|sorry|thanks|thank you)[,.! ]+)*(?:no(?:pe)?(?: (?:thanks|thank you|thx|ty))|no thanks|nope?(?=[,.;!])|not (?:now|this time|today|yet)|i(?:'ll| will) (?:pass|leave it|skip (?:it|this)|think about it)|another time|maybe (?:later|another time|next time))(?<why>$|[\s,.;!–-].*$)|^[啊喔哦嗯好呃]*[,，]?\s*(?:(?:還是|还是|那就?)?(?:(?:不用|不必|唔使|免|算|不要|先不用|先不要|先不報|先不报|不了|不報|不报)(?:了|啦|喇|嘞)?)+|(?:下次|改天|改日)(?:再[說说看]|吧|先)?|(?:我)?再(?:想想|考慮|考虑|看看)(?:一下)?)(?<han>$|[\s,，。;；!！~～謝谢].*$)/iu;

const wantsElse =
  /[?？]|\b(?:instead|rather|want|like|need|book|take|make it|change|move|meant?|seats?)\b|[改換换訂订]|[報报](?!告)|(?:想|要)(?:[學学看問问]|上(?![班學学]))|想要|(?:幫|帮)我|[嗎吗]|位/iu;

export function declines(sentence: string): boolean {
  const text = plain(sentence).replaceAll('’', "'");
  const groups = text.length > longest ? undefined : no.exec(text)?.groups;
  return groups !== undefined && !wantsElse.test(groups['why'] ?? groups['han'] ?? '');
}
