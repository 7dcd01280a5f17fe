/** The lessons a sentence calls by their titles, whole or in part. Knows no days. */
import type { Lesson } from '../lesson.ts';
import { lessonWords } from './lesson-words.ts';

interface Called {
  /** What is said, without the day and the seats. */
  readonly rest: string;
}

/** Those a sentence calls by their titles, on whatever day; none when it names no title. */
export function titledLessons<Kind extends Lesson>(
  lessons: readonly Kind[],
  { rest }: Called,
  least = enoughLikeness,
): readonly Kind[] {
  const scored = lessons.map((one) => ({ one, score: likeness(one, rest) }));
  const best = Math.max(0, ...scored.map(({ score }) => score));
  return nextOfEach(
    best < least ? calledShortly(lessons, rest) : scored.filter(({ score }) => score === best).map(({ one }) => one),
  );
}

/** 蓋碗課和岩茶課, "the gaiwan evening and the Wuyi one": those each part of a sentence calls by its title. */
export function titledTogether<Kind extends Lesson>(lessons: readonly Kind[], { rest }: Called): readonly Kind[] {
  const parts = rest.split(/[和跟同及、，,]|[還还]有|\b(?:and|plus|as well as)\b/iu);
  const called = parts.map((part) => titledLessons(lessons, { rest: part })).filter((those) => those.length === 1);
  return [...new Set(called.flat())];
}

/** Of a series the next one is meant, unless a day was named. */
const nextOfEach = <Kind extends Lesson>(named: readonly Kind[]): readonly Kind[] =>
  named.filter((one, n) => named.findIndex(({ series, id }) => (series ?? id) === (one.series ?? one.id)) === n);

/** "The oolong one", 烏龍那堂: all that is said of its title. */
const shortly = [
  new RegExp(`\\bthe (?<words>[\\p{L} ]{3,30}?) (?:one|evening|${lessonWords})\\b`, 'iu'),
  new RegExp(`\\b${lessonWords} (?:on|about) (?:the )?(?<words>[\\p{L} ]{3,30})`, 'iu'),
  /(?<han>\p{Script=Han}{2,})(?:[那這这的]|那一)?[個个]?[堂節节門门課课]/u,
];

function calledShortly<Kind extends Lesson>(lessons: readonly Kind[], rest: string): readonly Kind[] {
  const { words, han = '' } = firstOf(shortly, rest)?.groups ?? {};
  // What stands before 課 is longer than the title's word in it.
  const ends = [4, 3, 2].map((length) => han.replace(/[那这這的一個个]+$/u, '').slice(-length));
  for (const said of words === undefined ? ends : [words]) {
    const parts = [...partsOf(said)];
    const called = lessons.filter(({ title }) => parts.length > 0 && isInTitle(title, parts));
    if (called.length > 0) return called;
  }
  return [];
}

/** What is said of a lesson that has a name: "the gongfu workshop", 蓋碗之夜. */
const byName = [
  new RegExp(`\\b(?:the|your|an?) (?<words>[\\p{L}' ]{3,30}?) (?:evening|night|${lessonWords})\\b`, 'iu'),
  /(?<han>\p{Script=Han}{2})(?:之夜|工作坊|班|茶[會会]|[課课])/u,
];
/** What is said of any lesson tells none. */
const ofAny = new Set(
  'next first other same one tea beginner beginning basic advanced free tasting group private new open whole saturday sunday monday tuesday wednesday thursday friday morning afternoon evening weekend early late earliest last easy easiest cheap cheapest short long upcoming coming only two'.split(
    ' ',
  ),
);
const ofAnyHan =
  /[報报個个上堂的這这那下一想要去來来什麼么甚哪邊边款節节門门有冇無无幾几多新免費费入進进初中高級级階阶學学茶藝艺泡品喝試试老師师團团你們们哋我他她貴贵店次第早午晚夜週周日天訂订約约留位名同和跟吧嘅呢嗰啲點点種种]/u;

/** Whether a lesson is called by a name that none of these has, in a single word of it. */
export function callsAnother(lessons: readonly Lesson[], { rest }: Called): boolean {
  const { words, han = '' } = firstOf(byName, rest)?.groups ?? {};
  const parts = [...partsOf(words ?? han)].filter((part) => !ofAny.has(part) && !ofAnyHan.test(part));
  return parts.length > 0 && !lessons.some(({ title }) => parts.some((part) => isInTitle(title, [part])));
}

/** The one that stands first in the text. */
const firstOf = (patterns: readonly RegExp[], text: string): RegExpExecArray | undefined =>
  patterns
    .map((pattern) => pattern.exec(text))
    .filter((found) => found !== null)
    .toSorted((a, b) => a.index - b.index)[0];

const isInTitle = (title: Lesson['title'], parts: readonly string[]): boolean =>
  Object.values(title).some((name) => parts.every((part) => partsOf(name).has(part)));

/** Whether a sentence is little more than a title: "the white tea one", where lessons are shown. */
export function isTitledAlone(lessons: readonly Lesson[], { rest }: Called): boolean {
  const heard = partsOf(rest.replace(politeWords, ' '));
  return lessons.some(({ title }) => likeness({ title }, rest) >= shownLikeness && shareOfTitle(title, heard));
}

const politeWords = /\b(?:one|please|lesson|class|course)\b|那[堂節节門门]?|[請请]|[這这][堂節节門门]/giu;

/** More than half of what was said belongs to it. */
function shareOfTitle(title: Lesson['title'], heard: ReadonlySet<string>): boolean {
  return Object.values(title).some((name) => share(heard, partsOf(name)) > 0.5);
}

/** So much makes it meant though another day was said: judgement. */
export const sureLikeness = 0.6;
/** Where lessons are shown and nothing else is said, a little less does: judgement. */
export const shownLikeness = 0.3;
/** So much of a title's words makes it meant: judgement. */
export const enoughLikeness = 0.4;

/** A part of a title set off by a colon or comma counts as the whole: "old leaves" for "Old leaves: raw and ripe". */
export function likeness({ title }: Pick<Lesson, 'title'>, words: string, leastParts = 1): number {
  const heard = partsOf(words);
  return Math.max(
    0,
    ...namesOf(title)
      .filter((parts) => parts.size >= leastParts)
      .map((parts) => share(parts, heard)),
  );
}

/** Each message is compared with every title; taken apart anew each time, that was 0.4 ms of it. */
const kept = new WeakMap<Lesson['title'], readonly ReadonlySet<string>[]>();

function namesOf(title: Lesson['title']): readonly ReadonlySet<string>[] {
  const before = kept.get(title);
  if (before) return before;
  const names = Object.values(title).flatMap((name) => [name, ...name.split(/[:：,，]/u)].map(partsOf));
  kept.set(title, names);
  return names;
}

function share(parts: ReadonlySet<string>, heard: ReadonlySet<string>): number {
  if (parts.size === 0) return 0;
  return [...parts].filter((part) => heard.has(part)).length / parts.size;
}

const smallWords = new Set('a an the and of with for in on at to my our your this that next'.split(' '));

/** "Leave" is no leaf. */
const inSingular = (word: string): string =>
  word === 'leaves' ? 'leaf' : word.length > 3 ? word.replace(/(?<!s)s$/u, '') : word;

/** Words of letters, and each two neighbours of Han. */
function partsOf(text: string): ReadonlySet<string> {
  const latin = text.toLowerCase().match(/\p{Script=Latin}+/gu) ?? [];
  const han = (text.match(/\p{Script=Han}+/gu) ?? []).flatMap((run) =>
    Array.from({ length: Math.max(0, run.length - 1) }, (_, n) => run.slice(n, n + 2)),
  );
  return new Set([...latin.filter((word) => !smallWords.has(word)).map(inSingular), ...han]);
}
