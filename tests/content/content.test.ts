/** Planted faults in copies of the real files: each is told with its file, line and column. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { ContentMistake, readContent } from '../../src/content.ts';

const folder = mkdtempSync(join(tmpdir(), 'ninthpour-content-'));
const [flowsDir, dataDir] = [join(folder, 'flows'), join(folder, 'data')];
const shopDir = join(dataDir, 'shop');

beforeEach(() => {
  cpSync('flows', flowsDir, { recursive: true });
  cpSync('data', dataDir, { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

function mistakes(): readonly string[] {
  try {
    readContent({ flowsDir, dataDir, shopDir });
    return [];
  } catch (error) {
    if (!(error instanceof ContentMistake)) throw error;
    return error.message.replaceAll(`${relative(process.cwd(), folder)}/`, '').split('\n');
  }
}

/** Changes the first place where `old` stands, which must be there; returns its line. */
function plant(file: string, old: string, fault: string): number {
  const path = join(folder, file);
  const text = readFileSync(path, 'utf8');
  const at = text.indexOf(old);
  expect(at, `${file} holds ${old}`).toBeGreaterThanOrEqual(0);
  writeFileSync(
    path,
    text.replace(old, () => fault),
  );
  return text.slice(0, at).split('\n').length;
}

const hash = (): string | undefined => readContent({ flowsDir, dataDir, shopDir }).book.flows['brew']?.hash;

describe('the real files', { timeout: 60_000 }, () => {
  it('have nothing wrong', () => {
    expect(mistakes()).toEqual([]);
  });

  it('are read into all a conversation needs', () => {
    const content = readContent({ flowsDir, dataDir, shopDir });
    expect(content.book.flows['front']?.front).not.toBeNull();
    expect(content.teas.length).toBeGreaterThanOrEqual(40);
    expect(Object.keys(content.brewing.vessels)).not.toHaveLength(0);
  });

  it('give a flow another hash when it changes, and only then', () => {
    const before = hash();
    expect(hash()).toBe(before);
    plant('flows/brew.yaml', 'From tea and vessel to a plan', 'From leaf and vessel to a plan');
    expect(hash()).not.toBe(before);
  });
});

describe('planted faults', { timeout: 60_000 }, () => {
  it.each([
    [
      'a misspelt word of a flow file',
      'flows/brew.yaml',
      '    asks: tea',
      '    aks: tea',
      'expected one of asks, needs, do',
    ],
    [
      'a misspelt word in a line',
      'flows/brew.yaml',
      '- say: =plan.caution',
      '- sya: =plan.caution',
      'expected one of when, set, call',
    ],
    [
      'a place that is not there',
      'flows/brew.yaml',
      'go: which-of-these',
      'go: which-of-those',
      'expected a place of brew',
    ],
    [
      'a function that is not there',
      'flows/brew.yaml',
      'call: planBrew',
      'call: planBru',
      'expected one of the functions',
    ],
    [
      'a sentence that is not there',
      'flows/brew.yaml',
      '[ask-change]',
      '[ask-chang]',
      'expected a sentence "ask-chang"',
    ],
    ['a broken condition', 'flows/brew.yaml', 'when: teas is known and', 'when: teas is known an', 'expected the end'],
    ['a subject renamed', 'data/reading/subject-roles.yaml', 'kin,', 'kith,', 'not "kith"'],
    [
      'a pattern where plain words belong',
      'data/reading/talk/at-hand.yaml',
      "- 'ridiculous'",
      "- 'ridic[a-z]+'",
      'expected plain words, not "["',
    ],
    [
      'a bracket left open in a phrase',
      'data/reading/talk/steps.yaml',
      "- '(refilled|filled)'",
      "- '(refilled|filled'",
      'expected a ) for every (',
    ],
    [
      'a bracket left open beside a number',
      'data/reading/beside-numbers.yaml',
      "- before: '(不到|未到|唔到)'",
      "- before: '(不到|未到|唔到'",
      'expected a pattern',
    ],
    [
      'a condition on a number that is none',
      'data/reading/beside-numbers.yaml',
      "{ before: 'kettle (only",
      "{ ahead: 'kettle (only",
      'expected one of before, behind',
    ],
    ['a size that is none', 'data/reading/known-sizes.yaml', 'ml: 750', 'ml: a bottle', 'expected number'],
    ['a cue of the talk renamed', 'data/reading/talk/cold.yaml', 'of-lid:', 'of-a-lid:', 'expected one of asks-when,'],
    [
      'a place in a message that is none',
      'data/reading/talk/steering.yaml',
      '  ending:',
      '  at-the-end:',
      'expected one of anywhere, opening',
    ],
    ['YAML that is none', 'flows/ask.yaml', 'starts: begin', 'starts: "begin', ''],
    ['a number where text belongs', 'flows/ask.yaml', 'about: A question for the shop', 'about: 5', 'about'],
  ])('%s', (_, file, old, fault, expected) => {
    const line = plant(file, old, fault);
    const found = mistakes().find((m) => m.startsWith(`${file}:`) && m.includes(expected)) ?? mistakes().join('\n');
    expect(found).toMatch(new RegExp(`^${file}:\\d+:\\d+ .`));
    if (!_.startsWith('YAML')) expect(found).toContain(`${file}:${line}:`);
  });

  it.each([
    ['a sentence with an open brace', 'en', 'choice-weak = Weak', 'choice-weak = Weak { $x', 'in Fluent syntax'],
    ['a sentence gone in one language', 'zh-Hans', 'choice-weak = 太淡\n', '', 'expected a sentence "choice-weak"'],
    ['a sentence nobody says', 'en', 'choice-weak = Weak', 'choice-week = Week\nchoice-weak = Weak', '"choice-week"'],
    [
      'a value that one language has and another has not',
      'zh-Hant',
      'brew-title = { TEA($tea) } · { VESSEL($vessel) }',
      'brew-title = { TEA($tea) } · { VESSEL($pot) }',
      'to use $tea $vessel',
    ],
    ['a vessel without its name', 'en', 'vessel-mug = Mug\n', '', 'vessel-mug'],
  ])('%s', (_, language, old, fault, expected) => {
    plant(`flows/words/${language}.ftl`, old, fault);
    const found = mistakes();
    expect(found.join('\n')).toContain(expected);
    for (const line of found) expect(line).toMatch(/^flows\/[\w./-]+:\d+:\d+ .*expected /);
  });

  it.each([
    'flows/words/zh-Hant.ftl',
    'flows/front.yaml',
    'data/families.yaml',
    'data/teas/catalogue.yaml',
    'data/reading/cues.yaml',
    'data/reading/lesson-cues.yaml',
    'data/reading/desk-cues.yaml',
    'data/reading/talk/steps.yaml',
    'data/reading/shop-talk.txt',
    'data/reading/common-words.txt',
    'data/reading/weights.txt',
  ])('a missing file: %s', (file) => {
    rmSync(join(folder, file));
    expect(mistakes().join('\n')).toContain(`${file}:1:1 expected`);
  });

  it('of several files are told at once', () => {
    plant('flows/brew.yaml', '[ask-change]', '[ask-chang]');
    plant('flows/ask.yaml', 'go: pass-on', 'go: past-on');
    plant('data/families.yaml', 'green:', 'grin:');
    const files = new Set(mistakes().map((mistake) => mistake.split(':')[0]));
    expect(files).toEqual(new Set(['flows/brew.yaml', 'flows/ask.yaml', 'data/families.yaml']));
  });
});
