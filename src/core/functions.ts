/** The functions flow files may call, bound to the core. Each takes and gives plain facts; none decides what is said next. */
import type { Calls } from './flow/book.ts';
import type { Facts } from './flow/flow.ts';
import { aheadCallNames, aheadCalls } from './functions/brew/told-ahead.ts';
import { coldCallNames, coldCalls } from './functions/brew/cold-times.ts';
import type { CoreContent } from './functions/core-content.ts';
import { cupWeighed } from './functions/brew/cup-weighed.ts';
import { deskAttendedCallNames, deskAttendedCalls } from './functions/desk/attended.ts';
import { deskBoardCallNames, deskBoardCalls } from './functions/desk/board.ts';
import { deskCallOffCallNames, deskCallOffCalls } from './functions/desk/call-off.ts';
import { deskGuestCallNames, deskGuestCalls } from './functions/desk/guests.ts';
import { deskGuestChangeCallNames, deskGuestChangeCalls } from './functions/desk/guest-change.ts';
import { deskLessonCallNames, deskLessonCalls } from './functions/desk/lesson.ts';
import { deskPlanCallNames, deskPlanCalls } from './functions/desk/plan.ts';
import { deskResumeCallNames, deskResumeCalls } from './functions/desk/resume.ts';
import { deskWriteAllCallNames, deskWriteAllCalls } from './functions/desk/write-all.ts';
import { guideCallNames, guideCalls } from './functions/guide.ts';
import { keepingCallNames } from './functions/keeping.ts';
import { heardLabel } from './functions/label.ts';
import { kettleSetting } from './functions/brew/kettle-settings.ts';
import { lastsCallNames, lastsCalls } from './functions/brew/leaf-lasts.ts';
import { lessonCallNames, lessonCalls } from './functions/lesson.ts';
import { lessonPrices } from './functions/lesson/prices.ts';
import { meantCallNames, meantCalls } from './functions/meant.ts';
import { ownUsualCallNames, ownUsualCalls } from './functions/own-usual.ts';
import { ownCallNames, ownCalls } from './functions/own.ts';
import {
  explained,
  ifDrawn,
  oneInfusion,
  planned,
  spoonsToGrams,
  waterSoHot,
  waterStood,
} from './functions/brew/plan-told.ts';
import { plannedCallNames, plannedCalls } from './functions/brew/planned.ts';
import { partsOfMessage, readMessage } from './functions/read-message.ts';
import { shopCallNames, shopCalls } from './functions/shop.ts';
import { comparedCallNames, comparedCalls } from './functions/brew/compared-teas.ts';
import { similarCallNames, similarCalls } from './functions/brew/similar-teas.ts';
import { tasteAdjusted, tasteCause } from './functions/brew/taste-adjusted.ts';
import { turnWeighed } from './functions/brew/turn-weighed.ts';
import { textOf } from './functions/values.ts';
import { vesselCallNames, vesselCalls } from './functions/brew/vessel-told.ts';

const callList = [
  'readMessage',
  'partsOfMessage',
  'readLabel',
  'planBrew',
  'explainPlan',
  'oneInfusion',
  'ifDrawn',
  'weighTurn',
  'weighCup',
  'waterSoHot',
  'waterStood',
  'kettleSetting',
  'spoonsToGrams',
  'adjustTaste',
  'tasteCause',
  'lessonPrices',
] as const;
const allNames = [
  ...callList,
  ...aheadCallNames,
  ...shopCallNames,
  ...guideCallNames,
  ...ownCallNames,
  ...ownUsualCallNames,
  ...plannedCallNames,
  ...similarCallNames,
  ...lastsCallNames,
  ...comparedCallNames,
  ...lessonCallNames,
  ...deskAttendedCallNames,
  ...deskBoardCallNames,
  ...deskCallOffCallNames,
  ...deskGuestCallNames,
  ...deskGuestChangeCallNames,
  ...deskLessonCallNames,
  ...deskPlanCallNames,
  ...deskResumeCallNames,
  ...deskWriteAllCallNames,
  ...meantCallNames,
  ...coldCallNames,
  ...vesselCallNames,
] as const;
type AllCalls = { readonly [name in (typeof allNames)[number]]: Calls[string] };

/** The functions there are, for the check of flow files. */
export const callNames: ReadonlySet<string> = new Set([...allNames, ...keepingCallNames]);

export function makeCalls(content: CoreContent): AllCalls {
  const calls: Pick<AllCalls, (typeof callList)[number]> = {
    readMessage: (given, around) => ({ gives: readMessage(content, given, around) }),
    partsOfMessage: (given, around) => ({ gives: partsOfMessage(content, given, around) }),
    readLabel: ({ payload }) => ({ gives: heardLabel(content.teas, textOf(payload)) }),
    planBrew: (given, around) => planned(content, given, around),
    explainPlan: (given, around) => explained(content, given, around),
    oneInfusion: ({ plan, n }) => oneInfusion(plan as Facts, Number(n)),
    ifDrawn: (given, around) => ifDrawn(content, given, around),
    weighTurn: (given, around) => ({ gives: turnWeighed(content, given, around) }),
    weighCup: (given, around) => ({ gives: cupWeighed(content, given, around) }),
    waterSoHot: (given, around) => ({ gives: waterSoHot(given, around) }),
    waterStood: (given, around) => ({ gives: waterStood(given, around) }),
    kettleSetting: (given, around) => ({ gives: kettleSetting(content, given, around) }),
    spoonsToGrams: ({ spoons, ...given }) => ({ gives: spoonsToGrams(content, given, Number(spoons)) }),
    adjustTaste: (given, around) => tasteAdjusted(content, given, around),
    tasteCause: ({ taste }) => ({ gives: tasteCause(textOf(taste)) }),
    lessonPrices: ({ text }, around) => ({ gives: lessonPrices(content.listen(textOf(text)), around) }),
  };
  return {
    ...calls,
    ...aheadCalls(content),
    ...shopCalls,
    ...guideCalls(content),
    ...ownCalls,
    ...ownUsualCalls,
    ...plannedCalls,
    ...similarCalls(content),
    ...lastsCalls(content),
    ...comparedCalls(content),
    ...meantCalls(content.teas),
    ...coldCalls(content),
    ...vesselCalls(content),
    ...lessonCalls(content),
    ...deskAttendedCalls(content),
    ...deskBoardCalls(content),
    ...deskCallOffCalls(content),
    ...deskGuestCalls,
    ...deskGuestChangeCalls(content),
    ...deskLessonCalls(content),
    ...deskPlanCalls(content),
    ...deskResumeCalls(content),
    ...deskWriteAllCalls(content),
  };
}
