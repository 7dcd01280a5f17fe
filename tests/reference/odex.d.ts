/** The part of odex that the tests use: the package ships its source where its types should be. */
export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  solve(derivative: (x: number, y: number[]) => number[], x0: number, y0: number[], xEnd: number): { y: number[] };
}
