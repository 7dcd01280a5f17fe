/** The cues of data/reading/plan-cues.yaml by which a plan is asked of line by line, or changed. Questions with a cue each: plan-questions.ts. */

/** One line of the plan is the answer to each of these. */
export const linesOfPlan = ['heat', 'time', 'leaf', 'count', 'leaf-out', 'bitter-ahead', 'too-much'] as const;
export type LineOfPlan = (typeof linesOfPlan)[number];

export const cueOfLine = <T extends LineOfPlan>(line: T): `asks-${T}` => `asks-${line}`;

export const asksCues = [
  ...linesOfPlan.map(cueOfLine),
  'asks-whole',
  'asks-guide',
  'asks-what-tea',
  'asks-enough',
  'asks-meaning',
  'asks-take-out',
  'asks-of-kettle',
  'asks-doubted',
  'asks-unclear',
  'asks-size',
  'asks-dose',
  'asks-boiling',
  'asks-lasts',
  'asks-dry',
  'asks-spoons',
  'cools-down',
  'not-of-the-plan',
] as const;

/** Tried in this order. */
export const turnsByCue = [
  'hot',
  'hotter',
  'cooler',
  'half-pot',
  'half-leaf',
  'double-leaf',
  'more-leaf',
  'less-leaf',
  'longer',
  'shorter',
  'other-tea',
  'other-size',
] as const;

export const cueOfTurn = <T extends (typeof turnsByCue)[number]>(turn: T): `turn-${T}` => `turn-${turn}`;
export const turnCues = turnsByCue.map(cueOfTurn);
