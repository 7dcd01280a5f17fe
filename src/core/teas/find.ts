/** The tea a person means. Two that fit, or a tea we don't have, is an answer too: never a guess. */
import { makeNameIndex, type Mention, type Name, type NameIndex } from './name-index.ts';
import { plainText } from './plain-text.ts';
import type { Tea } from './tea.ts';

/** Words that tell a family, and teas we have no data for (data/teas/family-words.yaml). */
export interface FamilyWords {
  readonly family: string;
  readonly words: readonly string[];
  readonly teas: readonly string[];
  /** Tea id → words that, beside these, tell that tea. */
  readonly kinds: { readonly [tea: string]: readonly string[] };
}

export interface TeaNames {
  readonly families: readonly FamilyWords[];
  /** Phrases that hold a tea's name and mean no tea. */
  readonly nothing: readonly string[];
  /** Everyday words that are never a misspelt name. */
  readonly ordinary: readonly string[];
  /** Groups of Han characters one of which is often written for another (data/teas/han-slips.yaml). */
  readonly alike: readonly string[];
}

export type Meaning =
  | { readonly is: 'tea'; readonly tea: Tea }
  | { readonly is: 'other-tea'; readonly family: string }
  | { readonly is: 'family'; readonly family: string; readonly words: FamilyWords }
  | { readonly is: 'nothing' };

export interface Found {
  /** Null when none fits, and when two do. */
  readonly best: Tea | null;
  readonly candidates: readonly Tea[];
  readonly family: string | null;
  /** The name of a tea that is none of ours, as the plain text has it: where it begins and ends. */
  readonly other: { readonly start: number; readonly end: number } | null;
}

export interface TeaFinder {
  find(text: string): Found;
  byId(id: string): Tea | null;
  /** The Latin words of all names, each once. */
  words(): readonly string[];
  /** Every name in a plain text (plainText), in order. */
  mentions(plain: string): Mention<Meaning>[];
  /** What these mentions of this plain text come to. */
  conclude(plain: string, mentions: readonly Mention<Meaning>[]): Found;
}

/** The id of a tea that others may count on: none for one known by its kind alone. */
export const teaInItself = (finder: Pick<TeaFinder, 'byId'>, id: string | null): string | null =>
  id !== null && finder.byId(id)?.byKind ? null : id;

const noNames: TeaNames = { families: [], nothing: [], ordinary: [], alike: [] };

/** Colours name families, and much else; beside a word that says more they count for nothing. */
const colours = new Set(['green', 'white', 'black']);

/** A tea of the first family may be called by the second as well ("jasmine green tea", "black puer"). */
const goesTogether: { readonly [family: string]: readonly string[] } = {
  scented: ['green', 'white', 'oolong', 'black', 'dark'],
  dark: ['black', 'green'],
  matcha: ['green'],
  herbal: ['scented', 'green'],
};

export function makeTeaFinder(teas: readonly Tea[], names: TeaNames = noNames): TeaFinder {
  const ids = new Map(teas.map((tea) => [tea.id, tea]));
  let made: NameIndex<Meaning> | null = null;
  // Made at the first need: a start stays short.
  const index = (): NameIndex<Meaning> =>
    (made ??= makeNameIndex(allNames(teas, names), new Set(names.ordinary), names.alike.map(folded)));

  function conclude(plain: string, mentions: readonly Mention<Meaning>[]): Found {
    const named = new Map<string, Tea>();
    const families = new Set<string>();
    const general = mentions.flatMap((m) => (m.meaning.is === 'family' ? [{ ...m, meaning: m.meaning }] : []));
    const others = mentions.filter(
      (m) =>
        m.meaning.is === 'other-tea' &&
        !isAdded(plain, m.start) &&
        !isMadeOf(plain, m, mentions) &&
        !isMixedIn(plain, m, mentions),
    );
    for (const mention of mentions) {
      if (mention.meaning.is !== 'tea') continue;
      const { tea } = mention.meaning;
      const after = general.find((g) => touches(plain, mention, g))?.meaning.family;
      if (after && after !== tea.family && !goesTogether[tea.family]?.includes(after)) families.add(after);
      else named.set(tea.id, tea);
      for (const { family, words } of setBeside(plain, mention, tea, general)) {
        families.add(family);
        for (const id of Object.keys(words.kinds)) named.set(id, ids.get(id) ?? tea);
      }
    }
    for (const id of general.flatMap((g) => kindsBeside(plain, g))) {
      const tea = ids.get(id);
      if (tea) named.set(id, tea);
    }
    const first = [...named.values()].length > 1 ? firstOf(plain, mentions) : null;
    const candidates = first === null ? [...named.values()] : [first];
    const best = candidates.length === 1 && others.length === 0 && families.size === 0 ? (candidates[0] ?? null) : null;
    for (const tea of candidates) families.add(tea.family);
    for (const { meaning } of others) if (meaning.is === 'other-tea') families.add(meaning.family);
    if (families.size === 0) for (const family of generalFamilies(plain, general)) families.add(family);
    const meant = candidates.length > 0 || others.length > 0 ? candidates : kindsUnsaid(general);
    const other = others[0] ? { start: others[0].start, end: others[0].end } : null;
    return { best, candidates: meant, family: families.size === 1 ? ([...families][0] ?? null) : null, other };
  }

  /** "puer" and no more: ripe or raw is for the person to say. */
  function kindsUnsaid(general: readonly FamilyMention[]): Tea[] {
    const kinds = new Set(general.flatMap(({ meaning }) => Object.keys(meaning.words.kinds)));
    return [...kinds].flatMap((id) => ids.get(id) ?? []);
  }

  return {
    byId: (id) => ids.get(id) ?? null,
    words: () => [...new Set(allNames(teas, names).flatMap(({ text }) => text.match(/[a-z]+/g) ?? []))],
    mentions: (plain) => index().mentions(plain),
    conclude,
    find(text) {
      const { plain } = plainText(text);
      return conclude(plain, index().mentions(plain));
    },
  };
}

/** "Chrysanthemum with goji": what is put in besides is another name, and no other tea. */
const isAdded = (plain: string, start: number): boolean =>
  /(?:\bwith|\bplus|\band (?:some|a few|a little|a bit of)|\+|加|配|放)(?: (?:some|a few|a little|dried|of|a bit of))* ?(?:点|些|几[粒颗片])?$/.test(
    plain.slice(Math.max(0, start - 24), start),
  );

/** "Chai with your assam": what is made of a tea that is named. */
const isMadeOf = (plain: string, { end }: Mention<Meaning>, mentions: readonly Mention<Meaning>[]): boolean =>
  mentions.some(({ meaning, start }) => meaning.is === 'tea' && start > end && madeOf.test(plain.slice(end, start)));
const madeOf = /^ (?:made )?(?:with|from|using|out of|of) (?:the |my |your |some |this |that )?$/;

/** 枸杞普洱: with the name of a tea right behind it, it goes in besides. */
const isMixedIn = (plain: string, mention: Mention<Meaning>, mentions: readonly Mention<Meaning>[]): boolean =>
  isAddition.test(plain.slice(mention.start, mention.end)) &&
  mentions.some((one) => isOfLeaf(one) && touches(plain, mention, one));

const isOfLeaf = ({ meaning }: Mention<Meaning>): boolean =>
  meaning.is === 'tea' ? meaning.tea.family !== 'herbal' : meaning.is === 'family' && meaning.family !== 'herbal';

/** 菊花枸杞普洱: nothing between but what goes in besides. */
const touches = (plain: string, { end }: Mention<Meaning>, { start }: Mention<Meaning>): boolean =>
  start >= end && (start - end <= 1 || onlyAdditions.test(plain.slice(end, start)));

/** "Start with the dong ding": of several, that one first. */
function firstOf(plain: string, mentions: readonly Mention<Meaning>[]): Tea | null {
  const first = mentions.find(({ start }) => goesFirst.test(plain.slice(Math.max(0, start - 32), start)));
  return first?.meaning.is === 'tea' ? first.meaning.tea : null;
}
const goesFirst =
  /\b(?:start(?:ing)?|begin(?:ning)?|go|going|first) (?:with|off with|up|is|comes|:)(?: (?:the|my|that|this))? $|(?:先(?:来|泡|喝|试)|从)$/;

type FamilyMention = Mention<Extract<Meaning, { is: 'family' }>>;

const addition =
  '(?:(?:goji|wolf ?berries)(?: berries)?|red dates?|jujubes?|rose ?buds?|ginger|honey|lemon|(?:orange|tangerine) peel|枸杞子?|红枣|桂圆|姜片?|蜂蜜|陈皮)';
const isAddition = new RegExp(`^${addition}$`);
const onlyAdditions = new RegExp(`^${addition}+$`);
const joining = new RegExp(
  `^\\s?(?:(?:with|and|plus|加|和|、|,)?\\s?(?:some |a few )?${addition},?\\s?)*(?:同|和|跟|与|加|定系?|还是|或者?|、|and|or|plus)\\s?$`,
);
const withIt = /^ with(?: (?:some|a bit of|a little|a few))? (?:dried |fresh )?$/;

/** 普洱同菊花, "puer with chrysanthemum", "chrysanthemum with goji and puer": families named together with a tea. */
const setBeside = (
  plain: string,
  { start, end }: Mention<Meaning>,
  { family }: Tea,
  general: readonly FamilyMention[],
): FamilyMention['meaning'][] => {
  const isHerb = family === 'herbal';
  const isJoined = (between: string): boolean => joining.test(between) || (isHerb && withIt.test(between));
  return general
    .filter((g) => isJoined(g.start >= end ? plain.slice(end, g.start) : plain.slice(g.end, start)))
    .map(({ meaning }) => meaning)
    .filter(
      ({ family: other }) =>
        other !== family && (isHerb ? other !== 'scented' : !goesTogether[family]?.includes(other)),
    );
};

/** 生熟普洱 tells of both kinds, not of the one that touches. */
const both = /[生熟][、和与及跟]?[生熟]/;

function kindsBeside(plain: string, mention: FamilyMention): string[] {
  if (both.test(plain.slice(Math.max(0, mention.start - 3), mention.end + 3))) return [];
  const around = `${plain.slice(Math.max(0, mention.start - 40), mention.start)} | ${plain.slice(mention.end, mention.end + 40)}`;
  return Object.entries(mention.meaning.words.kinds)
    .filter(([, words]) => words.some((word) => holdsWord(around, word)))
    .map(([tea]) => tea);
}

/** A Latin word stands free; a single Han character must touch the name, so that 生 of 先生 tells nothing. */
function holdsWord(around: string, word: string): boolean {
  const plain = plainText(word).plain;
  if (/[a-z]/.test(plain)) return ` ${around.replace(/[^a-z]+/g, ' ')} `.includes(` ${plain} `);
  return plain.length > 1 ? around.includes(plain) : around.includes(`${plain} |`) || around.includes(`| ${plain}`);
}

/** "oolong or black": a colour that is set against another family says one. */
const isChoice = (plain: string, start: number): boolean => /\b(?:or|vs\.?|versus) $/.test(plain.slice(0, start));

/** Two general words of which one is only a colour come to the other; two that say different things come to both. */
function generalFamilies(plain: string, general: readonly FamilyMention[]): Set<string> {
  const isColour = (g: FamilyMention): boolean => colours.has(plain.slice(g.start, g.end));
  const telling = general.filter((g) => !isColour(g) || isChoice(plain, g.start));
  return new Set((telling.length > 0 ? telling : general).map((g) => g.meaning.family));
}

const folded = (han: string): string => plainText(han).plain;

function allNames(teas: readonly Tea[], names: TeaNames): Name<Meaning>[] {
  const all: Name<Meaning>[] = [];
  const add = (texts: readonly string[], id: string, meaning: Meaning): void => {
    for (const text of texts) all.push({ text: plainText(text).plain, id, meaning });
  };
  for (const tea of teas) add([tea.id, ...Object.values(tea.names), ...tea.aliases], tea.id, { is: 'tea', tea });
  for (const words of names.families) {
    const { family } = words;
    add(words.words, `family ${family}`, { is: 'family', family, words });
    for (const tea of words.teas) add([tea], `other ${plainText(tea).plain}`, { is: 'other-tea', family });
  }
  add(names.nothing, 'nothing', { is: 'nothing' });
  return all;
}
