/** The functions flow files may call, bound to the core. Each takes and gives plain facts; none decides what is said next. */
import { leafOfFamily, leafOfTea, isFamily } from './brewing/leaf-profile.ts';
import type { BrewingData } from './brewing/brewing-data.ts';
import type { BrewRequest, Plan, Style } from './brewing/plan.ts';
import { isMistake, planBrew } from './brewing/schedule.ts';
import type { Around, Calls, Outcome } from './flow/book.ts';
import type { Facts, Json } from './flow/flow.ts';
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
    'language languageSure kind tea teas family vessel vessels material volumeMl leafG leafSpoons guests tempC noThermometer noScale ' +
    'elevationM style strength warmed taste act wants infusion unknownTea mistakes missing answer blank unit'
  ).split(' '),
);

/** Beginnings of the keys that functions make up from codes in the data. */
export const madeUpKeys: readonly string[] = ['mistake-', 'caution-', 'why-', 'brew-fill-', 'brew-water', 'because-'];

export function makeCalls(content: CoreContent): Calls {
  return {
    readMessage: ({ text, language, asked }) => ({
      gives: heardMessage(content, textOf(text), { language: language as Language, asked: asked as string | null }),
    }),
    readLabel: ({ payload }) => ({ gives: heardLabel(content.teas, textOf(payload)) }),
    planBrew: (given, around) => planned(content, given, around),
    explainPlan: (given, around) => explained(content, given, around),
    oneInfusion: ({ plan, n }) => oneInfusion(plan as Facts, Number(n)),
  };
}

const textOf = (value: Json | undefined): string => (typeof value === 'string' ? value : '');

/** A message of any length is read by its beginning; the reader has the same bound. */
const longestText = 5000;

function heardMessage({ read }: CoreContent, text: string, hint: Hint): Facts {
  const heard = read(text.slice(0, longestText), hint);
  return {
    ...(heard as unknown as Facts),
    teas: heard.teas.length > 1 ? heard.teas : null,
    vessels: heard.vessels.length > 1 ? heard.vessels : null,
    noThermometer: heard.noThermometer || null,
    noScale: heard.noScale || null,
    mistakes: heard.mistakes.map(mistakePhrase),
    blank: !/[\p{L}\p{N}]/u.test(text),
    unit: /°\s*F|\d\s*F\b|fahrenheit|華氏|华氏/iu.test(text)
      ? 'F'
      : /°\s*C|\d\s*C\b|celsius|攝氏|摄氏/iu.test(text)
        ? 'C'
        : null,
  };
}

const phrase = (key: string, values: Facts = {}): { readonly key: string; readonly values: Facts } => ({ key, values });

const mistakePhrase = ({ code, values }: Mistake): Json => phrase(`mistake-${code}`, values);

/** A label names its tea: "tea-tieguanyin". Anything else is a bare start. */
function heardLabel(teas: readonly Tea[], payload: string): Facts {
  const tea = teas.find(({ id }) => payload === `tea-${id}`);
  return tea
    ? { kind: 'brew', tea: tea.id, family: tea.family }
    : { kind: payload.startsWith('lesson') ? 'lesson' : 'greeting' };
}

/** The request behind a flow's facts, or the first thing that is missing to make one. */
function requestOf(given: Facts, { memory }: Around): BrewRequest {
  const known = Object.entries({
    leafG: given['leafG'],
    waterC: given['tempC'],
    elevationM: given['elevationM'] ?? memory['elevationM'],
    style: given['style'] as Style | undefined,
    guests: given['guests'],
    warmed: given['warmed'],
    strength: given['strength'],
  }).filter(([, value]) => value !== null && value !== undefined);
  return {
    tea: (given['tea'] as string | null | undefined) ?? null,
    family: given['family'] as BrewRequest['family'],
    vessel: textOf(given['vessel']),
    volumeMl: Number(given['volumeMl']),
    ...(Object.fromEntries(known) as Partial<BrewRequest>),
  };
}

function leafFor({ teas, brewing }: CoreContent, tea: Json, family: Json): ReturnType<typeof leafOfTea> {
  const found = teas.find(({ id }) => id === tea);
  if (found) return leafOfTea(brewing, found);
  if (typeof family === 'string' && isFamily(family)) return leafOfFamily(brewing, family);
  throw new Error(`neither a tea nor a family: ${JSON.stringify({ tea, family })}`);
}

function planned(content: CoreContent, given: Facts, around: Around): Outcome {
  const leaf = leafFor(content, given['tea'] ?? null, given['family'] ?? null);
  const request = { ...requestOf(given, around), family: leaf.family };
  const plan = planBrew(content.brewing, leaf, request);
  if (isMistake(plan))
    return { wrong: plan.code, field: plan.field === 'waterC' ? 'tempC' : plan.field, values: plan.values };
  return { gives: planFacts(plan, request.volumeMl, around) };
}

/** Three sentences with the plan's own numbers: leaf, water, times. */
function explained(content: CoreContent, given: Facts, around: Around): Outcome {
  const outcome = planned(content, given, around);
  if ('wrong' in outcome) return outcome;
  const plan = outcome.gives as unknown as Plan;
  const [first, ...later] = plan.infusions;
  const last = later.at(-1) ?? first;
  const unit = around.memory['unit'] ?? null;
  return {
    gives: [
      phrase('because-leaf', { leafG: plan.leafG, waterMl: plan.waterMl, perMl: plan.waterMl / plan.leafG }),
      phrase(whyWater(plan), { waterC: plan.waterC, boilsAtC: plan.boilsAtC, unit }),
      phrase(later.length > 0 ? 'because-times' : 'because-one-time', {
        firstS: first?.seconds ?? 0,
        strength: first?.strengthMgPerMl ?? 0,
        lastS: last?.seconds ?? 0,
        lastStrength: last?.strengthMgPerMl ?? 0,
      }),
    ],
  };
}

function whyWater(plan: Plan): string {
  if (plan.style === 'cold') return 'because-cold';
  return plan.waterC > plan.boilsAtC - 1 ? 'because-boiling' : 'because-water';
}

/** Everything of a plan that a sentence or a picture may want. */
function planFacts(plan: Plan, volumeMl: number, { memory }: Around): Facts {
  const times = plan.infusions.map((i) => i.seconds);
  return {
    ...(plan as unknown as Facts),
    powder: plan.style === 'whisked',
    spoons: (plan.fillFraction * volumeMl) / teaspoonMl,
    fill: phrase(`brew-fill-${fillWord(plan.fillFraction)}`),
    rinseS: plan.rinse?.seconds ?? null,
    times,
    firstS: times[0] ?? 0,
    count: times.length,
    water: waterPhrase(plan, memory['unit'] ?? null),
    caution: plan.cautions[0] === undefined ? null : phrase(`caution-${plan.cautions[0]}`),
    rungs: plan.infusions.map(({ n, seconds, strengthMgPerMl }) => ({ n, seconds, strengthMgPerMl })),
  };
}

/** A level teaspoon holds 4.93 ml (the US customary measure, a sixth of a fluid ounce). */
const teaspoonMl = 4.93;

function fillWord(fraction: number): string {
  const steps = [
    [0.12, 'bottom'],
    [0.225, 'fifth'],
    [0.29, 'quarter'],
    [0.42, 'third'],
    [0.6, 'half'],
  ] as const;
  return steps.find(([most]) => fraction < most)?.[1] ?? 'more';
}

function waterPhrase(plan: Plan, unit: Json): Json {
  const values = { waterC: plan.waterC, kettleMl: plan.kettleMl, waterMl: plan.waterMl, unit };
  if (plan.style === 'cold') return phrase('brew-water-cold', values);
  return phrase(plan.waterC > plan.boilsAtC - 1 ? 'brew-water-boiling' : 'brew-water', values);
}

function oneInfusion(plan: Facts, n: number): Outcome {
  const infusions = plan['infusions'] as unknown as Plan['infusions'];
  const infusion = infusions.find((i) => i.n === n);
  if (!infusion) return { wrong: 'no-such-infusion', field: 'n', values: { most: infusions.length } };
  return { gives: infusion as unknown as Json };
}
