/** Where somebody wants a brew to go: begin, leave one out, wait, end, be called. It takes it nowhere. */
import { readNumber } from '../lessons/spoken/numeral.ts';

export type Steer = 'begin' | 'skip' | 'pause' | 'end' | 'remind';

const filler =
  '(?:(?:ok|okay|oke|alright|all right|right|well|so|now|then|please|pls|yes|yeah|yep|sure|great|cool|good|come on|and|hey|hi|hello|um|uh|uhm|oh|actually|thanks|just|in that case|sounds good|perfect|lovely|i think|i guess|can you|could you|would you|will you|can we|shall we|i want you to|id like you to|im|i am|were|we are|好|好的|好啊|好呀|好喔|好哦|好嘞|行|可以|嗯|哦|喔|来|那|就|咁|唔该|麻烦|请|你|快|而家|现在|先|不好意思|谢谢|没事|不要紧|得|never ?mind|no worries|its (?:fine|ok|okay)|ok啦|ok啊)[\\s,，.。!！、~～]*)*';
const tail =
  '(?:[\\s,，.。!！、~～]*(?:please|pls|then|now|thanks|thank you|ok|if you can|if you like|吧|啦|喇|呀|啊|了|喔|哦|呢|嘛|嘞|咯|谢谢|好吗|可以吗|好不好|行吗|行不行))*[\\s.。!！?？~～]*$';
const whole = (...patterns: readonly string[]): RegExp => new RegExp(`^${filler}(?:${patterns.join('|')})${tail}`);

const begin = whole(
  'show me(?: how| the way| what to do| how its done| how to(?: do it| brew it| make it| start)?| step by step)?',
  '(?:guide|walk|take|lead|talk|help)(?: us| me)(?: through| along| with)?(?: it| this| that| the brew| the steps| step by step| brew(?: it)?| make it| do it)*',
  'step by step',
  'brew(?: it| now)?',
  'lets (?:go|start|begin|get (?:started|going|brewing)|do (?:it|this)|brew(?: it)?|make it|try(?: it)?)',
  '(?:start|begin|get started|i (?:start|begin))(?: brewing| it| the brew| brewing it)?',
  '(?:all )?ready(?: to (?:go|brew|start|begin))?|all set|everything(?:s| is) (?:ready|set out|here|there)|set out',
  '(?:go|carry|move) (?:on|ahead|along)|continue|on we go',
  '(?:brew|do|make) (?:it )?(?:along )?(?:with me|together)',
  '(?:带|教|陪|领|引导|指导)(?:着|住|埋|一下)?(?:我|我们)(?:怎么)?(?:泡|做|来|弄|一起|一步步|一步一步|一次|一遍|走一遍|开始|下)*',
  '(?:我们?)?(?:要|想)?开始(?:泡|做|弄)?(?:茶)?|来泡(?:茶)?|泡起来|动手|教我|教下我|来吧|走起|走吧',
  '继续(?:泡|吧)?|接着泡|(?:都|我|全部|已经)*(?:准备|备|预备)(?:好|齐|妥)(?:(?:了|喇|啦)?[，, ]*(?:可以)?开始)?|跟(?:着|住)你(?:做|泡)',
);
const skip =
  /\b(?:skip|leave out|miss out|pass on|give .{0,12} a miss)\b(?!.{0,20}\b(?:class|lesson|week)\b)|\bskipping\b|(?:跳过|略过|省掉|skip)|这(?:一)?泡(?:就)?(?:不(?:要|喝|泡)|免)(?:了)?|不(?:要|想)?(?:喝|泡)住?这(?:一)?泡/;
const skipsTo =
  /\b(?:to|until|till) (?:the )?(?:number |no |infusion |steep |round )*(?<n>\d{1,2})|\bto (?:the )?(?<word>third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)\b|(?:到|去|落)第?(?<han>[一二两三四五六七八九十]{1,2}|\d{1,2})(?:泡|道|次)?/;
const pause = whole(
  '(?:hang on|hold on|wait|one (?:sec|second|moment|minute)|just a (?:sec|second|moment|minute)|gimme a (?:sec|minute)|give me a (?:sec|second|moment|minute)|be right back|back in a (?:sec|bit|minute|moment)|(?:need|have|got|gotta)(?: to)? (?:take|get|answer|go|do|see)(?: this| the| a| to)*(?: call| phone| door| kids?| something)?|phones? ringing|someones at the door|pause(?: it| this| for (?:a|now).{0,12})?)(?: a| for a)?(?: sec| second| moment| minute| bit)?',
  '(?:等|停)(?:一?下|一等|阵|一阵|等|我|会儿?|一会儿?)+|(?:我)?(?:接|听)(?:个|一下)?电话|(?:我)?(?:马上|很快|阵间|等阵|一阵|待会)(?:就)?(?:回来|返来|来)|暂停(?:一下)?|有人(?:敲|按)门',
);
const end = whole(
  '(?:we|i|that)?(?:re|m|s| are| am| is|ve| have)? ?(?:all )?(?:done|finished|through|had enough)(?: here| for (?:today|now|tonight)| with (?:it|this|the tea|this one|brewing))*(?:,? .{0,24})?',
  '(?:lets |ill |i will |we will |id like to |i want to )?(?:stop|end|finish|call it a day|leave it (?:here|there|at that))(?: here| it| now| there| this| the brew| brewing)*',
  'no more (?:for me|for today|tea|today)|enough(?: tea)?(?: for (?:me|us|today|now|tonight))?',
  '(?:算(?:了|啦)[\\s,，]*)?(?:就)?(?:结束|收工|收杯|收摊|到此为止|停(?:了|在这)|泡到这(?:里)?|就这样|到这(?:里)?)',
  '(?:我|我们|都)?(?:不(?:想)?(?:喝|泡)|喝(?:够|饱|完|不下|不动)|泡完)(?:了)?(?:[\\s,，]*(?:结束|收工|就这样))?',
);
const remind =
  /\bremind (?:me|us)\b|\b(?:set|put|start|make|give)(?: me| us)?(?: on)?(?: an?| the)? (?:reminder|alarm|timer)\b|\breminder\b|\balarm\b|\b(?:ping|alert|notify|buzz|wake|call|text|message|tell|nudge)(?: me| us) (?:when|once|at|as soon|in time|then|tomorrow|tonight)\b|\blet (?:me|us) know when\b|提(?:醒)?(?:我|下我|一下我|返我)|(?:设|定|调|较|开)(?:个|一个|好)?(?:提醒|闹钟|计时|闹铃)|提醒(?:一下)?(?:功能|吗|我|下)?$|(?:到时候?|时间到|好了|泡好)(?:就|再|记得|可以|能|会)*(?:叫|喊|提|通知|告诉|call)(?:一下|声)?我|(?:叫|喊|通知)(?:一下|声)?我(?:一声|一下)?(?:拿|捞|倒|取)/;
/** Of a seat, the house reminds by itself. */
const ofLessons =
  /\b(?:lessons?|class(?:es)?|courses?|workshops?|seats?|booking|evening before)\b|课|堂|报名|座位|上课/;
/** Longer texts tell more than that. */
const longest = 80;

/** `words` as cues are written, in one Chinese. */
export function steered(words: string): Steer | null {
  if (words.length > longest) return null;
  if (remind.test(words)) return ofLessons.test(words) ? null : 'remind';
  if (begin.test(words)) return 'begin';
  if (pause.test(words)) return 'pause';
  if (end.test(words)) return 'end';
  return skip.test(words) ? 'skip' : null;
}

/** How far it is, how hot, how many are left, what is to be done next: what the board tells. */
const whereItStands =
  /\bhow (?:much|many|far|long)\b.{0,16}\b(?:longer|left|more|to go|along|remain\w*)\b|\b(?:temp\w*|time|water|grams?|amount|numbers?) (?:again|please)\b|\bwhat(?:s| was| is) (?:the|my) (?:temp\w*|time|next(?: one| step| infusion)?|step)\b|\bwhat (?:now|next)\b|\b(?:and |so )?(?:now what|then what)\b|\bwhat (?:do|should|must) (?:i|we) do (?:now|next|then)?$|\bwhere (?:was|were|am|are) (?:i|we)\b|\bwhich (?:one|infusion|step|round|cup)\b.{0,12}\b(?:this|it|now|we|i|on|next)\b|\bis (?:it|this|the tea|that) (?:ready|done)\b|\bready (?:yet|now)\b|\b(?:can|shall|should|do) (?:i|we) (?:drink|pour|serve)(?: it| this| now| yet| off)*$|\bhow (?:hot|long|much)(?: was it)? again\b|(?:还|剩|仲)(?:有|要|剩)?(?:下)?(?:多久|多少|几)(?:泡|次|道|分钟|秒|杯|时间)?|(?:现在|刚才|这)?(?:是|到|喝到|泡到)?(?:了)?第几(?:泡|道|次)|(?:可以|能|好)(?:喝|倒|出汤|出)?了(?:吗|没|没有|未)|好了没|得未|(?:接下来|然后|下一步|跟住|之后)(?:呢|怎么|做|要|该|点)|(?:现在|该)(?:怎么|点|做什么)(?:办|做)?|(?:水温|温度|时间|秒数)(?:是)?(?:多少|多久|几)/;

export const asksWhere = (words: string): boolean => words.length <= 60 && whereItStands.test(words);

const refills =
  /\b(?:when|what point|how (?:far|low|soon))\b.{0,24}\b(?:refill|top (?:it |them |the glass )?up|add (?:more |the |hot |some )*water|fill (?:it )?(?:up )?again|pour more)\b|(?:什么时候|啥时候|几时|何时|喝到(?:哪|多少|几时|什么程度)|剩(?:多少|几多)).{0,4}(?:加|续|添|倒|补|冲)(?:热|滚|开)?(?:水|满|杯)/;

/** "When do I refill?" */
export const asksRefill = (words: string): boolean => words.length <= 60 && refills.test(words);

const ownBrews =
  /\bwhat (?:did|have) i (?:have|drink|drank|had|brew|brewed|make|made|do)\b.{0,12}\b(?:last|before|yesterday|previously|time|week)\b|\bmy (?:last|previous|past) (?:brew|tea|one)s?\b|\bwhat was (?:my|the) last (?:brew|tea|one)\b|(?:上(?:一)?(?:次|回)|昨天|之前|上星期|上周)我?(?:是)?(?:泡|喝|弄|做)(?:了|过|的)?(?:的)?(?:是)?(?:什么|哪|点)|我(?:上次|上回|昨天|之前)(?:泡|喝)(?:了|过|的)?(?:是)?(?:什么|哪)/;

/** "What did I have last time?" */
export const asksOwnBrews = (words: string): boolean => words.length <= 60 && ownBrews.test(words);

const ordinals = 'third fourth fifth sixth seventh eighth ninth tenth'.split(' ');

/** "Skip to number 5": up to which infusion, if that is said. */
export function skippedTo(words: string): number | null {
  const { n, word, han } = skipsTo.exec(words)?.groups ?? {};
  if (word !== undefined) return ordinals.indexOf(word) + 3;
  return readNumber(n ?? han ?? '') ?? null;
}
