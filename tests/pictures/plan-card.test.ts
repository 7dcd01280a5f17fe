/** The card of a plan: a stroke an infusion, letters as outlines, a picture any viewer shows. */
import { describe, expect, it } from 'vitest';
import { languages, type Language } from '../../src/core/units.ts';
import type { Ladder } from '../../src/messages.ts';
import { drawPicture, planCardSvg } from '../../src/pictures/plan-card.ts';

const titles: { readonly [language in Language]: string } = {
  en: 'Tieguanyin · <Gaiwan> & 110 ml',
  'zh-Hant': '鐵觀音 · 蓋碗 · 110 毫升',
  'zh-Hans': '铁观音 · 盖碗 · 110 毫升',
};
const ladder = (language: Language): Ladder => ({
  title: titles[language],
  rungs: [
    { n: 1, seconds: 6, label: '6 s', length: 0.1, ink: 1 },
    { n: 2, seconds: 30, label: '30 s', length: 0.5, ink: 0.8 },
    { n: 3, seconds: 60, label: '1 min', length: 1, ink: 0.6 },
  ],
});

const strokes = (svg: string) => [...svg.matchAll(/d="([^"]+)" fill="#8a4312" fill-opacity="([\d.]+)"/g)];
const width = (png: Uint8Array): number => new DataView(png.buffer, png.byteOffset).getUint32(16);
const height = (png: Uint8Array): number => new DataView(png.buffer, png.byteOffset).getUint32(20);

const entitled = (title: string, language: Language) => drawPicture({ ...ladder(language), title }, language);

describe('the card', () => {
  it.each(languages)('has a stroke for each infusion, inked by strength, in %s', async (language) => {
    const drawn = strokes(await planCardSvg(ladder(language), language));
    expect(drawn.map(([, , opacity]) => Number(opacity))).toEqual([1, 0.83, 0.66]);
    const ends = drawn.map(([, outline]) => Number(/L([\d.]+)/.exec(outline ?? '')?.[1]));
    expect(ends).toEqual(ends.toSorted((a, b) => a - b));
  });

  it('needs no font and lets no markup through: all letters are outlines', async () => {
    const svg = await planCardSvg(ladder('en'), 'en');
    expect(svg).not.toMatch(/<text|font-family|Gaiwan/);
  });

  it.each(languages)('is a picture of the size the channel sends, in %s', async (language) => {
    const png = await drawPicture(ladder(language), language);
    expect([...png.subarray(1, 4)].map((byte) => String.fromCodePoint(byte)).join('')).toBe('PNG');
    expect(width(png)).toBe(1050);
    expect(png.length).toBeLessThan(300_000);
  });

  it('breaks a title too long, at spaces and within Chinese, and grows by it', async () => {
    const one = await entitled('Tieguanyin', 'en');
    const long = await entitled('Tieguanyin and water '.repeat(12), 'en');
    const han = await entitled('鐵觀音與水'.repeat(15), 'zh-Hant');
    expect(height(one)).toBeLessThan(height(long));
    expect(height(one)).toBeLessThan(height(han));
  });
});
