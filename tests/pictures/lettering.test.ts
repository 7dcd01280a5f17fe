/** Letters: every name on the shelf can be written, each script by its own habits, and what cannot be written is told. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectRoot } from '../../src/project-root.ts';
import { readTeas } from '../../src/content/tea-data.ts';
import { languages } from '../../src/core/units.ts';
import { outlineOf, setLine } from '../../src/pictures/lettering.ts';

describe('letters', () => {
  it.each(languages)('has every character of every tea’s name in %s', async (language) => {
    const names = readTeas(join(projectRoot, 'data')).map((tea) => tea.names[language]);
    const line = await setLine(names.join(' '), language, 600);
    expect(names.length).toBeGreaterThan(30);
    expect(line.missing).toEqual([]);
  });

  it('sets Latin letters, digits and marks in one piece', async () => {
    const line = await setLine('Dragon Well – 7.9 g · 95 °C, 4½', 'en');
    expect(line.pieces).toHaveLength(1);
  });

  it('draws the same character as each script does', async () => {
    const [there, here] = await Promise.all([setLine('骨', 'zh-Hant'), setLine('骨', 'zh-Hans')]);
    const at = { x: 0, y: 0, size: 10 };
    expect(outlineOf(there, at)).not.toBe(outlineOf(here, at));
  });

  it('sets a Chinese character a whole em wide, and heavier at 600', async () => {
    const [plain, heavy] = await Promise.all([setLine('茶', 'zh-Hant', 400), setLine('茶', 'zh-Hant', 600)]);
    expect([plain.width, heavy.width]).toEqual([1, 1]);
    expect(outlineOf(plain, { x: 0, y: 0, size: 10 })).not.toBe(outlineOf(heavy, { x: 0, y: 0, size: 10 }));
  });

  it('tells what it cannot write', async () => {
    expect((await setLine('tea 🍵 茶', 'en')).missing).toEqual(['🍵']);
  });
});
