/** The name a student gives beside something else: "two of us, under Wren", 一個人，叫李雷. Takes no sentence for a name. */
import { plain } from './cut.ts';
import type { Sentence } from './sentence.ts';

const ofCapitals = "\\p{Lu}[\\p{L}'’-]*(?: \\p{Lu}[\\p{L}'’.-]*){0,3}";
const before =
  "[Mm]y name(?:'s| is)|[Uu]nder(?: the)?(?: name)?(?: of)?|[Ii]n the name of|[Cc]all me|(?:[Ss]he|[Hh]e)(?:'s| is) called|[Tt]hey(?:'re| are) called|(?:[Hh]er|[Hh]is) name(?:'s| is)|[Ii]'?m|[Ii] am";
const beforeHan = '[我她他佢]叫|名字(?:是|叫|寫|写)?|姓名[是:：]?|(?:^|[\\s,，。])叫|叫我|寫|写';
/** 叫我小林就行 */
const enoughHan = '(?:就(?:好|行|可以|得)(?:了|啦)?)?';
const given = [
  new RegExp(`\\b(?:${before})\\s+(?<name>${ofCapitals})(?=[\\s,.!]*$|[,.;!] )`, 'u'),
  new RegExp(
    `(?:${beforeHan})\\s*(?<name>\\p{Script=Han}{2,4}?|${ofCapitals})${enoughHan}(?=[\\s,，。.!！吧就好]*$)`,
    'u',
  ),
  new RegExp(`(?:敝姓|免[貴贵]姓|我姓)\\s*(?<name>\\p{Script=Han}{1,4}?)${enoughHan}(?=[\\s,，。.!！吧]*$)`, 'u'),
];

/** The commonest, by which two or three characters behind a number of seats are a name, and no word: common knowledge, no source. */
const surnames =
  '[王李張张劉刘陳陈楊杨黃黄趙赵吳吴徐孫孙朱馬马胡郭林何高梁鄭郑羅罗宋謝谢唐韓韩曹許许鄧邓蕭萧馮冯曾程蔡彭潘袁于董余蘇苏葉叶呂吕魏蔣蒋田杜丁沈姜范江傅鍾钟盧卢汪戴崔任陸陆廖姚方金邱夏譚谭韋韦賈贾鄒邹石熊孟秦閻阎薛侯雷白龍龙段郝孔邵史毛常萬万顧顾賴赖武康賀贺嚴严尹錢钱施牛洪龔龚湯汤陶黎溫温莫易樊喬乔文安殷顏颜莊庄章魯鲁倪邢俞翟藍蓝聶聂齊齐向申葛柴伍覃駱骆關关焦柳歐欧祝紀纪尚畢毕耿蘆芦左季管符辛苗詹曲歸归]';
/** 一位 陳曉明; 兩個人，林怡君; 周六 is none. */
const behindSeats = new RegExp(
  `(?<=[一二兩两三四五六七八\\d] ?(?:個人|个人|位|個|个|人)[ ,，、]+)(?<name>(?!謝謝|谢谢|何[時时]|周[一二三四五六日末]|[龍龙]井|高山|白[茶毫牡]|金[萱駿骏]|[黃黄]茶|安[吉溪]|武夷|方便|程度|常[來来]|管)${surnames}\\p{Script=Han}{1,2}?)(?=[\\s,，。.!！]*$)`,
  'u',
);

/** Longer texts tell more than that. */
const longest = 80;

export const nameGiven = (sentence: string): string | null => partedFromName(sentence).name;

/** What is said beside the name, and the name. */
export function partedFromName(sentence: string): { readonly rest: string; readonly name: string | null } {
  const text = plain(sentence).replaceAll('’', "'").trim();
  const found =
    sentence.length > longest
      ? undefined
      : [...given, behindSeats].map((one) => one.exec(text)).find((one) => one !== null);
  const name = found?.groups?.['name']?.trim();
  if (!found || name === undefined) return { rest: text, name: null };
  const rest = text.slice(0, found.index) + text.slice(found.index + found[0].length);
  return { rest: rest.replace(/[\s,，、]+$/u, ''), name };
}

/** "My name is Wren" and nothing else. */
const alone = [
  /^(?:my name(?:'s| is)|call me)\s+(?<name>\p{L}[\p{L}'.-]*(?: \p{L}[\p{L}'.-]*){0,3})[.!]*$/iu,
  /^(?:我叫|叫我|我的名字(?:是|叫)|名字(?:是|叫))\s*(?<name>[\p{L} ]{2,12}?)(?:就(?:好|行|可以|得)(?:了|啦)?)?[。！]*$/iu,
  /^(?:敝姓|免[貴贵]姓|我姓|姓)\s*(?<name>[\p{L} ]{1,8}?)(?:就(?:好|行|可以|得)(?:了|啦)?)?[。！]*$/iu,
];

export function nameAlone(sentence: string): string | null {
  const text = plain(sentence).replaceAll('’', "'").trim();
  const found = alone.map((one) => one.exec(text)).find((one) => one !== null);
  return found?.groups?.['name']?.trim() ?? null;
}

/** Asks something, and is no name. */
export const isAsking = (sentence: Sentence): boolean => /[?？]/.test(sentence.text) || sentence.says('asking');
