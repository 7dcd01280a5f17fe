/** Which of our languages a device's language tag stands for (BCP 47: script first, then region, then what is usual there). */
import type { Language } from '../core/units.ts';

export function languageOfDevice(tag: string | null): Language {
  const [language = '', ...rest] = (tag ?? '').toLowerCase().split(/[-_]/);
  if (language === 'yue') return rest.includes('hans') ? 'zh-Hans' : 'zh-Hant';
  if (language !== 'zh') return 'en';
  if (rest.includes('hans')) return 'zh-Hans';
  return rest.some((part) => ['hant', 'tw', 'hk', 'mo'].includes(part)) ? 'zh-Hant' : 'zh-Hans';
}
