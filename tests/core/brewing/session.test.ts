/** A brew under way: as planned it follows the plan; what really happens moves what is still to come. */
import { describe, expect, it } from 'vitest';
import type { Brewing } from '../../../src/core/brewing/request.ts';
import { isMistake } from '../../../src/core/brewing/schedule.ts';
import { beginBrew, leftInLeaf, pour, replan, type Session } from '../../../src/core/brewing/session.ts';
import { data, leafOf, plan, request } from './real-data.ts';

const brewing: Brewing = { data, leaf: leafOf('rou-gui'), request: request('rou-gui', 'gaiwan', 110) };

function begun(of: Brewing = brewing): Session {
  const session = beginBrew(of);
  if (isMistake(session)) throw new Error(session.code);
  return session;
}

const times = (session: Session): readonly number[] => replan(brewing, session).map((i) => i.seconds);

describe('a brew under way', () => {
  it('begins with the plan', () => {
    expect(replan(brewing, begun())).toEqual(plan('rou-gui', 'gaiwan', 110).infusions);
  });

  it('poured as planned, stays the plan', () => {
    const planned = plan('rou-gui', 'gaiwan', 110).infusions;
    let session = begun();
    for (const { seconds } of planned.slice(0, 4)) session = pour(brewing, session, { seconds });
    expect(session.poured).toEqual(planned.slice(0, 4));
    expect(times(session)).toEqual(planned.slice(4).map((i) => i.seconds));
  });

  it('poured late, asks longer of the next, and its cup was stronger', () => {
    const asPlanned = pour(brewing, begun(), { seconds: 6 });
    const late = pour(brewing, begun(), { seconds: 40 });
    expect(late.poured[0]!.strengthMgPerMl).toBeGreaterThan(asPlanned.poured[0]!.strengthMgPerMl);
    expect(times(late)[1]).toBeGreaterThan(times(asPlanned)[1]!);
  });

  it('with cooler water, has more left', () => {
    const hot = pour(brewing, begun(), { seconds: 30 });
    const cool = pour(brewing, begun(), { seconds: 30, waterC: 75 });
    expect(leftInLeaf(brewing, cool)).toBeGreaterThan(leftInLeaf(brewing, hot));
  });

  it('after a long wait the leaf has cooled, and given to what it holds', () => {
    const session = pour(brewing, begun(), { seconds: 6 });
    const soon = pour(brewing, session, { seconds: 5, restedS: 10 });
    const later = pour(brewing, session, { seconds: 5, restedS: 3600 });
    expect(later.poured[1]).not.toEqual(soon.poured[1]);
  });

  it('survives a JSON round trip', () => {
    const session = pour(brewing, begun(), { seconds: 12 });
    const back = JSON.parse(JSON.stringify(session)) as Session;
    expect(back).toEqual(session);
    expect(times(back)).toEqual(times(session));
  });

  it('ends: after the last planned infusion nothing more is asked', () => {
    let session = begun();
    for (let turn = 0; turn < 12; turn++) session = pour(brewing, session, { seconds: 240 });
    expect(replan(brewing, session)).toEqual([]);
    expect(leftInLeaf(brewing, session)).toBeLessThan(0.15);
  });

  it('a request that can not be is a mistake here too', () => {
    expect(beginBrew({ ...brewing, request: { ...brewing.request, volumeMl: -5 } })).toMatchObject({
      code: 'volume-out-of-range',
      field: 'volumeMl',
    });
  });
});
