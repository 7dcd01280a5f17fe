/** What is said of a lesson that is over: it was missed, it was lovely, once more, what was that tea called. Knows no lesson. */
import { plain } from './cut.ts';
import { lessonWords } from './lesson-words.ts';

export type Afterwards = 'missed' | 'lovely' | 'once-more' | 'which-tea';

/** Longer texts tell more than that. */
const longest = 120;

const heard: readonly (readonly [Afterwards, RegExp])[] = [
  [
    'which-tea',
    /\b(?:what|which)(?: (?:was|were|is|are)|'s)? (?:that|the|those|it|this)?\b.*\bteas?\b.*\b(?:called|named|name|again|had|drank|drunk|tried|tasted|did we|we (?:had|drank|tried|tasted)|yesterday|last|first|second|third)\b|\b(?:name|names) of (?:the|that|those) (?:\w+ )?teas?\b|\b(?:what|which) teas? (?:did|was|were|have) (?:we|you|it|they|that)\b|(?:昨[天日晚]|上次|那天|[課课]上|[課课]堂上|剛才|刚才|琴日|尋日|寻日|我們|我们).{0,6}(?:喝|泡|飲|饮|試|试|品).{0,8}(?:[茶支款種种杯]).{0,6}(?:叫|是)?(?:什麼|什么|咩|乜|哪)|(?:那|第[一二三])(?:支|款|泡|種|种|個|个|杯)?茶(?:是|叫)(?:什麼|什么|咩|哪)|茶叫(?:什麼|什么)(?:名字?|來著|来着)/iu,
  ],
  [
    'missed',
    /\b(?:missed (?:it|the|that|my|yesterday|last|your)|(?:couldn'?t|could not|didn'?t|did not|wasn'?t able to) (?:come|make it|be there|attend|go)|forgot (?:about )?(?:it|the|my|to come)|overslept|slept in)\b|(?:沒|没)(?:能|有)?(?:去|來|来|到|趕上|赶上|上到|參加|参加)(?:成|了)?|忘(?:了|記|记)(?:去|來|来|上|那)|睡過頭|睡过头|冇(?:去|嚟)到?|[漏錯错](?:了|過|过)(?:[那一]|昨|上)?.{0,2}[堂節节課课]/iu,
  ],
  [
    'once-more',
    new RegExp(
      `\\b(?:do|take|come to|join|attend|repeat) (?:it|that|the same|that one|(?:the|that|this) ${lessonWords}) (?:once more|again|another time)\\b|\\bcome again\\b|\\banother one like (?:it|that)\\b|\\b(?:same|that) (?:one|${lessonWords}) again\\b|再(?:上|去|來|来|參加|参加)一?[次堂節节回]|同樣的課|同样的课|[還还]有下一?[次堂節节][嗎吗]`,
      'iu',
    ),
  ],
  [
    'lovely',
    /\b(?:lovely|great|wonderful|fun|enjoyed|loved|fantastic|amazing|brilliant|learn(?:ed|t) (?:a lot|so much|loads)|such a (?:nice|good|great)|really (?:good|nice|liked)|liked it|had a (?:good|great|nice|lovely) (?:time|evening|morning|afternoon))\b|[很好真超太].{0,2}(?:好玩|棒|讚|赞|開心|开心|有趣|精彩|喜歡|喜欢|有收[獲获]|值得|正|犀利)|(?:學|学)(?:到|了)(?:很多|好多|不少)|(?:課|课|老師|老师).{0,6}(?:很好|好棒|真好|很棒|讚|赞)/iu,
  ],
];

/** The first that fits; null where nothing of the kind is said. */
export function hearAfterwards(sentence: string): Afterwards | null {
  if (sentence.length > longest) return null;
  const text = plain(sentence).replaceAll('’', "'");
  return heard.find(([, pattern]) => pattern.test(text))?.[0] ?? null;
}
