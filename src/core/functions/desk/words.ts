/** Finds the words of a shopkeeper's order by patterns with names. */

type Groups = { readonly [name: string]: string | undefined };

export function groupsIn(text: string, patterns: readonly RegExp[]): Groups | undefined {
  return patterns.map((pattern) => pattern.exec(text)?.groups).find((groups) => groups !== undefined);
}

/** A sentence begins with a capital on most telephones; a name is one that has it elsewhere. */
export const begunSmall = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
