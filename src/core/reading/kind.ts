/** What kind of question a text is, from its cues and from what it names. Safety comes before all that is about tea. */
import type { Cues } from './cues.ts';
import { isGreeting, isOrder } from './not-about-tea.ts';
import type { CueName } from './reading-words.ts';

export const kinds = ['brew', 'taste', 'lesson', 'care', 'shop', 'safety', 'offtopic', 'greeting'] as const;
export type Kind = (typeof kinds)[number];
export const tastes = ['bitter', 'weak', 'sour', 'flat', 'lost-scent', 'right'] as const;
export type Taste = (typeof tastes)[number];

export interface KindScene {
  /** cueText of what was written. */
  readonly text: string;
  readonly cues: Cues;
  /** A tea, a family, or a tea we don't have. */
  readonly namesTea: boolean;
  readonly namesVessel: boolean;
  readonly hasVolume: boolean;
  /** Leaf, temperature, elevation, style, guests. */
  readonly hasOther: boolean;
  /** Something was asked just now. */
  readonly asked: boolean;
}

/** The scene and what the rules below ask of it again and again. */
interface Said extends KindScene {
  readonly says: (cue: CueName) => boolean;
  readonly names: boolean;
  readonly brews: boolean;
  readonly taste: Taste | null;
  readonly complains: boolean;
  /** A tea, and something about how to brew it. */
  readonly brewFacts: boolean;
}

/** In this order; the first that holds tells the kind, and none means off topic. */
const rules: readonly (readonly [Kind, (said: Said) => boolean])[] = [
  ['greeting', isGreeting],
  ['offtopic', ({ text }) => isOrder(text)],
  [
    'offtopic',
    (s) =>
      s.says('offtopic') &&
      !s.namesTea &&
      !s.says('lesson') &&
      !(s.names && (s.brews || s.namesVessel || s.says('safety') || s.says('overnight'))),
  ],
  ['safety', (s) => s.says('safety') || (s.says('overnight') && (!s.says('fridge') || s.says('safety-weak')))],
  ['lesson', (s) => s.says('lesson')],
  ['shop', (s) => s.says('shop') && !(s.complains && !s.says('buying')) && !(s.brewFacts && asksHow(s))],
  ['care', (s) => s.says('care-strong') && !(s.complains && !s.names) && (!chills(s) || s.says('keeping'))],
  ['taste', (s) => s.complains],
  ['safety', (s) => s.says('safety-weak')],
  ['care', (s) => s.says('care-weak') && !(s.brewFacts && (s.hasVolume || s.says('how-much')))],
  ['shop', (s) => s.says('shop-weak') && !s.namesVessel && !s.hasVolume && !s.says('how-much')],
  ['brew', isBrew],
];

export interface KindRead {
  readonly kind: Kind;
  readonly taste: Taste | null;
  /** Whether a cue told it; otherwise it is only what is named, or nothing at all. */
  readonly told: boolean;
}

export function readKind(scene: KindScene): KindRead {
  const says = (cue: CueName): boolean => scene.cues.has(cue, scene.text);
  const brews = says('brew');
  const taste = readTaste(says);
  const said: Said = {
    ...scene,
    says,
    brews,
    taste,
    names: scene.namesTea || says('has-tea'),
    complains: taste !== null && !isWish(scene.text, says, brews),
    brewFacts: scene.namesTea && (scene.namesVessel || scene.hasVolume || brews),
  };
  const kind = rules.find(([, holds]) => holds(said))?.[0];
  const told = kind !== undefined && kind !== 'brew';
  return { kind: kind ?? 'offtopic', taste: kind === 'taste' ? taste : null, told };
}

function readTaste(says: Said['says']): Taste | null {
  if (says('lost-scent')) return 'lost-scent';
  const wrong = (['bitter', 'weak', 'sour', 'flat'] as const).find(says);
  if (wrong) return wrong;
  return says('right') && says('complaint') ? 'right' : null;
}

/** "not too bitter, please" is a wish for the brew, not a complaint. */
function isWish(text: string, says: Said['says'], brews: boolean): boolean {
  const complains = /\b(?:came out|turned out|tastes?|tasted|is so|was|too bitter|still)\b/.test(text);
  const asksWhy = /(?:泡|冲)(?:出来|出嚟)|点解|为什么|怎么回事|怎么办|点算/.test(text);
  return says('prefer') && (brews || !complains) && !asksWhy;
}

/** A shop word such as "gift" or "bought" in a sentence that asks how to brew. */
function asksHow({ says, hasVolume, namesVessel }: Said): boolean {
  return says('asks-brewing') && (namesVessel || hasVolume || says('having')) && !says('buying');
}

/** The refrigerator is there to brew in, not to keep leaf in. */
function chills({ says, brews, namesVessel }: Said): boolean {
  return says('cold') || (says('fridge') && (brews || namesVessel));
}

function isBrew(said: Said): boolean {
  const { text, says, namesTea, namesVessel, hasVolume, hasOther, asked, names, brews } = said;
  const words = wordCount(text);
  if (asked && (namesTea || namesVessel || hasVolume || hasOther || text.length <= 30)) return true;
  if (namesTea) return brews || namesVessel || hasVolume || hasOther || words <= 7 || says('having');
  if (namesVessel && (hasVolume || brews || names)) return true;
  if (namesVessel) return words <= 4;
  if (hasVolume) return words <= 7 || names || brews;
  if (names && (brews || words <= 5 || hasOther)) return true;
  return (hasOther && words <= 8) || ((brews || says('strong') || says('light')) && words <= 9);
}

/** Latin words, and two Han characters for a word. */
export function wordCount(text: string): number {
  const latin = (text.match(/[a-z]+/g) ?? []).length;
  const han = (text.match(/\p{Script=Han}/gu) ?? []).length;
  return latin + Math.ceil(han / 2);
}
