/** The functions flow files may call, bound to the core. Each takes and gives plain facts; none decides what is said next. */
import type { BrewingData, LeafProfile } from './brewing/brewing-data.ts';
import { kettleWays } from './brewing/kettle.ts';
import { leafOfFamily, leafOfTea, isFamily } from './brewing/leaf-profile.ts';
import type { BrewRequest, Family, Plan } from './brewing/plan.ts';
import { isMistake, planBrew } from './brewing/schedule.ts';
import { fillOf, spoonsOf } from './brewing/spoons.ts';
import { adjust, usualTaste, withTaste, type Complaint, type Taste, type TasteChange } from './brewing/taste.ts';
import { reasonsFor } from './brewing/why.ts';
import type { Around, Calls, Outcome } from './flow/book.ts';
import type { Facts, Json } from './flow/flow.ts';
import { keptFor, shopCallNames, shopCalls } from './functions/shop.ts';
import type { Hint, Reader } from './reading/reading.ts';
import type { Tea } from './teas/tea.ts';
import type { Language, Mistake } from './units.ts';

export interface CoreContent {
  readonly teas: readonly Tea[];
  readonly brewing: BrewingData;
  readonly read: Reader;
}

/** What `heard.` may hold, for the check of flow files. */
export const heardNames: ReadonlySet<string> = new Set(
  (
    'language languageSure kind tea teas family vessel vessels material volumeMl leafG leafSpoons guests tempC ' +
    'noThermometer noScale elevationM style strength warmed taste act wants infusion unknownTea mistakes missing ' +
    'answer kept blank unit'
  ).split(' '),
);

/** Beginnings of the keys that functions make up from codes in the data. */
export const madeUpKeys: readonly string[] = [
  'mistake-',
  'caution-',
  'why-',
  'plan-way-',
  'brew-fill-',
  'brew-water',
  'taste-',
];

const callList = ['readMessage', 'readLabel', 'planBrew', 'explainPlan', 'oneInfusion', 'adjustTaste'] as const;
/** The functions there are, for the check of flow files. */
export const callNames: ReadonlySet<string> = new Set([...callList, ...shopCallNames]);

export function makeCalls(content: CoreContent): Calls {
  const calls: { readonly [name in (typeof callList)[number]]: Calls[string] } = {
    readMessage: ({ text, language, asked }, { house }) => {
      const hint = { language: language as Language, asked: asked as string | null };
      const heard = heardMessage(content, textOf(text), hint);
      return { gives: { ...heard, kept: keptFor(house?.['standing'], textOf(text), heard['kind'] ?? null) } };
    },
    readLabel: ({ payload }) => ({ gives: heardLabel(content.teas, textOf(payload)) }),
    planBrew: (given, around) => planned(content, given, around),
    explainPlan: (given, around) => explained(content, given, around),
    oneInfusion: ({ plan, n }) => oneInfusion(plan as Facts, Number(n)),
    adjustTaste: (given, around) => adjusted(content, given, around),
  };
  return { ...calls, ...shopCalls };
}

const textOf = (value: Json | undefined): string => (typeof value === 'string' ? value : '');
const numberOf = (value: Json | undefined): number | null => (typeof value === 'number' ? value : null);
const phrase = (key: string, values: Facts = {}): { readonly key: string; readonly values: Facts } => ({ key, values });
/** What the core gives is plain data, though its types don't say so. */
const asFacts = (value: object): Facts => value as Facts;

/** A message of any length is read by its beginning. */
const longestText = 5000;

function heardMessage({ read }: CoreContent, text: string, hint: Hint): Facts {
  const heard = read(text.slice(0, longestText), hint);
  return {
    ...asFacts(heard),
    teas: heard.teas.length > 1 ? heard.teas : null,
    vessels: heard.vessels.length > 1 ? heard.vessels : null,
    noThermometer: heard.noThermometer || null,
    noScale: heard.noScale || null,
    mistakes: heard.mistakes.map(mistakePhrase),
    blank: !/[\p{L}\p{N}]/u.test(text),
    unit: degreesUnit(text),
  };
}

function degreesUnit(text: string): string | null {
  if (/\d\s*°?\s*F\b|℉|fahrenheit|華氏|华氏/iu.test(text)) return 'F';
  return /\d\s*°?\s*C\b|℃|celsius|攝氏|摄氏/iu.test(text) ? 'C' : null;
}

const mistakePhrase = ({ code, values }: Mistake): Json =>
  code === 'number-expected' ? phrase('mistake-number-in-words') : phrase(`mistake-${code}`, values);

/** A label names its tea: "tea-tieguanyin". Anything else is a bare start. */
function heardLabel(teas: readonly Tea[], payload: string): Facts {
  const tea = teas.find(({ id }) => payload === `tea-${id}`);
  if (tea) return { kind: 'brew', tea: tea.id, family: tea.family };
  return { kind: payload.startsWith('lesson') ? 'lesson' : 'greeting' };
}

function leafFor({ teas, brewing }: CoreContent, given: Facts): LeafProfile {
  const found = teas.find(({ id }) => id === given['tea']);
  if (found) return leafOfTea(brewing, found);
  const family = textOf(given['family']);
  if (isFamily(family)) return leafOfFamily(brewing, family);
  throw new Error(`neither a tea nor a family: ${JSON.stringify({ tea: given['tea'], family })}`);
}

interface Brew {
  readonly leaf: LeafProfile;
  readonly request: BrewRequest;
  readonly plan: Plan;
}

function brewOf(content: CoreContent, given: Facts, around: Around): Brew | Mistake {
  const leaf = leafFor(content, given);
  const asked = requestOf(given, leaf.family, around.memory);
  const taste = tastesOf(around.memory)[leaf.family];
  const firstPlan = planBrew(content.brewing, leaf, asked);
  if (isMistake(firstPlan) || !taste)
    return isMistake(firstPlan) ? firstPlan : { leaf, request: asked, plan: firstPlan };
  const request = withTaste({ data: content.brewing, leaf, request: asked }, taste);
  const plan = planBrew(content.brewing, leaf, request);
  return isMistake(plan) ? plan : { leaf, request, plan };
}

function requestOf(given: Facts, family: Family, memory: Facts): BrewRequest {
  const optional = {
    leafG: given['leafG'],
    waterC: given['tempC'],
    elevationM: given['elevationM'] ?? memory['elevationM'],
    style: given['style'],
    guests: given['guests'],
    warmed: given['warmed'],
    strength: given['strength'],
  };
  const known = Object.entries(optional).filter(([, value]) => value !== null && value !== undefined);
  return {
    tea: textOf(given['tea']) || null,
    family,
    vessel: textOf(given['vessel']),
    volumeMl: numberOf(given['volumeMl']) ?? 0,
    ...(Object.fromEntries(known) as Partial<BrewRequest>),
  };
}

function planned(content: CoreContent, given: Facts, around: Around): Outcome {
  const brew = brewOf(content, given, around);
  return isMistake(brew) ? refused(brew) : { gives: planFacts(content.brewing, brew, around) };
}

/** The model calls the water waterC; in flow files it is tempC. */
const refused = ({ code, field, values }: Mistake): Outcome => ({
  wrong: code,
  field: field === 'waterC' ? 'tempC' : field,
  values,
});

/** Everything of a plan that a sentence or a picture may want. */
function planFacts(brewing: BrewingData, { leaf, plan }: Brew, { memory }: Around): Facts {
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
    caution: plan.cautions[0] === undefined ? null : phrase(`caution-${plan.cautions[0]}`),
    likes: taste ? phrase('taste-kept', { family: leaf.family }) : null,
    rungs: plan.infusions.map(({ n, seconds, strengthMgPerMl }) => ({ n, seconds, strengthMgPerMl })),
  };
}

/** How hot, and how to get there; who said they have no thermometer is told a second way. */
function waterPhrases(plan: Plan, memory: Facts): readonly Json[] {
  const { waterC, kettleMl, waterMl, boilsAtC } = plan;
  const values = { waterC, kettleMl, waterMl, unit: memory['unit'] ?? null };
  if (plan.style === 'cold') return [phrase('brew-water-cold', values)];
  if (waterC > boilsAtC - 1) return [phrase('brew-water-boiling', values)];
  const ways = kettleWays({ waterC, waterMl, boilsAtC }).slice(0, memory['noThermometer'] === true ? 2 : 1);
  return [phrase('brew-water', values), ...ways.map(({ way, ...told }) => phrase(`plan-way-${way}`, told))];
}

function explained(content: CoreContent, given: Facts, around: Around): Outcome {
  const brew = brewOf(content, given, around);
  if (isMistake(brew)) return refused(brew);
  const reasons = reasonsFor({ data: content.brewing, leaf: brew.leaf, request: brew.request }, brew.plan);
  return { gives: reasons.map(({ key, values }) => phrase(key, values)) };
}

function oneInfusion(plan: Facts, n: number): Outcome {
  const infusions = plan['infusions'] as unknown as Plan['infusions'];
  const infusion = infusions.find((i) => i.n === n);
  if (!infusion) return { wrong: 'no-such-infusion', field: 'n', values: { most: infusions.length } };
  return { gives: asFacts(infusion) };
}

type Tastes = { readonly [family in Family]?: Taste };
const tastesOf = (memory: Facts): Tastes => (memory['taste'] ?? {}) as unknown as Tastes;

const complaintOf: { readonly [taste: string]: Complaint } = { 'lost-scent': 'flat', right: 'just-right' };

/** What to change after a word on the taste: the cause, the change in numbers, and the tastes to remember if it is wished. */
function adjusted(content: CoreContent, given: Facts, { memory }: Around): Outcome {
  const leaf = leafFor(content, given);
  const said = textOf(given['taste']);
  const plan = given['plan'] as Facts | null;
  const tastes = tastesOf(memory);
  const before = tastes[leaf.family] ?? usualTaste;
  const usualC = (leaf.waterC ?? content.brewing.families[leaf.family].waterC) + before.waterC;
  const waterC = numberOf(plan?.['waterC']) ?? usualC;
  const boilsAtC = numberOf(plan?.['boilsAtC']) ?? 100;
  const context = { family: leaf.family, waterC, boilsAtC };
  const { taste, change } = adjust(
    tastes[leaf.family] ?? usualTaste,
    complaintOf[said] ?? (said as Complaint),
    context,
  );
  return {
    gives: {
      cause: phrase(`taste-cause-${said}`),
      change: changePhrase(change, { waterC, unit: memory['unit'] ?? null, said }),
      isChanged: change !== null,
      tastes: { ...asFacts(tastes), [leaf.family]: asFacts(taste) },
    },
  };
}

function changePhrase(
  change: TasteChange | null,
  { waterC, unit, said }: { waterC: number; unit: Json; said: string },
): Json {
  if (!change) return phrase(said === 'right' ? 'taste-stays' : 'taste-far-enough');
  const { field, from, to } = change;
  const direction = to > from ? 'up' : 'down';
  if (field === 'waterC')
    return phrase(`taste-water-${direction}`, { waterC: waterC + to - from, fromC: waterC, unit });
  return phrase(`taste-${field}-${direction}`, { share: Math.abs(to - from) / from });
}
