/** A lesson as a shopkeeper tells of it, in one sentence or piece by piece: what is understood so far, and what is asked next. */
import type { Around, Calls, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import {
  draftMistakes,
  mistake,
  planLesson,
  usual,
  type LessonDraft,
  type Today,
  type Wording,
} from '../../lessons/lesson.ts';
import { lessonsOfSeries } from '../../lessons/series.ts';
import { addDays, dateOf, timeOf, wallAt } from '../../lessons/calendar.ts';
import { corrected } from '../../lessons/spoken/correction.ts';
import { isAsking } from '../../lessons/spoken/name.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import { hearLesson } from '../../lessons/spoken/spoken.ts';
import type { Mistake } from '../../units.ts';
import type { CoreContent } from '../core-content.ts';
import { asFacts, phrase, textOf } from '../values.ts';
import { doorsIn } from './board.ts';
import { namedDoors } from './named.ts';
import { firstOf, notesAheadDays, repeatPhrases } from './repeat.ts';
import { hear, tellsNothing, withPiece, type Said, type Understood, type Worded } from './plan-heard.ts';

export const deskPlanCallNames = ['planning', 'saidLesson', 'correctedPlan', 'justPut'] as const;

export function deskPlanCalls({ zone, listen }: Pick<CoreContent, 'zone' | 'listen'>): {
  readonly [name in (typeof deskPlanCallNames)[number]]: Calls[string];
} {
  return {
    planning: (given, around) => ({ gives: planning(given, listen(textOf(given['text']).trim()), { around, zone }) }),
    saidLesson: ({ text }, around) => saidLesson(listen(textOf(text)), around, zone),
    correctedPlan: ({ said, text }, { nowMs }) => {
      const news = withPiece(said as Said, textOf(text)) ?? corrected(said as Said, listen(textOf(text)), nowMs, zone);
      return news === null ? { wrong: 'lesson-not-said', field: 'text', values: {} } : { gives: asFacts(news) };
    },
    justPut: ({ put = null }, around) => ({ gives: justPut(put, around) }),
  };
}

/** What names neither a day nor an hour is not taken for a lesson, unless one was asked for. */
function saidLesson(sentence: Sentence, around: Around, zone: string): Outcome {
  const { said, mistakes } = hearLesson(sentence, around.nowMs, zone);
  const namesNeither = ['lesson-day-missing', 'lesson-time-missing'].every((code) =>
    mistakes.some((one) => one.code === code),
  );
  if (said.starts === undefined && namesNeither) return { wrong: 'lesson-not-said', field: 'text', values: {} };
  const { starts, seats, price, repeats, title = '' } = said;
  const tellsMore = [starts, seats, price, repeats].some((one) => one !== undefined);
  const isAbout = !tellsMore && (isAsking(sentence) || isMoreThanTitle(title));
  const open = doorsIn(around).filter(
    ({ lesson: { status, endsAt } }) => status !== 'cancelled' && endsAt > around.nowMs,
  );
  const named = isAbout ? namedDoors(sentence, open, { now: around.nowMs, zone }) : null;
  return { gives: { isAbout, lesson: named?.length === 1 ? (named[0]?.lesson.id ?? null) : null } };
}

/** "Is Saturday full?", "no more bookings for Saturday": of a lesson there is. A new one tells its hour, or a short title. Judgement. */
const isMoreThanTitle = (title: string): boolean =>
  (title.match(/\p{Script=Han}/gu) ?? []).length > 8 || (title.match(/[\p{Script=Latin}'’]+/gu) ?? []).length > 4;

/** The lesson that was put on the list a moment ago; of a series its first. */
function justPut(drafts: Json, around: Around): Json {
  const [draft] = (Array.isArray(drafts) ? drafts : []) as readonly Facts[];
  const put = doorsIn(around).find(
    ({ lesson }) => lesson.starts === draft?.['starts'] && lesson.title.en === (draft['title'] as Facts)['en'],
  );
  return put?.lesson.id ?? null;
}

/** `field` is what was asked for; none is a whole sentence. */
function planning(
  { said = null, field = null, tea = null }: Facts,
  sentence: Sentence,
  { around, zone }: Pick<Ground, 'around' | 'zone'>,
): Facts {
  // A tea is what the lesson is about only where it may be named: not in the place or what to bring.
  const isNamed = typeof tea === 'string' && (field === null || field === 'title');
  const before = { ...(said as Said | null), ...(isNamed ? { tea } : {}) };
  const isBlank = sentence.text === '';
  const understood = isBlank ? { said: before, problem: null } : hear(before, { sentence, field, around, zone });
  const today = { now: around.nowMs, tzVersion: textOf(around.house?.['tzVersion']) };
  const answer = answerOf(understood, { around, today, zone });
  // Asked for a piece, what was written told nothing of the lesson.
  const isSame = JSON.stringify(answer['said']) === JSON.stringify(before);
  const isStuck = !isBlank && isSame && answer['ask'] === field && tellsNothing(sentence, field, { around, zone });
  return { ...answer, isStuck };
}

interface Ground {
  readonly around: Around;
  readonly today: Today;
  readonly zone: string;
}

function answerOf({ said, problem }: Understood, ground: Ground): Facts {
  const wrong = problem ?? missing(said)[0] ?? mistakeIn(said, ground);
  if (wrong === null) return { said: asFacts(said), ask: null, problem: null, ...planned(said, ground) };
  const ask = wrong.field === 'zone' ? 'starts' : wrong.field;
  const { [ask as keyof Said]: _, ...kept } = said;
  return { said: asFacts(kept), ask, problem: phrase(`mistake-${wrong.code}`, asFacts(wrong.values)) };
}

function missing({ title = '', starts, seats }: Said): readonly Mistake[] {
  return [
    ...(title === '' ? [mistake('title-missing', 'title')] : []),
    ...(starts === undefined ? [mistake('day-missing', 'starts')] : []),
    ...(seats === undefined ? [mistake('seats-missing', 'seats')] : []),
  ];
}

function mistakeIn(said: Said, ground: Ground): Mistake | null {
  for (const draft of draftsOf(said, ground)) {
    const plan = draftMistakes(draft).length > 0 ? { mistakes: draftMistakes(draft) } : planLesson(draft, ground.today);
    if ('mistakes' in plan) return plan.mistakes[0] ?? null;
  }
  return null;
}

/** One for each day that was named. */
function draftsOf(said: Said, ground: Ground): LessonDraft[] {
  const first = draftOf(said, ground);
  const others = (said.also ?? []).map((date, i) => ({
    ...first,
    id: `${first.id}-${i + 2}`,
    starts: `${date}T${timeOf(first.starts)}`,
  }));
  return said.repeats === undefined ? [first, ...others] : [first];
}

function draftOf(said: Said, { around, zone }: Ground): LessonDraft {
  const { title = '', starts = '', seats = 0, minutes = usual.minutes } = said;
  const words = (name: Worded): Wording => inAll(said[name] ?? '');
  return {
    id: `${slugOf(title)}-${textOf(around.house?.['event'])}`,
    title: inAll(title),
    level: said.level ?? 'beginner',
    buildsOn: [],
    place: said.place === undefined ? (usualPlace(around) ?? words('place')) : words('place'),
    teacher: said.teacher ?? '',
    seats,
    zone: said.zone ?? zone,
    starts,
    minutes,
    price: words('price'),
    bring: words('bring'),
    teas: said.tea === undefined ? [] : [said.tea],
    cancelHours: usual.cancelHours,
    offerMinutes: usual.offerMinutes,
  };
}

/** Where most lessons are, this one will be as well, unless it is said; of two alike where the next is. */
function usualPlace(around: Around): Wording | undefined {
  const places = doorsIn(around).flatMap(({ lesson }) => (lesson.status === 'cancelled' ? [] : [lesson.place]));
  const countOf = ({ en }: Wording): number => places.filter((place) => place.en === en).length;
  return places.toSorted((a, b) => countOf(b) - countOf(a))[0];
}

/** The shopkeeper said it in one language; it stands in all until they say it in others. */
const inAll = (words: string): Wording => ({ en: words, 'zh-Hant': words, 'zh-Hans': words });

/** Short enough that a day fits behind it: lessons of a series are called by theirs. */
const longestSlug = 16;

function slugOf(title: string): string {
  const plainLetters = title.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return plainLetters.slice(0, longestSlug).replace(/^-+|-+$/g, '') || 'lesson';
}

function planned(said: Said, ground: Ground): Facts {
  const drafts = draftsOf(said, ground);
  const draft = drafts[0]!;
  const series = said.repeats === undefined ? null : { draft, repeats: said.repeats };
  const { minutes, seats, level, place, teacher, price, bring, teas } = draft;
  const notes = series
    ? lessonsOfSeries(series, addDays(dateOf(draft.starts), notesAheadDays), ground.today).notes
    : [];
  return {
    told: [
      ...drafts.map(({ starts }) =>
        phrase('desk-told-draft', {
          title: said.title ?? '',
          starts: said.repeats ? firstOf(said.repeats, starts) : starts,
          year: farYear(starts, ground),
          minutes,
          seats,
          level,
          place: place.en === '' ? null : { ...place },
          teacher: teacher || null,
          price: price.en || null,
          bring: bring.en || null,
          tea: teas[0] ?? null,
        }),
      ),
      ...(said.repeats ? repeatPhrases(said.repeats, draft.starts) : []),
      ...notes.slice(0, 2).map(({ code, values }) => phrase(`mistake-${code}`, asFacts(values))),
    ],
    drafts: series === null ? drafts.map(asFacts) : [],
    put: [asFacts(draft)],
    series: series === null ? null : asFacts(series),
  };
}

/** Said only where the day alone would be taken for a nearer one. */
function farYear(starts: string, { today, zone }: Ground): string | null {
  return dateOf(starts) > addDays(dateOf(wallAt(today.now, zone)), farDays) ? starts.slice(0, 4) : null;
}

const farDays = 300;
