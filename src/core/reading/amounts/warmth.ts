/** Water temperature and elevation, from the measures of a text. The weather is neither. */
import type { Cues } from '../cues/cues.ts';
import { celsius, type Measure } from './measures.ts';
import { isDenied } from '../nearby.ts';
import type { QuantityScene } from './volume.ts';

/** A bare "degrees" above this can only be Fahrenheit. */
const certainlyFahrenheit = 121;

/** As hot as it gets; where water boils cooler, the plan says so. */
export const boilingC = 100;
const boiling: Measure = { dimension: 'temperature', value: boilingC, start: 0, end: 0, digits: false };

export function readTemperature(scene: QuantityScene, cues: Cues, words: string): Measure | null {
  const found = scene.measures.flatMap((m) => {
    const degrees = degreesOf(scene, m);
    if (degrees === null || isDenied(scene.plain, m.start)) return [];
    if (scene.signs.tell('no-heat-wished', scene, m) || scene.signs.tell('boils-there', scene, m)) return [];
    return [{ ...m, dimension: 'temperature' as const, value: degrees }];
  });
  const boils = cues.has('used-boiling', words) || (scene.asked === 'tempC' && cues.has('boiling', words));
  return (scene.corrected ? found.at(-1) : found[0]) ?? (boils ? boiling : null);
}

/** "Bitter: 3 g, boiling, 3 min": of a cup that was made, and no question whether it may be. */
export function boiledC(cues: Cues, words: string): number | null {
  if (cues.has('nearly-boiling', words)) return nearlyBoilingC;
  return cues.has('boiling', words) && !notBoiling.test(words) ? boilingC : null;
}
/** Small bubbles rise and do not break the surface yet. Common practice, no source. */
const nearlyBoilingC = 95;
const notBoiling =
  /\b(?:not|never|without|isnt|wasnt|arent|under|below|before|off) (?:\w+ ){0,2}boil|白(?:开|滚)水|[像似跟同][饮喝是]?(?:开|滚)水|(?:不是|没用|没有用|唔系|冇用|不用|没到|未)(?:煮|烧)?(?:开|滚|沸)/;

function degreesOf(scene: QuantityScene, m: Measure): number | null {
  if (m.dimension === 'temperature') return m.value;
  if (m.dimension === 'bare' && m.value >= leastInWords && m.value < 100 && scene.signs.tell('some-degrees', scene, m))
    return m.value + middleOfTen;
  const bare = m.dimension === 'bare' && (m.digits || m.value >= leastInWords);
  if (bare && m.value > 100 && m.value < 230 && /\bfahrenheit\b|华氏/.test(scene.plain)) return celsius(m.value);
  const told = m.dimension === 'degree' || (bare && (scene.asked === 'tempC' || scene.signs.tell('heat', scene, m)));
  if (!told || (bare && !m.digits && scene.signs.tell('or-another', scene, m))) return null;
  return m.value >= certainlyFahrenheit ? celsius(m.value) : m.value;
}

/** 八十幾度: the middle of what it may be. */
const middleOfTen = 5;
/** A smaller number in words counts something else. */
const leastInWords = 50;

const metresInAFoot = 0.3048;
/** The highest town stands at about 5,100 m: a larger bare number is feet. From memory. */
const highestTownM = 5200;
/** So few metres are a distance, unless the words say height. */
const leastUntoldM = 300;

export function readElevation(scene: QuantityScene, cues: Cues, words: string): Measure | null {
  const tells = cues.has('altitude', words);
  const found = scene.measures.flatMap((m) => {
    const metres = metresOf(scene, m, tells);
    return metres === null || isDenied(scene.plain, m.start)
      ? []
      : [{ ...m, dimension: 'length' as const, value: metres }];
  });
  const boils = found.length === 0 ? scene.measures.find((m) => boilsAt(scene, m) !== null) : undefined;
  if (boils) return { ...boils, dimension: 'length', value: heightOf(boilsAt(scene, boils) ?? boilingC) };
  if (found.length === 0 && cues.has('mile-high', words)) {
    return { dimension: 'length', value: 1609, start: 0, end: 0, digits: false };
  }
  return (scene.corrected ? found.at(-1) : found[0]) ?? null;
}

/** How hot water boils where it is told, in °C. */
function boilsAt(scene: QuantityScene, m: Measure): number | null {
  if (!scene.signs.tell('boils-there', scene, m)) return null;
  const told = degreesOf(scene, m);
  const some = told !== null && /[多几]度$/.test(scene.plain.slice(m.start, m.end)) ? middleOfTen : 0;
  return told !== null && told >= leastBoilingC && told < boilingC ? told + some : null;
}
/** As it boils where people live highest, and a little less. */
const leastBoilingC = 80;
/** A degree less every 300 m: a rule of thumb, within 100 m of ISO 2533 up to 4,000 m. */
const heightOf = (boilsAtC: number): number => Math.round((boilingC - boilsAtC) * 300);

function metresOf(scene: QuantityScene, m: Measure, tells: boolean): number | null {
  const asked = scene.asked === 'elevationM';
  if (m.dimension === 'length') {
    const told = asked || tells || scene.signs.tell('height-behind', scene, m);
    return told || m.value >= leastUntoldM ? Math.round(m.value) : null;
  }
  if (m.dimension !== 'bare' || !(asked || scene.signs.tell('height', scene, m))) return null;
  return Math.round(m.value > highestTownM ? m.value * metresInAFoot : m.value);
}
