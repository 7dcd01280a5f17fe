/** The infusion ladder in letters of one width: a rung an infusion, its length the time, its ink the strength. */
import type { Ladder } from '../../messages.ts';

const longest = 24;
const inks = ['░', '▒', '▓', '█'] as const;

export function drawLadder({ title, rungs }: Ladder): readonly string[] {
  const lines = rungs.map(({ n, length, ink, label }) => {
    const stroke = inks[Math.min(inks.length - 1, Math.floor(ink * inks.length))] ?? inks[0];
    return `${String(n).padStart(4)} ${stroke.repeat(Math.max(1, Math.round(length * longest)))} ${label}`;
  });
  return [title, ...lines];
}
