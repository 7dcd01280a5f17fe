/** The guided brew in the house: times, kills, late starts, and everything fingers do wrong. */
import { afterEach, describe, expect, it } from 'vitest';
import { sitDown, type Table } from './table.ts';

let table: Table;
afterEach(() => table.leave());

/** Rou gui in a small covered bowl: two short infusions, then longer ones. */
async function atInfusion(n: number, options = {}): Promise<void> {
  table = await sitDown(options);
  await table.write('rou gui in a 110 ml gaiwan');
  for (const label of ['Guide me', 'Ready', 'Done', 'The leaf is in', 'Rinsed']) await table.tap(label);
  for (let done = 1; done < n; done++) {
    await table.tap(done < 3 ? 'Poured' : 'Filled');
    if (done >= 3) {
      await table.pass(Number((await table.brew())['seconds']));
      await table.tap('Poured');
    }
    await table.pass(45);
  }
}

const last = (): string => table.arrived().at(-1)?.paragraphs.join(' ') ?? '';
const calls = () =>
  table.arrived().filter(({ paragraphs }) => paragraphs.some((p) => /Pour off now|to be poured/.test(p)));
const hold = async () =>
  (await table.brew())['hold'] as { filledAtMs: number; endsAtMs: number; callAtMs: number } | null;

describe('time', () => {
  it('a hold counts from its tap; the call is a new message at its end, all else is written in place', async () => {
    await atInfusion(3);
    await table.tap('Filled');
    const { seconds } = await table.brew();
    const begun = table.clock.now();
    expect(await hold()).toMatchObject({ filledAtMs: begun, endsAtMs: begun + Number(seconds) * 1000 });
    expect(table.arrived().at(-1)?.countdown).toMatchObject({
      startedAt: begun,
      endsAt: begun + Number(seconds) * 1000,
    });
    await table.pass(Number(seconds) - 1);
    expect(calls()).toHaveLength(0);
    await table.pass(1);
    expect(calls().map(({ at, replaces }) => [at, replaces])).toEqual([[begun + Number(seconds) * 1000, undefined]]);
    await table.tap('Poured');
    // The board of the hold says how long it was; the call has become the next step.
    const [closing, next] = table.arrived().slice(-2);
    expect(closing?.paragraphs).toEqual([`Infusion 3: ${seconds as number} s.`]);
    expect(closing?.countdown).toBeUndefined();
    expect(next?.replaces).toBe(calls()[0]?.id);
  });

  it('the call leaves as much earlier as the channel takes to bring it', async () => {
    await atInfusion(3, { delayMs: 400 });
    await table.tap('Filled');
    const { endsAtMs = 0, callAtMs } = (await hold()) ?? {};
    expect(callAtMs).toBe(endsAtMs - 400);
    await table.pass(60);
    expect(calls()[0]?.at).toBe(endsAtMs);
  });

  it('counts from the tap however late it is handled', async () => {
    await atInfusion(3);
    // After a death what arrives is kept first, and handled after that.
    await table.restart();
    const tapped = table.clock.now();
    // Kept, then dead; handled three seconds later.
    table.dieAt(1);
    await table.tap('Filled');
    await table.restart(3);
    expect((await hold())?.filledAtMs).toBe(tapped);
  });

  it.each([
    ['filled and poured tapped apart', false, 14],
    ['one tap an infusion where it is called', true, 9],
  ])('a whole brew needs few messages: %s', async (way, isShort, mostTaps) => {
    await atInfusion(1);
    const before = { messages: table.arrived().length, commits: table.commits() };
    let taps = 0;
    const tap = async (label: string): Promise<void> => {
      taps++;
      await table.tap(label);
    };
    while ((await table.brew())['isSpent'] !== true) {
      const { isCounted, hold: held, n, ends, seconds } = await table.brew();
      if (isCounted === true) await tap('Poured');
      else if (held === null) await tap('Filled');
      else {
        const isLast = Number(n) === Number(ends);
        await table.pass(Number(seconds) + (isShort && !isLast ? 45 : 0));
        await tap(isShort && !isLast ? 'Poured, and the next is filled' : 'Poured');
      }
      if ((await hold()) === null) await table.pass(45);
    }
    const sent = table.arrived().slice(before.messages);
    const fresh = sent.filter(({ replaces }) => replaces === undefined);
    const { lastN } = await table.brew();
    console.log(
      `${way}: ${lastN as number} infusions, ${calls().length} of them called, ${taps} taps: ${fresh.length} new messages, ` +
        `${sent.length - fresh.length} edits, ${table.commits() - before.commits} commits`,
    );
    expect(fresh).toEqual(calls());
    expect(taps).toBeLessThanOrEqual(mostTaps);
    expect(table.commits() - before.commits).toBe(taps);
    expect(last()).toContain('That was 8 infusions.');
  });
});

/** Two infusions, one counted and one called; every message and the state at its end. */
async function brew(
  dieAt: number,
  isWary: boolean,
): Promise<{ readonly state: unknown; readonly calls: number; readonly operations: number }> {
  await atInfusion(2);
  if (isWary) await table.restart();
  const before = table.operations();
  table.dieAt(dieAt);
  await table.tap('Poured');
  await table.pass(45);
  if (table.isDead()) await table.restart(1);
  await table.tap('Filled');
  await table.pass(10);
  if (table.isDead()) await table.restart(1);
  await table.pass(40);
  if (table.isDead()) await table.restart(1);
  await table.tap('Poured');
  await table.pass(5);
  if (table.isDead()) await table.restart(1);
  const { kept } = (await table.brew()) as { kept: { brew: { session: unknown }; lastN: number } };
  const result = { state: kept.lastN, calls: calls().length, operations: table.operations() - before };
  await table.leave();
  return result;
}

describe('a house that dies', { timeout: 60_000 }, () => {
  it.each([
    ['handles what arrives at once', false],
    ['died before, and keeps it first', true],
  ])('in any instant of an infusion goes on with it, and calls once: one that %s', async (_, isWary) => {
    const whole = await brew(Infinity, isWary);
    expect(whole).toMatchObject({ state: 3, calls: 1 });
    for (let dieAt = 0; dieAt < whole.operations; dieAt++) {
      const { state, calls: called } = await brew(dieAt, isWary);
      expect({ dieAt, state, called }).toEqual({ dieAt, state: 3, called: 1 });
    }
    console.log(`killed at each of ${whole.operations} operations of the store`);
    table = await sitDown();
  });

  it.each([
    [1, 'Pour off now, infusion 3: low, to the last drop.'],
    [30, 'Pour off now, infusion 3. I call 30 s late, sorry.'],
    [600, 'Infusion 3 was to be poured 10 min ago; I was away, sorry. If it still stands, taste before you serve it.'],
  ])('and comes back %i s after the call was due, says so', async (lateS, sentence) => {
    await atInfusion(3);
    await table.tap('Filled');
    const { seconds } = await table.brew();
    table.dieAt(0);
    await table.restart(Number(seconds) + lateS);
    expect(calls().map(({ paragraphs }) => paragraphs)).toEqual([[sentence]]);
  });
});

describe('fingers', () => {
  it.each(['Poured', 'Filled'])('tap "%s" twice: it counts once', async (label) => {
    await atInfusion(label === 'Poured' ? 2 : 3);
    const key = table.keyOf(label);
    await table.tapKey(key);
    const once = await table.brew();
    await table.tapKey(key);
    expect(last()).toContain('That is noted already.');
    const twice = await table.brew();
    expect([twice['lastN'], twice['hold']]).toEqual([once['lastN'], once['hold']]);
  });

  it('on two devices: the first counts, the second is told', async () => {
    await atInfusion(2);
    const [here, there] = [table.keyOf('Poured'), table.keyOf('It stood longer')];
    await table.tapKey(here);
    await table.tapKey(there);
    expect(last()).toContain('That is noted already.');
    expect((await table.brew())['lastN']).toBe(2);
  });

  it('tap the step before last: nothing goes back', async () => {
    table = await sitDown();
    await table.write('rou gui in a 110 ml gaiwan');
    await table.tap('Guide me');
    const old = table.keyOf('Ready');
    for (const label of ['Ready', 'Done', 'The leaf is in']) await table.tap(label);
    await table.tapKey(old);
    expect(last()).toContain('That is noted already.');
    expect(last()).toContain("Don't drink this one");
  });

  it('tap a brew that is over: it stays over', async () => {
    await atInfusion(3);
    const old = table.keyOf('Filled');
    await table.write('finish');
    await table.tapKey(old);
    expect((await table.brew())['isUnderWay']).toBeNull();
    await table.pass(7200);
    expect(calls()).toHaveLength(0);
  });

  it('tap "Poured" just before the call: the call is not sent', async () => {
    await atInfusion(3);
    await table.tap('Filled');
    const { seconds } = await table.brew();
    await table.pass(Number(seconds) - 3);
    await table.tap('Poured');
    await table.pass(60);
    expect(calls()).toHaveLength(0);
    expect(last()).toContain('You poured 3 s early');
  });

  it('write in the middle of a hold: answered below, the countdown goes along, and the call still comes once', async () => {
    await atInfusion(3);
    await table.tap('Filled');
    const { endsAtMs } = (await hold()) ?? {};
    await table.write("what's the temp again?");
    const answer = table.arrived().findLast(({ countdown }) => countdown);
    expect(answer?.paragraphs[0]).toContain('97 °C');
    expect(answer?.replaces).toBeUndefined();
    expect(answer?.countdown?.endsAt).toBe(endsAtMs);
    await table.pass(60);
    expect(calls().map(({ at }) => at)).toEqual([endsAtMs]);
  });

  it('begin another brew after one: what was said of the first is not meant for it', async () => {
    table = await sitDown();
    await table.write('cold brew dong ding, 5 g, in a 750 ml jar');
    await table.tap('Guide me');
    expect(await table.brew()).toMatchObject({ style: 'cold', leafG: 5 });
    await table.write('finish');
    await table.write('rou gui in a 110 ml gaiwan');
    await table.tap('Guide me');
    expect(await table.brew()).toMatchObject({ tea: 'rou-gui', style: 'gongfu', leafG: 6.5 });
  });

  it('begin a second brew: one pot at a time', async () => {
    await atInfusion(3);
    await table.write('longjing in a 350 ml glass');
    await table.tap('Guide me');
    const asked = table.arrived().findLast(({ choices }) => choices.length > 0);
    expect(asked?.paragraphs[0]).toContain('Rou Gui is still under way, at infusion 3');
    await table.tap('End it and begin this one');
    expect((await table.brew())['tea']).toBe('longjing');
  });
});
