/** How much of the server one person, one address and everybody together may use. */

export interface Allowance {
  /** How many at once. */
  readonly burst: number;
  /** How many more each second. */
  readonly perSecond: number;
}

export interface WebLimits {
  readonly bodyBytes: number;
  /** What may wait unsent for a slow reader before their stream is dropped; they come back and catch up. */
  readonly backlogBytes: number;
  readonly streams: number;
  readonly streamsPerSheet: number;
  readonly streamsPerAddress: number;
  readonly postsPerSheet: Allowance;
  readonly postsPerAddress: Allowance;
  readonly pagesPerAddress: Allowance;
  /** Codes tried for a sheet of another device. */
  readonly joinsPerAddress: Allowance;
  readonly joins: Allowance;
  /** Distinct people or addresses remembered; the longest unseen is forgotten first. */
  readonly remembered: number;
  readonly connections: number;
  readonly headersMs: number;
  readonly requestMs: number;
  readonly beatMs: number;
}

/** Common practice, no source: a shop full of phones behind one address must fit. */
export const usualLimits: WebLimits = {
  bodyBytes: 64 * 1024,
  backlogBytes: 256 * 1024,
  streams: 2_500,
  streamsPerSheet: 4,
  streamsPerAddress: 200,
  postsPerSheet: { burst: 20, perSecond: 1 },
  postsPerAddress: { burst: 100, perSecond: 10 },
  pagesPerAddress: { burst: 200, perSecond: 20 },
  // A hundred million codes: who guesses all day while one code is always open has a chance of one in seven thousand.
  joinsPerAddress: { burst: 5, perSecond: 1 / 60 },
  joins: { burst: 30, perSecond: 1 / 6 },
  remembered: 10_000,
  connections: 4_000,
  headersMs: 8_000,
  requestMs: 15_000,
  beatMs: 20_000,
};
