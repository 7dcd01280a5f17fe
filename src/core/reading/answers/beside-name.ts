/** Which answer a question of brewing gets where a tea or a vessel is named in it. It settles no kind, and words nothing. */
import type { AnswerFinder } from '../answers.ts';
import type { Span } from '../amounts/beside-number.ts';
import { cueText } from '../cues/cues.ts';
import type { Observation } from '../observation.ts';
import { noAnswer, type FoundStanding } from './standing.ts';

/** Asks whether, which of two, or what comes of it. */
const asksOfIt =
  /还是|定系|[吗嘛咩]|可以|可不可|可唔可|能不能|会不会|会唔会|要不要|使唔使|好不好|哪[个种只把]?.{0,4}(?:好|合适|适合|方便)|边个.{0,2}(?:好|啱)|怎么样|怎么着|怎样|会怎|会点|影响|多大|几大|保温.{0,4}多久|热多久|[?？]|^ ?(?:do|does|should|shall|can|may|is|are|will)\b|\b(?:first or|or not|(?:what|which) size|how (?:big|large)|how long (?:does|do|will|can|would) .{0,24}\b(?:warm|hot)|when (?:do|should|can) (?:i|we) (?:press|plunge|push)|(?:easier|easiest|safer|safest)|what (?:am|are) (?:i|we) doing wrong|how (?:do|does|to|should|can) (?:i |you |we |one |an? )?(?:[^ ]+ )?(?:use|hold|pour|handle|work|drink|keep|stop|avoid)|what (?:happens|if))\b/;

/** 泡龍井先放水還是先放茶葉: a question of brewing that has an answer, the same for every tea and vessel named in it. */
export function besideName(
  { plain, words, teas, vessels, quantities }: Observation,
  answerFor: AnswerFinder,
  isOfBrewing: (answer: string) => boolean,
): FoundStanding {
  const { volumeMl, leafG, tempC } = quantities;
  if ([volumeMl, leafG, tempC].some(({ value }) => value !== null)) return noAnswer;
  const rest = without(plain, [...teas, ...vessels]);
  if (!asksOfIt.test(rest)) return noAnswer;
  // How big a pot should be is asked of the pot.
  const found = [words, cueText(rest)].map((asked) => answerFor(asked, 'care')?.id ?? '').find(isOfBrewing);
  return found === undefined ? noAnswer : { answer: found, near: null, isFaint: false };
}

/** What is left of a text without these. */
export const without = (plain: string, spans: readonly Span[]): string =>
  spans
    .toSorted((a, b) => b.start - a.start)
    .reduce((text, { start, end }) => `${text.slice(0, start)} ${text.slice(end)}`, plain);

/** So alike, or by a word that leads to it, what is asked beside all of a brew has that answer as well. Judgement. */
const sureBeside = 0.55;
/** 正山小種可以加奶嗎，馬克杯400: what is asked beside a brew that is told with its sizes. */
export function besideBrew(
  { plain, words, teas, vessels, measures }: Observation,
  answerFor: AnswerFinder,
  saidBeside: ReadonlySet<string>,
): string | null {
  if (teas.length === 0 || words.length > longestBeside) return null;
  const told = [...teas, ...vessels, ...measures.filter(({ dimension }) => dimension !== 'time')];
  const found = answerFor(cueText(without(plain, told)), 'care');
  return found !== null && found.likeness >= sureBeside && saidBeside.has(found.id) ? found.id : null;
}
const longestBeside = 80;

/** "Where does your rooibos tea grow?" as "where does this tea grow?" */
export function unnamed({ plain, teas, cues }: Observation): string {
  const latestFirst = teas.toSorted((a, b) => b.start - a.start);
  const text = latestFirst.reduce((rest, { start, end }) => {
    const pronoun = /\p{Script=Han}/u.test(rest) ? '这茶' : 'this tea';
    return `${rest.slice(0, start).replace(whose, '')}${pronoun}${rest.slice(end).replace(/^ tea\b/, '')}`;
  }, plain);
  return cues.mended(cueText(text));
}
const whose = /\b(?:your|the|this|that|my|our|an?|these|those) $/;

/** Tea or family, vessel and size. */
export const isWhole = ({ tea, vessel, quantities }: Observation): boolean =>
  (tea.best !== null || tea.family !== null) && vessel.vessel !== null && quantities.volumeMl.value !== null;
