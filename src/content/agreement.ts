/** Whether the files of the data agree: what one names another must have, and no name is ours in one and a stranger's in another. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { BrewingData } from '../core/brewing/brewing-data.ts';
import type { TeaNames } from '../core/teas/find.ts';
import { plainText } from '../core/teas/plain-text.ts';
import type { Tea } from '../core/teas/tea.ts';
import type { ReadingWords } from '../core/reading/reading-words.ts';
import { wares } from '../core/reading/ware.ts';
import { noteTogether, rightTogether } from './kept.ts';
import type { Shop } from './shop-data.ts';
import { placeOfText, readText } from './yaml-file.ts';

export interface DataRead {
  readonly dataDir: string;
  readonly shopDir: string;
  readonly teas: readonly Tea[];
  readonly names: TeaNames;
  readonly brewing: BrewingData;
  readonly readingWords: Pick<ReadingWords, 'vessels' | 'materials'>;
  readonly shop: Shop;
}

/** One line for each thing in which two files differ. */
export function disagreements(data: DataRead): readonly string[] {
  const texts = Object.values(filesOf(data))
    .filter((file) => existsSync(file))
    .map(readText);
  if (rightTogether(texts)) return [];
  const found = [...ofTeas(data), ...ofNames(data), ...ofVessels(data)];
  if (found.length === 0) noteTogether(texts);
  return found;
}

const filesOf = ({ dataDir, shopDir }: Pick<DataRead, 'dataDir' | 'shopDir'>) => ({
  catalogue: join(dataDir, 'teas', 'catalogue.yaml'),
  familyWords: join(dataDir, 'teas', 'family-words.yaml'),
  families: join(dataDir, 'families.yaml'),
  forms: join(dataDir, 'leaf-forms.yaml'),
  vessels: join(dataDir, 'vessels.yaml'),
  vesselWords: join(dataDir, 'reading', 'vessels.yaml'),
  shop: join(shopDir, 'shop.yaml'),
});

/** Looks for an id in a list of those there are. */
function unknown(file: string, what: string, [id, known]: readonly [string, readonly string[]]): readonly string[] {
  return known.includes(id) ? [] : [`${placeOfText(file, id)} expected ${what} (${known.join(', ')}), not "${id}"`];
}

function ofTeas(data: DataRead): readonly string[] {
  const { catalogue, familyWords, families } = filesOf(data);
  const familyIds = Object.keys(data.brewing.families);
  const formIds = Object.keys(data.brewing.forms);
  const teaIds = data.teas.map(({ id }) => id);
  const family = 'a family of data/families.yaml';
  const form = 'a form of data/leaf-forms.yaml';
  return [
    ...data.teas.flatMap((tea) => [
      ...unknown(catalogue, family, [tea.family, familyIds]),
      ...unknown(catalogue, form, [tea.form, formIds]),
      ...tooHot(catalogue, tea, data.brewing),
    ]),
    ...Object.values(data.brewing.families).flatMap((one) => unknown(families, form, [one.form, formIds])),
    ...data.names.families.flatMap((row) => [
      ...unknown(familyWords, family, [row.family, familyIds]),
      ...Object.keys(row.kinds).flatMap((tea) => unknown(familyWords, 'the id of a tea', [tea, teaIds])),
    ]),
  ];
}

/** No plan would use such water, and nobody would know why. */
function tooHot(file: string, { id, family, leaf }: Tea, { families }: BrewingData): readonly string[] {
  const highestC = families[family as keyof typeof families]?.highestC ?? Infinity;
  if ((leaf?.waterC ?? 0) <= highestC) return [];
  return [`${placeOfText(file, id)} expected no hotter water for "${id}" than highestC of its family, ${highestC}`];
}

/** A tea newly in the catalogue may have stood among the teas we have no data for: then nobody would be understood. */
function ofNames(data: DataRead): readonly string[] {
  const { familyWords } = filesOf(data);
  const ours = new Map(
    data.teas.flatMap((tea) =>
      [tea.id, ...Object.values(tea.names), ...tea.aliases].map((name) => [folded(name), tea.id] as const),
    ),
  );
  return data.names.families.flatMap(({ teas }) =>
    teas
      .filter((name) => ours.has(folded(name)))
      .map((name) => {
        const id = ours.get(folded(name));
        return `${placeOfText(familyWords, name)} expected no name of ours: "${name}" is ${id} of data/teas/catalogue.yaml`;
      }),
  );
}

const folded = (name: string): string => plainText(name).plain.replaceAll(/[^\p{L}\p{N}]/gu, '');

function ofVessels(data: DataRead): readonly string[] {
  const { vessels, vesselWords, shop } = filesOf(data);
  const ids = Object.keys(data.brewing.vessels);
  const told = new Set(data.readingWords.vessels.flatMap((row) => row.vessel ?? []));
  const heard = new Set<string>([...told, ...wares]);
  const named = [...told, ...data.readingWords.materials.map((row) => row.pot)];
  const what = 'a vessel of data/vessels.yaml';
  return [
    ...named.flatMap((id) => unknown(vesselWords, what, [id, ids])),
    ...ids
      .filter((id) => !heard.has(id))
      .map((id) => `${placeOfText(vessels, id)} expected what people call "${id}" in data/reading/vessels.yaml`),
    ...unknown(shop, what, [data.shop.usual.vessel, ids]),
  ];
}
