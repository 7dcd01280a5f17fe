/** Where a message may be cut in two, and what is asked in a part of it. It does not know whether it should be cut. */
import { plainText } from '../teas/plain-text.ts';
import { wordsOfPlain, type TalkCues } from './talk-cues.ts';

interface Cut {
  /** Where the one ends and the other begins. */
  readonly end: number;
  readonly next: number;
  /** The end of a sentence is plainer than "and", and that than a comma. */
  readonly plainness: number;
}

export interface Part {
  /** As it was written. */
  readonly text: string;
  /** What is asked, as talkWords has it: without "and", "please tell me" and the like ahead of it. */
  readonly words: string;
}

const mostCuts = 8;
/** Who writes Chinese without marks parts what they say by a space. */
const anyMark = /[?!。;\n.,、]|[\p{Script=Han}\d] +[\p{Script=Han}\d]/u;
const marks =
  /[?!。;\n]+[\s"”]*|\.\s+|[,、]\s*|(?<=\p{Script=Han}) +(?=[\p{Script=Han}\d])|(?<=\d) +(?=\p{Script=Han})(?!毫升|公?克|度|秒|分|小时|个|位|人|泡|杯|包|天|年|月|日|点)/gu;

/** The halves of each cut that are both asked, in the order in which they are to be tried; a cut is made when it is come to. */
export function* partsOf(
  text: string,
  cues: TalkCues,
  isAsked: (words: string) => boolean,
): Generator<readonly [Part, Part]> {
  const { shown, plain } = plainText(text);
  const written = shown.length === text.length ? text : shown;
  for (const { end, next } of cutsIn(plain, cues)) {
    const ahead = plain.slice(0, end);
    const first = wordsOfPlain(ahead.slice(cues.ahead('leads-in', ahead)));
    if (!isAsked(first)) continue;
    const from = next + cues.ahead('leads-in', plain.slice(next));
    const second = wordsOfPlain(plain.slice(from));
    if (!isAsked(second)) continue;
    yield [
      { text: written.slice(0, end).replace(/[\s,，、]+$/, ''), words: first },
      { text: written.slice(from).trim(), words: second },
    ];
  }
}

function cutsIn(plain: string, cues: TalkCues): readonly Cut[] {
  const joins = cues.spans('joins', plain).map(({ start }) => start);
  if (joins.length === 0 && !anyMark.test(plain)) return [];
  const atMarks = [...plain.matchAll(marks)].map(({ index, 0: mark }) => {
    const next = index + mark.length;
    return { end: mark.startsWith('?') ? index + 1 : index, next, plainness: plainness(mark, joins.includes(next)) };
  });
  const atJoins = joins.flatMap((at) =>
    atMarks.some(({ next }) => next === at) ? [] : [{ end: at, next: at, plainness: 1 }],
  );
  return [...atMarks, ...atJoins]
    .toSorted((a, b) => a.end - b.end)
    .slice(0, mostCuts)
    .toSorted((a, b) => b.plainness - a.plainness);
}

const plainness = (mark: string, isJoined: boolean): number => (!/^[,、 ]/.test(mark) ? 2 : isJoined ? 1 : 0);
