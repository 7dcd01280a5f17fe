/** One slip in one file, where another has the other half: one sentence tells it, at its line, and nothing else is blamed. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ContentMistake, readContent } from '../../src/content.ts';

const folder = mkdtempSync(join(tmpdir(), 'ninthpour-agreement-'));
beforeAll(() => {
  cpSync('flows', join(folder, 'flows'), { recursive: true });
  cpSync('data', join(folder, 'data'), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

function mistakes(): readonly string[] {
  const [flowsDir, dataDir] = [join(folder, 'flows'), join(folder, 'data')];
  try {
    readContent({ flowsDir, dataDir, shopDir: join(dataDir, 'shop') });
    return [];
  } catch (error) {
    if (!(error instanceof ContentMistake)) throw error;
    return error.message.replaceAll(`${relative(process.cwd(), folder)}/`, '').split('\n');
  }
}

/** What is told while the first place that fits is another; then all is as it was. */
function toldWith(
  file: string,
  old: RegExp,
  fault: string,
): { readonly told: readonly string[]; readonly line: number } {
  const path = join(folder, file);
  const text = readFileSync(path, 'utf8');
  const at = text.search(old);
  expect(at, `${file} holds ${old}`).toBeGreaterThanOrEqual(0);
  writeFileSync(path, text.replace(old, fault));
  const told = mistakes();
  writeFileSync(path, text);
  return { told, line: text.slice(0, at).split('\n').length };
}

const catalogue = 'data/teas/catalogue.yaml';

describe('one slip, one sentence', { timeout: 120_000 }, () => {
  it.each([
    [
      'a family that is none',
      catalogue,
      /family: green/,
      'family: gren',
      /expected a family of .*green, .*, not "gren"$/,
    ],
    ['a form that is none', catalogue, /form: flat/, 'form: flatt', /expected a form of .*flat, .*, not "flatt"$/],
    ['a form of a family', 'data/families.yaml', /form: bud/, 'form: budd', /expected a form of .*, not "budd"$/],
    ['a tea on the shelf', 'data/shop/shelf.yaml', /- keemun/, '- kemun', /expected the id of a tea, not "kemun"$/],
    [
      'the usual vessel',
      'data/shop/shop.yaml',
      /usual: \{ vessel: gaiwan/,
      'usual: { vessel: gaiwn',
      /expected a vessel of .*, not "gaiwn"$/,
    ],
    [
      'sizes the wrong way round',
      'data/vessels.yaml',
      /\{ least: 20, most: 5000 \}/,
      '{ least: 50, most: 20 }',
      /expected least to be below most$/,
    ],
    [
      'a vessel a flow offers',
      'flows/brew.yaml',
      /\['glass-pot', 'kyusu'/,
      "['glas-pot', 'kyusu'",
      /expected a vessel of data \(gaiwan, .*\), not "glas-pot"$/,
    ],
    [
      'a vessel a flow gives',
      'flows/brew.yaml',
      /set: \{ vessel: cold-jar/,
      'set: { vessel: col-jar',
      /expected a vessel of data .*, not "col-jar"$/,
    ],
    [
      'a family a flow asks about',
      'flows/brew.yaml',
      /when: family is 'matcha'/,
      "when: family is 'macha'",
      /expected a family of data .*, not "macha"$/,
    ],
    [
      'a style a flow asks about',
      'flows/brew.yaml',
      /is known\) and plan\.style is not 'cupping'/,
      "is known) and plan.style is not 'copping'",
      /expected a style of data .*, not "copping"$/,
    ],
    [
      'a danger that another answers',
      'data/answers/cut.yaml',
      /danger-cut/,
      'danger-scald',
      /danger: "danger-scald" is answered by burn$/,
    ],
    ['a form that is no text', catalogue, /form: flat/, 'form: 5', /longjing\.form: expected text, not 5$/],
    [
      'water too hot for a family',
      catalogue,
      /- id: longjing\n(.*\n){2} {2}leaf: \{ waterC: 78/,
      '- id: longjing\n  family: green\n  form: flat\n  leaf: { waterC: 90',
      /expected no hotter water for "longjing" than highestC of its family, 85$/,
    ],
    ['a word no place has', 'flows/taste.yaml', /asks: /, 'aks: ', /expected one of asks, .*, not "aks"$/],
  ])('%s', (_, file, old, fault, expected) => {
    const { told, line } = toldWith(file, old, fault);
    expect(told[0]).toMatch(expected);
    expect(told[0]).toContain(`${file}:${line}:`);
    expect(told.filter((one) => !one.startsWith(`${file}:`))).toEqual([]);
  });

  it('a tea that stood among those we have no data for', () => {
    const { told } = toldWith(catalogue, /aliases:\s+\[\s+longjing,/, 'aliases: [longjing, Wei Shan Mao-jian,');
    expect(told).toEqual([
      expect.stringMatching(
        /^data\/teas\/family-words\.yaml:\d+:\d+ expected no name of ours: "weishan maojian" is longjing of data\/teas\/catalogue\.yaml$/,
      ),
    ]);
  });

  it('words of a vessel that is none', () => {
    const { told, line } = toldWith('data/reading/vessels.yaml', /- vessel: kyusu/, '- vessel: kyusoo');
    expect(told).toEqual([
      expect.stringMatching(
        new RegExp(`^data/reading/vessels\\.yaml:${line}:11 expected a vessel of .*, not "kyusoo"$`),
      ),
      expect.stringMatching(/^data\/vessels\.yaml:\d+:1 expected what people call "kyusu"/),
    ]);
  });

  it('a vessel that nobody could name', () => {
    const { told, line } = toldWith('data/vessels.yaml', /^french-press:/m, 'travel-press:');
    expect(told).toContainEqual(
      expect.stringMatching(
        new RegExp(
          `^data/vessels\\.yaml:${line}:1 expected what people call "travel-press" in data/reading/vessels\\.yaml$`,
        ),
      ),
    );
  });

  it('a reminder without its sentence', () => {
    const names = ['en', 'zh-Hant', 'zh-Hans'].map((language) => join(folder, `flows/words/${language}.ftl`));
    const texts = names.map((name) => readFileSync(name, 'utf8'));
    names.forEach((name, i) => writeFileSync(name, texts[i]!.replace(/^lesson-told-week-before = .*\n/m, '')));
    expect(mistakes()).toEqual([
      'flows/words/en.ftl:1:1 expected a sentence "lesson-told-week-before", which a reminder calls for',
    ]);
    names.forEach((name, i) => writeFileSync(name, texts[i]!));
  });

  it('sentences of a language the program does not know', () => {
    const file = join(folder, 'flows/words/fr.ftl');
    writeFileSync(file, 'page-title = Fiche\n');
    expect(mistakes()).toEqual([
      'flows/words/fr.ftl:1:1 expected one of the languages of src/core/units.ts (en, zh-Hant, zh-Hans)',
    ]);
    rmSync(file);
  });
});
