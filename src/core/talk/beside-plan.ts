/** What is said of a plan that stands: that it shall be as it was, and how many cups of it. It plans nothing. */
import type { Facts, Json } from '../flow/flow.ts';
import { mayBeNoDanger } from './harmless.ts';
import { isTold, says, type Scene } from './scene.ts';
import type { TalkCueName } from './talk-cue-names.ts';

/** "-3 min ago" is no time. */
export const belowZero = /(?<![^\s(])[-−]\s?\d[\d.,]*/g;

/** "Go back to how it was", beside a plan that was changed. */
export function undoesThePlan(scene: Scene): boolean {
  const { flow, asked = null } = scene;
  return flow === 'brew' && asked === null && (says('undo')(scene) || says('as-it-was')(scene));
}

/** "Something like da hong pao, but lighter": another tea, and in which way it shall be another. */
function likeAnother(scene: Scene): 'alike' | 'lighter' | 'darker' | null {
  const { heard } = scene;
  const mayBe = !careful.has(heard['kind'] ?? null) && !isTold(heard, 'vessel') && !isTold(heard, 'volumeMl');
  if (!mayBe || !says('like-another')(scene)) return null;
  if (says('but-lighter')(scene)) return 'lighter';
  return says('but-darker')(scene) ? 'darker' : 'alike';
}
/** "Alishan or dong ding, what's the difference?" */
const comparesTeas = (scene: Scene): boolean => !careful.has(scene.heard['kind'] ?? null) && says('compares')(scene);

const careful: ReadonlySet<Json> = new Set(['safety', 'lesson']);

/** 一包是3公克: what one bag holds is no dose, where how many is asked. */
export const weighsEach = (scene: Scene): boolean => says('asks-how-many-bags')(scene) && says('one-bag-weighs')(scene);

/** How many bags; none where no number is told, null where it is of no bags. */
export const bagsTold = (scene: Scene): number | null =>
  says('tea-bags')(scene) && !weighsEach(scene) ? (scene.cues.numberIn('tea-bags', scene.words) ?? 0) : null;

export const tellsOfTheLeaf = ({ heard }: Scene): boolean =>
  ['packets', 'tellsAge', 'leafBy'].some((name) => isTold(heard, name));

/** The number in it, where the plan stands and nothing is asked. */
function besideIt(cue: TalkCueName, { words, flow, asked = null, cues }: Scene): number | null {
  return flow === 'brew' && asked === null && cues.says(cue, words) ? cues.numberIn(cue, words) : null;
}

/** 兩包, beside a plan for bags. */
function packets(scene: Scene): number | null {
  const n = besideIt('so-many-bags', scene);
  return n !== null && n >= 1 && n <= mostPackets ? n : null;
}
const mostPackets = 9;

/** "Make it two cups." */
function cupsWanted(scene: Scene): number | null {
  const n = besideIt('makes-cups', scene);
  return n !== null && n >= 1 && n <= mostCups ? n : null;
}
const mostCups = 20;

/** 大概10年的, beside a plan: how old the leaf is. */
function tellsAge(scene: Scene): boolean {
  const years = besideIt('tells-age', scene);
  return years !== null && years <= mostYears;
}
/** More is the year it was made in. */
const mostYears = 99;

/** What the reader can only guess at is, beside a plan, said of it: an answer by few words, a taste with no word of the cup. What may be of harm is left as it was heard. */
export function isFarFetched(scene: Scene): boolean {
  const { heard, words, flow, asked = null } = scene;
  const besidePlan = (flow === 'brew' || flow === 'guide') && asked === null;
  if (!besidePlan || words.length > longestGuess || inHan.test(words) || isNamed(scene)) return false;
  const { kind = null, answer = null, taste = null } = heard;
  if (kind === 'care') return heard['faintAnswer'] === true;
  return kind === 'taste' && flow === 'brew' && taste === null && answer === null && !says('of-the-cup')(scene);
}
/** A tea that is named by its label, or asked for by its family. */
const isNamed = (scene: Scene): boolean =>
  scene.heard['asksWhich'] === true || says('is-called')(scene) || says('label-says')(scene);
/** Measured on English alone. */
const inHan = /\p{Script=Han}/u;
/** Longer texts give more to go by. */
const longestGuess = 60;

/** "Too strong, I usually drink it weak", beside a plan of which nothing was drunk yet. */
export function likesIt(how: 'light' | 'strong'): (scene: Scene) => boolean {
  return (scene) => {
    const { flow, asked = null, words, heard } = scene;
    const ofThePlan = flow === 'brew' && asked === null && (heard['kind'] === 'taste' || mayBeNoDanger(heard));
    return (
      ofThePlan &&
      words.length <= longestLiking &&
      says(`likes-it-${how}`)(scene) &&
      !(says('likes-it-light')(scene) && says('likes-it-strong')(scene))
    );
  };
}
const longestLiking = 80;

/** Written in a language that nobody reads here: two of its words, and no danger heard through them. */
function isForeign({ heard, words, cues }: Scene): boolean {
  if (heard['isWarned'] === true) return false;
  const said = cues.spans('foreign-words', words).map(({ start, end }) => words.slice(start, end));
  return new Set(said).size >= leastForeign;
}
const leastForeign = 2;

/** "Is five cups of that ok?" */
function manyCups({ words, cues }: Scene): number | null {
  const cups = cues.says('so-many-cups', words) ? cues.numberIn('so-many-cups', words) : null;
  return cups === null || cups < 1 ? null : cups;
}

/** "Isn't there a simpler way?", beside a plan, and nothing of another. */
export function wantsSimpler(scene: Scene): boolean {
  const { flow, heard, words } = scene;
  const isElse = ['tea', 'vessel', 'volumeMl'].some((name) => isTold(heard, name)) || heard['kind'] === 'safety';
  return flow === 'brew' && !isElse && words.length <= longestLiking && says('wants-simpler')(scene);
}

/** "How many cups is that?" */
export function asksYield(scene: Scene): boolean {
  const isOfTea = scene.heard['kind'] !== 'safety' || mayBeNoDanger(scene.heard);
  return isOfTea && says('asks-yield')(scene) && !says('of-lessons')(scene);
}

/** 好 我重新燒, beside a plan: nothing is asked. */
export const isAtWork = (scene: Scene): boolean =>
  scene.flow === 'brew' &&
  (scene.heard['kind'] === 'care' || scene.heard['kind'] === 'offtopic') &&
  !isTold(scene.heard, 'answer') &&
  says('at-work')(scene);

/** 那拿掉兩克: so much less of the leaf, or more, and no dose. */
function leafBy(scene: Scene): number | null {
  const less = besideIt('less-leaf-by', scene);
  return less === null ? besideIt('more-leaf-by', scene) : -less;
}

/** In which degrees somebody counts, if that is told. */
export const degrees = (scene: Scene): Json => {
  if (says('fahrenheit')(scene)) return 'F';
  if (says('celsius')(scene)) return 'C';
  return kettleInF.test(scene.words) ? 'F' : null;
};
/** "My kettle does 175 185 195 205 and boil": so hot no water gets in Celsius. */
const kettleInF =
  /\bkettles? (?:only |just )?(?:has|does|goes|can do|sets|comes with|is set)\b[a-z ]{0,24}(?:1[3-9]\d|20\d|21[0-2])\b(?! ?(?:c|ml|g|w)\b)/;

/** 95度太燙了吧: a heat that is doubted, and wished for by nobody. */
const doubtedC = (scene: Scene): Json =>
  scene.flow === 'brew' && !isTold(scene.heard, 'family') && says('doubts-heat')(scene)
    ? (scene.heard['tempC'] ?? null)
    : null;

/** What is asked and told of the plan, by the names of `heard`. */
export const besidePlan = (scene: Scene): Facts => ({
  likeTea: likeAnother(scene),
  doubtedC: doubtedC(scene),
  compares: comparesTeas(scene) || null,
  packets: packets(scene),
  isLoose: says('loose-leaf')(scene) || null,
  leafBy: leafBy(scene),
  isForeign: isForeign(scene) || null,
  tellsAge: tellsAge(scene) || null,
  lacksLeaf: (scene.flow === 'brew' && says('lacks-leaf')(scene)) || null,
  rinsesTwice: says('rinses-twice')(scene) || null,
  tellsCake: says('tells-cake')(scene) || null,
  stillDrinkable: says('still-drinkable')(scene) || null,
  cupsWanted: cupsWanted(scene),
  cupsAsked: scene.flow === 'brew' ? manyCups(scene) : null,
});
