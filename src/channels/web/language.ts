/** Which of our languages a browser asks for. */
import { languageOfTag } from '../../core/language-tag.ts';
import { isPageLanguage, type PageLanguage } from './page/wire.ts';

/** A header longer than this is not read further. */
const longestHeader = 200;

/** The first tag the device wrote, for those who know more languages than we do. */
export function deviceTag(acceptLanguage: string | undefined): string | null {
  return tagsOf(acceptLanguage)[0] ?? null;
}

/** The best of ours by RFC 9110 §12.5.4 weights; English when none fits. */
export function pageLanguageOf(chosen: string | null, acceptLanguage: string | undefined): PageLanguage {
  if (isPageLanguage(chosen)) return chosen;
  for (const tag of tagsOf(acceptLanguage)) {
    const ours = languageOfTag(tag);
    if (ours !== null) return ours;
  }
  return 'en';
}

function tagsOf(header: string | undefined): readonly string[] {
  return (header ?? '')
    .slice(0, longestHeader)
    .split(',')
    .map((part) => {
      const [tag = '', ...parameters] = part.split(';').map((piece) => piece.trim());
      const weight = parameters.find((piece) => piece.startsWith('q='))?.slice(2);
      return { tag, weight: weight === undefined ? 1 : Number(weight) };
    })
    .filter(({ tag, weight }) => /^[A-Za-z]{2,3}(-[A-Za-z0-9]{1,8})*$/.test(tag) && weight > 0)
    .toSorted((a, b) => b.weight - a.weight)
    .map(({ tag }) => tag);
}
