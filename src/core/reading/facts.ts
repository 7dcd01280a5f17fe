/** The facts of an observation as a reading hands them on, once the kind of question and what follows from it are known. */
import type { Mistake } from '../units.ts';
import { readInfusion } from './acts.ts';
import { unnamed } from './answers/beside-name.ts';
import { askedBeside, asksOfBoiling, linesOfPlanAhead } from './asks.ts';
import { isLeftOpen } from './kinds/left-open.ts';
import type { Cues } from './cues/cues.ts';
import { readComplaint, readTaste, wordCount, type Kind } from './kinds/kind.ts';
import { likeAnother, type Observation } from './observation.ts';
import { ounceG, type Measure } from './amounts/measures.ts';
import type { Reading } from './reading.ts';
import { readDrawn } from './amounts/drawn.ts';
import { boiledC } from './amounts/warmth.ts';
import { readWarmed } from './wishes.ts';

/** What is concluded of the whole, beside the facts. */
type Concluded = Pick<
  Reading,
  | 'act'
  | 'kind'
  | 'ware'
  | 'style'
  | 'strength'
  | 'turn'
  | 'asks'
  | 'sizeWord'
  | 'unknownTea'
  | 'isWarned'
  | 'answer'
  | 'besideAnswer'
  | 'nearAnswer'
  | 'faintAnswer'
>;

/** "My kettle only has 80, 90 and 100": none of them is chosen. */
const kettleGoesTo =
  /\bkettles? (?:only |just )?(?:has|does|goes|can do|sets|comes with)(?: only| to| settings for| settings| buttons for| buttons| marks for| marks)?:? \d{2,3}.{0,12}\d{2,3}/;

const isOfKettle = (words: string, value: number | null): boolean =>
  value !== null && kettleGoesTo.exec(words)?.[0].split(/\D+/).includes(String(value)) === true;

export function readingOf(seen: Observation, concluded: Concluded): Reading {
  const { tea, vessel, quantities, cues, words } = seen;
  const { kind } = concluded;
  const planned = {
    tea: tea.best?.id ?? null,
    vessel:
      concluded.asks !== 'meaning' &&
      concluded.ware !== 'coffee-maker' &&
      concluded.turn !== 'half-pot' &&
      !(concluded.asks === 'lasts' && vessel.faint && quantities.volumeMl.value === null) &&
      namesVessel(kind, seen)
        ? vessel.vessel
        : null,
    volumeMl: isOfKettle(words, quantities.volumeMl.value) ? null : quantities.volumeMl.value,
  };
  const taste = kind === 'taste' ? readTaste(cues, words) : null;
  const besides = kind === 'brew' ? askedBeside(seen) : [];
  const askedLines =
    (kind === 'brew' || kind === 'shop') && seen.teas.length > 0 ? linesOfPlanAhead(words, cues, ofIt(seen)) : [];
  // Written out: an object of so many members that begins with another's took a tenth of a reading.
  return {
    tea: planned.tea,
    vessel: planned.vessel,
    volumeMl: planned.volumeMl,
    language: seen.language,
    languageSure: seen.languageSure,
    teas: tea.best ? [] : tea.candidates.map(({ id }) => id),
    family: tea.family,
    vessels: vessel.several,
    material: vessel.material,
    ware: concluded.ware,
    vesselFaint: vessel.faint && vessel.vessel !== null && vessel.material === null && !ofAnother.test(words),
    leafG: isOnlyAskedOf(seen, concluded) ? null : quantities.leafG.value,
    stockG: concluded.asks === 'lasts' ? leafToldG(seen) : null,
    leafSpoons: seen.leafSpoons,
    guests: seen.onlyGuests || countsGuests(kind, seen) ? quantities.guests.value : null,
    onlyGuests: seen.onlyGuests,
    tempC: kettleGoesTo.test(words) ? null : (quantities.tempC.value ?? (taste === null ? null : boiledC(cues, words))),
    noThermometer: cues.has('no-thermometer', words),
    noScale: cues.has('no-scale', words),
    hasThermometer: cues.has('has-thermometer', words) && !cues.has('no-thermometer', words),
    hasScale: cues.has('has-scale', words) && !cues.has('no-scale', words),
    elevationM: quantities.elevationM.value,
    warmed: readWarmed(cues, words),
    rinsed: cues.has('not-rinsed', words) ? false : null,
    drawnS: readDrawn(seen, { ofCup: taste !== null }),
    bare: bareNumber(seen),
    bareAsked: bareAsked(seen),
    taste,
    asksBoiling: kind === 'brew' && !besides.includes('boiling') && asksOfBoiling(seen),
    asksRemedy: cues.has('asks-remedy', words),
    complains: kind === 'brew' && seen.teas.length > 0 ? readComplaint(cues, words) : null,
    asksDose: (quantities.leafG.value ?? seen.leafSpoons) !== null && cues.has('asks-dose', words),
    act: concluded.act,
    wants: seen.wants,
    infusion: readInfusion(words),
    mistakes: [
      ...Object.values(quantities).flatMap((quantity) => (quantity.mistake ? [quantity.mistake] : [])),
      ...(concluded.sizeWord === null ? vague(cues, words, seen.asked, planned.volumeMl) : []),
    ],
    missing: kind === 'brew' ? (['tea', 'vessel', 'volumeMl'] as const).filter((fact) => planned[fact] === null) : [],
    kind,
    style: concluded.style,
    strength: besides.includes('strength') ? null : concluded.strength,
    turn: concluded.turn,
    asks: concluded.asks,
    isLeftOpen: kind === 'brew' && askedLines.length === 0 && understandsNothing(concluded) && isLeftOpen(seen),
    askedLines,
    besides,
    sizeWord: concluded.sizeWord,
    sizeLikened: seen.sizeGuessed,
    unsure: knowsNot.test(words),
    tellsNothing: tellsNothing(seen, concluded),
    unknownTea: concluded.unknownTea,
    answer: concluded.answer,
    besideAnswer: concluded.besideAnswer,
    forChild: (kind === 'brew' || (isOfSafety(concluded) && !hasDrunk.test(words))) && cues.has('for-child', words),
    isWarned: concluded.isWarned,
    nearAnswer: concluded.nearAnswer,
    faintAnswer: concluded.faintAnswer,
  };
}

const ofIt = (seen: Observation): string => unnamed(seen).replaceAll('this tea', 'tea');

/** What is told in grams is not for this brew. */
const ofNoDose: ReadonlySet<string> = new Set(['dry', 'lasts']);

const leafToldG = ({ measures }: Observation): number | null => {
  const told = measures.find(({ dimension }) => dimension === 'mass' || dimension === 'ounce');
  return told === undefined ? null : told.dimension === 'ounce' ? told.value * ounceG : told.value;
};

const understandsNothing = ({ asks, turn, style, strength, answer }: Concluded): boolean =>
  [asks, turn, style, strength, answer].every((one) => one === null);

/** Asked of safety, and of no danger. */
const isOfSafety = ({ kind, answer }: Concluded): boolean =>
  kind === 'safety' && (answer === 'very-hot-drinks' || answer === 'children');

/** Nothing is to be brewed for who had it already. */
const hasDrunk = /\b(?:drank|drunk|had|has had|ate|sipped|swallowed|spilt|spilled|got into|pulled|knocked)\b/;

/** A pot in the place of the one before. */
const ofAnother = /\b(?:instead|another|different|other|new|switch|change)\b|换|改用|改做|转用|另|别的|第二个/;

const ofTools = ['no-thermometer', 'no-scale', 'has-thermometer', 'has-scale', 'not-rinsed'] as const;

/** What there is to measure with, or that nothing is rinsed. */
export const tellsOfTools = (cues: Cues, words: string): boolean => ofTools.some((cue) => cues.has(cue, words));

/** Neither a fact for a plan nor a change of one. */
function tellsNothing(seen: Observation, { style, strength, turn, unknownTea }: Concluded): boolean {
  const { teas, vessels, quantities, leafSpoons, cues, words } = seen;
  if (
    teas.length > 0 ||
    vessels.some(({ meaning }) => meaning.is !== 'nothing') ||
    leafSpoons !== null ||
    readWarmed(cues, words) !== null
  )
    return false;
  if ([style, strength, turn, unknownTea, readInfusion(words)].some((told) => told !== null)) return false;
  if (tellsOfTools(cues, words)) return false;
  return Object.values(quantities).every(({ value, mistake }) => value === null && !mistake);
}

/** "my cup" in a question of safety is no vessel to plan for, nor the pot that is to be washed. */
function namesVessel(kind: Kind, seen: Observation): boolean {
  const { vessel, quantities, plain } = seen;
  if (kind === 'offtopic' || (kind !== 'brew' && isCounted(seen))) return false;
  if (kind === 'brew' || !vessel.faint || quantities.volumeMl.value !== null) return true;
  return vessel.material !== null || ((kind === 'taste' || kind === 'care') && /\btea ?pots?\b|茶壶/.test(plain));
}

/** "And 8?", 那8呢: one number of what was talked of last, and no other word. */
function bareNumber({ plain, measures }: Observation): number | null {
  const [one] = measures;
  if (measures.length !== 1 || one?.dimension !== 'bare' || plain.length > 30) return null;
  const [ahead, behind] = [plain.slice(0, one.start).trim(), plain.slice(one.end).trim()];
  const isAlone = /^[\s?.!？。！]*$/.test(ahead + behind);
  return !isAlone && leadsOn.test(ahead) && trailsOff.test(behind) ? one.value : null;
}

/** "Is 5 a lot?", "what would 6 do": one number, asked of and not wished for. */
function bareAsked({ plain, measures }: Observation): number | null {
  const [one] = measures;
  if (measures.length !== 1 || !one || !(one.dimension === 'bare' || one.dimension === 'mass') || plain.length > 40)
    return null;
  if (isDoubted(plain, one)) return one.value;
  return asksAhead.test(plain.slice(0, one.start).trim()) && asksBehind.test(plain.slice(one.end).trim())
    ? one.value
    : null;
}
/** 7克是乾的還是濕的, of the plan's own grams; 放3克會不會多; what is bought. */
const isOnlyAskedOf = (seen: Observation, { asks, kind }: Concluded): boolean =>
  ofNoDose.has(asks ?? '') ||
  (kind === 'shop' && !saysDose(seen.plain)) ||
  seen.measures.some((one) => isDoubted(seen.plain, one));

/** 放3克會不會多: asked of the leaf, and not wished for. */
const isDoubted = (plain: string, { dimension, start, end }: Measure): boolean =>
  dimension === 'mass' && doubtAhead.test(plain.slice(0, start)) && doubtBehind.test(plain.slice(end));
const doubtAhead = /^(?:那|我|就|如果|这样|茶叶|茶|只|才|放|落|下|加|用|投|[，, ])*$/;
const doubtBehind =
  /^(?:的?茶叶|的?茶|的话|[，, ])*(?:会不会|会唔会|是不是|系咪|算不算|是否|会)?(?:有点|有啲|太|好|很|过|算|嫌)*(?:多|少)(?:了|咗|不多|不少|唔多|唔少|吗|嘛|咩|呢|啊|呀|点|[?？ ])*$/;
const asksAhead =
  /^(?:(?:and|or|but|so|ok|okay|hm+),? )*(?:is|are|isn'?t|would|wouldn'?t|will|won'?t|does|do|what (?:would|does|will|about|do)|how (?:would|does))$/;
const asksBehind =
  /^(?:(?:be|not|really|a bit|quite|way|that|the|any|also|just|even) ?)*(?:a lot|lots|loads|much|too much|too many|too little|too few|too hot|too cool|too cold|enough|ok|okay|alright|all right|fine|right|better|worse|do|work|change anything|make (?:it|a difference)|different|reasonable|normal|usual)(?: ?(?:better|then|too|instead|to it|for (?:this|that|it)))*[ .?!]*$/;

const leadsOn =
  /^(?:(?:and|or|ok|okay|then|so|actually|sorry|no wait|wait|now|make that|make it|what about|how about|what if|with|at|to|use|just|make it|maybe|even|only|try|no|lets say|let's say|lets do|let's do|do|lets|let's|i do|i use|i take|i'd like|id like|what if (?:its|it's|it is|it was|i do|i use|i take|i go)|(?:push|bring|set|take|put|up|raise|lower|drop|change|turn|get|keep|bump|crank) (?:it|that)(?: up| down| on| back)?|(?:go|up|down|back)(?: up| down| back)?|can (?:it|we|i|you) (?:be|do|go|use|make it|have)|(?:could|would|will|should) (?:it|we|i) (?:be|do|go|use|make it)|please)[\s,]*)*$|^(?:那|咁|如果|大概|大约|差不多|换成|换|改成|改|或者|就|要|用|放|系|是|不然|若|再|[，, ])*$/;
const trailsOff =
  /^(?:[\s,?.!]|then|instead|please|maybe|now|actually|sorry|of us)*$|^(?:呢|左右|的话|嘅话|好了|吧|啦|呀|啊|行吗|可以吗|得唔得|得吗|[，,？?。! ])*$/;

/** "six mugs a day" are drunk, not brewed in. */
function isCounted({ vessels, measures }: Observation): boolean {
  const counted = measures.filter(({ dimension }) => dimension === 'other');
  return vessels.length > 0 && vessels.every((v) => counted.some((m) => m.start < v.start && v.end <= m.end));
}

/** Who is talked of elsewhere doesn't drink along. */
function countsGuests(kind: Kind, { act, plain }: Observation): boolean {
  return act !== 'ask-shop' && !(kind === 'offtopic' && /[?吗]/.test(plain));
}

function saysDose(plain: string): boolean {
  return /\b(?:use|using|left|brew|steep|put)\b|泡|冲|剩|放/.test(plain);
}

const knowsNot =
  /\b(?:dont know|do not know|no idea|not sure|unsure|idk|dunno|how (?:do|can|should) i (?:measure|know|find|tell))\b|唔知|不知道|不清楚|唔清楚|不确定|不晓得|搞不清|不认得|看不出|(?:泡|喝|冲|饮)(?:什么|啥|咩|哪[个种款])(?:茶)?(?:比较|最|才)?(?:好|合适|适合)|怎么量|点量|点度/;

const unitMissing = (words: string): Mistake => ({ code: 'unit-missing', field: 'amount', values: { said: words } });

/** "big", where a number was asked. */
function vague(cues: Cues, words: string, asked: string | null, volumeMl: number | null): Mistake[] {
  const numbers = ['volumeMl', 'leafG', 'tempC', 'guests', 'elevationM'];
  if (asked === null) return /^\d+(?:[.,]\d+)?$/.test(words) ? [unitMissing(words)] : [];
  if (!numbers.includes(asked) || /\d/.test(words)) return [];
  if (asked === 'volumeMl' && volumeMl !== null) return [];
  if (asked === 'volumeMl' && (knowsNot.test(words) || likeAnother.test(words)))
    return [{ code: 'size-unknown', field: asked, values: {} }];
  if (wordCount(words) > 4) return [];
  return cues.has('big', words) ? [{ code: 'number-expected', field: asked, values: {} }] : [];
}
