/** Reads what a shop says of itself: data/shop/shop.yaml, or the same file of the folder that NINTHPOUR_SHOP names. */
import { join } from 'node:path';
import { z } from 'zod';
import { readYaml } from './yaml-file.ts';

const inThreeLanguages = z.strictObject({
  en: z.string().min(1),
  'zh-Hant': z.string().min(1),
  'zh-Hans': z.string().min(1),
});

const shopSchema = z.strictObject({
  name: inThreeLanguages,
  /** IANA time zone. */
  zone: z.string().min(1),
  /** Metres above sea level. */
  elevationM: z.number().min(-430, 'expected −430 to 5,500 metres').max(5500, 'expected −430 to 5,500 metres'),
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
