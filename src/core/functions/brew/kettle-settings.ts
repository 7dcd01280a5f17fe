/** "My kettle does 80, 90 and 100": which of them to take, and what then. Keeps no state. */
import { mixWay, waitWay } from '../../brewing/kettle.ts';
import { usualHotC } from '../../brewing/leaf-profile.ts';
import type { Around } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { leafFor } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { usualKettleMl } from './plan-told.ts';
import { numberOf, phrase } from '../values.ts';

/** Nobody tastes fewer degrees. Judgement. */
const nearEnoughC = 3;

/**
 * `settings` in °C, `waterC` of a plan or else what is usual for the tea: the one near enough; the next hotter, and how it cools
 * from there; or the hottest there is.
 */
export function kettleSetting(content: CoreContent, given: Facts, { memory }: Around): Json {
  const settings = (given['settings'] ?? []) as readonly number[];
  const wantedC = numberOf(given['waterC']) ?? usualHotC(content.brewing, leafFor(content, given));
  const unit = memory['unit'] ?? null;
  const off = (c: number): number => Math.abs(c - wantedC);
  const nearest = settings.toSorted((a, b) => off(a) - off(b))[0];
  if (nearest === undefined) return null;
  if (off(nearest) <= nearEnoughC) return phrase('brew-kettle-near', { settingC: nearest, wantedC, unit });
  const hotter = settings.filter((c) => c > wantedC);
  if (hotter.length === 0) return phrase('brew-kettle-cooler', { settingC: nearest, wantedC, unit });
  const settingC = Math.min(...hotter);
  const waterMl = numberOf(given['kettleMl']) ?? usualKettleMl;
  const fromThere = { waterC: wantedC, waterMl, boilsAtC: settingC };
  const mixed = mixWay(fromThere);
  const coolMl = (waterMl * mixed.coolMl) / mixed.boilingMl;
  return phrase('brew-kettle-hotter', {
    settingC,
    wantedC,
    waterMl,
    coolMl,
    seconds: waitWay(fromThere).seconds,
    unit,
  });
}
