/** Which standing answer of the shop fits a question, if one clearly does. */
import type { Language } from '../units.ts';
import { plainText } from '../teas/plain-text.ts';
import { asksApart } from './asks.ts';
import { cueText } from './cues/cues.ts';
import { oneChinese } from './typed/one-chinese.ts';
import { makeQuestionIndex, type Hit } from './answers/question-index.ts';
import type { Danger } from './cues/cue-names.ts';
import { makeSubjectFinder, type SubjectFinder } from './kinds/subjects.ts';
import { termsOf } from './answers/terms.ts';

export interface StandingAnswer {
  readonly id: string;
  readonly kind: 'care' | 'safety' | 'shop';
  /** Words that lead to it whatever else is asked: "warfarin". `*` at the end: any ending; a word leads to one answer only. */
  readonly words: readonly string[];
  /** Turns of phrase, written as cues are, that ask for it whatever tea or vessel is named beside them. */
  readonly surely: readonly string[];
  /** Its words count only where no other answer's are found. */
  readonly givesWay: boolean;
  /** It tells what a word means, to who asks that; its words lead to it then, and to no one else. */
  readonly explains: boolean;
  /** Asked in the midst of brewing, it is heard as brewing. */
  readonly ofBrewing: boolean;
  /** Asked beside a brew that is told, it is said ahead of the plan. */
  readonly besideBrew: boolean;
  /** Complained of as a taste, it is one, and answered all the same: "great for three infusions, then nothing". */
  readonly ofTaste: boolean;
  /** Of safety, and asked like any care of leaf and ware: "it has grown fur". */
  readonly ofCare: boolean;
  /** The danger it is for: where that is told, nothing else is answered. */
  readonly danger: Danger | null;
  /** Questions it answers, as people put them. */
  readonly questions: { readonly [language in Language]: readonly string[] };
  readonly text: { readonly [language in Language]: string };
  readonly sources: readonly string[];
}

export interface FoundAnswer {
  readonly id: string;
  readonly kind: StandingAnswer['kind'];
  /** How much of what was asked the answer's own questions hold, and of the best of those what was asked, 0…1; the smaller. */
  readonly likeness: number;
}

/** What is asked of care and answered by none on care, if it is one of those on safety that are asked so. */
export function makeCareFinder(
  answers: readonly StandingAnswer[],
  answerFor: AnswerFinder,
): (words: string) => FoundAnswer | null {
  const ofCare = new Set(answers.filter((answer) => answer.ofCare).map(({ id }) => id));
  return (words) => {
    const found = answerFor(words, 'care');
    const ofSafety = found === null ? answerFor(words, 'safety') : null;
    return ofSafety !== null && ofCare.has(ofSafety.id) ? ofSafety : found;
  };
}

export interface AnswerFinder {
  /** The answer that fits best, of this kind or of any, or null. */
  (words: string, kind: StandingAnswer['kind'] | null): FoundAnswer | null;
}

/** What no other answer on safety fits gets this one: careful, and no more. */
export const generalSafety = 'safety-general';

/** So alike must they be. A wrong answer on safety does more harm than the general one. Chosen on the examples. */
const leastLikeness = { care: 0.33, shop: 0.55, safety: 0.4 } as const;
/** A word that leads to it is worth so much. Judgement. */
const ofItsWord = 0.55;
/** So alike, it is that answer's question, whatever words lead elsewhere. Judgement. */
const sameQuestion = 0.75;
/** Longer texts hold more than one question. */
const longestQuestion = 300;

/** The age of a tea or of someone grown up: no child is meant. */
const grownUp =
  /\b(?:1[89]|[2-9]\d|\d{3,}|twenty|thirty|forty|fifty|sixty|hundred) (?:years?|yrs?) old\b|(?:[二三四五六七八九]十[一二三四五六七八九几]?|(?<!\d)(?:1[89]|[2-9]\d|\d{3,}))(?:多|几)?[岁年]/g;
const aboutPrefix = 'about-';
/** What a question is about says too little alone. */
const isSubject = (term: string): boolean => term.startsWith(aboutPrefix);

/** "Do the same again": words of any talk, which alone make nothing alike. As `termsOf` has them. */
const littleWords = new Set(
  'again same back next now then ok go get got let put take want need use make give come still just more too much many up out off one two one way all time first last long longer short shorter late something instead suggest matter happen wrong thing done say said tell told right fine bad ready sure think maybe well good second third brew help'.split(
    ' ',
  ),
);
const saysLittle = (term: string): boolean => isSubject(term) || littleWords.has(term);

/** The answer that tells what a word means: the one whose word is longest. */
export function makeExplainer(answers: readonly StandingAnswer[]): (words: string) => string | null {
  const explaining = answers.filter(({ explains }) => explains);
  const told = explaining.flatMap(({ id, words }) =>
    words.map((word) => ({ id, word, finds: makeSubjectFinder({ [id]: [word] }) })),
  );
  const longestFirst = told.toSorted((a, b) => b.word.length - a.word.length);
  return (words) => {
    const text = oneChinese(words);
    const found = longestFirst.filter(({ finds }) => finds(text).length > 0).map(({ id }) => id);
    // How two differ is told by the answer for both.
    if (asksApart.test(text)) return found.find((id, i) => found.indexOf(id) < i) ?? null;
    return found[0] ?? null;
  };
}

/** The answer for a danger. The general one, where a shop took that answer away. */
export function answerToDanger(answers: readonly StandingAnswer[], danger: Danger): string {
  return answers.find((answer) => answer.danger === danger)?.id ?? generalSafety;
}

interface Row {
  readonly answer: string;
  readonly kind: StandingAnswer['kind'];
  readonly terms: readonly string[];
}

export function makeAnswerFinder(all: readonly StandingAnswer[], subjectsOf: SubjectFinder): AnswerFinder {
  const answers = all.filter(({ explains }) => !explains);
  const termsIn = (words: string): string[] => {
    const text = oneChinese(words.replace(grownUp, ' '));
    return [...termsOf(text), ...subjectsOf(text).map((subject) => aboutPrefix + subject)];
  };
  const rows = rowsOf(answers, termsIn);
  const answerOf = (hit: Hit): string => rows[hit.at]?.answer ?? '';
  const search = makeQuestionIndex(rows.map(({ terms }) => terms));
  const weightOf = rarity(rows);
  const namedBy = makeNamedFinder(answers);

  const likest = (asked: readonly string[], fits: (row: Row) => boolean): FoundAnswer | null => {
    const hits = search(asked, (at) => {
      const row = rows[at];
      return row !== undefined && fits(row);
    });
    const best = favourite(hits, answerOf);
    const row = best && rows[best.hit.at];
    if (!row || best.hit.held.every(isSubject)) return null;
    const likeness = Math.min(
      shareOf(best.terms, asked, weightOf),
      shareOf(new Set(best.hit.held), row.terms, weightOf),
    );
    if (likeness < sameQuestion && best.hit.held.every(saysLittle)) return null;
    return { id: row.answer, kind: row.kind, likeness };
  };

  return (words, kind) => {
    const question = words.slice(0, longestQuestion).replace(grownUp, ' ');
    const asked = termsIn(question);
    if (asked.length === 0) return null;
    const found = likest(asked, (row) => kind === null || row.kind === kind);
    if (kind === null || (found && found.likeness >= sameQuestion)) return enough(found);
    const named = namedBy(question, kind);
    const [first] = named;
    if (first === undefined) return enough(found);
    if (named.length === 1) return { id: first, kind, likeness: ofItsWord };
    return likest(asked, (row) => named.includes(row.answer)) ?? { id: first, kind, likeness: ofItsWord };
  };
}

const enough = (found: FoundAnswer | null): FoundAnswer | null =>
  found && found.likeness >= leastLikeness[found.kind] ? found : null;

function rowsOf(answers: readonly StandingAnswer[], termsIn: (words: string) => string[]): readonly Row[] {
  return answers.flatMap(({ id, kind, questions }) =>
    Object.values(questions)
      .flat()
      .map((text) => ({ answer: id, kind, terms: termsIn(cueText(plainText(text).plain)) })),
  );
}

/** The answers of a kind that a word of the question leads to; the general ones only where no other is. */
function makeNamedFinder(
  answers: readonly StandingAnswer[],
): (words: string, kind: StandingAnswer['kind']) => readonly string[] {
  const leadsTo = makeSubjectFinder(Object.fromEntries(answers.map((answer) => [answer.id, answer.words])));
  const known = new Map(answers.map((answer) => [answer.id, answer]));
  return (words, kind) => {
    const named = leadsTo(oneChinese(words)).filter((id) => known.get(id)?.kind === kind);
    const special = named.filter((id) => known.get(id)?.givesWay === false);
    return special.length > 0 ? special : named;
  };
}

/** How much of the weight of all these terms is in those held. */
function shareOf(held: ReadonlySet<string>, all: readonly string[], weightOf: (term: string) => number): number {
  const sum = (terms: readonly string[]): number => terms.reduce((total, term) => total + weightOf(term), 0);
  return sum(all.filter((term) => held.has(term))) / sum(all);
}

/** As if a word that no answer's questions hold were in so many: often it is only talk. */
const strangerIn = 6;

/** Words that many answers' questions hold say little. */
function rarity(rows: readonly Row[]): (term: string) => number {
  const holders = new Map<string, Set<string>>();
  for (const { answer, terms } of rows)
    for (const term of terms) holders.set(term, (holders.get(term) ?? new Set()).add(answer));
  const all = new Set(rows.map(({ answer }) => answer)).size;
  return (term) => Math.log(1 + all / (holders.get(term)?.size ?? strangerIn)) - Math.LN2;
}

interface Favourite {
  readonly hit: Hit;
  /** What of the question any of the answer's questions holds. */
  readonly terms: ReadonlySet<string>;
}

/** The best hit of the answer whose questions, taken together, hold most of what was asked. */
function favourite(hits: readonly Hit[], answerOf: (hit: Hit) => string): Favourite | null {
  const heldBy = new Map<string, Map<string, number>>();
  for (const hit of hits) {
    const answer = answerOf(hit);
    const terms = heldBy.get(answer) ?? new Map<string, number>();
    heldBy.set(answer, terms);
    const share = hit.score / hit.held.length;
    for (const term of hit.asked) terms.set(term, Math.max(terms.get(term) ?? 0, share));
  }
  const weights = new Map(
    [...heldBy].map(([answer, terms]) => [answer, [...terms.values()].reduce((a, b) => a + b, 0)]),
  );
  const weight = (hit: Hit): number => hit.score + (weights.get(answerOf(hit)) ?? 0);
  const best = hits.reduce<Hit | null>((one, hit) => (one === null || weight(hit) > weight(one) ? hit : one), null);
  return best && { hit: best, terms: new Set(heldBy.get(answerOf(best))?.keys()) };
}
