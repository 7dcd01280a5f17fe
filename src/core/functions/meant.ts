/** What is meant by few words beside what is known: "the big one" of somebody's vessels, or a tea nobody can name. */
import type { Calls } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import type { Tea } from '../teas/tea.ts';
import { listOf, textOf } from './values.ts';

export const meantCallNames = ['sizeMeant', 'familyOfAll', 'oneOfThese', 'teasOf'] as const;

/** More are no help to whoever must choose. Judgement. */
const mostShown = 8;

export const meantCalls = (
  teas: readonly Tea[],
): { readonly [name in (typeof meantCallNames)[number]]: Calls[string] } => ({
  sizeMeant: ({ word = null, vessel = null, volumeMl = null, sizes = null }, { memory }) => {
    const own = ownMeant(listOf(memory['vessels']), { word, vessel, volumeMl });
    if (own) return { gives: { vessel: own['vessel'] ?? null, volumeMl: own['volumeMl'] ?? null, isOwn: true } };
    return { gives: { vessel, volumeMl: shownMeant((sizes ?? []) as readonly number[], word), isOwn: false } };
  },
  /** The family of a tea, or of several if they are of one. */
  familyOfAll: ({ tea = null, teas: several = null }) => {
    const ids = (tea === null ? (several ?? []) : [tea]) as readonly string[];
    const families = new Set(ids.map((id) => teas.find((one) => one.id === id)?.family));
    const [family = null] = families;
    return { gives: families.size === 1 ? family : null };
  },
  /** The first of a family that can be planned. */
  teasOf: ({ family = null }) => ({
    gives: teas
      .filter((tea) => tea.family === family)
      .slice(0, mostShown)
      .map(({ id }) => id),
  }),
  /** Which of several teas a few words tell. */
  oneOfThese: ({ teas: ids = null, text = null }) => {
    const several = ((ids ?? []) as readonly string[]).flatMap((id) => teas.find((tea) => tea.id === id) ?? []);
    const meant = toldApart(several, textOf(text));
    return { gives: meant === null ? null : { tea: meant.id, family: meant.family } };
  },
});

/** 熟的, where 熟普洱 and 生普洱 are meant: the one whose name alone begins with what is said first. */
function toldApart(several: readonly Tea[], text: string): Tea | null {
  const first =
    /^(?:那就?|就|要|是|用|系|係|我的?是?|喝|飲|饮|选|選)*(\p{Script=Han})(?:的|嘅|茶|那[个個款]|[个個款]|啦|吧|[\s，,]|$)/u.exec(
      text.trim(),
    )?.[1];
  if (first === undefined) return null;
  const named = several.filter(({ names }) =>
    [names['zh-Hant'], names['zh-Hans']].some((name) => name.includes(first)),
  );
  return named.length === 1 ? (named[0] ?? null) : null;
}

const sizeOf = (one: Facts): number => Number(one['volumeMl'] ?? 0);

/** Of their own vessels: of the same kind where one is chosen, else of all. Two at least, or there is nothing to tell apart. */
function ownMeant(own: readonly Facts[], { word, vessel, volumeMl }: Facts): Facts | null {
  const others = own.filter((one) => one['vessel'] !== vessel || one['volumeMl'] !== volumeMl);
  if (word === 'other') return own.length > 1 ? (others[0] ?? null) : null;
  const alike = own
    .filter((one) => vessel === null || one['vessel'] === vessel)
    .toSorted((a, b) => sizeOf(a) - sizeOf(b));
  const meant = word === 'big' ? alike.at(-1) : word === 'small' ? alike[0] : null;
  return alike.length > 1 && meant && sizeOf(meant) !== volumeMl ? meant : null;
}

/** Of the sizes shown beside the question: the last, the first, or the second, which most have. Common practice, no source. */
function shownMeant(sizes: readonly number[], word: Json): number | null {
  if (word === 'big') return sizes.at(-1) ?? null;
  return (word === 'small' ? sizes[0] : word === 'middle' ? sizes[1] : null) ?? null;
}
