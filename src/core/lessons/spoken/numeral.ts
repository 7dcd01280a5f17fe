/** Small whole numbers as people write them: figures, English words, Han numerals. */

const english = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');
const hanDigits = '零一二三四五六七八九';

/** To be put into a pattern: what may stand for a number before a unit. */
export const number = `(?:-?\\d{1,3}(?:,\\d{3})+|-?\\d+(?:\\.\\d+)?|\\b(?:${english.join('|')}|an?)\\b|[〇${hanDigits}两兩十百千万萬]+)`;

/** Undefined when the words are no number. */
export function readNumber(words: string): number | undefined {
  const word = words.trim().toLowerCase();
  if (/^-?[\d,]+(?:\.\d+)?$/.test(word)) return Number(word.replaceAll(',', ''));
  if (word === 'a' || word === 'an') return 1;
  const index = english.indexOf(word);
  return index >= 0
    ? index
    : readHan(
        word
          .replace(/[两兩]/gu, '二')
          .replaceAll('〇', '零')
          .replaceAll('萬', '万'),
      );
}

/** "十二" is 12, "二十" 20, "一百零五" 105, "二六" 26, "一万二千" 12,000. */
function readHan(word: string): number | undefined {
  const [, many = '', rest = ''] = /^([^万]+)万([^万]*)$/u.exec(word) ?? [];
  if (many === '') return readBelowTenThousand(word);
  const [ahead, behind] = [readBelowTenThousand(many), rest === '' ? 0 : readBelowTenThousand(rest)];
  return ahead === undefined || behind === undefined ? undefined : ahead * 10_000 + behind;
}

function readBelowTenThousand(word: string): number | undefined {
  if (!/^[零一二三四五六七八九十百千]+$/u.test(word)) return undefined;
  if (!/[十百千]/u.test(word)) return Number(Array.from(word, (digit) => hanDigits.indexOf(digit)).join(''));
  let sum = 0;
  let digit: number | undefined;
  for (const sign of word) {
    const power = '十百千'.indexOf(sign);
    if (power < 0) digit = hanDigits.indexOf(sign);
    else {
      sum += (digit ?? 1) * 10 ** (power + 1);
      digit = undefined;
    }
  }
  return sum + (digit ?? 0);
}
