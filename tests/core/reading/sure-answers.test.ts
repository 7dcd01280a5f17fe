/** What is asked by a turn of phrase alone, whatever tea or vessel is named with it; and what only sounds like it. */
import { expect, test } from 'vitest';
import { read } from '../../reading/content.ts';

const heard = (text: string) => read(text, { language: 'en', asked: null });

test.each([
  ['i brewed it for 10 minutes by accident', 'drawn-too-long'],
  ['brewed my sencha for 10 minutes by accident, its awful', 'drawn-too-long'],
  ['forgot my assam on the counter for half an hour', 'drawn-too-long'],
  ['left the leaves in for an hour while i was on the phone', 'drawn-too-long'],
  ['i stewed the keemun for twenty minutes, now what', 'drawn-too-long'],
  ['i poured boiling water on it already is it ruined, its sencha', 'poured-too-hot'],
  ['oops, used boiling water on my longjing', 'poured-too-hot'],
  ['how many grams is a pinch of longjing', 'pinch'],
  ['what does a handful of white peony weigh', 'pinch'],
  ['hojicha latte with 250 ml milk', 'tea-latte'],
  ['can i make a latte with assam', 'tea-latte'],
  ['my cat knocked over the tin and the tea was on the floor for a bit, still ok?', 'leaf-on-floor'],
  ['how do i know when tea is done without a clock', 'without-clock'],
  ['i have no timer, how can i time my oolong', 'without-clock'],
  ['my doctor says i should cut down on caffeine, can i still drink gyokuro in the evening', 'doctor-advice'],
  ['my wife is expecting and drinks three pots of green a day, 500 ml, should I worry', 'pregnancy'],
  ["I'm expecting in march, is oolong fine", 'pregnancy'],
  ['wont it crack', 'glass-crack'],
  ['will a jam jar crack with boiling water on longjing', 'glass-crack'],
  ['my puer is 20 yrs old, is it safe', 'old-tea'],
  ['is a 30 year old sheng dangerous', 'old-tea'],
  ["I want less caffeine so I'll throw away the first steep of my yunnan black", 'rinse-decaf'],
  ['got a new yixing pot, seasoned it with ripe puer, can I brew tieguanyin in it now?', 'clay-one-tea'],
  ['how come you say 95 for oolong but the packet says 85', 'label-differs'],
  ['is it true you should never use boiling water on white tea?', 'why-cooler'],
  ['what is the strongest tea you have, i work nights', 'caffeine-content'],
  ['my dog ate tea leaves off the floor', 'pets'],
])('%s: %s', (text, answer) => expect(heard(text).answer).toBe(answer));

test.each([
  ['im expecting 4 guests, assam in a 1 litre pot', 'pregnancy'],
  ["we're expecting company at six, which pot for keemun", 'pregnancy'],
  ['matcha latte for two', 'tea-latte'],
  ['i have a cracked gaiwan', 'glass-crack'],
  ['brew my sencha for 2 minutes please', 'drawn-too-long'],
  ['boiling water and assam in a mug of 300 ml', 'poured-too-hot'],
  ['something that will not keep me awake', 'caffeine-content'],
  ['my keemun is from 2020, 300 ml pot', 'old-tea'],
])('%s is not %s', (text, answer) => expect(heard(text).answer).not.toBe(answer));
