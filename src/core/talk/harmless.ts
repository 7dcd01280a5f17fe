/** What sounds like a danger and is none: one word of how to brew, of what hands do, or of whether it is ready, and no other. */
import type { Facts } from '../flow/flow.ts';
import type { Scene } from './scene.ts';

/** Longer texts tell more than that. */
const longest = 40;

/** Any other word keeps the answer of safety. */
export const isHarmless = (scene: Scene): boolean =>
  scene.heard['kind'] === 'safety' &&
  scene.words.length <= longest &&
  (isStyleAlone(scene) || isHandsAtWork(scene) || isOfThisPot(scene));

const isUnsure = ({ answer }: Facts): boolean => answer === 'safety-general';

/** Nor is a cold infusion that is yet to be made. */
function isStyleAlone({ heard, words, cues }: Scene): boolean {
  if (heard['style'] === null || words.includes('?')) return false;
  if (isUnsure(heard)) return cues.says('style-alone', words);
  return heard['answer'] === 'cold-brew-left-out' && heard['style'] === 'cold' && !cues.says('stood-about', words);
}

const isHandsAtWork = ({ heard, words, cues, flow }: Scene): boolean =>
  (flow === 'guide' || flow === 'brew') && isUnsure(heard) && !words.includes('?') && cues.says('hands-at-work', words);

const isOfThisPot = ({ heard, words, cues, flow }: Scene): boolean =>
  flow === 'guide' && isUnsure(heard) && cues.says('ready-yet', words);
