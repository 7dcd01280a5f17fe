/** The infusion ladder in letters of one width, narrow enough for a phone held upright. */
import type { Ladder, LadderRung } from '../../messages.ts';

/** With number and label a line stays below 30 columns, which a phone shows unbroken. Common practice, no source. */
const longestBar = 14;

/** From the thinnest cup to the strongest. */
const inks = ['░', '▒', '▓', '█'] as const;

export function ladderLetters({ title, rungs }: Ladder): string {
  return [title, ...rungs.map(rungLine)].join('\n');
}

function rungLine({ n, label, length, ink }: LadderRung): string {
  const mark = inks[Math.min(inks.length - 1, Math.floor(ink * inks.length))] ?? inks[0];
  return `${String(n).padStart(2)} ${mark.repeat(Math.max(1, Math.round(length * longestBar)))} ${label}`;
}
