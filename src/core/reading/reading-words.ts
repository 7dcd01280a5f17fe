/** The words the reader recognises, as data/reading holds them. Nothing a person reads. */
import type { Subjects } from './subjects.ts';
import type { Worlds } from './evidence.ts';
import { cueOfQuestion, planQuestions } from './plan-questions.ts';
import type { Weights } from './weights.ts';

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
  /** Places that tell how high someone lives. */
  readonly places: PlaceWords;
  /** Groups of Han characters one of which is often written for another. */
  readonly alike: readonly string[];
  /** Words customers often write, the commonest first: a slip is put right to one of them. */
  readonly common: readonly string[];
  /** What words are about. */
  readonly subjects: Subjects;
  /** Whose talk they are. */
  readonly worlds: Worlds;
  /** What evidence weighs, read when first needed. */
  readonly weights: () => Weights;
  /** Cue → patterns (data/reading/cues.yaml tells their small language). */
  readonly cues: { readonly [cue in CueName]: readonly string[] };
}

/** What can't wait, the more urgent first. */
export const dangers = [
  'danger-choking',
  'danger-breath',
  'danger-swallowed',
  'danger-caffeine',
  'danger-mouth',
  'danger-reaction',
  'danger-scald',
  'danger-cut',
] as const;
export type Danger = (typeof dangers)[number];

export const cueNames = [
  ...dangers,
  ...planQuestions.map(cueOfQuestion),
  'safety',
  'safety-weak',
  'overnight',
  'fridge',
  'lesson',
  'care-strong',
  'care-weak',
  'shop',
  'shop-weak',
  'offtopic',
  'brew',
  'asks-brewing',
  'how-much',
  'buying',
  'got-tea',
  'got-wrong',
  'keeping',
  'has-tea',
  'having',
  'bitter',
  'weak',
  'sour',
  'flat',
  'lost-scent',
  'right',
  'complaint',
  'prefer',
  'strong',
  'light',
  'likes-strong',
  'likes-light',
  'gongfu',
  'western',
  'grandpa',
  'cold',
  'no-thermometer',
  'has-thermometer',
  'no-scale',
  'has-scale',
  'warmed',
  'not-warmed',
  'not-rinsed',
  'mile-high',
  'boiling',
  'used-boiling',
  'altitude',
  'back',
  'start-over',
  'ask-shop',
  'shop-desk',
  'about',
  'yes',
  'no',
  'thanks',
  'goodbye',
  'hello',
  'correct',
  'follow-up',
  'why',
  'forget-me',
  'my-data',
  'other-device',
  'want-en',
  'want-zh-Hant',
  'want-zh-Hans',
  'want-zh',
  'stock-before',
  'stock-after',
  'dose',
  'left',
  'big',
] as const;
export type CueName = (typeof cueNames)[number];
