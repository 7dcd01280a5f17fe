/** The real teas, and invented ones with names of the same build, up to any size. */
import type { Tea } from '../../src/core/teas/tea.ts';
import { teas } from '../reading/content.ts';

const syllables =
  'ba bei cha dan feng gao hong hua jin lan lin long lu mei mu nan ping qing rui shan tang wen xi xue yan ye yin yun zhen zi'.split(
    ' ',
  );
const han = '山水雲龍鳳金玉春秋明月清香白紅黃青蘭桂梅竹松石泉谷峰嶺溪雪霧';

const syllable = (n: number): string => syllables[n % syllables.length] ?? '';

/** Whose names the labels of the sentences tell apart. */
const known = teas.filter(({ byKind }) => byKind !== true);

export function catalogueOf(size: number): readonly Tea[] {
  return [...known, ...Array.from({ length: Math.max(0, size - known.length) }, (_, i) => invented(i))];
}

function invented(i: number): Tea {
  const parts = [i * 7 + 3, i * 13 + 5, Math.floor(i / 30) * 11 + 1].map(syllable);
  const inHan = [i * 7, i * 11 + 2, Math.floor(i / 30) * 3 + 1].map((n) => han.charAt(n % han.length)).join('');
  const spaced = parts.join(' ');
  return {
    id: `invented-${i}`,
    family: 'oolong',
    form: 'ball-rolled',
    names: { en: spaced, 'zh-Hant': inHan, 'zh-Hans': inHan },
    aliases: [parts.join(''), `${spaced} oolong`, `${inHan}茶`],
  };
}
