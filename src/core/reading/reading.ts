/** Free text → facts and the kind of question. It answers nothing, remembers nothing and never changes what was said. */
import type { Language, Mistake } from '../units.ts';
import type { TeaFinder } from '../teas/find.ts';
import { actOfGreeting, type Act } from './acts.ts';
import { linesOfPlanAhead, readAsks, type AskedBeside, type AskedLine, type Asks, type ReadAsks } from './asks.ts';
import { isAnswering } from './kinds/answering.ts';
import { answerToDanger, makeAnswerFinder, makeExplainer, type AnswerFinder, type StandingAnswer } from './answers.ts';
import { makeEvidenceFinder, tellsOf } from './kinds/evidence.ts';
import { readingOf } from './facts.ts';
import { dosesLeaf, tellsLeafAlone, tellsOfABrew } from './kinds/of-a-brew.ts';
import type { Kind, Taste } from './kinds/kind.ts';
import { lazily } from '../lazily.ts';
import { makeObserver, type Hint, type Observation } from './observation.ts';
import { dangers } from './cues/cue-names.ts';
import type { ReadingWords } from './reading-words.ts';
import { besideBrew, besideName, isWhole } from './answers/beside-name.ts';
import { settleKind } from './kinds/settle-kind.ts';
import { isAtHand, isFaint, isHalved, namesNothing } from './named.ts';
import { isPlanQuestion, readPlanQuestion } from './answers/plan-questions.ts';
import { makeStanding, noAnswer } from './answers/standing.ts';
import { makeSieve } from './cues/sieve.ts';
import { makeSureFinder } from './answers/sure-answers.ts';
import { asksWhy, toldKind } from './kinds/told-kind.ts';
import { saysWhoComes } from './kinds/visitors.ts';
import { sizeWordIn, type SizeWord } from './amounts/size-word.ts';
import { makeSubjectFinder } from './kinds/subjects.ts';
import { wareBeside, type Ware } from './ware.ts';
import { halvesForSome, readTurn, type Turn } from './turns.ts';
import { readStrength, readStyle, type ReadStyle } from './wishes.ts';

export type { Hint };

export interface Reading {
  readonly language: Language;
  /** False where the text fits any language ("300ml", "ok"). */
  readonly languageSure: boolean;
  readonly kind: Kind;
  readonly tea: string | null;
  /** When several fit. */
  readonly teas: readonly string[];
  readonly family: string | null;
  readonly vessel: string | null;
  /** When several fit. */
  readonly vessels: readonly string[];
  readonly material: string | null;
  /** What does for a vessel, and is none of ours. */
  readonly ware: Ware | null;
  /** Only by a word said of many a thing, and no word of another: "my cup is bigger". */
  readonly vesselFaint: boolean;
  readonly volumeMl: number | null;
  readonly leafG: number | null;
  /** All the leaf there is, where it is asked how often that is enough. */
  readonly stockG: number | null;
  /** Level teaspoons of leaf; what they weigh depends on the leaf. */
  readonly leafSpoons: number | null;
  readonly guests: number | null;
  /** How many drink is all that is said. */
  readonly onlyGuests: boolean;
  readonly tempC: number | null;
  readonly noThermometer: boolean;
  readonly noScale: boolean;
  /** "I do have a scale" */
  readonly hasThermometer: boolean;
  readonly hasScale: boolean;
  readonly elevationM: number | null;
  readonly style: ReadStyle | null;
  readonly strength: number | null;
  /** A small change to what is planned, when no more than that is said. */
  readonly turn: Turn | null;
  readonly warmed: boolean | null;
  /** False where the leaf is not to be rinsed first. */
  readonly rinsed: boolean | null;
  /** Seconds it is to draw, or drew. */
  readonly drawnS: number | null;
  /** "And 8?": of what, only the talk tells. */
  readonly bare: number | null;
  /** "Is 5 a lot?": the same, asked of. */
  readonly bareAsked: number | null;
  /** What is asked of the plan at hand, in few words. */
  readonly asks: Asks | null;
  /** What is asked of the brew of a tea that is named with it, in a text of any length. */
  readonly askedLines: readonly AskedLine[];
  /** What is asked of the plan to come beside all that it is made of. */
  readonly besides: readonly AskedBeside[];
  /** Whether a tea may be brewed so is asked, and nothing here knows of it. */
  readonly isLeftOpen: boolean;
  /** "the big one" */
  readonly sizeWord: SizeWord | null;
  /** The size is only a guess: as big as something everybody knows. */
  readonly sizeLikened: boolean;
  /** Neither a fact for a plan nor a change of one. */
  readonly tellsNothing: boolean;
  /** Who is asked doesn't know. */
  readonly unsure: boolean;
  readonly taste: Taste | null;
  readonly asksBoiling: boolean;
  readonly asksRemedy: boolean;
  /** What is amiss with a cup, told with the brew it is of. */
  readonly complains: Taste | null;
  readonly asksDose: boolean;
  readonly act: Act | null;
  /** The language asked for. */
  readonly wants: Language | null;
  /** "and the second?" */
  readonly infusion: number | null;
  /** The words that look like the name of a tea that isn't ours. */
  readonly unknownTea: string | null;
  readonly mistakes: readonly Mistake[];
  /** Of tea, vessel and volumeMl, what a plan still lacks; nothing when it isn't about brewing. */
  readonly missing: readonly string[];
  /** The standing answer that fits, when the kind is care, safety or shop. */
  readonly answer: string | null;
  /** What is asked beside a brew that is told. */
  readonly besideAnswer: string | null;
  /** It was found by few of its words. */
  readonly faintAnswer: boolean;
  /** A child drinks along of what is brewed. */
  readonly forChild: boolean;
  /** It speaks of what a doctor is asked, or of a danger. */
  readonly isWarned: boolean;
  /** One that may be meant by what is heard as brewing, where nothing else is understood. */
  readonly nearAnswer: string | null;
}

export interface ReaderContent {
  readonly finder: TeaFinder;
  readonly words: ReadingWords;
  /** Everyday words that are never a misspelt name. */
  readonly ordinary: readonly string[];
  readonly answers: readonly StandingAnswer[];
}

export type Reader = (text: string, hint: Hint) => Reading;

export function makeReader({ finder, words: data, ordinary, answers }: ReaderContent): Reader {
  const sieve = makeSieve();
  const observe = makeObserver({ finder, words: data, ordinary: new Set(ordinary), answers, sieve });
  const subjectsOf = lazily(() => makeSubjectFinder(data.subjects));
  const evidenceOnce = lazily(() => makeEvidenceFinder(subjectsOf(), data.worlds));
  const answersOnce = lazily(() => makeAnswerFinder(answers, subjectsOf()));
  const explainOnce = lazily(() => makeExplainer(answers));
  const sureOnce = lazily(() => makeSureFinder(answers, sieve));
  const ofBrewing = new Set(answers.filter((answer) => answer.ofBrewing).map(({ id }) => id));
  const isOfBrewing = (answer: string): boolean => ofBrewing.has(answer);
  const besideBrews = new Set(answers.filter((answer) => answer.besideBrew).map(({ id }) => id));
  const answerFor: AnswerFinder = (asked, kind) => answersOnce()(asked, kind);
  const standing = makeStanding(answers, answerFor);
  return (text, hint) => {
    const seen = observe(text, hint);
    const { cues, words, act } = seen;
    const evidence = evidenceOnce()(seen);
    const warned = tellsOf(evidence, data.worlds.warning) && !saysWhoComes.test(words);
    const danger = dangers.find((one) => cues.has(one, words)) ?? null;
    const surely = danger === null ? sureOnce()(words) : null;
    // Told with the plan, where that can be made at once.
    const beside = surely !== null && besideBrews.has(surely.id) && isWhole(seen) ? surely.id : null;
    const sure = beside === null ? surely : null;
    const askedOfPlan = (): ReadAsks =>
      readAsks({
        seen,
        named: !namesNothing(seen, (vessel) => isAtHand(seen, vessel)),
        dosed: tellsLeafAlone(seen),
        explain: explainOnce(),
        danger,
        planQuestion: () => readPlanQuestion(words, cues),
      });
    const { asks, explained } = sure === null ? askedOfPlan() : { asks: null, explained: sure.id };
    const scene = { evidence, danger, warned, cues, words, act, answering: isAnswering(seen) };
    const asksRemedy = sure === null && danger === null && !warned && cues.has('asks-remedy', words);
    const told = sure?.kind ?? (asksRemedy ? 'taste' : danger === null ? toldKind(seen, explained) : null);
    const weigh = (): Kind => settleKind(scene, data.weights(), answerFor);
    const weighed = sure?.ofTaste && weigh() === 'taste' ? 'taste' : (told ?? weigh());
    const isSafe = !warned && danger === null;
    const isHarmless = (): boolean => isSafe && (dosesLeaf(seen) || answerFor(words, 'safety') === null);
    const mayBeBrew =
      told === null &&
      weighed !== 'brew' &&
      tellsOfABrew(seen, asks, { weighed, namesNothing: namesNothing(seen), answerFor, isOfBrewing });
    const isOfABrew = mayBeBrew && (weighed !== 'safety' || isHarmless());
    const settled = isOfABrew ? 'brew' : weighed;
    const mayTurn =
      explained === null &&
      !asksOnly(asks) &&
      (namesNothing(seen, isHalved(seen)) || halvesForSome(seen)) &&
      turnsIn(settled, words);
    const turn = mayTurn ? readTurn(cues, words) : null;
    const heard = turn === null ? settled : 'brew';
    const isWhy = heard === 'brew' && asksWhy(seen);
    const isPlanned = heard === 'brew' && !isWhy && (asks !== null || turn !== null || !namesNothing(seen, isFaint));
    const isOfPlan =
      asks !== null ||
      (seen.teas.length > 0 && linesOfPlanAhead(words, cues).some((line) => line === 'count' || line === 'leaf'));
    const isQuestion = heard === 'brew' && !isWhy && danger === null && !isOfPlan && turn === null;
    const ofIt = isQuestion ? besideName(seen, answerFor, isOfBrewing) : noAnswer;
    const found = isPlanned || danger !== null || asksRemedy || ofIt.answer !== null ? ofIt : standing(heard, seen);
    const kind = isWhy && found.answer !== null ? 'care' : heard;
    const mayAskBeside = kind === 'brew' && found.answer === null && explained === null && danger === null;
    return readingOf(seen, {
      act: asksRemedy ? null : (actIn(kind, act, seen) ?? (kind === 'greeting' ? actOfGreeting(words, cues) : null)),
      kind,
      isWarned: warned || danger !== null || cues.has('safety', words),
      style: styleFor(kind, seen),
      strength: kind === 'brew' && turn === null && !asksOnly(asks) ? readStrength(cues, words) : null,
      turn,
      // "Thank you so much" asks for nothing.
      asks: kind === 'greeting' ? null : asks,
      sizeWord: sizeWordIn(words, seen.vessel.vessel !== null),
      ware: kind === 'brew' ? wareBeside(seen.vessel.vessel, cues, words) : null,
      unknownTea: mayNameTea(kind, asks, turn) ? seen.strangeTea : null,
      answer: explained ?? (danger === null ? found.answer : answerToDanger(answers, danger)),
      besideAnswer: mayAskBeside && turn === null ? (beside ?? besideBrew(seen, answerFor, besideBrews)) : null,
      faintAnswer: explained === null && danger === null && found.isFaint,
      // What may be meant beside a pot that is named is too much of a guess.
      nearAnswer: namesNothing(seen) || kind !== 'brew' ? found.near : null,
    });
  };
}

/** "How strong will it be?" wishes nothing stronger. */
const asksOnly = (asks: Asks | null): boolean => asks === 'too-much' || isPlanQuestion(asks);

/** "How long should it be" and "more leaf" are the name of no tea. */
const mayNameTea = (kind: Kind, asks: Asks | null, turn: Turn | null): boolean =>
  kind !== 'offtopic' &&
  kind !== 'greeting' &&
  turn === null &&
  (asks === null || asks === 'whole' || asks === 'guide');

/** "cooler" alone is a word about anything. */
const shortTurn = 12;
const turnsIn = (kind: Kind, words: string): boolean =>
  kind === 'brew' || (kind === 'offtopic' && words.length <= shortTurn);

/** Leaves left in the pot are a way to brew only where brewing is talked of. */
function styleFor(kind: Kind, seen: Observation): ReadStyle | null {
  const { cues, words } = seen;
  const brews = kind === 'brew' || kind === 'taste';
  const told = readStyle(cues, words);
  if (told !== null) return told === 'grandpa' && !brews ? null : told;
  return kind === 'brew' && (cues.has('fridge', words) || isNamedCold(seen)) ? 'cold' : null;
}

/** "Sencha cold in a bottle": the word right behind the name. */
const isNamedCold = ({ plain, teas }: Observation): boolean =>
  teas.some(({ end }) => coldBehind.test(plain.slice(end)));
const coldBehind = /^,? (?:tea )?(?:ice )?cold\b(?! (?:already|now|and|water|then hot))(?! \?)/;

/** "Why is it bitter?" asks for what went wrong, and a tea named in it is of no plan at hand: neither asks for the plan's reasons. */
const actIn = (kind: Kind, act: Act | null, { teas }: Observation): Act | null =>
  act === 'why' && (kind === 'taste' || teas.length > 0) ? null : act;
