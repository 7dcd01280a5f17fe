/** What a benchmark tells: a figure of ours, the same of whoever stands beside, and what was to be reached. */

export interface Figure {
  readonly what: string;
  readonly unit: string;
  readonly ours: number;
  readonly beside?: { readonly who: string; readonly value: number };
  /** How many times better than what stands beside; below 1 it is worse. */
  readonly ratio?: number;
  readonly reach?: Reach;
}

/** Of the ratio where there is one, else of our own figure. */
export type Reach = { readonly atLeast: number } | { readonly atMost: number };

/** Quick: so few rounds that the figures mean nothing, only that they can be taken. */
export interface Size {
  readonly quick: boolean;
}

export interface Row {
  readonly name: string;
  readonly about: string;
  /** Both are measured in turns in this process, which measures nothing else. */
  measure(size: Size): Promise<readonly Figure[]>;
}

interface Compared {
  readonly what: string;
  readonly unit: string;
  readonly ours: number;
  readonly who: string;
  readonly theirs: number;
  readonly atLeast?: number;
}

/** Figures of which more is better, such as updates a second. */
export function more({ what, unit, ours, who, theirs, atLeast }: Compared): Figure {
  return figure({ what, unit, ours, who, theirs, ratio: ours / theirs, atLeast });
}

/** Figures of which less is better, such as milliseconds. */
export function less({ what, unit, ours, who, theirs, atLeast }: Compared): Figure {
  return figure({ what, unit, ours, who, theirs, ratio: theirs / ours, atLeast });
}

function figure({
  who,
  theirs,
  atLeast,
  ...rest
}: Omit<Compared, 'atLeast'> & { readonly ratio: number; readonly atLeast: number | undefined }): Figure {
  return { ...rest, beside: { who, value: theirs }, ...(atLeast === undefined ? {} : { reach: { atLeast } }) };
}

export function isReached({ ours, ratio, reach }: Figure): boolean | null {
  if (!reach) return null;
  const value = ratio ?? ours;
  return 'atLeast' in reach ? value >= reach.atLeast : value <= reach.atMost;
}
