/** The figures that have something to reach, as a picture: one bar each, the mark in the middle is where it is reached. */
import { isReached, type Figure } from './figure.ts';
import { beside, ours, reach, type Measured } from './told.ts';

const rowPx = 26;
const headPx = 34;
const barsFromPx = 390;
const halfPx = 170;
const widthPx = 1_180;
/** Ends of the scale: so many times short of the mark, or beyond it. */
const end = 16;

const paper = '#f7f3ea';
const ink = '#2b2420';
const reachedColour = '#8a4312';
const missedColour = '#c9b79c';

export function chart(all: readonly Measured[], about: string): string {
  const groups = all
    .map(({ figures, ...rest }) => ({ ...rest, figures: figures.filter((figure) => figure.reach) }))
    .filter(({ figures }) => figures.length > 0);
  let y = 92;
  const parts = groups.map((group) => {
    const top = y;
    y += headPx + group.figures.length * rowPx;
    return drawn(group, top);
  });
  const middle = barsFromPx + halfPx;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthPx} ${y + 24}" font-family="Noto Sans, sans-serif" font-size="13" fill="${ink}">`,
    `<rect width="100%" height="100%" fill="${paper}"/>`,
    `<text x="24" y="38" font-size="20" font-family="Noto Serif, serif">How far each figure comes to what it should reach</text>`,
    `<text x="24" y="60" fill-opacity=".7">${escaped(about)}</text>`,
    ...ruler(y),
    ...parts,
    `<path d="M${middle} 78V${y + 4}" stroke="${ink}" stroke-width="1.5"/>`,
    '</svg>',
  ].join('\n');
}

function ruler(bottom: number): readonly string[] {
  return [1 / 16, 1 / 4, 1, 4, 16].map((value) => {
    const x = placeOf(value);
    const label = value === 1 ? 'reached' : value < 1 ? `1⁄${1 / value}` : `${value} ×`;
    return (
      `<path d="M${x} 84V${bottom}" stroke="${ink}" stroke-opacity=".15"/>` +
      `<text x="${x}" y="76" text-anchor="middle" font-size="11" fill-opacity=".7">${label}</text>`
    );
  });
}

function drawn({ name, about, figures }: Measured, top: number): string {
  const head = `<text x="24" y="${top + 22}" font-weight="600">${escaped(name)}</text><text x="110" y="${top + 22}" fill-opacity=".7">${escaped(about)}</text>`;
  return [head, ...figures.map((figure, i) => bar(figure, top + headPx + i * rowPx))].join('\n');
}

function bar(figure: Figure, top: number): string {
  const middle = barsFromPx + halfPx;
  const x = placeOf(shareOf(figure));
  const [from, length] = x < middle ? [x, middle - x] : [middle, x - middle];
  const colour = isReached(figure) ? reachedColour : missedColour;
  const told = [ours(figure), beside(figure), reach(figure)].filter((part) => part !== '').join('   ');
  return (
    `<text x="${barsFromPx - 12}" y="${top + 15}" text-anchor="end">${escaped(figure.what)}</text>` +
    `<rect x="${from}" y="${top + 4}" width="${Math.max(length, 2)}" height="14" rx="2" fill="${colour}"/>` +
    `<text x="${barsFromPx + 2 * halfPx + 14}" y="${top + 15}" font-size="12" fill-opacity=".85">${escaped(told)}</text>`
  );
}

/** 1 is just reached, more is better. */
function shareOf({ ours: value, ratio, reach: to }: Figure): number {
  if (!to) return 1;
  return 'atLeast' in to ? (ratio ?? value) / to.atLeast : to.atMost / (ratio ?? value);
}

function placeOf(share: number): number {
  const within = Math.min(Math.max(share, 1 / end), end);
  return Math.round(barsFromPx + halfPx * (1 + Math.log(within) / Math.log(end)));
}

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
