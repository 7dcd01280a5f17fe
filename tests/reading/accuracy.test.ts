import { expect, test } from 'vitest';
import { accuracyOf, readSentences, report } from './accuracy.ts';
import { finder, read } from './content.ts';

const sentences = [
  ...readSentences('sentences.txt'),
  ...readSentences('customers.txt'),
  ...readSentences('customers-later.txt'),
];
const passing = [
  ...readSentences('passers-by.txt'),
  ...readSentences('market-day.txt'),
  ...readSentences('rainy-morning.txt'),
  ...readSentences('tram-stop.txt'),
];
const fresh = readSentences('fresh.txt');
const apart = readSentences('customers-apart.txt');
const last = readSentences('customers-last.txt');
const after = readSentences('customers-after.txt');
const ofApart = accuracyOf(apart, read, finder);
const ofLast = accuracyOf(last, read, finder);
const ofAfter = accuracyOf(after, read, finder);
const accuracy = accuracyOf(fresh, read, finder);

test('there are enough sentences, in three languages, with slips among them', () => {
  const all = [...sentences, ...fresh, ...apart, ...last];
  expect(fresh.length).toBeGreaterThanOrEqual(90);
  for (const language of ['en', 'zh-Hant', 'zh-Hans']) {
    expect(all.filter((sentence) => sentence.language === language).length).toBeGreaterThan(150);
  }
  expect(all.filter((sentence) => sentence.slip).length / all.length).toBeGreaterThanOrEqual(0.15);
});

// Floors a little under what was measured, so that a change that makes the reader worse is seen.
test.each([
  ['kind', 0.94],
  ['language', 0.97],
  ['tea', 0.98],
  ['family', 0.97],
  ['vessel', 0.97],
  ['volumeMl', 0.98],
  ['leafG', 0.98],
  ['guests', 0.97],
  ['tempC', 0.98],
  ['elevationM', 0.99],
  ['style', 0.97],
])('sentences kept apart: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind')
    console.log(report(accuracy, fresh, process.env['REPORT'] === 'all'));
  expect(accuracy.of(field)).toBeGreaterThanOrEqual(floor);
});

// Measured once, when they were new, 113 sentences: kind 89.4 % (English 84.3, zh-Hant 100, zh-Hans 95.5; off topic 6 of 12),
// language 99.1, tea 100, family 99.1, vessel 96.5, volume 99.1, leaf, guests, temperature and style 100. The batches before
// it came to 92.9, 89.2, 84.3 and 90.8 % of kinds when they were new (customers-later.txt). Since other worlds than the shop's are
// weighed: kind 92.9 (English 88.6; off topic 8 of 12), and since words the shop has never heard count: 93.8 (English 90; 9 of 12).
test.each([
  ['kind', 0.88],
  ['language', 0.97],
  ['tea', 0.98],
  ['family', 0.98],
  ['vessel', 0.95],
  ['volumeMl', 0.97],
  ['leafG', 0.98],
  ['guests', 0.97],
  ['tempC', 0.98],
])('customers kept apart: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(ofApart, apart, false));
  expect(ofApart.of(field)).toBeGreaterThanOrEqual(floor);
});

// Measured when they were new, 374 sentences: kind 96.3 % (English 97.1, zh-Hant 96.4, zh-Hans 94.5; off topic 26 of 33),
// guests 98.1, vessel and style 99.5, volume and leaf 99.7, language, tea, family and temperature 100. Since unheard words count:
// kind 96.5 (zh-Hans 95.6), the rest as it was.
test.each([
  ['kind', 0.95],
  ['language', 0.98],
  ['tea', 0.98],
  ['family', 0.98],
  ['vessel', 0.97],
  ['volumeMl', 0.98],
  ['leafG', 0.98],
  ['guests', 0.97],
  ['tempC', 0.98],
])('the last customers kept apart: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(ofLast, last, false));
  expect(ofLast.of(field)).toBeGreaterThanOrEqual(floor);
});

// Measured when they were new, 120 sentences, a fifth of them about anything else: kind 90.8 % (English 89.6, zh-Hant and zh-Hans 91.7;
// off topic 20 of 25, safety 14 of 16, shop 9 of 11), language 99.2, tea 98.3, vessel 96.7, guests 97.5, volume, leaf and style 100. The
// reader as it was before unheard words counted: kind 88.3, off topic 17 of 25.
test.each([
  ['kind', 0.89],
  ['language', 0.98],
  ['tea', 0.97],
  ['family', 0.98],
  ['vessel', 0.95],
  ['volumeMl', 0.98],
  ['leafG', 0.98],
  ['guests', 0.96],
  ['tempC', 0.98],
])('the customers after them: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(ofAfter, after, false));
  expect(ofAfter.of(field)).toBeGreaterThanOrEqual(floor);
});

const evening = readSentences('rainy-evening.txt');
const ofEvening = accuracyOf(evening, read, finder);

// Measured when they were new, 120 sentences, a fifth of them about anything else: kind 95.8 % (English 92.5, zh-Hant 95, zh-Hans 100;
// off topic 20 of 22, safety 10 of 11, lesson 6 of 7), vessel 97.5, volume 98.3, language, family, leaf and temperature 99.2, tea and
// guests 100. Since rainy-morning.txt is learnt from, which was 91.7 then: kind 96.7 (zh-Hans 97.5; off topic 21, safety 11), the rest as it was.
// Since mishaps and what sounds like them are learnt from: kind 95, one on the taste taken for safety among the two that are lost; of
// customers-last.txt 97.1 where it was 96.5, customers-after.txt 93.3 (91.7), customers-apart.txt 93.8 (92.9), foggy-evening.txt 93.3 (91.7),
// fresh.txt 100 as before, stranger.txt 99.1 (99.7).
test.each([
  ['kind', 0.95],
  ['language', 0.98],
  ['tea', 0.98],
  ['family', 0.98],
  ['vessel', 0.96],
  ['volumeMl', 0.97],
  ['leafG', 0.98],
  ['guests', 0.98],
  ['tempC', 0.98],
])('the people of a rainy evening: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(ofEvening, evening, false));
  expect(evening.length).toBe(120);
  expect(ofEvening.of(field)).toBeGreaterThanOrEqual(floor);
});

const foggy = readSentences('foggy-evening.txt');
const ofFoggy = accuracyOf(foggy, read, finder);

// Measured once, when they were new, 60 sentences, a quarter of them about anything else: kind 91.7 % (English 100, zh-Hant 80,
// zh-Hans 95; off topic 12 of 15), language and family 98.3, vessel and volume 96.7, the rest 100. The reader as it was before
// rainy-morning.txt was learnt from: kind 91.7 too, off topic 11.
test.each([
  ['kind', 0.9],
  ['language', 0.96],
  ['tea', 0.98],
  ['family', 0.96],
  ['vessel', 0.95],
  ['volumeMl', 0.95],
  ['leafG', 0.98],
  ['guests', 0.98],
  ['tempC', 0.98],
])('people of a foggy evening: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(ofFoggy, foggy, false));
  expect(foggy.length).toBe(60);
  expect(ofFoggy.of(field)).toBeGreaterThanOrEqual(floor);
});

const ride = readSentences('tram-ride.txt');
const ofRide = accuracyOf(ride, read, finder);

// Of all 120 people of tram-stop.txt and tram-ride.txt, measured once when they were new, 95 % of kinds were right as they were
// labelled then; six that set two teas side by side were brew and are the shop's since, which makes it 90. These 54, since the
// other half is learnt from and boiling water, cups of water and 斤 are read: kind 98.1.
test.each([
  ['kind', 0.94],
  ['language', 0.96],
  ['tea', 0.98],
  ['family', 0.96],
  ['vessel', 0.95],
  ['volumeMl', 0.95],
  ['tempC', 0.98],
])('people on a tram: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(ofRide, ride, false));
  expect(ride.length).toBe(54);
  expect(ofRide.of(field)).toBeGreaterThanOrEqual(floor);
});

const strange = readSentences('stranger.txt');
const among = accuracyOf(strange, read, finder);

test.each([
  ['kind', 0.95],
  ['language', 0.97],
  ['tea', 0.97],
  ['family', 0.97],
  ['vessel', 0.97],
  ['volumeMl', 0.97],
  ['leafG', 0.97],
  ['guests', 0.97],
  ['tempC', 0.97],
])('sentences of a stranger: %s is right in at least %f', (field, target) => {
  expect(strange.length).toBe(330);
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(among, strange, false));
  expect(among.of(field)).toBeGreaterThanOrEqual(target);
});

test('no tea is taken for another, learnt from or not', () => {
  const all = accuracyOf([...sentences, ...passing, ...fresh, ...strange], read, finder);
  expect(all.wrongTeas.map((miss) => [miss.sentence.text, miss.read])).toEqual([]);
  // Of those kept apart nobody is told which.
  for (const batch of [ofApart, ofLast, ofEvening, ofFoggy]) expect(batch.wrongTeas.length).toBe(0);
  // One of the last batch was, when it was new.
  expect(ofAfter.wrongTeas.length).toBeLessThanOrEqual(1);
});
