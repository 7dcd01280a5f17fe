/** A text as the terms by which it is compared with others. */

const stopWords = new Set(
  'the a an i my me is are do does did how what which when where can could should would will to of in on for with and or it its this that be have has you your at if so as not no any there from by we our im ive'.split(
    ' ',
  ),
);

/** Words of Latin script, less the small ones; single Han characters and pairs, so that parts of a word are found. */
export function termsOf(text: string): string[] {
  const terms = (text.match(/[a-z0-9]{2,}/g) ?? []).filter((word) => !stopWords.has(word)).map(stem);
  for (const run of text.match(/\p{Script=Han}+/gu) ?? []) {
    for (let i = 0; i + 1 < run.length; i++) terms.push(run.slice(i, i + 2));
    if (run.length === 1) terms.push(run);
  }
  return [...new Set(terms)];
}

function stem(word: string): string {
  return word.length > 4 ? word.replace(/(?:ing|ies|es|s|ed)$/, '') : word;
}
