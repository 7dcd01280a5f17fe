/** What we say in one Chinese script holds no character of the other: the sets are those of GB 2312 and Big5. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answers } from '../reading/content.ts';

/** All characters of two bytes, the first of which lies between these. */
function charactersOf(encoding: string, [first, last]: readonly [number, number], from: number): ReadonlySet<string> {
  const decoder = new TextDecoder(encoding);
  const found = new Set<string>();
  for (let lead = first; lead <= last; lead++)
    for (let trail = from; trail <= 0xfe; trail++) found.add(decoder.decode(Uint8Array.of(lead, trail)));
  return found;
}

const scripts = {
  'zh-Hans': charactersOf('gbk', [0xb0, 0xf7], 0xa1),
  'zh-Hant': charactersOf('big5', [0xa4, 0xf9], 0x40),
} as const;
/** Each script is called by its own name, in its own characters. */
const names = /^choice-(?:simplified|traditional) = .*$/gmu;

test.each(['zh-Hans', 'zh-Hant'] as const)('in %s', (language) => {
  const said = readFileSync(`flows/words/${language}.ftl`, 'utf8')
    .replace(names, '')
    .replace(/^ +\.typed = .*$/gmu, '');
  const texts = answers.map(({ text }) => text[language]);
  const strange = new Set(
    [said, ...texts]
      .join('')
      .match(/\p{Script=Han}/gu)
      ?.filter((one) => !scripts[language].has(one)),
  );
  expect([...strange]).toEqual([]);
});
