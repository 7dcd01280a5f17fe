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

/** Full-width signs and figures become plain ones, lines become one. */
export function plain(sentence: string): string {
  return sentence.normalize('NFKC').replaceAll(mark, ' ').replace(/\s+/gu, ' ').trim();
}
