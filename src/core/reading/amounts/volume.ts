/** What the vessel holds, from the measures of a text. The size of a kettle or a tasting cup is not it. */
import type { NumberScene, Signs, Span } from './beside-number.ts';
import { cupsTold } from './cups-told.ts';
import type { KnownSizes } from './known-sizes.ts';
import type { Measure } from './measures.ts';
import { flOzMl } from './measures.ts';
import { after, isDenied } from '../nearby.ts';

export interface QuantityScene extends NumberScene {
  readonly signs: Signs;
  readonly sizes: KnownSizes;
  readonly measures: readonly Measure[];
  /** A correction: the last one counts. */
  readonly corrected: boolean;
  /** The fact asked just now: a bare number is that. */
  readonly asked: string | null;
}

/** A number without a unit is a size in this range, beside a vessel. */
const bareMl = { least: 30, most: 5000 };

export function readVolume(scene: QuantityScene): Measure | null {
  const size = readSize(scene);
  if (size === null) return null;
  const [, part = 1] = parts.find(([sign]) => scene.signs.tell(sign, scene, size)) ?? [];
  return part === 1 ? size : { ...size, value: Math.round(size.value * part) };
}

/** So full it is filled. */
const parts = [
  ['half-filled', 1 / 2],
  ['six-tenths-filled', 6 / 10],
  ['two-thirds-filled', 2 / 3],
  ['seven-tenths-filled', 7 / 10],
  ['three-quarters-filled', 3 / 4],
] as const;

function readSize(scene: QuantityScene): Measure | null {
  const { plain } = scene;
  const cups = cupsTold(scene);
  if (cups !== null) return { dimension: 'volume', value: cups, start: 0, end: plain.length, digits: false };
  const sizes = scene.measures.flatMap((measure) => {
    const ml = millilitres(scene, measure);
    return ml === null ? [] : [{ ...measure, dimension: 'volume' as const, value: ml }];
  });
  const meant = sizes.filter((m) => !isDenied(plain, m.start) && !scene.signs.tell('size-of-another', scene, m));
  const filled = meant.findLast((m) => scene.signs.tell('filled-to', scene, m));
  if (filled !== undefined) return filled;
  if (meant.length <= 1 || scene.corrected) return meant.at(-1) ?? null;
  return meant.toSorted((a, b) => gapTo(scene.vessels, a) - gapTo(scene.vessels, b))[0] ?? null;
}

function millilitres(scene: QuantityScene, measure: Measure): number | null {
  if (measure.dimension === 'volume') return measure.value;
  if (measure.dimension === 'ounce' && !isLeafOunce(scene, measure))
    return Math.round(measure.value * flOzMl * 100) / 100;
  if (measure.dimension !== 'bare' || isNoSize(scene, measure)) return null;
  if (scene.asked === 'vessel' && isSizeAlone(scene.plain, measure)) return measure.value;
  if (scene.asked === 'volumeMl') return measure.digits || measure.value >= bareMl.least ? measure.value : null;
  const fits = measure.value >= bareMl.least && measure.value <= bareMl.most;
  return fits && (besideVessel(scene, measure) || onlyCorrects(scene, measure)) ? measure.value : null;
}

/** A heat, an age, a year: a size is round when it is as large as that. */
const isNoSize = (scene: QuantityScene, measure: Measure): boolean =>
  scene.signs.tell('no-size', scene, measure) ||
  (measure.value >= 1900 && measure.value <= 2100 && measure.value % 50 !== 0);

/** "250", "about 300", asked what one brews in: its size. */
const isSizeAlone = (plain: string, { value }: Measure): boolean => value >= 50 && value <= 2000 && plain.length <= 12;

/** "I said 150, not 250": of what may be corrected, only a size is so large. */
function onlyCorrects({ plain, corrected, measures }: QuantityScene, measure: Measure): boolean {
  return corrected && plain.length <= 40 && measure.value > 100 && measures.every((m) => m.dimension === 'bare');
}

const besideVessel = (scene: QuantityScene, measure: Measure): boolean =>
  scene.signs.tell('size', scene, measure) ||
  // "150, but I only fill it to 120"
  scene.signs.tell('filled-to', scene, measure) ||
  // "genmaicha 350", behind a pot that is named
  (scene.vessels.length > 0 && endsBehindTea(scene, measure));

/** Larger than any heat that is meant, and last in a clause that names the tea and no more. */
const endsBehindTea = ({ plain, teas }: QuantityScene, { value, start, end, digits }: Measure): boolean =>
  digits &&
  value > boilingF &&
  value <= 1500 &&
  teas.some((tea) => tea.end < start && /^(?: tea)?[ :]+$/.test(plain.slice(tea.end, start))) &&
  /^ ?(?:$|[.,;!?])/.test(after(plain, end));

/** A kettle may be set by such numbers in Fahrenheit. */
const boilingF = 212;

/** An ounce beside a vessel is water, beside leaf it is leaf. Up to an ounce and no vessel: leaf. */
export function isLeafOunce(scene: QuantityScene, measure: Measure): boolean {
  const { vessels, teas } = scene;
  if (scene.signs.tell('leaf-ounce', scene, measure)) return true;
  const toVessel = gapTo(vessels, measure);
  const toTea = gapTo(
    teas.filter((tea) => tea.start >= measure.end),
    measure,
  );
  if (toVessel <= 12 && toVessel <= toTea) return false;
  // Tea is sold by a few ounces and drunk by more.
  if (toTea <= 4) return measure.value < 5;
  return vessels.length === 0 ? measure.value < 2 : measure.value < 1.5;
}

export function gapTo(spans: readonly Span[], at: Span): number {
  return Math.min(
    Infinity,
    ...spans.map((span) => (span.start >= at.end ? span.start - at.end : Math.max(0, at.start - span.end) + 1)),
  );
}
