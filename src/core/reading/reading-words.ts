/** The words the reader recognises, as data/reading holds them. Nothing a person reads. */
import type { SignName, SignWords } from './amounts/beside-number.ts';
import type { CourtesyWords } from './typed/courtesies.ts';
import type { KnownSize } from './amounts/known-sizes.ts';
import type { Subjects } from './kinds/subjects.ts';
import type { Worlds } from './kinds/evidence.ts';
import type { CueName } from './cues/cue-names.ts';
import type { Weights } from './kinds/weights.ts';

export interface VesselWords {
  readonly vessel: string | null;
  readonly material: string | null;
  /** Said of many a thing: any other vessel in the sentence comes first. */
  readonly faint: boolean;
  readonly words: readonly string[];
}

export interface MaterialWords {
  readonly material: string;
  /** The vessel that a pot of this material is. */
  readonly pot: string;
  readonly words: readonly string[];
}

export interface PeopleWords {
  readonly me: readonly string[];
  readonly one: readonly string[];
  readonly two: readonly string[];
  /** A number must be said with these. */
  readonly many: readonly string[];
  /** What may stand between people who are counted together. */
  readonly joins: readonly string[];
}

export interface PlaceWords {
  /** What is said before the name of the place where someone is: patterns. */
  readonly living: readonly string[];
  readonly places: readonly { readonly elevationM: number; readonly names: readonly string[] }[];
}

export interface ReadingWords {
  readonly vessels: readonly VesselWords[];
  readonly materials: readonly MaterialWords[];
  /** Phrases that look like a vessel and are none to brew in. */
  readonly notVessels: readonly string[];
  readonly people: PeopleWords;
  readonly courtesies: CourtesyWords;
  /** Places that tell how high someone lives. */
  readonly places: PlaceWords;
  /** What numbers are by what is beside them. */
  readonly besideNumbers: { readonly [sign in SignName]: readonly SignWords[] };
  readonly knownSizes: readonly KnownSize[];
  /** Groups of Han characters one of which is often written for another. */
  readonly alike: readonly string[];
  /** Words customers often write, the commonest first: a slip is put right to one of them. */
  readonly common: readonly string[];
  /** Words near to one of those, and meant as they stand. */
  readonly noSlips: readonly string[];
  /** What words are about. */
  readonly subjects: Subjects;
  /** Whose talk they are. */
  readonly worlds: Worlds;
  /** What evidence weighs, read when first needed. */
  readonly weights: () => Weights;
  /** Cue → patterns (data/reading/cues.yaml tells their small language). */
  readonly cues: { readonly [cue in CueName]: readonly string[] };
}
