/** What can be told of a tea before it is known what it is brewed in: water, rinse, and how it comes out in two vessels as an example. */
import { caffeineSpread } from '../../brewing/cautions.ts';
import { brewedAs, usualHotC } from '../../brewing/leaf-profile.ts';
import { isMistake } from '../../brewing/schedule.ts';
import { spoonfulG, spoonsOf } from '../../brewing/spoons.ts';
import { boilingPointC } from '../../brewing/water.ts';
import type { Around, Calls } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { brewOf, leafFor, type Brew } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { ifDrawn, leafAfterwards, waterSoHot, waterStood } from './plan-told.ts';
import { numberOf, phrase, textOf } from '../values.ts';

export const aheadCallNames = [
  'toldAhead',
  'heatTold',
  'doseTold',
  'boilsHere',
  'aboutTea',
  'rinseOf',
  'caffeineIn',
] as const;

/** So far off nobody tastes it, and hotter by more than that even leaf that stands it turns bitter sooner. Judgement. */
const hardlyTastedC = 3;
const harmlessC = 8;

/** So small a share of the leaf nobody tastes. Judgement. */
const hardlyTastedShare = 0.1;

/** The small way and the large one, where nobody told theirs; more water than `mostInGaiwanMl` goes into no gaiwan. */
export const exampleVessels = ['gaiwan', 'mug'] as const;
export const mostInGaiwanMl = 200;
const mostInMugMl = 600;
/** Sizes most have: common practice, no source. */
export const ordinaryMl: { readonly [vessel: string]: number } = {
  gaiwan: 110,
  'clay-pot': 150,
  kyusu: 200,
  'porcelain-pot': 350,
  'glass-pot': 350,
  'french-press': 350,
  mug: 300,
  'infuser-mug': 300,
  tumbler: 300,
  thermos: 500,
  'cold-jar': 1000,
};
const timesShown = 3;

export const aheadCalls = (
  content: CoreContent,
): { readonly [name in (typeof aheadCallNames)[number]]: Calls[string] } => ({
  /**
   * Of `lines` (see Reading.askedLines) and what was told of heat and height; null where nothing of that was. `inSpoons`: an
   * amount was told to learn what it is in the other measure.
   */
  toldAhead: (given, around) => {
    const lines = (given['lines'] ?? []) as readonly string[];
    const measured = given['inSpoons'] === true ? spoonful(content, given) : null;
    if (measured !== null) return { gives: [measured] };
    const there = boils(content, given, around);
    const told = there === null ? heatOf(content, given, around) : [there];
    if (lines.includes('heat') && told.length === 0) told.push(usual(content, given, around));
    if (given['asksStand'] === true) told.push(...standing(content, given, around));
    if (numberOf(given['boiledAgoS']) !== null) told.push(...stood(content, given, around));
    const asksOfTimes = numberOf(given['drawnS']) !== null || numberOf(given['infusion']) !== null;
    const wantsMore = asksOfTimes || lines.some((line) => line !== 'heat');
    if (wantsMore) told.push(...(drawnAlready(content, given, around) ?? examples(content, given, around)));
    return { gives: told.length === 0 ? null : told };
  },
  /** How the heat that was told stands to the usual one; null where none was, or it is as usual. */
  heatTold: (given, around) => {
    const told = heatOf(content, given, around).filter(
      ({ key }) => key !== 'brew-heat-right' || given['asks'] === true,
    );
    return { gives: told.length === 0 ? null : told };
  },
  /** That the leaf that was told is about what is usual, and how much that is. */
  doseTold: ({ leafG = null, ...given }, around) => {
    const usually = brewOf(content, given, around);
    if (isMistake(usually) || leafG === null) return { gives: null };
    const usualG = usually.plan.leafG;
    const share = Number(leafG) / usualG - 1;
    const is = Math.abs(share) < hardlyTastedShare ? 'same' : share > 0 ? 'more' : 'less';
    return { gives: phrase('brew-dose-right', { leafG, usualG, is }) };
  },
  /** How hot water gets at such a height, of no tea yet. */
  boilsHere: ({ elevationM = null }, { memory }) => ({
    gives: phrase('brew-boils-here', {
      boilsAtC: Math.round(boilingPointC(Number(elevationM))),
      unit: memory['unit'] ?? null,
    }),
  }),
  /** Which family and leaf a tea is of, and how hot its water is. */
  aboutTea: ({ tea: id = null }, { memory }) => {
    const tea = content.teas.find((one) => one.id === id);
    if (!tea) throw new Error(`no such tea: ${JSON.stringify(id)}`);
    const waterC = usualHotC(content.brewing, leafFor(content, { tea: id }));
    const values = { tea: tea.id, family: tea.family, form: tea.form, waterC, unit: memory['unit'] ?? null };
    return { gives: phrase('brew-about-tea', values) };
  },
  /** What the first mug of a tea, or a family, holds of caffeine, or the bowl; null where it is brewed in neither. */
  caffeineIn: ({ tea = null, family = null, teas = null }, around) => {
    if (Array.isArray(teas) && teas.length > 1)
      return { gives: teas.slice(0, mostCompared).flatMap((one) => caffeineOf(content, { tea: one }, around) ?? []) };
    return { gives: caffeineOf(content, { tea, family }, around) };
  },
  /** Whether a tea, or a family, is rinsed in a small vessel, and how long. */
  rinseOf: (given) => {
    const leaf = leafFor(content, given);
    const seconds = content.brewing.forms[leaf.form]?.rinseSeconds ?? null;
    const isRinsed = brewedAs(content.brewing, leaf).rinsed && seconds !== null;
    const values = { tea: given['tea'] ?? null, family: leaf.family, seconds };
    return { gives: phrase(isRinsed ? 'brew-rinse-of-it' : 'brew-rinse-of-none', values) };
  },
});

/** So many stand side by side. */
const mostCompared = 3;

function caffeineOf(content: CoreContent, { tea = null, family = null }: Facts, around: Around): Json {
  const [vessel, volumeMl] = ['mug', ordinaryMl['mug'] ?? 0];
  const brew = brewOf(content, { tea, family, vessel, volumeMl }, around);
  if (isMistake(brew)) return null;
  const { leafG, waterMl, style, infusions } = brew.plan;
  const mg = infusions[0]?.caffeineMg ?? 0;
  const spread = { mg, leastMg: mg * caffeineSpread.least, mostMg: mg * caffeineSpread.most };
  const key = mg > 0 ? 'brew-caffeine-of-it' : 'brew-caffeine-of-none';
  const ml = style === 'whisked' ? waterMl : volumeMl;
  return phrase(key, { tea, family: brew.leaf.family, leafG, ml, ...spread });
}

interface Phrase extends Facts {
  readonly key: string;
}

const usual = (content: CoreContent, given: Facts, { memory }: Around): Phrase =>
  phrase('brew-water-usual', {
    waterC: usualHotC(content.brewing, leafFor(content, given)),
    unit: memory['unit'] ?? null,
  });

/** 水燒開要放涼幾分鐘: for a kettle of a litre. */
function standing(content: CoreContent, { elevationM = null, ...given }: Facts, around: Around): Phrase[] {
  const tempC = usualHotC(content.brewing, leafFor(content, given));
  return waterSoHot({ tempC, elevationM, isTimeAsked: true }, around) as unknown as Phrase[];
}

/** "The kettle boiled two minutes ago, is that right for jasmine?" */
function stood(
  content: CoreContent,
  { boiledAgoS = null, elevationM = null, ...given }: Facts,
  around: Around,
): Phrase[] {
  const waterC = usualHotC(content.brewing, leafFor(content, given));
  return waterStood({ seconds: boiledAgoS, waterC, elevationM }, around) as unknown as Phrase[];
}

function heatOf(content: CoreContent, given: Facts, { memory }: Around): Phrase[] {
  const toldC = numberOf(given['tempC']);
  if (toldC === null) return [];
  const leaf = leafFor(content, given);
  const waterC = usualHotC(content.brewing, leaf);
  const { highestC } = brewedAs(content.brewing, leaf);
  const off = toldC - waterC;
  const values = { toldC, waterC, isSame: Math.abs(off) < 0.5 ? 'yes' : 'no', unit: memory['unit'] ?? null };
  const isHarmless = toldC <= highestC && off <= harmlessC;
  if (given['isDoubted'] === true && Math.abs(off) > hardlyTastedC)
    return [phrase('brew-heat-doubted', { ...values, is: off < 0 ? 'cooler' : 'hotter' })];
  const sort = Math.abs(off) <= hardlyTastedC ? 'right' : off < 0 ? 'cooler' : isHarmless ? 'hotter' : 'hot';
  return [phrase(`brew-heat-${sort}`, values)];
}

/** What was told in grams, in spoons, or the other way round; null where it was in neither. */
function spoonful(content: CoreContent, given: Facts): Phrase | null {
  const spoonG = spoonfulG(content.brewing, leafFor(content, given));
  const leafG = numberOf(given['leafG']);
  const spoons = leafG === null ? numberOf(given['leafSpoons']) : leafG / spoonG;
  if (spoons === null) return null;
  return phrase('brew-spoonful', { spoonG, leafG: leafG ?? spoons * spoonG, spoons });
}

/** How hot water gets where they are, and whether that will do: it says more than the heat that was told with it. */
function boils(content: CoreContent, given: Facts, { memory }: Around): Phrase | null {
  const elevationM = numberOf(given['elevationM']);
  if (elevationM === null) return null;
  const waterC = usualHotC(content.brewing, leafFor(content, given));
  const boilsAtC = boilingPointC(elevationM);
  const key = boilsAtC >= waterC ? 'brew-boils-enough' : 'brew-boils-short';
  return phrase(key, { boilsAtC: Math.round(boilsAtC), waterC, unit: memory['unit'] ?? null });
}

/** From here on it is drawn in a large vessel rather than in a small one. Judgement. */
export const drawnLargeS = 60;

/** "3 g in 150 ml for 3 min": how it comes out as told, in the vessel that goes with such a time; null where not so much is told. */
function drawnAlready(content: CoreContent, given: Facts, around: Around): Phrase[] | null {
  const { tea = null, family = null, tempC = null, elevationM = null, leafG = null, volumeMl = null } = given;
  const seconds = numberOf(given['drawnS']);
  if (seconds === null || leafG === null || volumeMl === null) return null;
  const vessel = textOf(given['vessel']) || (seconds < drawnLargeS ? 'gaiwan' : 'mug');
  const asTold = { tea, family, tempC, elevationM, leafG, vessel, volumeMl };
  const drawn = ifDrawn(content, { ...asTold, seconds }, around);
  const told = 'gives' in drawn ? ((drawn.gives as Facts | null)?.['told'] as Phrase | undefined) : undefined;
  if (told === undefined) return null;
  return [...examples(content, { ...asTold, vessel }, around), told];
}

function examples(content: CoreContent, given: Facts, around: Around): Phrase[] {
  const { tea = null, family = null, tempC = null, elevationM = null, leafG: ownG = null } = given;
  const ownMl = numberOf(given['volumeMl']);
  const told = textOf(given['vessel']);
  const vessels = (
    told in ordinaryMl ? [told] : (ownMl ?? 0) > mostInMugMl ? ['porcelain-pot'] : exampleVessels
  ).filter((vessel) => vessel !== 'gaiwan' || (ownMl ?? 0) <= mostInGaiwanMl);
  return vessels.flatMap((vessel, nth) => {
    const volumeMl = ownMl ?? ordinaryMl[vessel] ?? 0;
    const brew = brewOf(content, { tea, family, tempC, elevationM, leafG: ownG, vessel, volumeMl }, around);
    if (isMistake(brew)) return [];
    const figures = figuresOf(content, brew);
    const unit = around.memory['unit'] ?? null;
    // What is carried about draws for hours.
    const stays = vessel === 'thermos' ? leafAfterwards({ data: content.brewing, ...brew }, brew.plan) : null;
    const example = phrase('brew-ahead', { nth: nth + 1, vessel, volumeMl, ...figures, unit });
    return stays === null ? [example] : [example, stays];
  });
}

/** Of a plan that is told in one line: its leaf, water and first times. */
export function figuresOf({ brewing }: CoreContent, { leaf, plan }: Brew): Facts {
  const { leafG, waterC, infusions } = plan;
  const times = infusions.slice(0, timesShown).map(({ seconds }) => seconds);
  return {
    leafG,
    spoons: spoonsOf(brewing, leaf, leafG),
    waterC,
    times,
    firstS: times[0] ?? 0,
    count: infusions.length,
  };
}
