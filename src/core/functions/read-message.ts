/** What a message says in the talk it stands in: the reader's finding, then what own vessels, the talk and lessons make of it. */
import type { Around } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import { isAsking, nameAlone, nameGiven } from '../lessons/spoken/name.ts';
import type { Sentence } from '../lessons/spoken/sentence.ts';
import { inTalk } from '../talk/at-hand.ts';
import { mayBeNoDanger } from '../talk/harmless.ts';
import { talkWords } from '../talk/talk-cues.ts';
import { twoAsked } from '../talk/two-asked.ts';
import type { Language } from '../units.ts';
import type { CoreContent } from './core-content.ts';
import { errandOf } from './desk/errand.ts';
import { heardMessage } from './heard-message.ts';
import { answersTidings, saidAfterwards } from './lesson/after.ts';
import {
  declinesHere,
  goesOnAboutLessons,
  isLessonWish,
  isOfOwnLesson,
  plansLesson,
  saidOfLessons,
} from './lesson/heard.ts';
import { withOwnVessel, withSameSize, withSameVessel, withStrainer } from './own.ts';
import { keptFor } from './shop.ts';
import { textOf } from './values.ts';

/** "Two seats for old leaves" is no question about leaves. On safety nothing goes before what is said there. */
const wishesOverKind: ReadonlySet<Json> = new Set(['brew', 'care', 'shop', 'offtopic', 'taste', 'greeting']);
const asLesson = (heard: Facts): Facts => ({ ...heard, kind: 'lesson', answer: null, infusion: null, mistakes: [] });

/** "The pot is glass", beside a plan: it is as big as it was told. */
const saysSameSize = (
  { talkCues }: CoreContent,
  words: string,
  { flow, asked }: { flow: Json; asked: Json },
): boolean =>
  talkCues.says('same-size', words) || (flow === 'brew' && asked === null && talkCues.says('other-material', words));

export function readMessage(
  content: CoreContent,
  { text, language, asked, flow = null, about = flow }: Facts,
  around: Around,
): Facts {
  const { house, memory } = around;
  const said = content.withoutCourtesies(textOf(text));
  const sentence = content.listen(said);
  const told = heardMessage(content, said, { language: language as Language, asked: asked as string | null });
  const talk = { house, flow, asked: asked ?? null };
  const lastVessel = {
    last: memory['vessel'] ?? null,
    lastMl: memory['volumeMl'] ?? null,
    vessels: content.brewing.vessels,
  };
  const strained = withStrainer(told, said, talk, lastVessel);
  const isSameSize = saysSameSize(content, talkWords(said), talk);
  const sized = withSameSize(strained, isSameSize, lastVessel);
  const named = withOwnVessel(withSameVessel(sized, talk, lastVessel), said, memory);
  const talked = inTalk(named, said, talk, content.talkCues);
  const declined = declinesHere(sentence, talked, flow);
  const read = declined ? { ...talked, kind: 'greeting', act: 'no', answer: null } : talked;
  // "I may be ten minutes late, is that a problem?"
  const mayBeLesson = wishesOverKind.has(read['kind'] ?? null) || mayBeNoDanger(read);
  const mayPlan = mayBeLesson || read['kind'] === 'lesson';
  const plans = mayPlan && asked !== 'reply' && plansLesson(sentence, around, content.zone);
  const asks = isAsking(sentence);
  const message = { sentence, heard: read, flow: about, change: content.seatChange(sentence) };
  const ofLessons = saidOfLessons(message, around);
  const goesOn = (asked !== 'name' || asks) && goesOnAboutLessons(message, ofLessons);
  const isWish = goesOn || isLessonWish(sentence, around) || isOfOwnLesson(message, around);
  // "I'm back, too late?", in the midst of a brew.
  const isOfPot =
    read['steers'] === 'remind' ||
    (flow === 'guide' && read['asksWhere'] === true && !sentence.says('of-lessons')) ||
    (isBeside(flow, asked) && asksOfInfusion(read) && !sentence.says('of-lessons'));
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
    named: nameIn(textOf(text), said, flow === 'lesson' || heard['kind'] === 'lesson'),
    isAsking: asks,
    isNumber: aNumber.test(said) || null,
    ofLesson: read['kind'] === 'safety' && (isLessonWish(sentence, around) || asksForASeat(sentence)),
    kept: keptFor(house?.['standing'], said, heard['kind'] ?? null),
  });
}

/** 有高血壓可以報名嗎, of no lesson by its name. */
const asksForASeat = (sentence: Sentence): boolean => sentence.says('of-lessons') && sentence.says('enrol');

/** Beside a plan, or in the midst of a brew. */
const isBeside = (flow: Json, asked: Json = null): boolean => flow === 'guide' || (flow === 'brew' && asked === null);

/** "How long is the first one?": of an infusion, and of no lesson called so. */
const asksOfInfusion = ({ infusion = null, asks = null }: Facts): boolean =>
  infusion !== null && linesOfInfusion.has(asks);
const linesOfInfusion: ReadonlySet<Json> = new Set(['time', 'heat', 'rinse', 'rinse-water']);

/** "2", or "2.": of a choice, where none is asked for. */
const aNumber = /^\d{1,2}[.)]?$/;

/** A name may stand in what is only said around the message. */
const nameIn = (written: string, said: string, isOfLesson: boolean): string | null =>
  isOfLesson ? (nameGiven(written) ?? nameGiven(said)) : (nameAlone(written) ?? nameAlone(said));

/** What is written there is taken as it stands. */
const wordForWord: ReadonlySet<Json> = new Set(['reply', 'question', 'name']);

export function partsOfMessage(content: CoreContent, given: Facts, around: Around): Json {
  if (wordForWord.has(given['asked'] ?? null)) return null;
  const hear = (text: string): Facts => readMessage(content, { ...given, text, asked: null }, around);
  const parts = twoAsked(
    content.withoutCourtesies(textOf(given['text'])),
    hear,
    content.talkCues,
    given['flow'] ?? null,
  );
  return parts === null ? null : { ...parts };
}
