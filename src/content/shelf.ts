/** Reads data/shop/shelf.yaml: which teas stand on the shelf, and so need a label. */
import { join } from 'node:path';
import { z } from 'zod';
import type { Tea } from '../core/teas/tea.ts';
import { ContentMistake, readYaml } from './yaml-file.ts';

export const shelfFile = (shopDir: string): string => join(shopDir, 'shelf.yaml');

export function readShelf(shopDir: string, teas: readonly Tea[]): readonly Tea[] {
  return readShelfFile(shelfFile(shopDir), teas);
}

/** In the order of the file. Throws ContentMistake, also for a tea the catalogue doesn't have or that is there twice. */
export function readShelfFile(path: string, teas: readonly Tea[]): readonly Tea[] {
  const file = readYaml(path, z.array(z.string()).min(1, 'expected a tea at least'));
  const { value } = file;
  const wrong = value.flatMap((id, i) => {
    if (!teas.some((tea) => tea.id === id)) return [`${file.at([i])} expected the id of a tea, not "${id}"`];
    return value.indexOf(id) < i ? [`${file.at([i])} "${id}" is there twice`] : [];
  });
  if (wrong.length > 0) throw new ContentMistake(wrong.join('\n'));
  return value.flatMap((id) => teas.filter((tea) => tea.id === id));
}
