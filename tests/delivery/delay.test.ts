/** The usual delay of a channel: the middle of its last sendings. */
import { describe, expect, it } from 'vitest';
import { makeDelays } from '../../src/delivery/delay.ts';

describe('the delay of a channel', () => {
  it.each([
    ['nothing was sent yet', [], 0],
    ['one was sent', [80], 80],
    ['one of three was slow', [80, 9_000, 90], 90],
    ['a clock was set back meanwhile', [-5_000], 0],
    ['all are hopelessly slow', [60_000, 70_000, 80_000], 5_000],
    ['the network changed', [...Array<number>(31).fill(20), ...Array<number>(20).fill(300)], 300],
  ])('when %s', (_, sendings, usual) => {
    const delays = makeDelays();
    for (const ms of sendings) delays.took('telegram', ms);
    expect(delays.usual('telegram')).toBe(usual);
    expect(delays.usual('web')).toBe(0);
  });
});
