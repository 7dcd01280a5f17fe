/** What fingers do wrong in a guided brew has one sensible answer, the same in every language. */
import { afterEach, describe, expect, it } from 'vitest';
import type { Facts } from '../../src/core/flow/flow.ts';
import { languages, type Language } from '../../src/core/units.ts';
import { content } from '../the-content.ts';
import { sitDown, type Table } from './table.ts';

const { words } = content;
const first: Readonly<Record<Language, string>> = {
  en: 'rou gui in a 110 ml gaiwan',
  'zh-Hant': '110毫升蓋碗泡肉桂',
  'zh-Hans': '110毫升盖碗泡肉桂',
};
const second: Readonly<Record<Language, string>> = {
  en: 'longjing in a 350 ml glass',
  'zh-Hant': '350毫升玻璃杯泡龍井',
  'zh-Hans': '350毫升玻璃杯泡龙井',
};

let table: Table;
afterEach(() => table.leave());

/** The newest message that can be answered. */
const asked = () => table.arrived().findLast(({ choices }) => choices.length > 0);
const said = (): string => asked()?.paragraphs.join('\n') ?? '';

describe.each(languages)('in %s', (language) => {
  const label = (key: string, values: Facts = {}): string => words.say(language, { key: `choice-guide${key}`, values });
  const poured = label('-poured', { style: 'gongfu' });
  const tap = (...keys: readonly string[]): Promise<void> =>
    keys.reduce((before, key) => before.then(() => table.tap(label(key))), Promise.resolve());
  const notedAlready = words.say(language, { key: 'guide-noted-already', values: {} });
  const begin = async (): Promise<void> => {
    table = await sitDown({ language });
    await table.write(first[language]);
    await tap('');
  };

  it('a second tap on the same button is noted already, and so is one on a button of before', async () => {
    await begin();
    const ready = table.keyOf(label('-ready'));
    await table.tapKey(ready);
    await table.tapKey(ready);
    expect(said()).toContain(notedAlready);
    await tap('-done', '-in');
    const before = said();
    await table.tapKey(ready);
    expect(said()).toBe(`${notedAlready}\n${before}`);
  });

  it('of two devices the first counts, and the second is told', async () => {
    await begin();
    await tap('-ready', '-done', '-in', '-rinsed');
    const [here, there] = [table.keyOf(poured), table.keyOf(label('-longer'))];
    await Promise.all([table.tapKey(here), table.tapKey(there)]);
    expect(said()).toContain(notedAlready);
    expect(await table.brew()).toMatchObject({ lastN: 1, n: 2 });
  });

  it('poured is not taken for an infusion that was not filled', async () => {
    await begin();
    await tap('-ready', '-done', '-in', '-rinsed');
    // The first three are counted by hand; the fourth is filled and timed.
    await table.tap(poured);
    await table.tap(poured);
    await table.tap(poured);
    await table.write(poured);
    expect(said()).toContain(notedAlready);
    expect(await table.brew()).toMatchObject({ lastN: 3, n: 4, hold: null });
  });

  it('a brew begun while another runs: one pot at a time, and the one chosen goes on', async () => {
    await begin();
    await tap('-ready', '-done', '-in', '-rinsed');
    await table.write(second[language]);
    await tap('');
    expect(asked()?.choices.map((choice) => choice.label)).toEqual([label('-go-on'), label('-end-and-begin')]);
    const end = table.keyOf(label('-end-and-begin'));
    await tap('-go-on');
    expect(await table.brew()).toMatchObject({ tea: 'rou-gui', n: 1 });
    // Tapped after all, when the brew has gone on: an old choice.
    await table.tapKey(end);
    expect(await table.brew()).toMatchObject({ tea: 'rou-gui', n: 1 });
  });
});
