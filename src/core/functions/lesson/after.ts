/** What is said to a reminder, and of a lesson that is over: whose it is, and what can be told of it. The commit judges again. */
import type { Around, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { wallAt } from '../../lessons/calendar.ts';
import type { Lesson } from '../../lessons/lesson.ts';
import type { ListedLesson } from '../../lessons/roster.ts';
import { hearAfterwards, type Afterwards } from '../../lessons/spoken/afterwards.ts';
import { saysComing, saysYesTo } from '../../lessons/spoken/coming.ts';
import { declines } from '../../lessons/spoken/declined.ts';
import { lessonValues } from '../../lessons/tidings.ts';
import type { CoreContent } from '../core-content.ts';
import { phrase, textOf } from '../values.ts';
import type { Message } from './heard.ts';
import { isAsked, ownIn, upcomingIn } from './in-house.ts';

/** So long after a lesson "it was lovely" is said of it, and so long after "I missed it". Judgement. */
const praisedForMs = 3 * 86_400_000;
const recalledForMs = 14 * 86_400_000;

/** On these a lesson that is over is mostly meant: tea "of yesterday" was drunk there. */
const mistaken: ReadonlySet<Json> = new Set([null, 'safety-general', 'cold-brew-left-out', 'reuse-next-day']);
const talkFlows: ReadonlySet<Json> = new Set(['front', 'lesson', 'answers', 'brew']);

/** Null where nothing is said of a lesson of theirs that is just over. */
export function saidAfterwards({ sentence, heard, flow }: Message, around: Around): Facts | null {
  if (!talkFlows.has(flow) || (heard['kind'] === 'safety' && !mistaken.has(heard['answer'] ?? null))) return null;
  const last = lastLesson(around);
  const act = last && hearAfterwards(sentence);
  // In the midst of a brew "I missed it" is said of that.
  if (!last || !act || (flow === 'brew' && act !== 'which-tea' && act !== 'once-more')) return null;
  const since = around.nowMs - last.endsAt;
  if (since > (act === 'lovely' ? praisedForMs : recalledForMs)) return null;
  return { act, lesson: last.id, family: heard['family'] ?? null };
}

const lastLesson = (around: Around): ListedLesson | undefined =>
  ownIn(around)
    .filter(({ standing, lesson }) => standing === 'seated' && lesson.endsAt <= around.nowMs)
    .toSorted((a, b) => b.lesson.endsAt - a.lesson.endsAt)[0]?.lesson;

/** The booking a "yes" or "no" is said of, when a reminder or an offer asked, and what it answers; null for any other message. */
export function answersTidings({ sentence, heard, flow }: Message, around: Around): Facts | null {
  const isYes = heard['act'] === 'yes' || saysYesTo(sentence);
  const isNo = heard['act'] === 'no' || declines(sentence);
  const own = ownIn(around)
    .filter((one) => isAsked(one, around.nowMs))
    .toSorted((a, b) => a.lesson.startsAt - b.lesson.startsAt);
  // Where lessons are talked of, "yes" may answer anything, unless a seat is kept for them.
  const isOffered = own.some(({ standing }) => standing === 'offered');
  const isHere = flow === 'front' || (flow === 'lesson' && isOffered);
  const asked =
    (isHere && (isYes || isNo)) || (talkFlows.has(flow) && flow !== 'brew' && saysComing(sentence)) ? own : [];
  const one = asked.find(({ standing }) => standing === 'offered') ?? asked[0];
  if (one === undefined) return null;
  const answer = one.standing === 'offered' ? (isNo ? 'decline' : 'accept') : isNo ? 'absent' : 'coming';
  return { booking: one.id, answer };
}

/** So many of the same lesson are shown. */
const mostAgain = 3;

export function afterLesson({ after }: Facts, teas: CoreContent['teas'], around: Around): Outcome {
  const { act, lesson: id, family } = (after ?? {}) as { readonly [name: string]: Json };
  const lesson = ownIn(around).find((own) => own.lesson.id === id)?.lesson;
  if (!lesson) return { wrong: 'no-such-lesson', field: 'lesson', values: {} };
  const again = act === 'missed' || act === 'once-more' ? sameAs(lesson, around).slice(0, mostAgain) : [];
  const brewed = act === 'which-tea' || act === 'lovely' ? teasOf(lesson, family ?? null, teas) : [];
  return {
    gives: {
      told: [
        toldOf(textOf(act) as Afterwards, lesson, { brewed, isAgain: again.length > 0 }),
        ...again.map((one, n) =>
          phrase('lesson-told-line', {
            n: n + 1,
            ...lessonValues(one),
            state: one.free === 0 ? 'full' : 'free',
            seats: 0,
            free: one.free,
            waiting: one.waiting,
          }),
        ),
      ],
      teas: brewed.map((tea) => ({ tea })),
      only: brewed.length === 1 ? (brewed[0] ?? null) : null,
      items: again.map(({ id: one, title, startsAt, zone }) => ({
        id: one,
        title: { ...title },
        starts: wallAt(startsAt, zone),
      })),
    },
  };
}

const sameAs = (lesson: Lesson, around: Around): readonly ListedLesson[] =>
  upcomingIn(around).filter(
    (one) => one.title.en === lesson.title.en || (one.series !== undefined && one.series === lesson.series),
  );

/** "That white tea": those of the family that was named, if there was one. */
function teasOf(lesson: Lesson, family: Json, teas: CoreContent['teas']): readonly string[] {
  const ofFamily = lesson.teas.filter((id) => teas.find((tea) => tea.id === id)?.family === family);
  return ofFamily.length > 0 ? ofFamily : lesson.teas;
}

interface Telling {
  readonly brewed: readonly string[];
  readonly isAgain: boolean;
}

function toldOf(act: Afterwards, lesson: Lesson, { brewed, isAgain }: Telling): Json {
  if (act === 'lovely') return phrase(brewed.length > 0 ? 'lesson-glad-teas' : 'lesson-glad');
  if (act === 'which-tea') {
    const named = brewed.map((tea) => phrase('my-told-tea', { tea }));
    return named.length === 0
      ? phrase('lesson-no-teas')
      : phrase('lesson-told-brewed', { title: { ...lesson.title }, teas: named });
  }
  return phrase(`lesson-${act}${isAgain ? '' : '-not-yet'}`);
}
