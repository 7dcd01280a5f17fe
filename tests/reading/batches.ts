/** Sentences kept apart, batch by batch, and how well each must be read: floors a little under what was measured. */

export interface Batch {
  readonly file: string;
  /** So many sentences there are at least: none may be lost. */
  readonly size: number;
  /** In what share of them each of these is read right, at least. */
  readonly floors: { readonly [field: string]: number };
  /** Of so many that say which standing answer fits, so many get one at least; `near`: also one that may be meant. */
  readonly answers?: { readonly of: number; readonly right: number; readonly how: 'near' | 'sure' };
  /** The report names what is missed; of the others nobody is told. */
  readonly isOpen?: true;
  /** So many teas may be taken for another. */
  readonly wrongTeas?: number;
}

/** What is rarely missed. */
const figures = { volumeMl: 0.98, leafG: 0.98, guests: 0.98, tempC: 0.98 };
const names = { language: 0.97, tea: 0.98, family: 0.98 };

export const batches: readonly Batch[] = [
  {
    file: 'fresh.txt',
    size: 95,
    floors: {
      kind: 0.94,
      ...names,
      family: 0.97,
      vessel: 0.97,
      ...figures,
      guests: 0.97,
      elevationM: 0.99,
      style: 0.97,
    },
    wrongTeas: 0,
    isOpen: true,
  },
  // Measured once, when they were new, 113 sentences: kind 89.4 % (English 84.3, zh-Hant 100, zh-Hans 95.5; off topic 6 of 12),
  // language 99.1, tea 100, family 99.1, vessel 96.5, volume 99.1, leaf, guests, temperature and style 100. The batches before
  // it came to 92.9, 89.2, 84.3 and 90.8 % of kinds when they were new (customers-later.txt). Since other worlds than the shop's are
  // weighed: kind 92.9 (English 88.6; off topic 8 of 12), and since words the shop has never heard count: 93.8 (English 90; 9 of 12).
  {
    file: 'customers-apart.txt',
    size: 113,
    floors: { kind: 0.88, ...names, vessel: 0.95, ...figures, volumeMl: 0.97, guests: 0.97 },
    wrongTeas: 0,
  },
  // Measured when they were new, 374 sentences: kind 96.3 % (English 97.1, zh-Hant 96.4, zh-Hans 94.5; off topic 26 of 33),
  // guests 98.1, vessel and style 99.5, volume and leaf 99.7, language, tea, family and temperature 100. Since unheard words count:
  // kind 96.5 (zh-Hans 95.6), the rest as it was.
  {
    file: 'customers-last.txt',
    size: 374,
    floors: { kind: 0.95, ...names, language: 0.98, vessel: 0.97, ...figures, guests: 0.97 },
    wrongTeas: 0,
  },
  // Measured when they were new, 120 sentences, a fifth of them about anything else: kind 90.8 % (English 89.6, zh-Hant and zh-Hans 91.7;
  // off topic 20 of 25, safety 14 of 16, shop 9 of 11), language 99.2, tea 98.3, vessel 96.7, guests 97.5, volume, leaf and style 100. The
  // reader as it was before unheard words counted: kind 88.3, off topic 17 of 25. One tea was taken for another.
  {
    file: 'customers-after.txt',
    size: 120,
    floors: { kind: 0.89, ...names, language: 0.98, tea: 0.97, vessel: 0.95, ...figures, guests: 0.96 },
    wrongTeas: 1,
  },
  // Measured when they were new, 120 sentences, a fifth of them about anything else: kind 95.8 % (English 92.5, zh-Hant 95, zh-Hans 100;
  // off topic 20 of 22, safety 10 of 11, lesson 6 of 7), vessel 97.5, volume 98.3, language, family, leaf and temperature 99.2, tea and
  // guests 100. Since rainy-morning.txt is learnt from, which was 91.7 then: kind 96.7 (zh-Hans 97.5; off topic 21, safety 11), the rest as it was.
  // Since mishaps and what sounds like them are learnt from: kind 95, one on the taste taken for safety among the two that are lost; of
  // customers-last.txt 97.1 where it was 96.5, customers-after.txt 93.3 (91.7), customers-apart.txt 93.8 (92.9), foggy-evening.txt 93.3 (91.7),
  // fresh.txt 100 as before, stranger.txt 99.1 (99.7). Since courtesies are taken off before a message is read: kind 94.2, one more lost
  // (of all files kept apart 95.5 as they stand, where it was 95.7); with a hello ahead or thanks behind, which changed what was heard
  // of one message in twelve to one in four, the same figures.
  {
    file: 'rainy-evening.txt',
    size: 120,
    floors: { kind: 0.94, ...names, language: 0.98, vessel: 0.96, ...figures, volumeMl: 0.97 },
    wrongTeas: 0,
  },
  // Measured once, when they were new, 60 sentences, a quarter of them about anything else: kind 91.7 % (English 100, zh-Hant 80,
  // zh-Hans 95; off topic 12 of 15), language and family 98.3, vessel and volume 96.7, the rest 100. The reader as it was before
  // rainy-morning.txt was learnt from: kind 91.7 too, off topic 11.
  {
    file: 'foggy-evening.txt',
    size: 60,
    floors: { kind: 0.9, ...names, language: 0.96, family: 0.96, vessel: 0.95, ...figures, volumeMl: 0.95 },
    wrongTeas: 0,
  },
  // Of all 120 people of tram-stop.txt and tram-ride.txt, measured once when they were new, 95 % of kinds were right as they were
  // labelled then; six that set two teas side by side were brew and are the shop's since, which makes it 90. These 54, since the
  // other half is learnt from and boiling water, cups of water and 斤 are read: kind 98.1.
  {
    file: 'tram-ride.txt',
    size: 54,
    floors: { kind: 0.94, ...names, language: 0.96, family: 0.96, vessel: 0.95, volumeMl: 0.95, tempC: 0.98 },
  },
  {
    file: 'stranger.txt',
    size: 330,
    floors: {
      kind: 0.95,
      language: 0.97,
      tea: 0.97,
      family: 0.97,
      vessel: 0.97,
      volumeMl: 0.97,
      leafG: 0.97,
      guests: 0.97,
      tempC: 0.97,
    },
    wrongTeas: 0,
  },
  // From the counter of a shop, so that what was mended stays mended.
  {
    file: 'front-counter.txt',
    size: 201,
    floors: { kind: 0.94, tea: 0.98, vessel: 0.98, ...figures, guests: 0.99, style: 0.97 },
    isOpen: true,
  },
  // Measured once, when they were new, 126 sentences: kind 93.7 % (English 94.1, zh-Hant 91.7, zh-Hans 94.9), language 97.6, vessel 96.0,
  // volume 98.4, tea, family, guests, temperature and style 99.2, leaf and elevation 100; everything right in 84.1 %; 26 of 36 answers.
  // Since ferry-in.txt is learnt from, and answers have more wordings: kind 95.2 (English 96.1, zh-Hant 94.4, zh-Hans 94.9), all right in
  // 85.7 %; 29 answers.
  {
    file: 'ferry-out.txt',
    size: 126,
    floors: { kind: 0.94, ...names, vessel: 0.95, ...figures, elevationM: 0.99, style: 0.98 },
    answers: { of: 36, right: 28, how: 'sure' },
  },
  // Chinese, never mended with a look at them. When they were new: kind 55 of 59, 14 of 19 answers.
  {
    file: 'late-ferry.txt',
    size: 59,
    floors: { kind: 0.9, tea: 0.95, vessel: 0.93, volumeMl: 0.93, leafG: 0.95, guests: 0.95, tempC: 0.95 },
    answers: { of: 19, right: 13, how: 'near' },
    isOpen: true,
  },
  // Chinese. When they were new, by evening: kind 96.2, 96.2, 95.0, 93.8, 93.6, 96.9 %; everything right, the answer with it, in 75.9,
  // 78.2, 66.3, 76.3, 75.6, 90.6 %; answers 19 of 25, 18 of 28, 13 of 32, 18 of 27, 19 of 27, 20 of 23.
  {
    file: 'night-market.txt',
    size: 459,
    floors: { kind: 0.97, ...names, vessel: 0.98, volumeMl: 0.99, leafG: 0.99, guests: 0.99, tempC: 0.99 },
    answers: { of: 163, right: 150, how: 'near' },
  },
  // In a hurry, in the English of many places. Measured once, when they were new, 60 sentences: kind 96.7 % (58), all that a plan needs
  // right in 15 of 17, 23 of 29 answers.
  {
    file: 'back-door.txt',
    size: 60,
    floors: { kind: 0.95, volumeMl: 0.98, leafG: 0.98, guests: 0.96, style: 0.96 },
    answers: { of: 29, right: 23, how: 'sure' },
  },
  // Over the cup, while the pot draws and the day after. Measured once, when they were new, 50 sentences: kind 62 % (English 57.1, zh-Hant
  // 58.8, zh-Hans 75); of 20 wrong 14 are care read as taste or brew, which is what they speak of; 14 of 28 answers, 2 before there were any.
  {
    file: 'window-seat.txt',
    size: 50,
    floors: { kind: 0.6 },
    answers: { of: 28, right: 13, how: 'near' },
  },
  // Chinese in haste. Three such batches of 30 first messages and 30 said in a state (at a question, beside a plan, in a brew, of a cup, of
  // a lesson) were read answer by answer when they were new, each after the one before was mended: 25, 23 and 29 of the first messages
  // were answered well, and 23, 16 and 21 of those in a state. This is the third, of which two first messages (a cake to pry, dust in the
  // cup) and two in a state were known and mended before. The others of the three are in tests/flows/typed-in-haste, as far as they were missed.
  {
    file: 'corner-shop.txt',
    size: 30,
    floors: {
      kind: 0.96,
      ...names,
      language: 0.96,
      tea: 0.96,
      family: 0.96,
      vessel: 0.96,
      volumeMl: 0.96,
      leafG: 0.96,
    },
    answers: { of: 16, right: 15, how: 'near' },
    isOpen: true,
  },
  // English first messages. The reader as it was before either batch was looked at: kind 26 and 25 of 30, answers 9 of 13 and 11 of 15.
  // Judged by the whole reply, when they were new, 21 of the first 30 and 20 of the second were answered as one would wish, and of
  // thirty sentences said in a state beside each of them 19 and 22. Since mended with a look at them: kind 28 and 26, answers 13 and 13.
  {
    file: 'kitchen-door.txt',
    size: 60,
    floors: { kind: 0.88, tea: 0.98, vessel: 0.92, ...figures },
    answers: { of: 28, right: 25, how: 'sure' },
  },
];
