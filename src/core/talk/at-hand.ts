/** What a message means only because of the talk it stands in, and the reader alone cannot tell. It corrects what was heard; it answers nothing. */
import type { Facts, Json } from '../flow/flow.ts';
import { spelledOut } from '../reading/typed/mending.ts';
import { boilingC } from '../reading/amounts/warmth.ts';
import { atTheBrew } from './at-the-brew.ts';
import { asksLanguageOfLesson, bringsChild, learnsAlone, staysAway, visits } from './at-the-shop.ts';
import {
  asksYield,
  bagsTold,
  belowZero,
  besidePlan,
  degrees,
  isAtWork,
  isFarFetched,
  likesIt,
  tellsOfTheLeaf,
  undoesThePlan,
  wantsSimpler,
  weighsEach,
} from './beside-plan.ts';
import { burnsTheLeaf, handlesBeforeBed, helpsWith, holdsHotWare, isHarmless, tellsWhoDrinks } from './harmless.ts';
import { byItsLook } from './looks.ts';
import { isOfTheWare, teaByName } from './named-tea.ts';
import { isTold, says, type Scene, type Talk } from './scene.ts';
import { talkWords, type TalkCues } from './talk-cues.ts';

interface Rule {
  readonly when: (scene: Scene) => boolean;
  readonly means: Facts;
}

const ofTheBrew: Facts = { kind: 'brew', act: null, taste: null, answer: null };

/** The first that fits. */
const rules: readonly Rule[] = [
  { when: tellsOfTheLeaf, means: { ...ofTheBrew, nearAnswer: null } },
  { when: ({ heard }) => heard['steers'] === 'remind', means: { kind: 'brew', act: null, answer: null } },
  { when: says('saves'), means: { ...ofTheBrew, saves: true } },
  { when: asksYield, means: { kind: 'brew', answer: null, asksYield: true } },
  { when: isNoLesson, means: { kind: 'brew', answer: null } },
  { when: isOfTheBrewAtHand, means: { kind: 'brew', answer: null } },
  { when: wishesBoiling, means: { ...ofTheBrew, tempC: boilingC } },
  { when: asksLanguageOfLesson, means: { kind: 'lesson', act: null, wants: null, answer: null } },
  { when: staysAway, means: { kind: 'lesson', act: null, answer: null } },
  { when: learnsAlone, means: { kind: 'brew', act: null, answer: null } },
  { when: bringsChild, means: { kind: 'lesson', act: null, answer: null, isWarned: false } },
  { when: says('drinks-now'), means: { kind: 'greeting', act: 'thanks', taste: null, answer: null, hands: null } },
  { when: tellsHowMany, means: { kind: 'brew', answer: null } },
  { when: praisesTheCup, means: { kind: 'taste', act: null, taste: 'right', answer: null } },
  { when: asksRefill, means: { ...ofTheBrew, nearAnswer: null } },
  { when: likesIt('light'), means: { ...ofTheBrew, turn: 'lighter' } },
  { when: likesIt('strong'), means: { ...ofTheBrew, turn: 'stronger' } },
  { when: weighsNothing, means: { ...ofTheBrew, asks: 'leaf' } },
  { when: wantsSimpler, means: { ...ofTheBrew, asks: null, style: null, nearAnswer: null, simpler: true } },
  { when: keepsVessel, means: { kind: 'greeting', act: 'yes' } },
  { when: says('asks-what-changed'), means: { ...ofTheBrew, asks: 'changed', nearAnswer: null } },
  { when: says('must-be-exact'), means: { ...ofTheBrew, asks: 'exact', nearAnswer: null } },
  { when: undoesThePlan, means: { ...ofTheBrew, asks: null, turn: null, bare: null, undoes: true } },
  { when: says('undo'), means: { kind: 'greeting', act: 'back', taste: null, answer: null } },
  { when: acknowledges, means: { ...ofTheBrew, kind: 'greeting', asks: null, turn: null, hands: null, takesIn: true } },
  { when: isAtWork, means: { kind: 'greeting' } },
  { when: says('let-it-be'), means: { kind: 'greeting', act: 'no' } },
  { when: visits, means: { kind: 'greeting', act: 'goodbye', answer: null } },
  { when: hasHadEnough, means: { kind: 'greeting', act: 'goodbye', answer: null } },
  { when: burnsTheLeaf, means: { ...ofTheBrew, answer: 'why-cooler' } },
  { when: handlesBeforeBed, means: { ...ofTheBrew, asks: 'leaf-out', isWarned: false } },
  { when: isHarmless, means: { kind: 'brew', answer: null } },
  { when: holdsHotWare, means: { kind: 'care', act: null, answer: 'gaiwan-hot', infusion: null, isWarned: false } },
  { when: tellsWhoDrinks, means: { kind: 'brew', answer: null } },
  { when: saysWhatItIs, means: { kind: 'brew' } },
  { when: countsDegrees, means: { kind: 'brew' } },
  { when: helpsWith, means: { kind: 'brew', answer: null } },
  { when: ({ heard }) => heard['isForeign'] === true, means: { ...ofTheBrew, nearAnswer: null } },
  { when: isFarFetched, means: { kind: 'brew', answer: null, nearAnswer: null } },
];

/** A message is known by its beginning. */
const longestRead = 200;

export function inTalk(heard: Facts, text: string, talk: Talk, cues: TalkCues): Facts {
  const begun = text.slice(0, longestRead).replace(belowZero, ' ');
  const scene: Scene = { ...talk, heard, words: spelledOut(talkWords(begun)), cues };
  const waits = isWaiting(scene);
  const ofThatVessel = isVesselAtHand(scene);
  const bags = bagsTold(scene);
  const beside = besidePlan(scene);
  const asksAnyVessel = talk.flow === 'brew' && heard['kind'] !== 'safety' && says('asks-any-vessel')(scene);
  // So many names spread into one another take ten times as long.
  const marked: Facts = Object.assign({}, heard, atTheBrew(scene), beside, {
    waits: waits || null,
    grumbles: (!waits && isGrumbling(scene)) || null,
    languageAlone: says('language-alone')(scene),
    unit: degrees(scene),
    vessel: ofThatVessel || asksAnyVessel || beside['cupsWanted'] !== null ? null : (heard['vessel'] ?? null),
    family: isOfTheWare(scene) ? null : (heard['family'] ?? null),
    bags,
    tempC: beside['doubtedC'] === null ? (heard['tempC'] ?? null) : null,
    leafG: weighsEach(scene) ? null : (heard['leafG'] ?? null),
    taste: heard['taste'] === 'bitter' ? howBitter(scene) : (heard['taste'] ?? null),
    tellsNothing:
      (heard['tellsNothing'] === true && bags === null) || (ofThatVessel && !facts.some((name) => isTold(heard, name))),
    anyVessel: asksAnyVessel || null,
    wantsUsual: says('wants-usual')(scene) || null,
    noWhisk: says('lacks-whisk')(scene) || null,
    atWork: (talk.flow === 'brew' && (talk.asked ?? null) !== null && says('at-work')(scene)) || null,
    simmers: (heard['kind'] === 'brew' && !isTold(heard, 'answer') && says('simmers')(scene)) || null,
    noVessel: (!isTold(heard, 'vessel') && says('lacks-vessel')(scene)) || null,
    asksShopOf: says('asks-the-shop-of')(scene) || null,
  });
  const marking: Scene = { ...scene, heard: marked };
  const rule = rules.find(({ when }) => when(marking));
  if (rule !== undefined) return { ...marked, ...rule.means };
  // "The tin says keemun 2021, is that too old?"
  const isAnswered = heard['kind'] === 'safety' || (heard['kind'] === 'care' && (heard['answer'] ?? null) !== null);
  const named = !isAnswered && namesIt(scene) ? teaByName(marked, begun, cues) : null;
  return Object.assign(marked, named ?? byItsLook(marking));
}

/** Too strong, or dry in the mouth, is no bitter cup. */
const howBitter = (scene: Scene): string =>
  says('only-strong')(scene) ? 'strong' : says('only-dry')(scene) ? 'dry' : 'bitter';

/** What a plan is changed by, beside its tea and its vessel. */
const facts = ['leafG', 'leafSpoons', 'tempC', 'guests', 'style', 'strength', 'turn', 'warmed', 'infusion'];

/** "What if I forget it in the pot", beside the plan for a gaiwan, asks for no other pot. */
function isVesselAtHand(scene: Scene): boolean {
  const { heard, flow, asked = null } = scene;
  const ofThePlan = flow === 'guide' || (flow === 'brew' && asked === null);
  const ofALine = (heard['asks'] ?? heard['infusion'] ?? heard['drawnS'] ?? null) !== null;
  const isAsked = ofALine || says('asked-of-it')(scene);
  const names = ['tea', 'family', 'volumeMl'].some((name) => isTold(heard, name));
  const isMeant = (isAsked && says('vessel-at-hand')(scene)) || says('same-vessel')(scene);
  return ofThePlan && heard['vesselFaint'] === true && !names && isMeant;
}

/** "I've drunk it, may I refill it?", in the midst of brewing, asks for no rule on leaves. */
function asksRefill({ flow, heard }: Scene): boolean {
  const isBrewing = flow === 'brew' || flow === 'guide';
  return isBrewing && heard['asksRefill'] === true && (heard['kind'] === 'care' || heard['kind'] === 'offtopic');
}

/** "How much is 3 g without a scale?", beside a plan, asks for no price. */
function weighsNothing({ flow, heard }: Scene): boolean {
  const isBrewing = flow === 'brew' || flow === 'guide';
  return isBrewing && heard['noScale'] === true && heard['kind'] === 'shop' && !isTold(heard, 'answer');
}

/** "The same cup", beside a plan: it stands. */
function keepsVessel(scene: Scene): boolean {
  const { flow, heard, words } = scene;
  return flow === 'brew' && heard['tellsNothing'] === true && words.length <= longestWish && says('same-vessel')(scene);
}

const namesIt = (scene: Scene): boolean => says('is-called')(scene) || says('label-says')(scene);

const isWaiting = (scene: Scene): boolean =>
  Number(scene.house?.['asked'] ?? 0) > 0 && says('asks-when-answered')(scene);

/** Longer texts tell more than that. */
const longestGrumble = 80;
const longestWish = 80;

const isGrumbling = (scene: Scene): boolean =>
  scene.words.length <= longestGrumble && !tellsOfABrew(scene.heard) && !isCare(scene.heard) && says('grumbles')(scene);

/** A tea, a vessel or an amount. */
const tellsOfABrew = (heard: Facts): boolean =>
  ['tea', 'family', 'vessel', 'volumeMl', 'leafG', 'tempC', 'taste', 'turn'].some((name) => isTold(heard, name));

const isCare = ({ kind = null }: Facts): boolean => kind === 'safety' || kind === 'lesson';

const unsure: ReadonlySet<Json> = new Set(['safety-general', 'children', null]);

/** "Did I miss it?", in the midst of a brew, asks for no lesson. */
function isOfTheBrewAtHand(scene: Scene): boolean {
  const { kind, steers, isLate, asksWhere, coldAsk = null } = scene.heard;
  const isOfSteps = steers === 'pause' || isLate === true || asksWhere === true || coldAsk !== null;
  // "The kids are fighting, hold on": no question about children; "ready to drink?" none about what has stood.
  const ofThePot = steers === 'pause' || ((asksWhere === true || coldAsk !== null) && !says('may-have-turned')(scene));
  const isUnsure = kind === 'safety' && ofThePot && unsure.has(scene.heard['answer'] ?? null);
  const mayBe = kind === 'lesson' || kind === 'shop' || isUnsure;
  return mayBe && scene.flow === 'guide' && isOfSteps && !says('of-lessons')(scene);
}

/** "Does that change anything?", beside a plan, by who has booked nothing and names nothing of a lesson. */
function isNoLesson(scene: Scene): boolean {
  const { heard, flow, words, house } = scene;
  const isBrewing = (flow === 'brew' || flow === 'guide') && heard['kind'] === 'lesson' && words.length <= longestWish;
  const hasBooked = Array.isArray(house?.['bookings']) && house['bookings'].length > 0;
  const mayBeLesson = !isTold(heard, 'guestsMore') && says('may-be-lesson')(scene);
  return isBrewing && !hasBooked && !says('of-lessons')(scene) && !mayBeLesson;
}

/** Where the plan asks for nothing itself. */
function wishesBoiling(scene: Scene): boolean {
  const { flow, asked = null, words } = scene;
  const mayBe = flow === 'brew' && asked === null && words.length <= longestWish;
  return mayBe && says('boiling-water')(scene) && says('wishes-boiling')(scene);
}

/** "Nice", beside a plan, is said of the plan. */
function praisesTheCup(scene: Scene): boolean {
  return scene.flow === 'guide' && scene.heard['taste'] === null && says('praises')(scene);
}

/** "Celsius is fine, yes" is a word on no cup. */
function countsDegrees({ heard, words, flow }: Scene): boolean {
  const isOfPlan = flow === 'brew' || flow === 'guide';
  return (
    isOfPlan &&
    heard['kind'] === 'taste' &&
    heard['taste'] === null &&
    isTold(heard, 'unit') &&
    words.length <= longestUnit
  );
}
const longestUnit = 40;

/** "Seven guests", beside a plan. */
function tellsHowMany({ heard, flow }: Scene): boolean {
  const { kind, onlyGuests, taste } = heard;
  return flow === 'brew' && onlyGuests === true && taste === null && (kind === 'taste' || kind === 'offtopic');
}

/** "Fair enough" asks for nothing; in a complaint or a question of safety it is not all that is said. */
function acknowledges(scene: Scene): boolean {
  const { kind = null, act = null } = scene.heard;
  if (scene.words.includes('?') || kind === 'safety' || act === 'thanks') return false;
  return says('acknowledges')(scene) || (scene.words.length <= longestSight && says('sees-why')(scene));
}
/** "Oh, so it's the water": longer texts go on to something else. */
const longestSight = 40;

/** "Enough?" is a question. */
function hasHadEnough(scene: Scene): boolean {
  return !scene.words.includes('?') && says('had-enough')(scene);
}

function saysWhatItIs(scene: Scene): boolean {
  const { kind, taste, tea } = scene.heard;
  return kind === 'taste' && taste === null && tea !== null && says('says-what-it-is')(scene);
}
