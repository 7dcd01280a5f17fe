/** What a number is by what stands beside it: each condition of a line, alone and together. */
import { describe, expect, it } from 'vitest';
import {
  makeSigns,
  signNames,
  type SignName,
  type SignWords,
} from '../../../../src/core/reading/amounts/beside-number.ts';
import { findMeasures } from '../../../../src/core/reading/amounts/measures.ts';
import { findNumbers } from '../../../../src/core/reading/amounts/numbers.ts';
import { words } from '../../../reading/content.ts';

const none = Object.fromEntries(signNames.map((name) => [name, []])) as unknown as {
  readonly [sign in SignName]: readonly SignWords[];
};

function tells(line: SignWords, plain: string, vessel?: string): boolean {
  const signs = makeSigns({ ...none, size: [line] });
  const start = vessel === undefined ? -1 : plain.indexOf(vessel);
  const vessels = vessel === undefined || start < 0 ? [] : [{ start, end: start + vessel.length }];
  const [number] = findMeasures(plain, findNumbers(plain), false);
  if (!number) throw new Error(`no number in: ${plain}`);
  return signs.tell('size', { plain, vessels, teas: [] }, number);
}

describe('a line tells', () => {
  it.each([
    [{ before: '(about|around)' }, 'about 90', 'roundabout 90'],
    [{ behind: 'each' }, '300 each', '300 eaches'],
    [{ behind: 'each' }, '300each', '300 for each'],
    [{ before: 'holds', behind: '($|,)' }, 'it holds 90', 'it holds 90 and more'],
    [{ said: 'kettle' }, 'the kettle, 90', 'kettles, 90'],
    [{ before: 'to', unsaid: 'kettle' }, 'fill to 90', 'fill the kettle to 90'],
    [{ before: 'to', least: 80, most: 90 }, 'to 80', 'to 91'],
    [{ before: 'to', digits: true }, 'to 80', 'to eighty'],
    [{ before: '^' }, '80 then', 'then 80'],
  ] satisfies readonly (readonly [SignWords, string, string])[])('%o: of %s, and not of %s', (line, one, other) => {
    expect(tells(line, one)).toBe(true);
    expect(tells(line, other)).toBe(false);
  });

  it('only where a vessel is named', () => {
    expect(tells({ before: 'to', vessel: true }, 'fill my mug to 300', 'mug')).toBe(true);
    expect(tells({ before: 'to', vessel: true }, 'fill my mug to 300')).toBe(false);
  });

  it.each([
    ['110 or so gaiwan', true],
    ['gaiwan or so 110', true],
    ['gaiwan or maybe 110', false],
  ])('all that stands between it and a vessel: %s', (text, is) => {
    expect(tells({ toVessel: '( |or|so)*' }, text, 'gaiwan')).toBe(is);
  });
});

it('what is beside no number tells nothing', () => {
  const signs = makeSigns(words.besideNumbers);
  const [number] = findMeasures('xyzzy 90 xyzzy', findNumbers('xyzzy 90 xyzzy'), false);
  const scene = { plain: 'xyzzy 90 xyzzy', vessels: [], teas: [] };
  expect(signNames.filter((sign) => number && signs.tell(sign, scene, number))).toEqual([]);
});
