/** The infusion ladder as plain geometry, drawn alike by the server (text) and the page (elements). */
import type { Ladder } from '../../../messages.ts';

/** User units of the drawing; it is scaled to the width it is given. */
export const ladderWidth = 320;
const pitch = 32;
const rail = 36;
/** Leaves room for "10 h 30 min" beside it, in any language. */
const longest = 160;
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
        textX: Math.round(rail + length + 14),
        textY: y + 5,
      };
    }),
  };
}

const within01 = (x: number): number => Math.min(1, Math.max(0, x));

/** Drawn with one brush: it thins out as evenly on a short rung as on a long one, and is lifted round. */
function stroke(x: number, y: number, length: number): string {
  const thick = 7;
  const thin = thick - (2.5 * length) / longest;
  const [end, half] = [x + length, thin].map((u) => Math.round(u * 10) / 10) as [number, number];
  return `M${x} ${y - thick}L${end} ${y - half}q${half} ${half} 0 ${2 * half}L${x} ${y + thick}Z`;
}
