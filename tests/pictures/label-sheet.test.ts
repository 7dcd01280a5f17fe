/** The sheet of labels: what is printed is read back from the picture of the page by an independent reader. */
import { PDFiumLibrary, type PDFiumPage } from '@hyzyla/pdfium';
import reader from 'jsqr';
import { beforeAll, describe, expect, it } from 'vitest';
import { labelOf } from '../../src/commands/labels.ts';
import { readConfig } from '../../src/config.ts';
import { readShelf } from '../../src/content/shelf.ts';
import { leafOfTea } from '../../src/core/brewing/leaf-profile.ts';
import { isMistake, planBrew } from '../../src/core/brewing/schedule.ts';
import { languages, type Language } from '../../src/core/units.ts';
import { faceOf, type Label } from '../../src/pictures/label-sheet-face.ts';
import { cropMarks, labelsAPage, labelSizes, papers, placeOf } from '../../src/pictures/label-sheet-size.ts';
import { labelSheet, type LabelSheet } from '../../src/pictures/label-sheet.ts';
import { content } from '../the-content.ts';

const config = readConfig({});
const shelf = readShelf(config.shopFolder, content.teas);
const origin = 'https://tea.example.org';
const labelsIn = (language: Language, bot: string | null = null): Label[] =>
  shelf.map((tea) => labelOf(content, tea, { language, origin, bot, now: 0 }));
const sizeNamed = (name: string) => labelSizes[name] ?? expect.fail(name);
const sheetOf = (labels: readonly Label[], name: string): Promise<LabelSheet> =>
  labelSheet({ labels, size: sizeNamed(name), title: 'Labels', now: 0 });

interface Picture {
  readonly data: Uint8Array;
  readonly width: number;
}

/** 200 dots an inch: what an office printer makes of it at the very least. */
const dotsAMm = 200 / 25.4;

async function pictureOf(page: PDFiumPage): Promise<Picture> {
  const { data, width } = await page.render({ scale: 200 / 72, render: 'bitmap' });
  return { data, width };
}

function cut(
  { data, width }: Picture,
  at: { x: number; y: number; width: number; height: number },
): [Uint8ClampedArray, number, number] {
  const [x, y, w, h] = [at.x, at.y, at.width, at.height].map((mm) => Math.round(mm * dotsAMm)) as [
    number,
    number,
    number,
    number,
  ];
  const rows = Array.from({ length: h }, (_, row) =>
    data.subarray(((y + row) * width + x) * 4, ((y + row) * width + x + w) * 4),
  );
  const pixels = new Uint8ClampedArray(w * h * 4);
  for (const [row, dots] of rows.entries()) pixels.set(dots, row * w * 4);
  return [pixels, w, h];
}

let pdfium: PDFiumLibrary;
beforeAll(async () => {
  pdfium = await PDFiumLibrary.init();
  return () => pdfium.destroy();
});

describe.each([
  ['70x37', 'en'],
  ['4x2', 'zh-Hant'],
] as const)('a sheet of %s in %s', (name, language) => {
  let sheet: LabelSheet;
  const codes: (string | undefined)[] = [];
  const texts: string[] = [];

  beforeAll(async () => {
    sheet = await sheetOf(labelsIn(language), name);
    const document = await pdfium.loadDocument(sheet.pdf);
    for (const page of document.pages()) {
      texts.push(page.getText());
      const picture = await pictureOf(page);
      for (let i = 0; i < labelsAPage(sizeNamed(name)) && codes.length < sheet.printed; i++) {
        const { width, height } = sizeNamed(name);
        codes.push(reader.default(...cut(picture, { ...placeOf(sizeNamed(name), i), width, height }))?.data);
      }
    }
    document.destroy();
  });

  it('has a code on each label that opens the page at its tea', () => {
    expect(codes).toEqual(shelf.map(({ id }) => `${origin}/tea/${id}`));
  });

  it('names each tea in three scripts and says its plan, as text', () => {
    const text = texts.join('').replace(/\s/g, '');
    const wanted = labelsIn(language).flatMap(({ names, plan }) => [...Object.values(names), plan]);
    expect(wanted.filter((one) => !text.includes(one.replace(/\s/g, '')))).toEqual([]);
    expect(text).not.toContain('t.me');
  });

  it('embeds every typeface it uses', () => {
    const bytes = Buffer.from(sheet.pdf).toString('latin1');
    const described = bytes.match(/\/Type \/FontDescriptor/g)?.length ?? 0;
    expect(described).toBeGreaterThan(5);
    expect(bytes.match(/\/FontFile2 /g)).toHaveLength(described);
    expect(sheet.pdf.length).toBeLessThan(400_000);
  });
});

describe('the plan on a label', () => {
  it.each(shelf.map(({ id }) => id))('is what the model says for %s', (id) => {
    const tea = content.teas.find((one) => one.id === id) ?? expect.fail(id);
    const leaf = leafOfTea(content.brewing, tea);
    const { usual, elevationM } = content.shop;
    const plan = planBrew(content.brewing, leaf, { tea: id, family: leaf.family, ...usual, elevationM });
    if (isMistake(plan)) throw new Error(plan.code);
    const label = labelOf(content, tea, { language: 'en', origin, bot: null, now: 0 });
    const seconds = plan.infusions.map((one) => one.seconds);
    expect(label.plan).toContain(`${Number(plan.leafG.toFixed(1))} g · ${Math.round(plan.waterC)} °C`);
    expect(label.plan.includes('rinse')).toBe(plan.rinse !== null);
    expect(label.plan).toContain(seconds.length === 1 ? 'once' : `${seconds.length} infusions`);
    if (Math.max(...seconds.slice(0, 3)) < 60) expect(label.plan).toContain(`${seconds.slice(0, 3).join(', ')} s`);
    expect(label.rungs.map(({ length }) => length)).toEqual(seconds.map((s) => s / Math.max(...seconds)));
  });
});

describe('a label’s face', () => {
  const narrowest = languages.map((language) => ['63.5x38.1', language] as const);
  const rows = [...narrowest, ['70x37', 'en'], ['99.1x38.1', 'en'], ['4x2', 'en']] as const;

  it.each(rows)('of %s in %s keeps within its padding and off the quiet margin of the code', async (name, language) => {
    const size = sizeNamed(name);
    for (const label of labelsIn(language, 'quillfern_bot')) {
      const face = await faceOf(label, size);
      if ('why' in face) expect.fail(`${face.id}: ${face.text}`);
      const quiet = 4 * face.code.squareMm;
      const side = face.code.side * face.code.squareMm;
      for (const { line, at, sizeMm } of face.texts) {
        const right = at.x + line.width * sizeMm;
        expect(at.x).toBeGreaterThan(3);
        expect(right).toBeLessThan(size.width - 3);
        expect(at.y).toBeLessThan(size.height - 3);
        const isBeside = right <= face.code.at.x - quiet + 0.01;
        expect(isBeside || at.y - 0.75 * sizeMm > face.code.at.y + side + 0.8 * quiet).toBe(true);
      }
      expect(face.code.squareMm).toBeGreaterThan(0.38);
    }
  });

  it.each([
    [{ names: { en: 'A name far too long for any label of this size', 'zh-Hant': '茶', 'zh-Hans': '茶' } }, 'long'],
    [{ names: { en: 'Tea 🍵', 'zh-Hant': '茶', 'zh-Hans': '茶' } }, 'letters'],
    [{ address: `${origin}/${'a'.repeat(400)}` }, 'long'],
  ])('says when %o does not fit, and prints the others', async (wrong, why) => {
    const [first, second] = labelsIn('en');
    if (!first || !second) throw new Error('the shelf is bare');
    const { printed, unfit } = await sheetOf([{ ...first, ...wrong }, second], '70x37');
    expect(unfit.map((one) => [one.id, one.why])).toEqual([[first.id, why]]);
    expect(printed).toBe(1);
  });

  it.each<[Language, string, string, string]>([
    ['en', '煎茶', 'Sencha', '煎茶'],
    ['zh-Hant', '煎茶', '煎茶', 'Sencha'],
    ['en', '龙井', 'Sencha', '煎茶　龙井'],
    ['zh-Hant', '龙井', '煎茶　龙井', 'Sencha'],
    ['zh-Hans', '龙井', '龙井　煎茶', 'Sencha'],
  ])(
    'in %s, with %s in the simplified script, is headed by %s and has %s under it',
    async (language, hans, head, others) => {
      const [label] = labelsIn(language);
      if (!label) throw new Error('the shelf is bare');
      const names = { en: 'Sencha', 'zh-Hant': '煎茶', 'zh-Hans': hans };
      const face = await faceOf({ ...label, names }, sizeNamed('70x37'));
      const texts = 'texts' in face ? face.texts.map(({ line }) => line.pieces.map(({ text }) => text).join('')) : [];
      expect(texts.slice(0, 2)).toEqual([head, others]);
    },
  );

  it('makes a long name smaller before it gives up', async () => {
    const [label] = labelsIn('en');
    if (!label) throw new Error('the shelf is bare');
    const size = async (en: string): Promise<number> => {
      const face = await faceOf({ ...label, names: { ...label.names, en } }, sizeNamed('70x37'));
      return 'texts' in face ? (face.texts[0]?.sizeMm ?? 0) : expect.fail(en);
    };
    expect(await size('Dragon Well (longjing)')).toBeLessThan(await size('Keemun'));
  });
});

const near = (list: readonly number[], n: number): number => Math.min(...list.map((one) => Math.abs(one - n)));

describe.each(Object.entries(labelSizes))('the grid of %s', (_, size) => {
  const paper = papers[size.paper];
  const places = Array.from({ length: labelsAPage(size) }, (__, i) => placeOf(size, i));

  it('lies in the middle of its paper', () => {
    const first = places[0] ?? expect.fail();
    const last = places.at(-1) ?? expect.fail();
    expect(first.x).toBeCloseTo(paper.width - last.x - size.width);
    expect(first.y).toBeCloseTo(paper.height - last.y - size.height);
    expect(Math.min(first.x, first.y)).toBeGreaterThanOrEqual(0);
  });

  it('has crop marks on the cuts, on the paper, at each corner, and hardly into a label', () => {
    const xs = places.flatMap(({ x }) => [x, x + size.width]);
    const ys = places.flatMap(({ y }) => [y, y + size.height]);
    for (const { from, to } of cropMarks(size)) {
      const isUpright = from.x === to.x;
      expect(isUpright ? near(xs, from.x) : near(ys, from.y)).toBeLessThan(1e-6);
      const along = isUpright ? [from.y, to.y] : [from.x, to.x];
      for (const end of along) {
        expect(end).toBeGreaterThanOrEqual(-1e-6);
        expect(end).toBeLessThanOrEqual((isUpright ? paper.height : paper.width) + 1e-6);
        expect(near(isUpright ? ys : xs, end)).toBeLessThan(3.7);
      }
    }
    const ends = cropMarks(size)
      .filter(({ from, to }) => from.x === to.x)
      .flatMap(({ from, to }) => [from, to]);
    const unmarked = places.filter(
      ({ x, y }) => !ends.some((end) => near([x], end.x) < 1e-6 && near([y], end.y) < 1.3),
    );
    expect(unmarked).toEqual([]);
  });
});
