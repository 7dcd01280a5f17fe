/** Papers, and how labels lie on them. The sizes are those label sheets are commonly cut to; common practice, no source. */

/** Millimetres, as all lengths here. */
export const papers = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;
export type PaperName = keyof typeof papers;

export interface LabelSize {
  readonly paper: PaperName;
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
  /** Between labels side by side; above each other they always touch. */
  readonly gap: number;
}

/** By the name a person asks for; the first of a paper is what it is taken to be. */
export const labelSizes: { readonly [name: string]: LabelSize } = {
  '70x37': { paper: 'a4', width: 70, height: 37, columns: 3, rows: 8, gap: 0 },
  '99.1x38.1': { paper: 'a4', width: 99.1, height: 38.1, columns: 2, rows: 7, gap: 2.5 },
  '63.5x38.1': { paper: 'a4', width: 63.5, height: 38.1, columns: 3, rows: 7, gap: 2.5 },
  // In inches 4 × 2, the columns 4 3/16 from each other.
  '4x2': { paper: 'letter', width: 101.6, height: 50.8, columns: 2, rows: 5, gap: 4.76 },
};

export interface Corner {
  readonly x: number;
  readonly y: number;
}

export const labelsAPage = ({ columns, rows }: LabelSize): number => columns * rows;

/** Upper left corner of a label; the grid lies in the middle of the paper, filled row by row. */
export function placeOf(size: LabelSize, index: number): Corner {
  const { width, height, columns, rows, gap } = size;
  const paper = papers[size.paper];
  const left = (paper.width - columns * width - (columns - 1) * gap) / 2;
  const top = (paper.height - rows * height) / 2;
  const [column, row] = [index % columns, Math.floor(index / columns) % rows];
  return { x: left + column * (width + gap), y: top + row * height };
}

export interface Mark {
  readonly from: Corner;
  readonly to: Corner;
}

const armMm = 3;
const shortArmMm = 1.2;
const clearMm = 0.6;

/** Crop marks: outside the labels where there is paper to spare, and short on the cut itself where labels touch. */
export function cropMarks(size: LabelSize): readonly Mark[] {
  const { columns, rows, width, height } = size;
  const paper = papers[size.paper];
  const xs = Array.from({ length: columns }, (_, i) => placeOf(size, i).x).flatMap((x) => [x, x + width]);
  const ys = Array.from({ length: rows + 1 }, (_, i) => placeOf(size, 0).y + i * height);
  const upright = xs.flatMap((x) => arms(ys, paper.height).map(([a, b]) => ({ from: { x, y: a }, to: { x, y: b } })));
  const across = ys.flatMap((y) => arms(xs, paper.width).map(([a, b]) => ({ from: { x: a, y }, to: { x: b, y } })));
  return [...new Map([...upright, ...across].map((mark) => [JSON.stringify(mark), mark])).values()];
}

/** Along one direction: where marks run, given where labels begin and end and where the paper does. */
function arms(edges: readonly number[], end: number): readonly (readonly [number, number])[] {
  const [first = 0, last = end] = [edges[0], edges.at(-1)];
  const outer = [arm(first, 0), arm(last, end)];
  const inner = edges.slice(1, -1).map((edge) => [edge - shortArmMm, edge + shortArmMm] as const);
  return [...outer, ...inner];
}

/** From a label's edge outward, to the edge of the paper at most; where there is none to spare, inward. */
function arm(edge: number, paperEdge: number): readonly [number, number] {
  const room = Math.abs(paperEdge - edge);
  const outward = paperEdge > edge || (paperEdge === edge && edge > 0) ? 1 : -1;
  if (room < clearMm + shortArmMm) return [edge, edge - outward * shortArmMm];
  return [edge + outward * clearMm, edge + outward * Math.min(room, clearMm + armMm)];
}
