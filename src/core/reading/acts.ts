/** What a person does to the conversation rather than says about tea: back, yes, "actually", another language. */
import type { Language } from '../units.ts';
import type { Cues } from './cues/cues.ts';
import { hanNumbers } from './amounts/han-numbers.ts';
import type { CueName } from './cues/cue-names.ts';

export const acts = [
  'back',
  'start-over',
  'ask-shop',
  'yes',
  'no',
  'thanks',
  'goodbye',
  'correct',
  'follow-up',
  'language',
  'why',
  'forget-me',
  'my-data',
  'other-device',
  'shop-desk',
  'about',
] as const;
export type Act = (typeof acts)[number];

/** These are meant wherever they stand; the others only when they are all that is said, or open a short text. */
const anywhere = ['forget-me', 'my-data', 'other-device', 'ask-shop', 'start-over'] as const satisfies readonly (Act &
  CueName)[];
const wholly = ['back', 'yes', 'no', 'thanks', 'why', 'shop-desk'] as const satisfies readonly (Act & CueName)[];
const shortText = 60;

const opensWithNo =
  /^(?:no|nope|nah)(?:[,.!]\s*| (?=(?:the|an?|it|its|i|my|not|that|make|use|in|only|just|\d)\b))\S|^(?:唔系|不是|不系|不对|唔啱|错)[ ,，。.!！]+\S/;
const notThisButThat =
  /\bnot (?!sure|certain|really|yet)\S+(?: \S+)?[,;] ?\S|\S+[,;]? not \S+$|(?:不是|唔系)\S+?[,，、 ]?(?:是|系)/;
const goesOn =
  /^(?:and|what about|how about|what if|then|next|or |same |咁|那|噉|如果|换|转|第[一二两三四五六七八九十\d])|instead ?\??$|呢[?？]?$/;

export const opensWithWhy = /^(?:(?:and|but|so) )?why\b|^(?:点解|为什么|为何|为啥|干嘛)/;

/** "No, don't pass it on." */
const asksNobody =
  /\b(?:dont|don't|do not|no need to|neednt|needn't|not|wont|won't)(?: \w+){0,2} (?:pass|send|forward|ask|message|contact|tell|call|talk|speak)\b|(?:不用|不必|不要|先别|别|先不|唔使|唔好)(?:再|帮我|替我|去|了)*(?:转|问|找|联络|联系|麻烦)/;

/** "Whats your name are you a real person": asked of us, and no wish for one. */
const asksWho =
  /\b(?:are|r) (?:you|u|ya) (?:an? |even |some |like |actually |the )*(?:real |actual )*(?:person|human|human being|bot|robot|chatbot|machine|computer|ai)\b(?! (?:who|that|in charge))|\b(?:whats|what is) (?:your|ur) name\b|\bdo (?:you|u) have a name\b/;

export function readAct(text: string, cues: Cues, wants: Language | null): Act | null {
  if (wants !== null) return 'language';
  // "Am I talking to a person?" is no wish for one yet.
  if (cues.is('about', text) || (text.length <= 2 * shortText && asksWho.test(text))) return 'about';
  const act = anywhere.find((cue) => text.length <= 2 * shortText && cues.has(cue, text));
  if (act) return act === 'ask-shop' && asksNobody.test(text) ? 'no' : act;
  // Long texts stop here: none of what follows is looked for in them.
  if (text.length > shortText) return cues.has('correct', text.slice(0, shortText)) ? 'correct' : null;
  const whole = wholly.find((cue) => cues.is(cue, text));
  if (whole) return whole;
  if (opensWithNo.test(text) || cues.has('correct', text) || notThisButThat.test(text)) return 'correct';
  if (cues.is('follow-up', text) || goesOn.test(text)) return 'follow-up';
  return text.length <= 24 && opensWithWhy.test(text) ? 'why' : null;
}

/** What a greeting does, when it says no more than that: thanks and farewells come in many words. */
export function actOfGreeting(text: string, cues: Cues): Act | null {
  return (['thanks', 'goodbye'] as const).find((cue) => cues.has(cue, text)) ?? null;
}

/** The language a person asks to be answered in. "Chinese" alone keeps the script they write. */
export function readWantedLanguage(text: string, cues: Cues, written: Language): Language | null {
  if (text.length > shortText) return null;
  const short = text.length <= 26;
  if (short && cues.has('want-zh-Hant', text)) return 'zh-Hant';
  if (short && cues.has('want-zh-Hans', text)) return 'zh-Hans';
  if (
    cues.is('want-en', text) ||
    /\b(?<!\b(?:is|are|was|will|does) .{0,24})(?:(?:in|to|about|use|try|speak) english(?! (?:breakfast|tea|style|rose|way)))\b/.test(
      text,
    ) ||
    (short && /(?:用|讲|说|转|换|改)(?:成|做|回|为)?英/.test(text))
  )
    return 'en';
  const chinese =
    cues.is('want-zh', text) ||
    /\b(?:in chinese(?! (?:teas?|medicine|shops?|stores?|culture|style|cups?|pots?|green|black|oolong|white)\b)|speak chinese|switch to chinese)\b/.test(
      text,
    ) ||
    (short && /(?:用|讲|说|转|改|换)(?:成|做|回|为)?(?:中文|普通话|国语)/.test(text));
  return chinese ? (written === 'en' ? 'zh-Hant' : written) : null;
}

export const ordinals: readonly string[] =
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(
    ' ',
  );
const englishOrdinal = new RegExp(
  `(?<!\\b(?:in|milk|water|tea|leaf|leaves|warm|that|it|them|this|goes|comes|at) )\\b(${ordinals.join('|')}|(\\d{1,2})(?:st|nd|rd|th))(?: (?:one|infusion|steep|steeping|brew|round|cup|pot(?:ful)?(?<!\\b(?:an?|my|our|your|his|her|their|new) \\w+ pot(?:ful)?)|lot(?! of tea)(?: of water)?))?\\b(?! (?:flush|time|days?|week|month|year|person|guest|pot|teapot|tea pot|gaiwan|mug|bag|half|of|floor|hand|thought|opinion|name|thing)\\b)`,
);

/** "and the second?", "第三泡呢": which infusion. */
export function readInfusion(text: string): number | null {
  const english = englishOrdinal.exec(text);
  if (english) return english[2] ? Number(english[2]) : ordinals.indexOf(english[1] ?? '') + 1;
  const han = /第([一二两三四五六七八九]?十?[一二两三四五六七八九]?|\d{1,2})(?:泡|冲|道|次|杯)/.exec(text)?.[1];
  if (!han) return null;
  return /\d/.test(han) ? Number(han) : (hanNumbers(han)[0]?.value ?? null);
}
