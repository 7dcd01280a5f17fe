/** What a number is, told by what stands right before it and right behind (data/reading/beside-numbers.yaml tells how a line is written). */
import type { Measure } from './measures.ts';
import { lazily } from '../../lazily.ts';
import { sourceOf } from '../cues/cue-set.ts';
import { makeSieve } from '../cues/sieve.ts';
import { after, before } from '../nearby.ts';

export const signNames = [
  'size-of-another',
  'filled-to',
  'half-filled',
  'six-tenths-filled',
  'two-thirds-filled',
  'seven-tenths-filled',
  'three-quarters-filled',
  'no-size',
  'size',
  'leaf-ounce',
  'put-in',
  'for-a-vessel',
  'dose-of-a-packet',
  'leaf-left',
  'leaf-named',
  'spoon-for-each',
  'no-drawing',
  'some-degrees',
  'or-another',
  'boils-there',
  'no-heat-wished',
  'heat',
  'height',
  'height-behind',
  'no-guests',
  'guests-in-all',
] as const;
export type SignName = (typeof signNames)[number];

/** A line: all that it tells must hold. Patterns are cues'. */
export interface SignWords {
  readonly before?: string | undefined;
  readonly behind?: string | undefined;
  /** All that stands between the number and a vessel. */
  readonly toVessel?: string | undefined;
  /** Anywhere in the text, or nowhere. */
  readonly said?: string | undefined;
  readonly unsaid?: string | undefined;
  readonly least?: number | undefined;
  readonly most?: number | undefined;
  readonly digits?: true | undefined;
  /** One is named somewhere. */
  readonly vessel?: true | undefined;
  readonly tea?: true | undefined;
}

export interface Span {
  readonly start: number;
  readonly end: number;
}

/** The text, and where in it vessels and teas are named. */
export interface NumberScene {
  readonly plain: string;
  readonly vessels: readonly Span[];
  readonly teas: readonly Span[];
}

export interface Signs {
  /** Whether what is beside this number tells so. */
  tell(sign: SignName, scene: NumberScene, number: Measure): boolean;
}

/** So far a pattern looks. */
const ahead = 80;
const behind = 80;
/** So far a vessel is looked for. */
const nearVessel = 24;

type Test = (text: string) => boolean;
type Told = (scene: NumberScene, number: Measure) => boolean;

export function makeSigns(words: { readonly [sign in SignName]: readonly SignWords[] }, sieve = makeSieve()): Signs {
  const find = (pattern: string | undefined, framed: (source: string) => string): Found | null => {
    if (pattern === undefined) return null;
    const { source } = sourceOf(pattern);
    const mayHold = sieve.add([source]);
    const regex = lazily(() => new RegExp(framed(source)));
    return { mayHold, holds: (text) => regex().test(text) };
  };
  const lines = new Map(signNames.map((name) => [name, words[name].map((line) => toldBy(line, find))]));
  return { tell: (sign, scene, number) => lines.get(sign)?.some((told) => told(scene, number)) ?? false };
}

interface Found {
  /** Whether a text may hold it anywhere. */
  readonly mayHold: Test;
  readonly holds: Test;
}

type Find = (pattern: string | undefined, framed: (source: string) => string) => Found | null;

/** A word of Latin letters ends where they end. */
const wordStart = '(?<![a-z0-9](?=[a-z0-9]))';
const wordEnd = '(?!(?<=[a-z0-9])[a-z0-9])';

function toldBy(line: SignWords, find: Find): Told {
  const { least = -Infinity, most = Infinity, digits, vessel, tea } = line;
  const said = find(line.said, anywhere);
  const unsaid = find(line.unsaid, anywhere);
  const stands = [
    standing(
      find(line.before, (source) => `${wordStart}(?:${source})\\s?$`),
      ({ plain }, { start }) => before(plain, start, ahead),
    ),
    standing(
      find(line.behind, (source) => `^\\s?(?:${source})${wordEnd}`),
      ({ plain }, { end }) => after(plain, end, behind),
    ),
    toVessel(find(line.toVessel, (source) => `^(?:${source})$`)),
  ].filter((told) => told !== null);
  return (scene, number) =>
    number.value >= least &&
    number.value <= most &&
    (digits === undefined || number.digits) &&
    (vessel === undefined || scene.vessels.length > 0) &&
    (tea === undefined || scene.teas.length > 0) &&
    stands.every((told) => told(scene, number)) &&
    (said === null || isIn(said, scene)) &&
    (unsaid === null || !isIn(unsaid, scene));
}

const anywhere = (source: string): string => `${wordStart}(?:${source})${wordEnd}`;
const isIn = ({ mayHold, holds }: Found, { plain }: NumberScene): boolean => mayHold(plain) && holds(plain);

type Part = (scene: NumberScene, number: Measure) => string;

const standing = (found: Found | null, part: Part): Told | null =>
  found && ((scene, number) => found.mayHold(scene.plain) && found.holds(part(scene, number)));

const toVessel = (found: Found | null): Told | null =>
  found &&
  (({ plain, vessels }, { start, end }) =>
    vessels.some((vessel) => {
      const between = vessel.start >= end ? plain.slice(end, vessel.start) : plain.slice(vessel.end, start);
      return between.length <= nearVessel && found.holds(between);
    }));
