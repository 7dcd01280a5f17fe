/** Text as a person wrote it → text that can be compared: one width, one case, no marks, one Han script. Says nothing of meaning. */
import { foldHan } from './han-fold.ts';

export interface PlainText {
  /** What the person wrote, without what cannot be seen; each character stands where its plain one does. */
  readonly shown: string;
  readonly plain: string;
}

/** A question fits in this; what follows is not read. */
export const readCharacters = 1200;

// Format and control characters, bidirectional marks, variation selectors, private use, combining marks left over.
const invisible = /[\p{Cf}\p{Co}\p{Cn}\p{M}]|[^\P{Cc}\n\t]/gu;

/** One message is made plain by several who read it. */
let last: { readonly text: string; readonly made: PlainText } | null = null;

export function plainText(text: string): PlainText {
  if (last?.text !== text) last = { text, made: madePlain(text) };
  return last.made;
}

/** In what is shown as well, so that each character still stands where its plain one does. The pattern looks at the plain text. */
export function replacedInBoth(text: PlainText, pattern: RegExp, meant: (found: string) => string): PlainText {
  let [shown, plain, read] = ['', '', 0];
  for (const { 0: found, index } of text.plain.matchAll(pattern)) {
    const put = meant(found);
    if (put === found) continue;
    shown += text.shown.slice(read, index) + put;
    plain += text.plain.slice(read, index) + put;
    read = index + found.length;
  }
  return read === 0 ? text : { shown: shown + text.shown.slice(read), plain: plain + text.plain.slice(read) };
}

function madePlain(text: string): PlainText {
  const shown = text
    .slice(0, readCharacters * 2)
    // 1½ would become 11/2.
    .replace(/(\d)(?=[¼½¾⅓⅔⅛])/g, '$1 ')
    // The sign of an ordinal would become a letter.
    .replace(/[º˚]/g, '°')
    .normalize('NFKC')
    .replace(invisible, '')
    .replace(/[ \t]{2,}/g, ' ')
    .slice(0, readCharacters);
  let plain = '';
  for (let i = 0; i < shown.length; i++) plain += plainCharacter(shown.charAt(i));
  return { shown, plain };
}

const quotes: { readonly [character: string]: string } = {
  '’': "'",
  '‘': "'",
  '`': "'",
  '´': "'",
  '−': '-',
  '–': '-',
  '—': '-',
  '⁄': '/',
};

/** Signs of Taiwan's spelling left over, or written for the word they sound like. */
const spelt: { readonly [character: string]: string } = {
  ㄇ: '吗',
  ㄉ: '的',
  ㄅ: '吧',
  ㄌ: '了',
  ㄋ: '呢',
  ㄚ: '啊',
  ㄧ: '一',
};

function plainCharacter(character: string): string {
  const code = character.charCodeAt(0);
  if (code < 128) return code >= 65 && code <= 90 ? String.fromCharCode(code + 32) : character;
  if (code >= 0x3400 && code <= 0x9fff) return foldHan(character);
  return quotes[character] ?? spelt[character] ?? character.normalize('NFD').charAt(0).toLowerCase().charAt(0);
}
