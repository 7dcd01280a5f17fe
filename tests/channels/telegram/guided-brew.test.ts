/** Whole guided brews on a phone, in every language and manner, and everything fingers do to them. */
import { afterEach, describe, expect, it } from 'vitest';
import { languages, type Language } from '../../../src/core/units.ts';
import type { KeptMessage } from './bot-api/world.ts';
import { labels, pickUp, wordsIn, type Phone, type PhoneParts, type Seen } from './phone.ts';

let phone: Phone;
afterEach(() => phone.close());

const devices: { readonly [language in Language]: string } = { en: 'en', 'zh-Hant': 'zh-hant', 'zh-Hans': 'zh-hans' };
const asked: { readonly [language in Language]: string } = {
  en: 'rou gui in a 110 ml gaiwan, two guests',
  'zh-Hant': '肉桂，110毫升蓋碗，兩位客人',
  'zh-Hans': '肉桂，110毫升盖碗，两位客人',
};

const en = wordsIn('en');
const label = (key: string, style = 'gongfu'): string => en(`choice-guide-${key}`, { style });
const openButtons = (): readonly KeptMessage[] => phone.messages().filter((message) => labels(message).length > 0);
const all = ({ fresh, edited }: Seen): readonly KeptMessage[] => [...fresh, ...edited];
const one = (seen: Seen): KeptMessage => {
  expect(all(seen).filter((message) => labels(message).length > 0)).toHaveLength(1);
  return all(seen).find((message) => labels(message).length > 0)!;
};

/** Up to the third infusion of a small covered bowl, the first that is called. */
async function atThird(parts: Partial<PhoneParts> = {}): Promise<void> {
  phone = await pickUp({ language: 'en', ...parts });
  await phone.say('rou gui in a 110 ml gaiwan');
  await phone.tap(en('choice-guide'));
  for (const step of ['ready', 'done', 'in', 'rinsed', 'poured']) await phone.tap(label(step));
  await phone.pass(45);
  await phone.tap(label('poured'));
  await phone.pass(45);
}

/** What went out and how, once a brew is over. */
function counts(): { readonly messages: number; readonly edits: number; readonly tooMany: number } {
  const sent = (method: string): number => phone.server.record.of(method).filter(({ code }) => code === 200).length;
  const tooMany = phone.server.record.codes()[429] ?? 0;
  return { messages: sent('sendMessage'), edits: sent('editMessageText'), tooMany };
}

const untouched = (): readonly unknown[] =>
  [...phone.server.world.taps.values()].filter(({ answeredAt }) => answeredAt === null);

describe.each(languages)('a whole brew, in %s', { timeout: 60_000 }, (language) => {
  const say = wordsIn(language);
  const button = (key: string): string => say(`choice-guide-${key}`, { style: 'gongfu' });

  it('is one message written on, a call for each timed infusion, and one tap an infusion', async () => {
    phone = await pickUp({ language: devices[language] });
    const plan = one(await phone.say(asked[language]));
    const board = one(await phone.tap(say('choice-guide')));
    expect(board.id).toBeGreaterThan(plan.id);
    for (const step of ['ready', 'done', 'in', 'rinsed']) {
      const seen = await phone.tap(button(step));
      expect({ step, fresh: seen.fresh.length, id: one(seen).id }).toEqual({ step, fresh: 0, id: board.id });
    }
    let taps = 0;
    let calls = 0;
    for (let shown = labels(openButtons().at(-1)!); !shown.includes(say('choice-guide-brew-again')); taps++) {
      expect(taps).toBeLessThan(20);
      const next = ['next-filled', 'poured', 'filled'].map(button).find((words) => shown.includes(words));
      const seen = await phone.tap(next!);
      expect(seen.fresh).toEqual([]);
      const called = await phone.pass(480);
      const [call] = called.fresh;
      calls += called.fresh.length;
      expect(called.fresh.length).toBeLessThanOrEqual(1);
      if (call) expect(labels(call)).toContain(button('poured'));
      shown = labels(openButtons().at(-1)!);
    }
    // The plan above, and the end of the brew; nothing between them can be tapped any more.
    expect(openButtons().map(({ id }) => id)).toEqual([plan.id, phone.messages().at(-1)!.id]);
    await phone.tap(say('choice-guide-taste', { item: 'right' }));
    expect(labels(phone.messages().at(-1)!)).not.toContain(say('choice-guide-taste', { item: 'right' }));
    const { messages, edits, tooMany } = counts();
    console.log(`${language}: ${taps} taps, ${calls} calls, ${messages} messages, ${edits} edits`);
    expect(taps).toBeLessThanOrEqual(9);
    expect({ messages, tooMany, unanswered: untouched() }).toEqual({ messages: 2 + calls, tooMany: 0, unanswered: [] });
    expect(phone.log.lines.filter((line) => !line.startsWith('info'))).toEqual([]);
  });
});

describe('manners of brewing', { timeout: 60_000 }, () => {
  it('a pot for the table: two infusions, nothing more to fill after the last', async () => {
    phone = await pickUp({ language: 'en' });
    await phone.say('assam in a 500 ml teapot');
    for (const step of [en('choice-guide'), label('ready'), label('done'), label('in'), label('filled')]) {
      await phone.tap(step);
    }
    const first = one(await phone.pass(200));
    expect(labels(first)).toEqual([label('poured'), label('next-filled'), label('why')]);
    await phone.tap(label('next-filled'));
    const second = one(await phone.pass(300));
    expect(labels(second)).toEqual([label('poured'), label('why')]);
    const end = one(await phone.tap(label('poured')));
    expect(end.id).toBe(second.id);
    expect(end.text).toContain('That was 2 infusions');
  });

  it('a jar in the refrigerator: no kettle, no pouring, and kept cold to the end', async () => {
    phone = await pickUp({ language: 'en' });
    await phone.say('cold brew longjing in a 1 litre jug');
    const first = one(await phone.tap(en('choice-guide')));
    expect(first.text).not.toMatch(/kettle|heat/i);
    for (const step of ['ready', 'in', 'filled']) await phone.tap(label(step));
    expect((await phone.pass(6.4 * 3600)).fresh).toEqual([]);
    const call = one(await phone.pass(1800));
    expect(call.text).toContain('strain it');
    expect(labels(call)).toEqual([label('poured', 'cold'), label('why')]);
    const end = one(await phone.tap(label('poured', 'cold')));
    expect(end.text).toContain('refrigerator');
    expect(end.text).not.toContain('Drink up');
  });

  it('leaf in the glass: drunk, not poured, however long that takes', async () => {
    phone = await pickUp({ language: 'en' });
    await phone.say('longjing in a 350 ml glass');
    for (const step of [en('choice-guide'), label('ready'), label('in'), label('filled')]) await phone.tap(step);
    const call = one(await phone.pass(300));
    expect(labels(call)).toEqual([label('poured', 'grandpa'), label('next-filled', 'grandpa'), label('why')]);
    await phone.pass(1200);
    const next = one(await phone.tap(label('next-filled', 'grandpa')));
    expect(next.text).toContain('Infusion 2');
    expect(next.text).not.toMatch(/late|Did it stand/);
  });

  it('powder: whisked and done', async () => {
    phone = await pickUp({ language: 'en' });
    await phone.say('matcha in a 350 ml mug');
    for (const step of [en('choice-guide'), label('ready')]) await phone.tap(step);
    expect(one(await phone.tap(label('done'))).text).toContain('foam');
  });
});

describe('time', { timeout: 60_000 }, () => {
  it.each([0, 800])('the call arrives at the end of the hold where a sending takes %i ms', async (sendMs) => {
    await atThird({ sendMs });
    await phone.tap(label('filled'));
    const [seconds] = /\d+(?= s from your tap)/.exec(openButtons().at(-1)!.text)!;
    const filledAt = phone.server.record.of('answerCallbackQuery').at(-1)!.at;
    const call = one(await phone.pass(60));
    const sent = phone.server.record.of('sendMessage').at(-1)!;
    expect(call.text).toContain('Pour off now, infusion 3');
    expect(sent.at + sendMs - filledAt).toBe(Number(seconds) * 1000);
  });

  it('after the call all goes on in its message: why, a late tap, an hour gone', async () => {
    await atThird();
    const hold = one(await phone.tap(label('filled')));
    const call = one(await phone.pass(30));
    const why = one(await phone.tap(label('why')));
    expect(why.id).toBe(call.id);
    expect(why.text).toMatch(/Why now[^]*Pour off now/);
    expect(phone.messages().find(({ id }) => id === hold.id)!.text).toBe(en('guide-told-below'));
    await phone.pass(600);
    const late = one(await phone.tap(label('poured')));
    expect(late).toMatchObject({ id: call.id, text: expect.stringContaining('Did it stand') as string });
    const quiet = one(await phone.pass(3600));
    expect(quiet.id).toBeGreaterThan(call.id);
    expect(one(await phone.tap(label('go-on'))).id).toBe(quiet.id);
    const standing = openButtons().map(({ id }) => id);
    expect(standing).toEqual([standing[0], quiet.id]);
  });
});

describe('fingers', { timeout: 60_000 }, () => {
  it.each(['poured', 'filled'])('tap "%s" twice: it counts once', async (step) => {
    await atThird();
    if (step === 'poured') {
      await phone.tap(label('filled'));
      await phone.pass(30);
    }
    const shown = openButtons().at(-1)!;
    const once = one(await phone.tap(label(step)));
    const twice = one(await phone.tapOn(shown, label(step)));
    expect(twice).toMatchObject({ id: once.id, text: expect.stringContaining(en('guide-noted-already')) as string });
    expect(/Infusion \d/.exec(twice.text)?.[0]).toBe(/Infusion \d/.exec(once.text)?.[0]);
  });

  it('tap on two devices, one a step behind: the first counts', async () => {
    await atThird();
    const behind = openButtons().at(-1)!;
    await phone.tap(label('filled'));
    await phone.pass(30);
    const next = one(await phone.tap(label('poured')));
    const told = one(await phone.tapOn(behind, label('filled')));
    expect(told.id).toBe(next.id);
    expect(told.text).toContain(en('guide-noted-already'));
    expect(told.text).toContain('Infusion 4');
  });

  it('tap a button of the very first step: nothing goes back', async () => {
    phone = await pickUp({ language: 'en' });
    await phone.say('rou gui in a 110 ml gaiwan');
    const first = one(await phone.tap(en('choice-guide')));
    for (const step of ['ready', 'done', 'in']) await phone.tap(label(step));
    const told = one(await phone.tapOn(first, label('ready')));
    expect(told.text).toContain("Don't drink this one");
  });

  it('write in the middle: answered below, and the call comes once, as a message', async () => {
    await atThird();
    const hold = one(await phone.tap(label('filled')));
    const wait = one(await phone.say('wait'));
    expect(wait.text).toContain("doesn't wait");
    const answer = one(await phone.say("what's the temp again?"));
    expect(answer.text).toContain('97 °C');
    expect([hold.id, wait.id].map((id) => phone.messages().find((m) => m.id === id)!.text)).toEqual([
      en('guide-told-below'),
      en('guide-told-below'),
    ]);
    const { fresh } = await phone.pass(20);
    expect(fresh.map(({ text }) => text)).toEqual([expect.stringContaining('Pour off now, infusion 3')]);
    expect((await phone.pass(20)).fresh).toEqual([]);
    // Typed after the call: the next step stands below what was typed.
    const poured = one(await phone.say('poured'));
    expect(poured.id).toBe(phone.messages().at(-1)!.id);
    expect(poured.text).toContain('Infusion 4');
    expect(
      openButtons()
        .map(({ id }) => id)
        .slice(1),
    ).toEqual([poured.id]);
  });

  it.each(['thanks', '/start', 'how do I store it?'])(
    'write "%s" in between: what is tapped next goes on below',
    async (text) => {
      await atThird();
      const aside = one(await phone.say(text));
      expect(aside.id).toBe(phone.messages().at(-1)!.id);
      const hold = one(await phone.tapOn(aside, label('filled')));
      expect(hold.id).toBeGreaterThan(aside.id);
      expect(hold.text).toContain('from your tap');
      expect(one(await phone.pass(20)).id).toBeGreaterThan(hold.id);
    },
  );

  it('pause, and come back', async () => {
    await atThird();
    const paused = one(await phone.say('pause'));
    expect(labels(paused)).toEqual([label('go-on'), label('finish')]);
    expect((await phone.pass(7200)).fresh).toEqual([]);
    const back = one(await phone.tap(label('go-on')));
    expect(back).toMatchObject({ id: paused.id, text: expect.stringContaining('Infusion 3') as string });
  });

  it('begin another brew while one holds: the call still comes as a message; then that one ends for good', async () => {
    await atThird();
    await phone.tap(label('filled'));
    await phone.say('longjing in a 350 ml glass');
    const question = one(await phone.tap(en('choice-guide')));
    expect(question.text).toContain('Rou Gui is still under way, at infusion 3');
    const call = one(await phone.pass(30));
    expect(call.id).toBeGreaterThan(question.id);
    const on = one(await phone.tap(label('go-on')));
    expect(on.id).toBe(call.id);
    // The question is closed; its button, kept on another device, ends nothing.
    const told = one(await phone.tapOn(question, label('end-and-begin')));
    expect(told.text).toContain(en('guide-noted-already'));
    await phone.tap(en('choice-guide'));
    const other = one(await phone.tap(label('end-and-begin')));
    expect(other.text).toContain('Glass');
    expect(openButtons().filter((message) => labels(message).includes(label('poured')))).toEqual([]);
    expect((await phone.pass(7200)).fresh).toEqual([]);
  });

  it('leave it all: nothing is called any more', async () => {
    await atThird();
    const hold = one(await phone.tap(label('filled')));
    await phone.say('start over');
    expect((await phone.pass(7200)).fresh).toEqual([]);
    expect(one(await phone.tapOn(hold, label('poured'))).text).toContain(en('tap-too-old'));
  });
});
