/** Taste: the smallest change first, bounded, and really in the plan. */
import { describe, expect, it } from 'vitest';
import { adjust, usualTaste, withTaste, type Complaint, type Taste } from '../../../src/core/brewing/taste.ts';
import { isMistake, planBrew } from '../../../src/core/brewing/schedule.ts';
import { data, leafOf, plan, request } from './real-data.ts';

const green = { family: 'green', waterC: 78, boilsAtC: 99.97 } as const;
const black = { family: 'black', waterC: 95, boilsAtC: 99.97 } as const;

function repeated(complaint: Complaint, context: typeof green | typeof black): string[] {
  const fields: string[] = [];
  let taste: Taste = usualTaste;
  for (let turn = 0; turn < 40; turn++) {
    const next = adjust(taste, complaint, context);
    if (next.change === null) break;
    if (fields.at(-1) !== next.change.field) fields.push(next.change.field);
    taste = next.taste;
  }
  return fields;
}

describe('what moves first', () => {
  it.each([
    ['bitter', green, ['waterC', 'strength', 'leaf']],
    ['bitter', black, ['strength', 'waterC', 'leaf']],
    ['weak', green, ['strength', 'leaf']],
    ['strong', green, ['strength', 'leaf']],
    ['flat', green, ['waterC', 'strength']],
    ['sour', black, ['strength', 'waterC', 'leaf']],
    ['just-right', green, []],
  ] as const)('%s', (complaint, context, order) => {
    expect(repeated(complaint, context)).toEqual(order);
  });

  it('water at the boil is not made hotter', () => {
    const { change } = adjust(usualTaste, 'flat', { family: 'oolong', waterC: 94.6, boilsAtC: 94.5 });
    expect(change?.field).toBe('strength');
  });

  it('says what moved, from where to where', () => {
    expect(adjust(usualTaste, 'bitter', green).change).toEqual({ field: 'waterC', from: 0, to: -3 });
  });
});

function liked(id: string, taste: Taste): ReturnType<typeof plan> {
  const asked = request(id, 'porcelain-pot', 400);
  const made = planBrew(data, leafOf(id), withTaste({ data, leaf: leafOf(id), request: asked }, taste));
  if (isMistake(made)) throw new Error(made.code);
  return made;
}

describe('in the plan', () => {
  const usual = plan('longjing', 'porcelain-pot', 400);

  it('the usual taste changes nothing', () => {
    expect(liked('longjing', usualTaste)).toEqual(usual);
  });

  it('bitter: cooler', () => {
    expect(liked('longjing', { ...usualTaste, waterC: -3 }).waterC).toBe(usual.waterC - 3);
  });

  it('weak: a stronger first cup', () => {
    const first = liked('longjing', { ...usualTaste, strength: 1.2 }).infusions[0]!;
    expect(first.strengthMgPerMl).toBeGreaterThan(usual.infusions[0]!.strengthMgPerMl);
  });

  it('what was asked for outright stays', () => {
    const asked = request('longjing', 'porcelain-pot', 400, { waterC: 90, leafG: 5 });
    const wished = withTaste(
      { data, leaf: leafOf('longjing'), request: asked },
      { waterC: -9, strength: 1, leaf: 1.3 },
    );
    expect(wished).toMatchObject({ waterC: 90, leafG: 5 });
  });

  it.each(['longjing', 'tieguanyin', 'assam', 'gyokuro', 'matcha'])(
    '%s: every taste within the bounds makes a plan',
    (id) => {
      for (const waterC of [-9, 0, 6]) {
        for (const strength of [0.7, 1.4]) {
          for (const leaf of [0.7, 1.3])
            expect(liked(id, { waterC, strength, leaf }).infusions.length).toBeGreaterThan(0);
        }
      }
    },
  );
});
