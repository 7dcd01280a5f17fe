/** A tea nobody can name: whether its name is lost, and which family it mostly is by how the leaf looks. */
import type { Facts } from '../flow/flow.ts';
import { isTold, says, type Scene } from './scene.ts';
import type { TalkCueName } from './talk-cue-names.ts';

/** Of two that fit the first is meant: little green balls are oolong before they are green. */
const looks: readonly (readonly [cue: TalkCueName, family: string])[] = [
  ['looks-dark', 'dark'],
  ['looks-oolong', 'oolong'],
  ['looks-white', 'white'],
  ['looks-green', 'green'],
  ['looks-herbal', 'herbal'],
  ['looks-black', 'black'],
];

/** Where no tea is named, and it is asked for or said to be without a name. */
export function byItsLook(scene: Scene): Facts {
  const { heard, asked = null } = scene;
  const { kind = null, answer = null } = heard;
  if (kind === 'safety' || kind === 'lesson') return {};
  const isNameless = says('nameless')(scene);
  if (!isNameless && asked !== 'tea') return {};
  const look = looks.find(([cue]) => says(cue)(scene))?.[1] ?? null;
  // "The jar has no label: how long does it keep?"
  const isOther = kind === 'care' && answer !== null && look === null;
  if (isOther || isNamed(scene)) return {};
  const means: Facts = { kind: 'brew', act: null, taste: null, answer: null, nearAnswer: null, unknownTea: null };
  return { ...(isNameless || look !== null ? { ...means, family: null } : {}), isNameless, look };
}

/** A colour is no family, and what was taken for a name nobody knows may be a description: 有白毫. */
function isNamed(scene: Scene): boolean {
  const { heard } = scene;
  if (isTold(heard, 'tea') || isTold(heard, 'teas')) return true;
  if (isTold(heard, 'family')) return says('family-named')(scene);
  return isTold(heard, 'unknownTea') && !says('looks-told')(scene);
}
