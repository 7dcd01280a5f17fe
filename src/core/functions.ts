/** The functions flow files may call, bound to the core. Each takes and gives plain facts; none decides what is said next. */
import type { Plan } from './brewing/plan.ts';
import { isMistake } from './brewing/schedule.ts';
import { adjust, usualTaste, type TasteChange } from './brewing/taste.ts';
import { reasonsFor } from './brewing/why.ts';
import type { Around, Calls, Outcome } from './flow/book.ts';
import type { Facts, Json } from './flow/flow.ts';
import { brewOf, complaintOf, leafFor, tastesOf } from './functions/asked-brew.ts';
import type { CoreContent } from './functions/core-content.ts';
import { asFacts, numberOf, phrase, refused, textOf } from './functions/values.ts';
import { coldCallNames, coldCalls } from './functions/cold-times.ts';
import { deskGuestCallNames, deskGuestCalls } from './functions/desk-guests.ts';
import { deskBoardCallNames, deskBoardCalls } from './functions/desk-board.ts';
import { errandOf } from './functions/desk-errand.ts';
import { deskLessonCallNames, deskLessonCalls } from './functions/desk-lesson.ts';
import { deskPlanCallNames, deskPlanCalls } from './functions/desk-plan.ts';
import { guideCallNames, guideCalls } from './functions/guide.ts';
import { answersTidings, saidAfterwards } from './functions/lesson-after.ts';
import {
  declinesHere,
  goesOnAboutLessons,
  isLessonWish,
  isOfOwnLesson,
  plansLesson,
  saidOfLessons,
} from './functions/lesson-heard.ts';
import { lessonCallNames, lessonCalls } from './functions/lesson.ts';
import { heardMessage } from './functions/heard-message.ts';
import { heardLabel } from './functions/label.ts';
import { keepingCallNames } from './functions/keeping.ts';
import { meantCallNames, meantCalls } from './functions/meant.ts';
import { ownCallNames, ownCalls, withOwnVessel, withSameVessel } from './functions/own.ts';
import { ownUsualCallNames, ownUsualCalls } from './functions/own-usual.ts';
import { inTalk } from './talk/at-hand.ts';
import { isAsking, nameAlone, nameGiven } from './lessons/spoken/name.ts';
import { ifDrawn, planned, spoonsToGrams, usualWater } from './functions/plan-told.ts';
import { twoAsked } from './talk/two-asked.ts';
import { keptFor, shopCallNames, shopCalls } from './functions/shop.ts';
import type { Language } from './units.ts';

const callList = [
  'readMessage',
  'partsOfMessage',
  'readLabel',
  'planBrew',
  'explainPlan',
  'oneInfusion',
  'ifDrawn',
  'usualWater',
  'spoonsToGrams',
  'adjustTaste',
] as const;
/** The functions there are, for the check of flow files. */
export const callNames: ReadonlySet<string> = new Set([
  ...callList,
  ...shopCallNames,
  ...guideCallNames,
  ...ownCallNames,
  ...ownUsualCallNames,
  ...lessonCallNames,
  ...deskBoardCallNames,
  ...deskGuestCallNames,
  ...deskLessonCallNames,
  ...deskPlanCallNames,
  ...keepingCallNames,
  ...meantCallNames,
  ...coldCallNames,
]);

export function makeCalls(content: CoreContent): Calls {
  const calls: { readonly [name in (typeof callList)[number]]: Calls[string] } = {
    readMessage: (given, around) => ({ gives: readMessage(content, given, around) }),
    partsOfMessage: (given, around) => ({ gives: partsOfMessage(content, given, around) }),
    readLabel: ({ payload }) => ({ gives: heardLabel(content.teas, textOf(payload)) }),
    planBrew: (given, around) => planned(content, given, around),
    explainPlan: (given, around) => explained(content, given, around),
    oneInfusion: ({ plan, n }) => oneInfusion(plan as Facts, Number(n)),
    ifDrawn: (given, around) => ifDrawn(content, given, around),
    usualWater: (given, around) => ({ gives: usualWater(content, given, around) }),
    spoonsToGrams: ({ spoons, ...given }) => ({ gives: spoonsToGrams(content, given, Number(spoons)) }),
    adjustTaste: (given, around) => adjusted(content, given, around),
  };
  return {
    ...calls,
    ...shopCalls,
    ...guideCalls(content),
    ...ownCalls,
    ...ownUsualCalls,
    ...meantCalls(content.teas),
    ...coldCalls(content),
    ...lessonCalls(content),
    ...deskCalls(content),
  };
}

function readMessage(
  content: CoreContent,
  { text, language, asked, flow = null, about = flow }: Facts,
  around: Around,
): Facts {
  const { house, memory } = around;
  const said = textOf(text);
  const sentence = content.listen(said);
  const told = heardMessage(content, said, { language: language as Language, asked: asked as string | null });
  const talk = { house, flow, asked: asked ?? null };
  const lastVessel = { last: memory['vessel'] ?? null, vessels: content.brewing.vessels };
  const named = withOwnVessel(withSameVessel(told, talk, lastVessel), said, memory);
  const talked = inTalk(named, said, talk, content.talkCues);
  const declined = declinesHere(sentence, talked, flow);
  const read = declined ? { ...talked, kind: 'greeting', act: 'no', answer: null } : talked;
  const mayBeLesson = wishesOverKind.has(read['kind'] ?? null);
  const mayPlan = mayBeLesson || read['kind'] === 'lesson';
  const plans = mayPlan && asked !== 'reply' && plansLesson(sentence, around, content.zone);
  const asks = isAsking(sentence);
  const message = { sentence, heard: read, flow: about, change: content.seatChange(sentence) };
  const ofLessons = saidOfLessons(message, around);
  const goesOn = (asked !== 'name' || asks) && goesOnAboutLessons(message, ofLessons);
  const isWish = goesOn || isLessonWish(sentence, house) || isOfOwnLesson(message, around);
  const isOfPot = read['steers'] === 'remind';
  const after = saidAfterwards(message, around);
  const heard =
    after !== null || plans || read['kind'] === 'lesson' || (mayBeLesson && isWish && !isOfPot) ? asLesson(read) : read;
  // So many names spread into an object take several times as long.
  return Object.assign({}, heard, {
    said: declined ? null : ofLessons,
    after,
    awaited: answersTidings(message, around),
    plans,
    errand: plans ? null : errandOf(sentence, around, content.zone),
    named: flow === 'lesson' || heard['kind'] === 'lesson' ? nameGiven(said) : nameAlone(said),
    isAsking: asks,
    kept: keptFor(house?.['standing'], said, heard['kind'] ?? null),
  });
}

/** What is written there is taken as it stands. */
const wordForWord: ReadonlySet<Json> = new Set(['reply', 'question', 'name']);

function partsOfMessage(content: CoreContent, given: Facts, around: Around): Json {
  if (wordForWord.has(given['asked'] ?? null)) return null;
  const hear = (text: string): Facts => readMessage(content, { ...given, text, asked: null }, around);
  return twoAsked(textOf(given['text']), hear, content.talkCues);
}

const deskCalls = (content: CoreContent): Calls => ({
  ...deskBoardCalls(content.zone),
  ...deskGuestCalls,
  ...deskLessonCalls(content),
  ...deskPlanCalls(content),
});

/** "Two seats for old leaves" is no question about leaves. On safety nothing goes before what is said there. */
const wishesOverKind: ReadonlySet<Json> = new Set(['brew', 'care', 'shop', 'offtopic', 'taste', 'greeting']);
const asLesson = (heard: Facts): Facts => ({ ...heard, kind: 'lesson', answer: null, infusion: null, mistakes: [] });

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
  const { taste, change } = adjust(tastes[leaf.family] ?? usualTaste, complaintOf(said), context);
  return {
    gives: {
      cause: phrase(`taste-cause-${said}`),
      change: changePhrase(change, { waterC, unit: memory['unit'] ?? null, said }),
      isChanged: change !== null,
      tempC: change?.field === 'waterC' ? waterC + change.to - change.from : null,
      strength: change?.field === 'strength' ? change.to / change.from : null,
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
