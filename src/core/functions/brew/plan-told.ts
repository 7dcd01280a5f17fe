/** A plan as sentences and pictures want it: what to measure with, how to get the water there, what becomes of the leaf. */
import type { BrewingData } from '../../brewing/brewing-data.ts';
import { caffeineSpread } from '../../brewing/cautions.ts';
import { shareIfDrawn } from '../../brewing/cup-made.ts';
import { afterStanding, heldInKettle, kettleWays, mixWay, waitWay } from '../../brewing/kettle.ts';
import { leafAmount, type LeafAmount } from '../../brewing/leaf-amount.ts';
import type { Family, Plan } from '../../brewing/plan.ts';
import { rounded } from '../../brewing/rounding.ts';
import { isMistake } from '../../brewing/schedule.ts';
import { fillOf, spoonfulG, spoonsOf } from '../../brewing/spoons.ts';
import { boilingPointC } from '../../brewing/water.ts';
import type { Taste } from '../../brewing/taste.ts';
import { makeRecipe } from '../../brewing/recipe.ts';
import type { Brewing } from '../../brewing/request.ts';
import { reasonsFor } from '../../brewing/why.ts';
import type { Around, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { brewOf, leafFor, tastesOf, type Brew } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { sharedAmong } from '../guide/phrases.ts';
import type { Celsius } from '../../units.ts';
import { tasteParts } from '../own.ts';
import { asFacts, numberOf, phrase, refused } from '../values.ts';

export function planned(content: CoreContent, given: Facts, around: Around): Outcome {
  const brew = brewOf(content, given, around);
  if (isMistake(brew)) return refused(brew);
  const amount = numberOf(given['leafG']) === null ? null : leafAmount({ data: content.brewing, ...brew }, brew.plan);
  const facts = planFacts(content.brewing, brew, around);
  const isForTheRoad = (facts['leafAfterwards'] as Facts | null)?.['key'] === 'brew-leaf-stays-hours';
  return { gives: { ...facts, ...amountTold(isForTheRoad ? null : amount) } };
}

export function explained(content: CoreContent, given: Facts, around: Around): Outcome {
  const brew = brewOf(content, given, around);
  if (isMistake(brew)) return refused(brew);
  const reasons = reasonsFor({ data: content.brewing, leaf: brew.leaf, request: brew.request }, brew.plan);
  return { gives: reasons.map(({ key, values }) => phrase(key, values)) };
}

export function oneInfusion(plan: Facts, n: number): Outcome {
  const infusions = plan['infusions'] as unknown as Plan['infusions'];
  const infusion = infusions.find((i) => i.n === n);
  if (!infusion) return { wrong: 'no-such-infusion', field: 'n', values: { most: infusions.length } };
  return { gives: asFacts(infusion) };
}

/** Everything of a plan that a sentence or a picture may want. */
function planFacts(brewing: BrewingData, { leaf, request, plan }: Brew, { memory }: Around): Facts {
  const times = plan.infusions.map((i) => i.seconds);
  const taste = tastesOf(memory)[leaf.family];
  return {
    ...asFacts(plan),
    powder: plan.style === 'whisked',
    spoons: spoonsOf(brewing, leaf, plan.leafG),
    fill: phrase(`brew-fill-${fillOf(plan.fillFraction)}`),
    rinseS: plan.rinse?.seconds ?? null,
    times,
    firstS: times[0] ?? 0,
    count: times.length,
    water: waterPhrases(plan, memory),
    shared: sharedBy(plan, request.guests ?? 1),
    pouredMl: plan.infusions[0]?.pouredMl ?? 0,
    pouredInAllMl: plan.infusions.reduce((sum, { pouredMl }) => sum + pouredMl, 0),
    allS: times.reduce((sum, seconds) => sum + seconds, 0),
    caffeine: caffeineOf(plan),
    strengthTold: strengthTold(plan, request.strength ?? 1),
    bags: request.bags ?? null,
    leafAfterwards: leafAfterwards({ data: brewing, leaf, request }, plan),
    caution: plan.cautions[0] === undefined ? null : phrase(`caution-${plan.cautions[0]}`),
    likes: likesTold(leaf.family, taste),
    rungs: plan.infusions.map(({ n, seconds, strengthMgPerMl }) => ({ n, seconds, strengthMgPerMl })),
  };
}

/** As this person likes it; null where that is as everybody does. */
function likesTold(family: Family, taste: Taste | undefined): Json {
  const parts = taste ? tasteParts(taste) : [];
  return parts.length === 0 ? null : phrase('taste-kept', { family, parts });
}

/** Little or much leaf: what comes of it, and what to do. */
function amountTold(amount: LeafAmount | null): Facts {
  if (!amount) return { amount: null, isLongerOffered: false };
  const { is, usualG, strength, fitsMl, longer } = amount;
  const told = [
    phrase(`brew-leaf-${is}`, { usualG, strength }),
    ...(fitsMl === null ? [] : [phrase(`brew-leaf-${is}-fits`, { fitsMl })]),
    ...(longer === null ? [] : [phrase('brew-leaf-little-longer', { ...longer })]),
  ];
  return { amount: told, isLongerOffered: longer !== null };
}

/** The first cup after so many seconds: how strong against the planned one, and what that is like. */
export function ifDrawn(content: CoreContent, { seconds, ...given }: Facts, around: Around): Outcome {
  const brew = brewOf(content, given, around);
  if (isMistake(brew)) return refused(brew);
  const { leaf, request, plan } = brew;
  const share = shareIfDrawn({ data: content.brewing, leaf, request }, plan, Number(seconds));
  if (share === null) return { gives: null };
  const values = {
    seconds: Number(seconds),
    share,

    plannedS: plan.infusions[0]?.seconds ?? 0,
  };
  if (values.seconds === values.plannedS) return { gives: { told: phrase('brew-drawn-as-planned'), mayBeLong: false } };
  const sort = share > noticed.stronger ? 'stronger' : share < noticed.weaker ? 'weaker' : 'alike';
  return {
    gives: { told: phrase(`brew-drawn-${sort}`, values), mayBeLong: plan.style === 'gongfu' && share > noticed.much },
  };
}

/** Judgement: further off than this anyone tastes it, and `much` few like. */
const noticed = { weaker: 0.8, stronger: 1.2, much: 1.5 };

/** So much is boiled at a time, where nobody said how much: judgement. */
export const usualKettleMl = 1000;

/** How what is in the kettle (`waterMl` of it), or a litre, comes to be so hot without a thermometer; or how long that takes. */
export function waterSoHot(given: Facts, { memory }: Around): Json {
  const { tempC, elevationM, inKettleMl, isTimeAsked } = given;
  const kettleMl = Number(inKettleMl ?? usualKettleMl);
  const [waterC, waterMl] = [Number(tempC), Number(given['waterMl'] ?? kettleMl)];
  const boilsAtC = boilingPointC(Number(elevationM ?? 0));
  const unit = memory['unit'] ?? null;
  const ask = { waterC, waterMl, kettleMl, boilsAtC };
  const ways = isTimeAsked === true && waterC < boilsAtC - 1 ? [waitWay(ask), mixWay(ask)] : kettleWays(ask);
  // Beside a plan that mixes its water.
  if (given['isWaitAlone'] === true && kettleWays(ask)[0]?.way !== 'mix') return null;
  const told = ways.map(({ way, ...numbers }, i) => phrase(`plan-way-${way}`, { ...numbers, unit, nth: i + 1 }));
  if (given['isWaitAlone'] === true) return phrase('plan-way-wait', { ...waitWay(ask), unit, nth: 2 });
  return [phrase('brew-water-so-hot', { waterC, waterMl, unit }), ...told];
}

/** How hot a kettle is that boiled so long ago; with a plan (`waterC`, `kettleMl`) what that means for it. */
export function waterStood(given: Facts, { memory }: Around): Json {
  const { seconds, waterC, kettleMl, elevationM } = given;
  const unit = memory['unit'] ?? null;
  const stood = { seconds: Number(seconds), kettleMl: heldInKettle(Number(kettleMl ?? usualKettleMl)) };
  const boilsAtC = boilingPointC(Number(elevationM ?? 0));
  const now = afterStanding({ ...stood, boilsAtC });
  const said = phrase('brew-water-stood', { ...stood, waterC: now.waterC, uncertaintyC: now.uncertaintyC, unit });
  if (typeof waterC !== 'number') return [said];
  const off = now.waterC - waterC;
  if (Math.abs(off) <= Math.max(hardlyTastedC, now.uncertaintyC)) return [said, phrase('brew-water-stood-right')];
  if (off < 0)
    return [said, phrase('brew-water-stood-cool', { waterC: Math.round(now.waterC), wantedC: waterC, unit })];
  const fromNow = { waterC, waterMl: stood.kettleMl, boilsAtC: now.waterC };
  const { seconds: moreS } = waitWay(fromNow);
  const mixed = mixWay(fromNow);
  const coolMl = (stood.kettleMl * mixed.coolMl) / mixed.boilingMl;
  return [said, phrase('brew-water-stood-hot', { seconds: moreS, coolMl, wantedC: waterC, unit })];
}

/** Judgement: nobody tastes fewer degrees. */
const hardlyTastedC: Celsius = 2;

/** A tenth of a gram is finer than a spoon is level. */
export function spoonsToGrams(content: CoreContent, given: Facts, spoons: number): number {
  return rounded(spoons * spoonfulG(content.brewing, leafFor(content, given)), 1);
}

/** How strong it comes out; null where it is whisked or judged by another rule. */
function strengthTold({ style, infusions }: Plan, wish: number): Json {
  const [first, last] = [infusions[0], infusions.at(-1)];
  if (!first || !last || style === 'whisked' || style === 'cupping') return null;
  const values = { count: infusions.length, first: first.strengthMgPerMl, last: last.strengthMgPerMl };
  return phrase(`brew-strength-${wish > 1 ? 'more' : wish < 1 ? 'less' : 'usual'}`, values);
}

/** How much each gets; null for one alone, and where everybody has a glass or a bowl of their own. */
function sharedBy({ style, infusions, leafG }: Plan, guests: number): Json {
  if (guests > 1 && style === 'whisked') return phrase('brew-bowls', { guests, leafG: leafG * guests });
  if (guests < 2 || style === 'grandpa' || style === 'cupping') return null;
  return sharedAmong(guests, infusions[0]?.pouredMl ?? 0, infusions.length > 1);
}

/** As leaves differ; null where there is none. */
function caffeineOf(plan: Plan): Json {
  const usualMg = plan.infusions.reduce((sum, i) => sum + i.caffeineMg, 0);
  const { least, most } = caffeineSpread;
  return usualMg > 0 ? { usualMg, leastMg: usualMg * least, mostMg: usualMg * most } : null;
}

/** What becomes of the leaf where nothing holds it back: it stays, or the tea is poured off it. */
export function leafAfterwards(brewing: Brewing, plan: Plan): ReturnType<typeof phrase> | null {
  const { style, vessel } = plan;
  if (brewing.request.bags !== undefined) return style === 'western' ? phrase('brew-leaf-bag-out') : null;
  if (style === 'grandpa' && vessel === 'thermos') return stayingHot(brewing, plan);
  if (style === 'grandpa') return phrase('brew-leaf-stays');
  return style === 'western' && vessel === 'mug' ? phrase('brew-leaf-out') : null;
}

/** So long a flask is carried about: judgement. Its leaf has given nearly all by then. */
const onTheRoadS = 14_400;
/** With no more than this share of the usual leaf it comes out as usual by then. */
const littleForTheRoad = 0.6;

function stayingHot(brewing: Brewing, plan: Plan): ReturnType<typeof phrase> {
  const { leafG: _, ...usual } = brewing.request;
  const usualG = makeRecipe({ ...brewing, request: usual }).leafG;
  if (plan.leafG <= usualG * littleForTheRoad) return phrase('brew-leaf-stays-hours');
  const share = shareIfDrawn(brewing, plan, onTheRoadS) ?? 1;
  return phrase('brew-leaf-stays-hot', { share, lessG: plan.leafG / share });
}

/** How many ways without one are told to who has a thermometer, said nothing of it, has none. */
const waysTold = (noThermometer: Json | undefined): number =>
  noThermometer === false ? 0 : noThermometer === true ? 2 : 1;

/** How hot, and how to get there. */
function waterPhrases(plan: Plan, memory: Facts): readonly Json[] {
  const { waterC, kettleMl, waterMl, boilsAtC } = plan;
  const values = { waterC, kettleMl, waterMl, unit: memory['unit'] ?? null };
  if (plan.style === 'cold') return [phrase('brew-water-cold', values)];
  if (waterC > boilsAtC - 1) return [phrase('brew-water-boiling', values)];
  const ways = kettleWays({ waterC, waterMl, kettleMl, boilsAtC }).slice(0, waysTold(memory['noThermometer']));
  const told = ways.map(({ way, ...numbers }, i) =>
    phrase(`plan-way-${way}`, { ...numbers, unit: values.unit, nth: i + 1 }),
  );
  return [phrase('brew-water', values), ...told];
}
