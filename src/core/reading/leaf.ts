/** The leaf a person means to brew, in grams or spoons. What they bought, or what a bag holds, is stock and not a dose. */
import type { Cues } from './cues.ts';
import { ounceG, type Measure } from './measures.ts';
import { after, before, isDenied } from './nearby.ts';
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
    (m) => m.dimension === 'spoon' && !isDenied(plain, m.start) && !forEach.test(after(plain, m.end, 20)),
  );
  const pick = <T>(list: readonly T[]): T | null => (scene.corrected ? list.at(-1) : list[0]) ?? null;
  return { grams: pick(meant), spoons: pick(spoons) };
}

function gramsOf(scene: QuantityScene, m: Measure): number | null {
  if (m.dimension === 'mass') return m.value;
  if (m.dimension === 'ounce' && isLeafOunce(scene, m)) return Math.round(m.value * ounceG * 100) / 100;
  return m.dimension === 'bare' && scene.asked === 'leafG' ? m.value : null;
}

function isDose(scene: QuantityScene, m: Measure, cues: Cues): boolean {
  if (scene.asked === 'leafG' || isAllThatIsSaid(scene.plain, m)) return true;
  const ahead = clauseBefore(before(scene.plain, m.start, 34));
  const behind = after(scene.plain, m.end, 26);
  if (cues.has('left', ahead.slice(-18)) || /^\s?(?:of \w+ ){0,2}(?:left|remaining|剩)/.test(behind))
    return m.value < 100;
  if (
    /(?:use|using|put|add|weigh(?:ed|ing)?|measured|dose|放|落|投|用|加|置茶量?|投茶量?)(?: in| out| about| around|咗|了|左右|大概|约)?\s?$/.test(
      ahead,
    )
  )
    return true;
  if (bagged.test(scene.plain) && m.value <= bagG) return true;
  if (m.value < stockFromG && (forOneSession.test(behind) || /(?:一|每)(?:泡|包|袋|次)(?:是|有|装)?$/.test(ahead)))
    return true;
  if (cues.has('stock-before', ahead) || cues.has('stock-after', behind.slice(0, 14))) return false;
  if (
    /^\s?(?:of .{0,20})?\b(?:in|per|to|for)\b.{0,12}\d/.test(behind) ||
    /^\s?(?:[/:：]|每|对|比|放|冲|入|泡|用|配|to)\s?\d/.test(behind)
  )
    return true;
  return m.value < stockFromG || /(?:leaf|leaves|dose|茶叶|投茶)\s?:?\s?$/.test(ahead);
}

/** "One teaspoon per cup" is not all that goes into the pot. */
const forEach =
  /^(?:ful)?s?\s?(?:of \w+ )?(?:per|a|each|for each|for every|to a|to each) (?:cup|person|mug|head|guest)/;

/** 茶包一包3克: what is in one bag is brewed with it. */
const bagged = /茶包|袋泡|\btea ?bags?\b/;
const bagG = 6;
/** 8克一泡的小袋: made up for one sitting. */
const forOneSession = /^\s?(?:一|每|1)(?:泡|次泡)|^\s?(?:的)?(?:小泡袋|泡袋|小包装|独立包装)/;

/** "50 g" and nothing else is said of the brew at hand. */
function isAllThatIsSaid(plain: string, { start, end }: Measure): boolean {
  return !/[\p{L}\p{N}]/u.test(plain.slice(0, start) + plain.slice(end));
}

function clauseBefore(text: string): string {
  return text.split(/[,.;!?，。；！？\n]/).at(-1) ?? text;
}
