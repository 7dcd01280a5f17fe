/** The language of a text, and which Han script. A text that shows neither keeps the language the person had. */
import type { Language } from '../../units.ts';
import { scriptOf } from '../../teas/han-fold.ts';

export interface LanguageRead {
  readonly language: Language;
  /** False where the text fits any language ("300ml", "ok"). */
  readonly sure: boolean;
}

const cantonese = /[嘅唔咗冇佢喺嚟啲咁嗰乜嘢㗎喎啩哋諗揸攞俾畀邊]|幾多|點樣|點沖|點泡|點解|飲|仲有|係咪/;
/** Shared characters that are spelt so in simplified only. */
const spelt = /(?<!公)里[面头边]|[然之以最今]后|后[来面天]/u;
/** Turns of speech heard where simplified characters are written. */
const mainland =
  /咋|啥|呗|咱|甭|哈喽|哈啰|在不|包邮|亲[,，。!！~～ ]|亲$|^亲|好哒|好嘞|好咧|得劲|整点|靠谱|挺好|快递|微信|下单|行不行|成不成|沏|俩|仨|周[一二三四五六日末]|老板|一晚上|一会儿|不太行|多少度|(?<=.)不[^\p{L}\p{N}]*$|行吗|咋|搁|好使|整[一俩]|瓶子|茶缸|大缸|好多?点|点儿|儿|不咋|今儿|明儿|昨儿|哪儿|甭|忒|贼|味儿|遭不住|得很|哪家|要得|咋个|相因|巴适|拉胯/u;
const englishWords =
  /\b(?:the|a|an|i|my|me|is|are|do|does|how|what|which|when|where|why|can|should|in|with|for|to|of|and|it|this|that|have|got|use|please|much|long|you|your|not|no|on|at|or)\b/g;
const chineseWords = /[的嘅我你有点點怎么麼多少几幾吗嗎呢泡沖冲用唔不是係可以想要在喺同和跟了咗这這那]/g;

/** `shown` is the text with its own Han script (plainText). */
export function readLanguage(shown: string, hint: Language | null): LanguageRead {
  const lower = shown.toLowerCase();
  const han = (lower.match(/\p{Script=Han}/gu) ?? []).length;
  const latin = (lower.match(/[a-z]{2,}/g) ?? []).filter((word) => !/^(?:ml|cc|oz|ok|hi)$/.test(word)).length;
  if (han === 0)
    return {
      language: latin > 0 ? 'en' : (hint ?? 'en'),
      sure: latin > 1,
    };
  const english = (lower.match(englishWords) ?? []).length;
  const chinese = (lower.match(chineseWords) ?? []).length;
  const mostlyEnglish = english > chinese || (english === chinese && latin > han);
  return mostlyEnglish && latin > 0 ? { language: 'en', sure: english > 1 } : readScript(shown, hint);
}

function readScript(shown: string, hint: Language | null): LanguageRead {
  const known = hint === null || hint === 'en' ? null : hint;
  const letters = { traditional: 0, simplified: spelt.test(shown) ? 1 : 0 };
  for (const character of shown) {
    const script = scriptOf(character);
    if (script === 'traditional' || script === 'simplified') letters[script]++;
  }
  // A turn of speech alone, 瓶子 or 挺好, tells nothing of someone whose script is known.
  const isTold = letters.traditional !== letters.simplified;
  if (!isTold && known !== null) return { language: known, sure: false };
  const traditional = letters.traditional + (cantonese.test(shown) ? 1 : 0);
  const simplified = letters.simplified + (mainland.test(shown) ? 1 : 0);
  if (traditional !== simplified) return { language: traditional > simplified ? 'zh-Hant' : 'zh-Hans', sure: true };
  return known === null ? { language: 'zh-Hant', sure: true } : { language: known, sure: false };
}
