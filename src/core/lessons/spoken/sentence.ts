/** A sentence as lessons hear it: its words, and the turns of phrase it holds. How each of these sounds is data (data/reading), not known here. */

/** What students say: lesson-cues.yaml. */
export const lessonCueNames = [
  'until-when',
  'how-waits',
  'asks-level',
  'mail',
  'shop-says',
  'reminders-back',
  'unheard',
  'late',
  'unremind',
  'remind-on',
  'moves-own',
  'next-time',
  'leave',
  'remind',
  'own',
  'enrol',
  'list',
  'next-lesson',
  'asks-which',
  'asks-for-lessons',
  'table',
  'detail',
  'room',
  'bare-detail',
  'coming',
  'takes-seat',
  'declines',
  'wants-else',
  'which-tea',
  'missed',
  'once-more',
  'lovely',
  'advanced',
  'intermediate',
  'beginner',
  'says-level',
  'easiest',
  'hardest',
  'morning',
  'afternoon',
  'evening',
  'workdays',
  'swap',
  'puts-off',
  'sooner',
  'week-after',
  'not-coming',
  'asking',
  'of-lessons',
  'topic',
  'to-buy',
  'brew-talk',
  'brews-own',
  'beside-day',
  'only-so-many',
  'only-me',
  'level-alone',
  'free',
  'place-alone',
  'served',
] as const;

/** What a shopkeeper says: desk-cues.yaml. */
export const deskCueNames = [
  'desk-correct',
  'desk-call-off',
  'desk-call-off-told',
  'desk-call-off-days',
  'desk-closed',
  'desk-stops',
  'desk-all-lessons',
  'desk-this-series',
  'desk-resume',
  'desk-undo',
  'desk-off-listed',
  'desk-attended',
  'desk-asked',
  'desk-code',
  'desk-phone',
  'desk-missing',
  'desk-came',
  'desk-find-guest',
  'desk-caller',
  'desk-guest-change',
  'desk-reseat',
  'desk-transfer',
  'desk-write-one',
  'desk-write-named',
  'desk-guest-anew',
  'desk-reverse',
  'desk-here',
  'desk-away',
  'desk-release',
  'desk-questions',
  'desk-first-question',
  'desk-undelivered',
  'desk-note',
  'desk-stock',
  'desk-add',
  'desk-guest-mail',
  'desk-guest-seats',
  'desk-repeat',
  'desk-alter',
  'desk-show',
  'desk-list',
  'desk-remind',
  'desk-seats',
  'desk-guest',
  'desk-write',
  'desk-write-all',
  'desk-move',
  'desk-cancel',
  'desk-people',
  'desk-of-theirs',
  'desk-today',
  'desk-near-day',
] as const;

export type DeskCue = (typeof deskCueNames)[number];
export type LessonCue = (typeof lessonCueNames)[number] | DeskCue;

export interface Sentence {
  readonly text: string;
  readonly says: (cue: LessonCue) => boolean;
  /** What is left of it when all that says this is taken out. */
  readonly without: (cue: LessonCue) => Sentence;
  /** Some of its words, or others, heard in the same way. */
  readonly part: Listen;
}

export type Listen = (text: string) => Sentence;

/** The first that is said. */
export const firstSaid = <Cue extends LessonCue>(sentence: Sentence, cues: readonly Cue[]): Cue | undefined =>
  cues.find((cue) => sentence.says(cue));
