/** What a shopkeeper wants written to one person, word for word, and what of a sentence is not their name. Sends nothing. */

const escaped = (words: string): string => words.replace(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`);

/** The name, and each of its words, the longest first; 陳大文 is called 大文 as well. */
function partsOf(name: string): readonly string[] {
  const words = name.match(/\p{Script=Han}+|[^\P{L}\p{Script=Han}][^\s,\p{Script=Han}]+/gu) ?? [];
  const short = words.filter((word) => /^\p{Script=Han}{3}$/u.test(word)).map((word) => word.slice(1));
  return [name, ...words, ...short].filter((part) => part !== '').toSorted((a, b) => b.length - a.length);
}

/** Of no name, which is erased with whoever bore it, nothing is found. */
const patternOf = (name: string, flags: string): RegExp =>
  new RegExp(partsOf(name).map(escaped).join('|') || '(?!)', flags);

export const withoutName = (text: string, name: string): string => text.replace(patternOf(name, 'giu'), ' ');

/** "Ines need only pay 20, tell her please." */
const toThem =
  /(?:\b(?:tell|let|inform|message|text|write to) (?:her|him|them)\b|(?:跟|告[訴诉]|通知|和|同)[她他佢])(?<words>.*)$/isu;
const leadIn =
  /^(?:'s|’s)?[\s:：,，–-]*(?:(?:a |the )?(?:quick |short )?(?:message|note|line|letter|word|e-?mail|text)\b[\s:,]*)?(?:know\b)?[\s:,]*(?:that |to say (?:that )?|saying (?:that )?|to )?[\s:：]*/iu;
const leadInHan =
  /^[\s:：,，]*(?:[發发傳传寫写寄])?(?:一?[個个條条則则封])?(?:[訊讯信]息|消息|短信|簡訊|信|通知)?(?:[\s:：,，]*[說说講讲])?(?:一[聲声下])?[\s:：,，]*/u;
const nothing = /^(?:(?:please|about|whether|if)\b.*|(?:it|this|that|so)?)[.!。！]*$/isu;

/** Empty where the sentence does not tell it. */
export function wordsTo(text: string, name: string): string {
  const found = patternOf(name, 'iu').exec(text);
  const after = toThem.exec(text)?.groups?.['words'] ?? (found ? text.slice(found.index + found[0].length) : '');
  const words = after.replace(leadIn, '').replace(leadInHan, '').trim();
  return nothing.test(words) || words.length < 2 ? '' : words;
}
