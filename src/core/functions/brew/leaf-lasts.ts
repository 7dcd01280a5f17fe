/** How many brews so much leaf is enough for: as planned, or in the vessels most have. It knows nothing of what they have at home. */
import { isMistake } from '../../brewing/schedule.ts';
import type { Around, Calls } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { brewOf } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { numberOf, phrase } from '../values.ts';
import { exampleVessels, ordinaryMl } from './told-ahead.ts';

export const lastsCallNames = ['leafLasts'] as const;

export const lastsCalls = (
  content: CoreContent,
): { readonly [name in (typeof lastsCallNames)[number]]: Calls[string] } => ({
  leafLasts: (given, around) => ({ gives: lasts(content, given, around) }),
});

function lasts(content: CoreContent, { stockG = null, ...given }: Facts, around: Around): Json {
  const stock = numberOf(stockG) ?? 0;
  const own = typeof given['vessel'] === 'string' ? [given['vessel']] : exampleVessels;
  const told = own.flatMap((vessel) => {
    const volumeMl = numberOf(given['volumeMl']) ?? ordinaryMl[vessel] ?? 0;
    const brew = brewOf(content, { ...given, vessel, volumeMl }, around);
    if (isMistake(brew)) return [];
    const { leafG } = brew.plan;
    return [{ vessel, volumeMl, leafG, n: Math.floor(stock / leafG + nearlyOne) }];
  });
  return told.map((one, nth) => phrase('brew-lasts', { nth: nth + 1, stockG: stock, ...one }));
}

/** So little is missing from the last one that nobody tastes it. Judgement. */
const nearlyOne = 0.1;
