/** One rung of the ladder as a brush draws it: set down thick, thinner the longer it goes, lifted round; and what it is drawn with. */

/** The inks and the paper of everything drawn, as the page has them by day. */
export const inks = {
  paper: '#f8f8f5',
  ink: '#25211d',
  pencil: '#635d55',
  liquor: '#8a4312',
  rule: '#d3d0c7',
  edge: '#8d867b',
} as const;

export interface Stroke {
  readonly x: number;
  /** Of its middle. */
  readonly y: number;
  readonly length: number;
  /** Where the brush is set down, from edge to edge. */
  readonly thick: number;
}

const at = (n: number): string => n.toFixed(2);

/** The data of an SVG path. `longest` is what a whole ladder has room for: only such a stroke thins out fully. */
export function strokeOutline({ x, y, length, thick }: Stroke, longest: number): string {
  const half = thick / 2;
  const tip = half * (1 - (0.35 * length) / longest);
  const end = x + Math.max(length - tip, 0);
  return `M${at(x)} ${at(y - half)}L${at(end)} ${at(y - tip)}q${at(tip)} ${at(tip)} 0 ${at(2 * tip)}L${at(x)} ${at(y + half)}Z`;
}

/** A weak cup is still seen: 0…1 of the strongest to 0…1 of full ink. */
export const inkOf = (strength: number): number => 0.15 + 0.85 * Math.min(Math.max(strength, 0), 1);
