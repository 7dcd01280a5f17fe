/** Reads what a shop says of itself: data/shop/shop.yaml, or the same file of the folder that NINTHPOUR_SHOP names. */
import { join } from 'node:path';
import { z } from 'zod';
import { zoneNamed } from '../core/lessons/calendar.ts';
import { inEachLanguage } from './in-each-language.ts';
import { readYaml } from './yaml-file.ts';

const shopSchema = z.strictObject({
  name: inEachLanguage(z.string().min(1)),
  /** IANA time zone. */
  zone: z.string().refine((zone) => zoneNamed(zone) !== undefined, 'expected a time zone such as America/Denver'),
  /** Metres above sea level. */
  elevationM: z.number().min(-430, 'expected −430 to 5,500 metres').max(5500, 'expected −430 to 5,500 metres'),
  /** When shopkeepers are told what the day brings, by the shop's clock; without it they are not. */
  morning: z
    .string()
    .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'expected a time such as "07:30"')
    .optional(),
  /** The vessel its labels show a plan for. */
  usual: z.strictObject({ vessel: z.string().min(1), volumeMl: z.number().positive() }),
});

export type Shop = z.output<typeof shopSchema>;

/** Throws ContentMistake. */
export function readShop(shopDir: string): Shop {
  return readYaml(join(shopDir, 'shop.yaml'), shopSchema).value;
}

/** What is known of whoever brews at the shop: its usual vessel, its height. */
export function atTheShop({ usual, elevationM }: Shop): { readonly [name: string]: string | number | boolean } {
  return { ...usual, elevationM, usual: true };
}

export function morningOf({ morning, zone }: Shop): { readonly time: string; readonly zone: string } | null {
  return morning === undefined ? null : { time: morning, zone };
}
