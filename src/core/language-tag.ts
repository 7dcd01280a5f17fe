/** Which of our languages a tag stands for: BCP 47, script first, then region, then what is usual there (CLDR, from memory). */
import { languages, type Language } from './units.ts';

/** "zh-TW", "zh_TW" or "en-GB"; null for a language that is none of ours. */
export function languageOfTag(tag: string): Language | null {
  const [language = '', ...rest] = tag.toLowerCase().split(/[-_]/);
  if (language === 'zh') return scriptOf(rest, 'zh-Hans');
  // Cantonese is written in traditional characters nearly everywhere it is written.
  if (language === 'yue') return scriptOf(rest, 'zh-Hant');
  return languages.find((ours) => ours === language) ?? null;
}

function scriptOf(rest: readonly string[], usual: 'zh-Hant' | 'zh-Hans'): Language {
  if (rest.includes('hans')) return 'zh-Hans';
  if (['hant', 'tw', 'hk', 'mo'].some((part) => rest.includes(part))) return 'zh-Hant';
  return rest.includes('cn') ? 'zh-Hans' : usual;
}

/** What a device is spoken to in; English where it speaks none of ours. */
export const languageOfDevice = (tag: string | null): Language => languageOfTag(tag ?? '') ?? 'en';
