/** What a small turn at a plan would come to, for whoever asks whether it is worth it. It changes nothing. */
import { isMistake } from '../../brewing/schedule.ts';
import type { Around } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { brewOf } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { numberOf, phrase, textOf } from '../values.ts';

/** The steps by which flows/brew.yaml turns a plan. */
const degreesC = 5;
const leafStep = { 'more-leaf': 1.2, 'less-leaf': 0.8 };
const strengthStep = { more: 1.25, less: 0.8 };

/** Nobody tastes less of a difference: judgement. */
const hardlyStronger = 0.05;

interface Turned {
  readonly turn: string;
  readonly given: Facts;
  readonly plan: Facts;
  /** A number of its own, instead of a step. */
  readonly amount: number | null;
}

/** Null where such a plan is not turned that way. */
export function turnWeighed(content: CoreContent, given: Facts, around: Around): Json {
  const { turn: said, amount = null, plan: told, ...asked } = given;
  const turn = amount === null ? textOf(said) : turnOf(Number(amount), told as Facts);
  const planned = brewOf(content, asked, around);
  if (isMistake(planned) || !isTurnable(turn, asked, planned.plan.style)) return null;
  const turned = brewOf(
    content,
    turnedBy({ turn, given: asked, plan: told as Facts, amount: numberOf(amount) }),
    around,
  );
  if (isMistake(turned)) return null;
  const [now, then] = [planned.plan, turned.plan];
  const share = (then.infusions[0]?.strengthMgPerMl ?? 0) / (now.infusions[0]?.strengthMgPerMl ?? 1);
  const values = {
    plannedC: now.waterC,
    waterC: then.waterC,
    plannedG: now.leafG,
    leafG: then.leafG,
    share,
    alike: Math.abs(share - 1) < hardlyStronger ? 'yes' : 'no',
    times: then.infusions.map(({ seconds }) => seconds),
    unit: around.memory['unit'] ?? null,
  };
  const isFurther =
    Math.abs(then.waterC - now.waterC) >= 1 ||
    (turn in leafStep || turn === 'so-much-leaf' ? then.leafG !== now.leafG : Math.abs(share - 1) > hardlyStronger);
  return phrase(isFurther ? `brew-weighed-${turn}` : 'brew-weighed-no-further', values);
}

/** Bags come whole, and powder is whisked and not drawn. */
function isTurnable(turn: string, asked: Facts, style: string): boolean {
  if (style === 'cupping' || (numberOf(asked['bags']) !== null && (turn in leafStep || turn === 'so-much-leaf')))
    return false;
  return style !== 'whisked' || turn === 'hotter' || turn === 'cooler';
}

/** "What would 6 do?": of the leaf where it may be that, else of the water. */
function turnOf(amount: number, plan: Facts): string {
  const leafG = numberOf(plan['leafG']) ?? 0;
  return amount > leafG / farFrom && amount < leafG * farFrom ? 'so-much-leaf' : 'so-hot';
}
/** Judgement: nobody means so much more leaf, or so much less. */
const farFrom = 4;

function turnedBy({ turn, given, plan, amount }: Turned): Facts {
  const [leafG, waterC, boilsAtC] = ['leafG', 'waterC', 'boilsAtC'].map((name) => numberOf(plan[name]) ?? 0) as [
    number,
    number,
    number,
  ];
  const strength = numberOf(given['strength']) ?? 1;
  switch (turn) {
    case 'so-much-leaf':
      return { ...given, leafG: amount };
    case 'so-hot':
      return { ...given, tempC: Math.min(amount ?? waterC, boilsAtC) };
    case 'hotter':
      return { ...given, tempC: Math.min(waterC + degreesC, boilsAtC) };
    case 'cooler':
      return { ...given, tempC: waterC - degreesC };
    case 'more-leaf':
    case 'less-leaf':
      return { ...given, leafG: leafG * leafStep[turn] };
    case 'longer':
      return { ...given, leafG, strength: strength * strengthStep.more };
    case 'shorter':
      return { ...given, leafG, strength: strength * strengthStep.less };
    case 'stronger':
      return { ...given, strength: strength * strengthStep.more };
    default:
      return { ...given, strength: strength * strengthStep.less };
  }
}
