/** How much a vessel holds, told with it by its width or by what is as big. It is told back as a guess. */
import type { KnownSizes } from './known-sizes.ts';
import type { Measure } from './measures.ts';

/** Of a gaiwan by the width of its rim: 8.5 cm come to about 110 ml, 10.5 cm to about 200. Common practice, no source. */
const gaiwanMlPerCm3 = 0.18;
/** Of a straight cup, what its width and height come to from outside, less its walls. Judgement. */
const shareOfCup = 0.75;
const straightCups: ReadonlySet<string> = new Set(['mug', 'infuser-mug', 'tumbler']);

const cmIn: readonly (readonly [RegExp, number])[] = [
  [/(?:cm|厘米)$/, 1],
  [/mm$/, 0.1],
  [/inch(?:es)?$/, 2.54],
];

interface Sized {
  readonly plain: string;
  readonly measures: readonly Measure[];
  readonly sizes: KnownSizes;
}

/** No vessel for tea is narrower, or wider. */
const least = 4;
const most = 25;

function centimetres(plain: string, { dimension, value, start, end }: Measure): number[] {
  const unit = dimension === 'other' ? cmIn.find(([said]) => said.test(plain.slice(start, end))) : undefined;
  const cm = unit === undefined ? 0 : value * unit[1];
  return cm >= least && cm <= most ? [cm] : [];
}

export function guessedSize({ plain, measures, sizes }: Sized, vessel: string | null): Measure | null {
  const ml = vessel === null ? null : (byWidth(plain, measures, vessel) ?? sizes.named(plain));
  return ml === null ? null : { dimension: 'volume', value: ml, start: 0, end: 0, digits: false };
}

function byWidth(plain: string, measures: readonly Measure[], vessel: string): number | null {
  const [one, other] = measures.flatMap((measure) => centimetres(plain, measure));
  if (one === undefined) return null;
  if (vessel === 'gaiwan') return inTens(gaiwanMlPerCm3 * Math.max(one, other ?? 0) ** 3);
  if (other === undefined || !straightCups.has(vessel)) return null;
  // A cup is mostly taller than it is wide, and the width counts twice.
  const [width, height] = isTallFirst.test(plain) ? [other, one] : [one, other];
  return inTens((Math.PI / 4) * width ** 2 * height * shareOfCup);
}
const isTallFirst = /\b(?:tall|high|height|deep)\b.*\b(?:wide|across|diameter|width)\b|高.*宽/;

const inTens = (ml: number): number => Math.round(ml / 10) * 10;
