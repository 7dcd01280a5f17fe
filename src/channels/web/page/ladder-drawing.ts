/** The infusion ladder as plain geometry, drawn alike by the server (text) and the page (elements). */
import type { Ladder } from '../../../messages.ts';

/** User units of the drawing; it is scaled to the width it is given. */
export const ladderWidth = 320;
const pitch = 32;
const rail = 36;
const longest = 186;
/** A rung of no length is still seen. */
const shortest = 5;

export interface DrawnRung {
  readonly n: number;
  readonly label: string;
  /** Outline of the stroke: thicker where the brush is set down. */
  readonly outline: string;
  readonly ink: number;
  readonly textX: number;
  readonly textY: number;
}

export interface DrawnLadder {
  readonly height: number;
  readonly rail: string;
  readonly numberX: number;
  /** The whole ladder in a row, for those who hear it. */
  readonly spoken: string;
  readonly rungs: readonly DrawnRung[];
}

export function drawLadder(ladder: Ladder): DrawnLadder {
  const height = ladder.rungs.length * pitch + 8;
  return {
    height,
    rail: `M${rail} 0V${height}`,
    numberX: rail - 12,
    spoken: `${ladder.title}: ${ladder.rungs.map((rung) => `${rung.n} – ${rung.label}`).join('; ')}`,
    rungs: ladder.rungs.map((rung, row) => {
      const length = shortest + within01(rung.length) * (longest - shortest);
      const y = row * pitch + pitch / 2 + 4;
      return {
        n: rung.n,
        label: rung.label,
        outline: stroke(rail, y, length),
        ink: Math.round((0.12 + 0.88 * within01(rung.ink)) * 1000) / 1000,
        textX: Math.round(rail + length + 12),
        textY: y + 5,
      };
    }),
  };
}

const within01 = (x: number): number => Math.min(1, Math.max(0, x));

function stroke(x: number, y: number, length: number): string {
  const end = Math.round((x + length) * 10) / 10;
  return `M${x} ${y - 8}L${end - 3} ${y - 5}Q${end + 2} ${y} ${end - 3} ${y + 5}L${x} ${y + 8}Z`;
}
