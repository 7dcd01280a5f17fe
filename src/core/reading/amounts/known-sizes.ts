/** What a vessel holds, told by something everybody knows: "like a coke can", 一碗飯那麼大 (data/reading/known-sizes.yaml). It is told back as a guess. */
import { framed, sourceOf } from '../cues/cue-set.ts';

export interface KnownSize {
  readonly ml: number;
  /** Patterns, as cues are. */
  readonly like: readonly string[];
}

export interface KnownSizes {
  /** Of a plain text that says how much the vessel holds. */
  ofThing(plain: string): number | null;
  /** "A pot the size of an orange", told with the rest: the thing right behind. */
  named(plain: string): number | null;
}

/** "Bigger than a can" tells no size, and 換成飯碗 another vessel. */
const isCompared =
  /[换改用]|\b(?:use|using|instead|switch)\b|\b(?:bigger|smaller|more|less|larger) than\b|比.{1,12}[大小多少]|没有?.{1,10}那么大/;
/** Longer texts tell more than that. */
const longest = 40;
const asBigAs =
  /\b(?:(?:about |around |roughly )?the size of|as big as|big as|no bigger than|the same size as) (?:an?|my|one) (?:small |large |big |little |normal )?([a-z]+(?: [a-z]+)?)/;

export function makeKnownSizes(sizes: readonly KnownSize[]): KnownSizes {
  const things = sizes.map(({ ml, like }) => ({
    ml,
    said: new RegExp(like.map((one) => framed(sourceOf(one))).join('|')),
  }));
  return {
    ofThing(plain) {
      if (plain.length > longest || /\d/.test(plain) || isCompared.test(plain)) return null;
      return things.find(({ said }) => said.test(plain))?.ml ?? null;
    },
    named(plain) {
      const thing = asBigAs.exec(plain)?.[1];
      return thing === undefined ? null : (things.find(({ said }) => said.exec(thing)?.index === 0)?.ml ?? null);
    },
  };
}
