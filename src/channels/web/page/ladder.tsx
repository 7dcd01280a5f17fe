/** The infusion ladder on the page. */
import type { JSX } from 'preact';
import type { Said } from './wire.ts';
import { drawLadder, ladderWidth } from './ladder-drawing.ts';

export function LadderFigure({ of }: { readonly of: NonNullable<Said['ladder']> }): JSX.Element {
  const drawn = drawLadder(of);
  return (
    <figure class="ladder">
      <figcaption>{of.title}</figcaption>
      <svg viewBox={`0 0 ${ladderWidth} ${drawn.height}`} role="img" aria-label={drawn.spoken}>
        <path class="rail" d={drawn.rail} />
        {drawn.rungs.map((rung) => (
          <g key={rung.n}>
            <text class="rung-number" x={drawn.numberX} y={rung.textY}>
              {rung.n}
            </text>
            <path class="rung" d={rung.outline} fill-opacity={rung.ink} />
            <text x={rung.textX} y={rung.textY}>
              {rung.label}
            </text>
          </g>
        ))}
      </svg>
    </figure>
  );
}
