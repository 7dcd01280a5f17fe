/** A brew in somebody's hands: what was done, and when, moves the rest. */
import { array, assert, constant, integer, oneof, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  changed,
  filled,
  leftOut,
  paced,
  pouredOff,
  startGuided,
  tasted,
  type Ground,
  type GuidedBrew,
} from '../../../src/core/brewing/guided-brew.ts';
import { isMistake } from '../../../src/core/brewing/schedule.ts';
import { data, leafOf, plan, request } from './real-data.ts';

const ground: Ground = { data, leaf: leafOf('dong-ding') };
const planned = plan('dong-ding', 'gaiwan', 120).infusions.map((i) => i.seconds);
const noon = 1_780_000_000_000;

function begun(): GuidedBrew {
  const brew = startGuided(ground, request('dong-ding', 'gaiwan', 120));
  if (isMistake(brew)) throw new Error(brew.code);
  return brew;
}

const times = (brew: GuidedBrew): readonly number[] => brew.coming.map((i) => i.seconds);

/** So many infusions as asked, with the pause the plan counts on. */
function asAsked(count: number): { readonly brew: GuidedBrew; readonly now: number } {
  let brew = begun();
  let now = noon;
  for (let n = 0; n < count; n++) {
    const seconds = brew.coming[0]?.seconds ?? 0;
    brew = pouredOff(ground, filled(brew, now), { now: now + seconds * 1000, heldS: null }).brew;
    now += seconds * 1000 + 45_000;
  }
  return { brew, now };
}

describe('a guided brew', () => {
  it('as asked stays the plan', () => {
    const { brew } = asAsked(6);
    expect(brew.session.poured.map((i) => i.seconds)).toEqual(planned.slice(0, 6));
    expect(times(brew)).toEqual(planned.slice(6));
  });

  it('counts a hold from its tap to the next', () => {
    const { brew, now } = asAsked(5);
    const asked = brew.coming[0]?.seconds ?? 0;
    expect(filled(brew, now).hold).toEqual({ filledAt: now, endsAt: now + asked * 1000 });
    const { poured } = pouredOff(ground, filled(brew, now), { now: now + asked * 1000 + 20_000, heldS: null });
    expect(poured).toMatchObject({ n: 6, heldS: asked + 20, askedS: asked, nextBeforeS: planned[6] });
    expect(poured.nextS).not.toBe(poured.nextBeforeS);
  });

  it('gives the next one longer, and leaves what draws now as it is', () => {
    const { brew, now } = asAsked(3);
    const drawing = filled(brew, now);
    const next = paced(ground, drawing, { factor: 1.2, now: now + 2000, ofNext: true });
    expect(next?.hold).toEqual(drawing.hold);
    expect(next?.coming[0]).toEqual(drawing.coming[0]);
    expect(next?.coming[1]?.seconds).toBeGreaterThan(drawing.coming[1]?.seconds ?? 0);
    const after = pouredOff(ground, next ?? drawing, { now: drawing.hold?.endsAt ?? 0, heldS: null });
    expect(after.brew.coming[0]?.seconds).toBe(next?.coming[1]?.seconds);
  });

  it('takes a counted infusion as asked, unless told otherwise', () => {
    const asCounted = pouredOff(ground, begun(), { now: noon, heldS: null });
    expect(asCounted.poured.heldS).toBe(planned[0]);
    const longer = pouredOff(ground, begun(), { now: noon, heldS: 30 });
    expect(longer.poured.heldS).toBe(30);
    expect(times(longer.brew)[0]).toBeGreaterThan(times(asCounted.brew)[0] ?? 0);
  });

  it('an infusion left out leaves the leaf fuller for the next', () => {
    const { brew } = asAsked(5);
    const without = leftOut(ground, brew);
    expect(without.coming[0]?.n).toBe(7);
    expect(times(without)[0]).toBeLessThan(planned[6] ?? 0);
  });

  it('cooler water asks for longer, fresh hot water for what it was', () => {
    const { brew } = asAsked(5);
    const cooler = changed(ground, brew, { waterC: 80 });
    if (isMistake(cooler)) throw new Error(cooler.code);
    expect(times(cooler)[0]).toBeGreaterThan(times(brew)[0] ?? 0);
    const fresh = changed(ground, cooler, { waterC: 96 });
    expect(isMistake(fresh) ? null : times(fresh)).toEqual(times(brew));
  });

  it('refuses water that can not be', () => {
    expect(changed(ground, begun(), { waterC: 300 })).toMatchObject({ code: 'water-out-of-range' });
  });

  it.each([
    ['lighter', { field: 'strength', from: 1, to: 0.9 } as const, -1],
    ['stronger', { field: 'strength', from: 1, to: 1.1 } as const, 1],
    ['cooler', { field: 'waterC', from: 0, to: -3 } as const, 1],
  ])('follows the taste: %s', (_, change, direction) => {
    const { brew } = asAsked(5);
    const after = tasted(ground, brew, change, 96);
    const moved = times(after).map((seconds, i) => Math.sign(seconds - (times(brew)[i] ?? seconds)));
    expect(moved.find((sign) => sign !== 0)).toBe(direction);
  });

  it('whatever is done in whatever order, it stays a brew that survives being kept', () => {
    const deed = oneof(
      record({ do: constant('fill' as const), waitS: integer({ min: 0, max: 90_000 }) }),
      record({ do: constant('pour' as const), waitS: integer({ min: 0, max: 90_000 }) }),
      record({ do: constant('skip' as const), waitS: constant(0) }),
      record({ do: constant('cool' as const), waitS: integer({ min: 0, max: 60 }) }),
    );
    assert(
      property(array(deed, { maxLength: 16 }), (deeds) => {
        let brew = begun();
        let now = noon;
        for (const { do: done, waitS } of deeds) {
          now += waitS * 1000;
          const before = brew.session.next;
          if (done === 'fill') brew = filled(brew, now);
          else if (done === 'pour') ({ brew } = pouredOff(ground, brew, { now, heldS: null }));
          else if (done === 'skip') brew = leftOut(ground, brew);
          else {
            const cooler = changed(ground, brew, { waterC: 95 - waitS / 2 });
            if (!isMistake(cooler)) brew = cooler;
          }
          expect(brew.session.next).toBe(before + (done === 'pour' || done === 'skip' ? 1 : 0));
          expect(JSON.parse(JSON.stringify(brew))).toEqual(brew);
          for (const seconds of times(brew)) expect(Number.isFinite(seconds) && seconds > 0).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});
