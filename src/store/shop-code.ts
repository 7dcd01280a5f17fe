/** The one-time code that makes a shopkeeper, as it is printed and as it is typed. What it is worth is the store's affair. */

/** No vowels, so that no word is a code; nothing that looks like another. 28 letters, eight of them: 38 bits. */
const letters = 'BCDFGHJKLMNPQRSTVWXZ23456789';
const length = 8;
const ofOurLetters = new RegExp(`^[${letters}]{${length}}$`);

/** Takes a source of random bytes; those that would favour some letters are passed over. */
export function makeShopCode(randomBytes: (count: number) => Uint8Array): string {
  const fair = 256 - (256 % letters.length);
  let code = '';
  while (code.length < length) {
    const [byte = fair] = randomBytes(1);
    if (byte < fair) code += letters[byte % letters.length];
  }
  // All digits could be anybody's telephone number.
  return codeIn(code) === null ? makeShopCode(randomBytes) : `${code.slice(0, 4)}-${code.slice(4)}`;
}

/** The code a text is, or null: in two groups of four, with at least one letter. */
export function codeIn(text: string): string | null {
  const [, first = '', second = ''] =
    /^\s*([A-Z0-9]{4})[-– ]?([A-Z0-9]{4})\s*$/.exec(text.slice(0, 40).toUpperCase()) ?? [];
  const code = first + second;
  return ofOurLetters.test(code) && /[A-Z]/.test(code) ? code : null;
}
