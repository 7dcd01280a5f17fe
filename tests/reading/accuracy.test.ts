/** How well sentences are read that nothing was learnt from; `REPORT=1` prints each batch's accuracy, `REPORT=all` what is missed as well. */
import { describe, expect, test } from 'vitest';
import { accuracyOf, answered, readSentences, report } from './accuracy.ts';
import { batches } from './batches.ts';
import { finder, read } from './content.ts';

const customers = ['sentences.txt', 'customers.txt', 'customers-later.txt'].flatMap(readSentences);
const passing = ['passers-by.txt', 'market-day.txt', 'rainy-morning.txt', 'tram-stop.txt'].flatMap(readSentences);

test('there are enough sentences, in three languages, with slips among them', () => {
  const apart = ['fresh.txt', 'customers-apart.txt', 'customers-last.txt'].flatMap(readSentences);
  const all = [...customers, ...apart];
  for (const language of ['en', 'zh-Hant', 'zh-Hans']) {
    expect(all.filter((sentence) => sentence.language === language).length).toBeGreaterThan(150);
  }
  expect(all.filter((sentence) => sentence.slip).length / all.length).toBeGreaterThanOrEqual(0.15);
});

describe.each(batches)('$file', ({ file, size, floors, answers, wrongTeas, isOpen = false }) => {
  const sentences = readSentences(file);
  const accuracy = accuracyOf(sentences, read, finder);

  test('is read as well as ever', () => {
    const asked = process.env['REPORT'];
    if (asked !== undefined) console.log(report(accuracy, sentences, isOpen && asked === 'all'));
    expect(sentences.length).toBeGreaterThanOrEqual(size);
    const low = Object.entries(floors).filter(([field, floor]) => accuracy.of(field) < floor);
    expect(low.map(([field, floor]) => `${field}: ${accuracy.of(field)} where ${floor} was reached`)).toEqual([]);
    expect(accuracy.wrongTeas.length).toBeLessThanOrEqual(wrongTeas ?? Infinity);
  });

  if (answers)
    test('gets as many standing answers that fit', () => {
      const { of, right } = answered(sentences, read, answers.how);
      expect(of).toBeGreaterThanOrEqual(answers.of);
      expect(right).toBeGreaterThanOrEqual(answers.right);
    });
});

test('no tea is taken for another in what was learnt from', () => {
  const { wrongTeas } = accuracyOf([...customers, ...passing], read, finder);
  expect(wrongTeas.map((miss) => [miss.sentence.text, miss.read])).toEqual([]);
});
