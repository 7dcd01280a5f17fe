/** The leaf a person means to brew, in grams or spoons. What they bought, or what a bag holds, is stock and not a dose. */
import type { SignName } from './beside-number.ts';
import type { Cues } from '../cues/cues.ts';
import { ounceG, type Measure } from './measures.ts';
import { after, before, isDenied } from '../nearby.ts';
import { isLeafOunce, type QuantityScene } from './volume.ts';

/** With no word that tells, so much or more is stock: nobody puts it into a pot at home. */
const stockFromG = 25;

export interface LeafRead {
  readonly grams: Measure | null;
  readonly spoons: Measure | null;
}

export function readLeaf(scene: QuantityScene, cues: Cues): LeafRead {
  const { plain } = scene;
  const weights = scene.measures.flatMap((m) => {
    const grams = gramsOf(scene, m);
    return grams === null ? [] : [{ ...m, dimension: 'mass' as const, value: grams }];
  });
  const meant = weights.filter((m) => !isDenied(plain, m.start) && isDose(scene, m, cues));
  const spoons = scene.measures.filter(
    (m) => m.dimension === 'spoon' && !isDenied(plain, m.start) && !scene.signs.tell('spoon-for-each', scene, m),
  );
  const pick = <T>(list: readonly T[]): T | null => (scene.corrected ? list.at(-1) : list[0]) ?? null;
  return { grams: sharedOut(plain, pick(meant)), spoons: pick(spoons) };
}

/** 15克分三次泡: five of them each time. */
function sharedOut(plain: string, grams: Measure | null): Measure | null {
  const parts = sharedIn.exec(plain)?.groups?.['n'] ?? '';
  const n = hanFew.indexOf(parts) + 2 || Number(parts);
  return grams === null || parts === '' ? grams : { ...grams, value: Math.round((grams.value / n) * 10) / 10 };
}
const hanFew = ['两', '三', '四', '五'];
const sharedIn = /分(?:成|开|做|开成)?\s?(?<n>[两三四五2-5])(?:次|份|回|天)(?:来)?(?:泡|冲|喝|用)/;

/** 茶水比1:20: so much leaf for the water that is told. */
export function leafByRatio(plain: string, water: Measure | null): Measure | null {
  const found = ratioIn.exec(plain);
  const ratio = Number(found?.groups?.['n'] ?? found?.groups?.['n2'] ?? 0);
  if (found === null || water === null || ratio < leastRatio) return null;
  const value = Math.round((water.value / ratio) * 10) / 10;
  return { dimension: 'mass', value, start: found.index, end: found.index + found[0].length, digits: true };
}
const leastRatio = 8;
const ratioIn =
  /(?:茶水|投茶)?(?:比例?|ratio)(?:是|用|为|大概|of)?\s?(?:1|一)\s?[:比]\s?(?<n>\d{1,3})(?!\d)|(?<![\d:])1:(?<n2>\d{2,3}) ratio/;

function gramsOf(scene: QuantityScene, m: Measure): number | null {
  if (m.dimension === 'mass') return m.value;
  if (m.dimension === 'ounce' && isLeafOunce(scene, m)) return Math.round(m.value * ounceG * 100) / 100;
  return m.dimension === 'bare' && scene.asked === 'leafG' ? m.value : null;
}

function isDose(scene: QuantityScene, m: Measure, cues: Cues): boolean {
  if (scene.asked === 'leafG' || isAllThatIsSaid(scene.plain, m)) return true;
  const ahead = clauseBefore(before(scene.plain, m.start, 34));
  const isTold = (sign: SignName): boolean => scene.signs.tell(sign, scene, m);
  if (cues.has('left', ahead.slice(-18)) || isTold('leaf-left')) return m.value < 100;
  if (isTold('put-in') || isTold('dose-of-a-packet')) return true;
  if (cues.has('stock-before', ahead) || cues.has('stock-after', after(scene.plain, m.end, 14))) return false;
  return isTold('for-a-vessel') || m.value < stockFromG || isTold('leaf-named') || isMistyped(scene, m);
}

/** "Oolong 9999 g gaiwan": nobody tells kilos in grams, so it is a slip and not what is kept at home. Judgement. */
const mistypedFromG = 1000;
const isMistyped = ({ plain, vessels }: QuantityScene, { value, start, end }: Measure): boolean =>
  value > mistypedFromG && vessels.length > 0 && /^[\d., ]+(?:g|gr|grams?|克)$/.test(plain.slice(start, end).trim());

/** "50 g" and nothing else is said of the brew at hand. */
function isAllThatIsSaid(plain: string, { start, end }: Measure): boolean {
  return !/[\p{L}\p{N}]/u.test(plain.slice(0, start) + plain.slice(end));
}

function clauseBefore(text: string): string {
  return text.split(/[,.;!?，。；！？\n]/).at(-1) ?? text;
}
