/** Which cautions go with a brew. Their words, and the sources of their figures, are caution-* in flows/words. */
import type { Celsius } from '../units.ts';
import type { Recipe } from './recipe.ts';

/** EFSA Journal 2015;13(5):4102: up to 200 mg at once is no concern for healthy adults. */
const caffeineAtOnceMg = 200;
/** A leaf of the same name holds from about 0.7 to 1.4 times the usual (Goto 1996: 2–4 % in green teas). */
export const caffeineSpread = { least: 0.7, most: 1.4 } as const;
/** IARC Monographs 116 (2016): drinks above 65 °C. */
const veryHotC = 65;

export interface CautionFacts {
  readonly caffeineMg: number;
  readonly cupC: Celsius;
  /** Not its family alone. */
  readonly isTeaKnown: boolean;
}

/** The weightiest first. */
export function cautionsFor(recipe: Recipe, facts: CautionFacts): readonly string[] {
  const { family, form } = recipe.leaf.profile;
  const hot = recipe.waterC >= 45;
  // Of a herb known by its family alone nobody can say what its kin is.
  const someHerb = family === 'herbal' && !facts.isTeaKnown;
  const flowers = !someHerb && (form === 'flower' || family === 'scented');
  const rules: readonly (readonly [string, boolean])[] = [
    ['keep-cold', recipe.style === 'cold'],
    ['herb-allergy', someHerb],
    ['flower-allergy', flowers],
    ['hot-water', hot],
    ['very-hot-drink', hot && facts.cupC > veryHotC],
    ['glass-shock', hot && recipe.vessel.glass],
    ['caffeine-adult', facts.caffeineMg * caffeineSpread.most > caffeineAtOnceMg],
    ['pregnancy', facts.caffeineMg > 0 || family === 'herbal'],
    ['children', facts.caffeineMg > 0],
    ['medicines', true],
  ];
  return rules.filter(([, applies]) => applies).map(([id]) => id);
}
