/** The part of odex that the tests use: the package ships its source where its types should be. */
export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  denseOutput: boolean;
  /** `seen` gets each step, and with dense output any value within it; false ends the solving. */
  solve(
    derivative: (x: number, y: number[]) => number[],
    x0: number,
    y0: number[],
    xEnd: number,
    seen?: (step: number, xOld: number, x: number, y: number[], within: (i: number, x: number) => number) => unknown,
  ): { y: number[] };
}
