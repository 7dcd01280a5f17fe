import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { readAnswers } from '../../src/content/answers.ts';
import { languages } from '../../src/core/units.ts';
import { answers, read } from './content.ts';

const folder = mkdtempSync(join(tmpdir(), 'answers-'));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('there are sixty answers or more, and each names where it comes from', () => {
  expect(answers.length).toBeGreaterThanOrEqual(60);
  expect(answers.filter((answer) => answer.sources.length === 0)).toEqual([]);
});

test('a question asked as the answer has it is answered by it', () => {
  const asked = answers.flatMap((answer) =>
    languages.flatMap((language) => answer.questions[language].map((question) => ({ answer, language, question }))),
  );
  const missed = asked.filter(
    ({ answer, language, question }) => read(question, { language, asked: null }).answer !== answer.id,
  );
  expect(asked.length).toBeGreaterThan(500);
  expect(missed.length / asked.length).toBeLessThan(0.02);
});

test.each([
  ['泡龙井先放水还是先放茶叶', 'leaf-or-water-first'],
  ['蓋碗泡東方美人要蓋蓋子嗎', 'lid-on'],
  ['can I put milk in my darjeeling?', 'milk-sugar'],
  ['盖碗里茶叶放多了会怎么样', 'leaf-misdosed'],
  ['五六个人喝 用多大的壶泡正山小种好', 'vessel-size'],
  ['assam with milk in a mug', null],
  ['阿萨姆 加牛奶 马克杯', null],
  ['可以用蓋碗泡紅茶嗎', null],
])('a question of brewing is answered whatever tea it names: %s', (text, answer) => {
  expect(read(text, { language: null, asked: null })).toMatchObject({ kind: 'brew', answer });
});

test.each(['pregnancy', 'breastfeeding', 'children', 'medicines', 'iron', 'stomach', 'diabetes'])(
  'the answer on %s sends people to a professional in every language',
  (id) => {
    const answer = answers.find((one) => one.id === id);
    expect(answer?.text.en).toMatch(/doctor|midwife|pharmacist|paediatrician/);
    expect(answer?.text['zh-Hant']).toMatch(/醫生|助產士|藥師/);
    expect(answer?.text['zh-Hans']).toMatch(/医生|助产士|药师/);
  },
);

test('an answer with a language missing is told with its place', () => {
  mkdirSync(join(folder, 'answers'), { recursive: true });
  writeFileSync(
    join(folder, 'answers', 'odd.yaml'),
    'kind: care\nsources: [x]\nquestions: { en: [a] }\ntext: { en: b }\n',
  );
  expect(() => readAnswers(folder)).toThrow(/answers\/odd\.yaml:3:12 questions\.zh-Hant/);
});
