/** "5 g at 95 degrees for 3 minutes, and it is bitter": the cup as it was made beside the usual one, and what to do otherwise. */
import { causesOf, isNearPlan, type Amiss, type CupCause, type CupMade } from '../../brewing/cup-made.ts';
import type { Brewing } from '../../brewing/request.ts';
import { isMistake } from '../../brewing/schedule.ts';
import { spoonfulG } from '../../brewing/spoons.ts';
import type { Around } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { brewOf, complaintOf, leafFor, type Brew } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { drawnLargeS, mostInGaiwanMl, ordinaryMl } from './told-ahead.ts';
import { numberOf, phrase, textOf } from '../values.ts';

/** What leaf, water and time tell of a taste: that too much was drawn, or too little. */
const sorts: { readonly [complaint: string]: Amiss } = {
  bitter: 'strong',
  strong: 'strong',
  sour: 'strong',
  weak: 'thin',
  flat: 'thin',
};

/**
 * `made…` is what was told of the cup, the rest what is known of the brew. Gives `causes` (heat, time, leaf) and what is `told`
 * of them, no causes where it was made about as planned; null where nothing told explains it.
 */
export function cupWeighed(content: CoreContent, given: Facts, around: Around): Json {
  const sort = sorts[complaintOf(textOf(given['taste']))];
  const where = whereMade(given, around.memory);
  const made = madeOf(content, given, where);
  if (sort === undefined || Object.keys(made).length <= 1) return null;
  const usual = brewOf(content, { ...given, ...where.at }, around);
  if (isMistake(usual)) return null;
  const inUsual = causesOf(brewingOf(content, usual), usual.plan, made, sort);
  const isLeafAmiss = made.leafG === undefined || inUsual.some(({ of }) => of === 'leaf');
  // So much leaf as they take is theirs: time and heat go by it.
  const own = isLeafAmiss ? usual : brewOf(content, { ...given, ...where.at, leafG: made.leafG }, around);
  if (isMistake(own)) return null;
  const causes = isLeafAmiss ? inUsual : causesOf(brewingOf(content, own), own.plan, made, sort);
  if (causes.length > 0) return { causes: causes.map(({ of }) => of), told: toldOf(causes, { where, made, around }) };
  if (made.seconds === undefined || !isNearPlan(brewingOf(content, own), own.plan, made)) return null;
  return { causes: [], told: [...reckonedFor(where), phrase('cup-as-usual')] };
}

interface Where {
  /** Of the usual brew. */
  readonly at: { readonly vessel: string; readonly volumeMl: number };
  /** Nobody told the vessel, or its size. */
  readonly isReckoned: boolean;
}

/** As told; else in the vessel they used last, or in the one that goes with so much leaf, such a time and size. */
function whereMade(given: Facts, memory: Facts): Where {
  const isPowder = given['family'] === 'matcha';
  const told = textOf(given['vessel']);
  const toldMl = numberOf(given['volumeMl']);
  const own = isPowder || given['style'] === 'cold' ? '' : textOf(memory['vessel']);
  const vessel = isPowder ? 'mug' : told || own || vesselFor(given);
  const ownMl = vessel === own ? numberOf(memory['volumeMl']) : null;
  const volumeMl = (isPowder ? null : (toldMl ?? ownMl)) ?? ordinaryMl[vessel] ?? 0;
  return { at: { vessel, volumeMl }, isReckoned: !isPowder && (told === '' || toldMl === null) };
}

/** More leaf than this goes into no mug. Judgement. */
const mostInMug = { gPerMl: 0.025, g: 5 };

function vesselFor(given: Facts): string {
  const ml = numberOf(given['volumeMl']);
  const leafG = numberOf(given['madeG']);
  if (given['style'] === 'cold') return 'cold-jar';
  if (given['style'] === 'western') return 'porcelain-pot';
  const isLong = (numberOf(given['madeS']) ?? 0) >= drawnLargeS;
  const isMuch =
    leafG === null ? !isLong : ml === null ? leafG >= mostInMug.g || !isLong : leafG / ml > mostInMug.gPerMl;
  return isMuch && (ml ?? 0) <= mostInGaiwanMl ? 'gaiwan' : 'mug';
}

/** Leaf in water of an unknown size tells nothing, and powder does not draw. */
function madeOf(content: CoreContent, given: Facts, { at }: Where): CupMade {
  const isPowder = given['family'] === 'matcha';
  const spoons = numberOf(given['madeSpoons']);
  const spoonedG = spoons === null ? null : spoons * spoonfulG(content.brewing, leafFor(content, given));
  const leafG = numberOf(given['madeG']) ?? spoonedG;
  const isComparable =
    isPowder || numberOf(given['volumeMl']) !== null || at.vessel === 'mug' || at.vessel === 'cold-jar';
  const waterC = numberOf(given['madeC']);
  const seconds = numberOf(given['madeS']);
  return {
    infusion: numberOf(given['infusion']) ?? 1,
    ...(leafG !== null && isComparable && { leafG }),
    ...(waterC !== null && { waterC }),
    ...(seconds !== null && !isPowder && { seconds }),
  };
}

const brewingOf = ({ brewing: data }: CoreContent, { leaf, request }: Brew): Brewing => ({ data, leaf, request });

interface Telling {
  readonly where: Where;
  readonly made: CupMade;
  readonly around: Around;
}

function toldOf(causes: readonly CupCause[], { where, made, around }: Telling): readonly Json[] {
  const unit = around.memory['unit'] ?? null;
  return [
    ...(causes.some(({ of }) => of !== 'heat') ? reckonedFor(where) : []),
    ...causes.map(({ of, made: value, usual, share }) =>
      phrase(`cup-${of}-${value > usual ? 'over' : 'under'}`, {
        value,
        usual,
        share,
        unit,
        infusion: made.infusion ?? 1,
      }),
    ),
    phrase('cup-remedy', {
      parts: causes.toSorted(asMade).map(({ of, usual }) => phrase(`cup-next-${of}`, { usual, unit })),
    }),
  ];
}

const reckonedFor = ({ isReckoned, at }: Where): readonly Json[] =>
  isReckoned ? [phrase('cup-reckoned-for', at)] : [];

const order = ['leaf', 'heat', 'time'] as const;
const asMade = (a: CupCause, b: CupCause): number => order.indexOf(a.of) - order.indexOf(b.of);
