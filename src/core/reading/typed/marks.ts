/** Marks and small signs as they are typed → as the reader knows them: a dash between clauses, "&", stars around a word. Hears nothing. */
import { replacedInBoth, type PlainText } from '../../teas/plain-text.ts';

type Rule = readonly [written: RegExp, meant: string];

/** Each looks at plain text, and is done to what is shown as well. */
const rules: readonly Rule[] = [
  // "*very* bitter", "_how_ long"
  [/(?<![\w*])[*_]{1,3}(?=[\p{L}\d])|(?<=[\p{L}\d?!.,])[*_]{1,3}(?![\w*])/gu, ''],
  // "sencha 🍵 in a mug"
  [
    / (?:[\p{Extended_Pictographic}\u{1F3FB}-\u{1F3FF}]+ ?)+(?=[\p{L}\d])|(?<=\p{Script=Han})\p{Extended_Pictographic}+(?=\p{Script=Han})/gu,
    ' ',
  ],
  // "a mug - 300 ml", and no range.
  [/(?<=[^\d\s,.;:!?-]) ?-{1,2} (?=[^\s-])|(?<=[^\s,.;:!?-]) -{1,2} (?=[^\s\d-])/g, ', '],
  [/(?<=[a-z]) ?& ?(?=[a-z])/g, ' and '],
  [/(?<=[a-z]{2}) n (?=[a-z]{1,12}\b)/g, ' and '],
  [/\bw\/o\b ?(?=[a-z])/g, 'without '],
  [/\bw\/ ?(?=[a-z\d])/g, 'with '],
  [/;(?=\s?[\p{L}\d])/gu, ','],
  // "150mlgaiwan"
  [
    /(?<=\d(?:ml|cc|oz))(?=gaiwan|mug|pot|tea|glass|cup|kyusu|jar|flask|thermos|tumbler|bottle|yixing|clay|water)/g,
    ' ',
  ],
  // 下一壺多放茶葉 is of no other pot.
  [/(?<=[下上]一?)壶(?![里的])/gu, '次'],
  // 成升水咁大
  [/成(?=公?升(?:水|咁|的|嘅|$))/gu, '一'],
  // "20oml"
  [/(?<=\d)o(?=\d|\s?(?:ml|cc|g)\b)/g, '0'],
];

const needed = /[*_&/;-]|[下上]一?壶|成公?升|\p{Extended_Pictographic}| n |\do|\d(?:ml|cc)[a-z]/u;

export function withPlainMarks(text: PlainText): PlainText {
  if (!needed.test(text.plain)) return text;
  return rules.reduce((done, [written, meant]) => replacedInBoth(done, written, () => meant), text);
}
