/** The square code of an address: its dark squares, joined along each row. */
import { encode } from 'uqr';

export interface SquareCode {
  /** Squares a side, without the quiet margin. */
  readonly side: number;
  readonly runs: readonly { readonly x: number; readonly y: number; readonly length: number }[];
}

/** ISO/IEC 18004: so many squares around the code stay white. */
export const quietSquares = 4;

/** At level M, which bears about 15 % damage: labels get wet and rubbed. */
export function squareCode(text: string): SquareCode {
  const { data, size } = encode(text, { ecc: 'M', border: 0 });
  return { side: size, runs: data.flatMap(runsOf) };
}

function runsOf(row: readonly boolean[], y: number): SquareCode['runs'] {
  const starts = row.flatMap((dark, x) => (dark && row[x - 1] !== true ? [x] : []));
  return starts.map((x) => {
    const end = row.indexOf(false, x);
    return { x, y, length: (end === -1 ? row.length : end) - x };
  });
}
