import { expect, test } from 'vitest';
import { dangers } from '../../src/core/reading/cues/cue-names.ts';
import { languages } from '../../src/core/units.ts';
import { accuracyOf, readSentences, report } from './accuracy.ts';
import { answers, finder, read } from './content.ts';

const nothing = { language: null, asked: null };

test.each([
  ["I'm choking", 'choking'],
  ['im chocking on a leaf', 'choking'],
  ["can't breathe", 'emergency'],
  ['cant breath', 'emergency'],
  ['噎住了', 'choking'],
  ['嗆到了', 'choking'],
  ['呛到了', 'choking'],
  ['透唔到氣', 'emergency'],
  ['喘不上气', 'emergency'],
  ['舌頭麻', 'allergic-reaction'],
  ['舌头麻', 'allergic-reaction'],
  ['my lips are swelling', 'allergic-reaction'],
  ['起疹子', 'allergic-reaction'],
  ['手紅了', 'burn'],
  ['手红了', 'burn'],
  ['my son pulled the kettle over himself', 'burn'],
  ['I burnt my tongue', 'burnt-mouth'],
  ['烫到舌头了', 'burnt-mouth'],
  ['drank descaler by accident', 'poisoning'],
  ['誤喝了清潔劑', 'poisoning'],
  ['she fainted', 'emergency'],
  ['昏倒了', 'emergency'],
  ['I took caffeine pills', 'caffeine-overdose'],
  ['割到手了', 'cut'],
  ['喝太多喘不過氣', 'emergency'],
  ['胸口壓住透唔到氣', 'emergency'],
  ['手不小心燙到', 'burn'],
])('%s is danger, whatever was asked, and answered by %s', (text, answer) => {
  for (const asked of [null, 'tea', 'vessel', 'volumeMl', 'guests'])
    expect(read(text, { language: null, asked })).toMatchObject({ kind: 'safety', answer, turn: null });
});

test.each([
  'this tea took my breath away',
  'the finish is breathtaking',
  'my tongue tingles pleasantly',
  'I laughed so hard I could not breathe',
  'nearly choked at the price',
  'the spout is choked with leaves',
  '茶湯紅了',
  '笑到噴茶',
  '貴到我窒息',
  '煙味嗆鼻',
  '苦到舌頭發麻',
  '烟味呛鼻',
  '先燙杯',
  '盖碗烫手怎么拿',
  'this left me breathless',
  'this cake drinks cleaner than the last',
  'poured the water into my hand made cup',
  'no air gets into the tin',
  'mouth feels thick and creamy',
  'took a sip and it is like shampoo',
  '喝起來像肥皂水',
  '同事對我翻白眼',
  '累到整個人癱在沙發',
  '手打抹茶起泡',
  '課上會碰到熱水嗎',
  '開水淋壺身',
  '茶倒在桌面上',
  '孩子推薦的茶杯',
  '我没意识到要先温杯',
  '喝了84度的水泡的煎茶',
])('%s only sounds like it', (text) => {
  expect(read(text, nothing).kind).not.toBe('safety');
});

test('every danger has one answer, which names the emergency number in each language', () => {
  const urgent = answers.filter(({ danger }) => danger !== null);
  expect(urgent.length).toBe(dangers.length);
  expect(new Set(urgent.map(({ danger }) => danger))).toEqual(new Set(dangers));
  for (const { kind, text } of urgent) {
    expect(kind).toBe('safety');
    for (const language of languages) expect(text[language]).toMatch(/local emergency number|急救電話|急救电话/);
  }
});

// Mishaps, and what only sounds like one, apart for good. Of the first file 60 mishaps were safety before the danger words of
// cues.yaml, 18 with a right answer, and 76 of the others what they are; when it was new to them 86, 76 and 76, and since
// at-the-stove.txt is learnt from 88, 80 and 78. The second was written after the words were: 29, 16 and 9 when it was new, and
// 30, 26 and 9 since at-the-sink.txt is learnt from, which says much the same.
test.each([
  ['at-the-table.txt', 90, { heard: 86, answered: 78, others: 72 }],
  ['at-the-door.txt', 30, { heard: 28, answered: 24, others: 8 }],
] as const)('mishaps of %s are heard and answered, and what sounds like one is not', (file, mishaps, least) => {
  const all = readSentences(file);
  if (process.env['REPORT'] !== undefined) console.log(report(accuracyOf(all, read, finder), all, false));
  const told = all.filter(({ kind }) => kind === 'safety');
  const heard = told.filter(({ text }) => read(text, nothing).kind === 'safety');
  const answered = heard.filter(({ text, answers: any }) => any.includes(read(text, nothing).answer ?? ''));
  const others = all.filter(({ text, kind }) => kind !== 'safety' && read(text, nothing).kind === kind);
  expect(told.length).toBe(mishaps);
  expect(heard.length).toBeGreaterThanOrEqual(least.heard);
  expect(answered.length).toBeGreaterThanOrEqual(least.answered);
  expect(others.length).toBeGreaterThanOrEqual(least.others);
});
