/** Takes what has been understood out of a sentence, leaving a mark, so that what remains can be read for the rest. */

/** Stands where something was taken out. Nobody types it: the sentence is cleared of it first. */
export const mark = '\u241F';

export interface Cut {
  readonly groups: { readonly [name: string]: string | undefined };
  /** The words as they stood there. */
  readonly words: string;
  readonly rest: string;
}

export function cut(text: string, pattern: RegExp): Cut | undefined {
  const match = pattern.exec(text);
  return match === null ? undefined : cutOut(text, match);
}

export function cutOut(text: string, match: RegExpExecArray): Cut {
  const rest = `${text.slice(0, match.index)}${mark}${text.slice(match.index + match[0].length)}`;
  return { groups: match.groups ?? {}, words: match[0].trim(), rest };
}

/** "12 號", 6 點: a figure stands apart from its unit where people type so. */
const beforeUnit = /(?<=[年月到至]) (?=\d)|(?<=\d) (?=[年月日號号點点時时分個个位名人元塊块週周])/gu;

/** Full-width signs and figures become plain ones, lines become one. */
export function plain(sentence: string): string {
  return sentence
    .normalize('NFKC')
    .replaceAll(mark, ' ')
    .replace(/\s+/gu, ' ')
    .replace(beforeUnit, '')
    .replace(/[俩倆][個个]?/gu, '两个')
    .replace(/仨[個个]?/gu, '三个')
    .trim();
}
