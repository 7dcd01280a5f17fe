/** How high a person lives, told by the name of the place (data/reading/places.yaml). Takes nothing for a place where nobody says to be. */
import { plainText } from '../../teas/plain-text.ts';
import type { Measure } from './measures.ts';
import type { PlaceWords } from '../reading-words.ts';

/** At most one: who lives in two places says which. */
export type PlaceFinder = (plain: string) => readonly Measure[];

export function makePlaceFinder({ living, places }: PlaceWords): PlaceFinder {
  const heights = new Map(places.flatMap(({ names, elevationM }) => names.map((name) => [plainOf(name), elevationM])));
  const names = [...heights.keys()].toSorted((a, b) => b.length - a.length);
  const [latin, han] = [false, true].map((inHan) => {
    const those = (texts: readonly string[]): string =>
      texts.filter((text) => /\p{Script=Han}/u.test(text) === inHan).join('|');
    return `(?:${those(living.map(plainOf))})`.concat(inHan ? '' : ' ', `(${those(names)})`);
  });
  const told = new RegExp(`(?<![a-z])${latin}(?![a-z])|${han}`);
  return (plain) => {
    const found = told.exec(plain);
    const name = found?.[1] ?? found?.[2];
    const value = heights.get(name ?? '');
    if (!found || name === undefined || value === undefined) return [];
    const end = found.index + found[0].length;
    return [{ dimension: 'length', value, start: end - name.length, end, digits: false }];
  };
}

const plainOf = (text: string): string => plainText(text).plain.replace(/\((?!\?)/g, '(?:');
