/** What sounds like a danger and is none: one word of how to brew, of what hands do, or of whether it is ready, and no other. */
import type { Facts, Json } from '../flow/flow.ts';
import { isTold, says, type Scene } from './scene.ts';

/** Longer texts tell more than that. */
const longest = 40;
const longestTold = 80;

/** "Just me now, my husband is sick": how many drink, and nothing of who does. */
export const tellsWhoDrinks = ({ heard, words, flow }: Scene): boolean =>
  (flow === 'guide' || flow === 'brew') &&
  heard['kind'] === 'safety' &&
  isUnsure(heard) &&
  (heard['guests'] ?? null) !== null &&
  words.length <= longestTold &&
  justUs.test(words) &&
  !feels.test(words);

const justUs =
  /^(?:(?:ok|so|well|now|actually|oh|and|but|its|it is|theres) )*(?:just|only) (?:me|us|(?:the )?(?:two|three|four) of us)\b/;
const feels = /[?？]|\b(?:i|im|we|were|me and|feel\w*|after|from|tea|drank|drunk)\b(?! now)/;

/** Any other word keeps the answer of safety. */
export const isHarmless = (scene: Scene): boolean =>
  scene.heard['kind'] === 'safety' &&
  scene.words.length <= longest &&
  (asksWhenDrunk(scene) || isStyleAlone(scene) || isHandsAtWork(scene) || isOfThisPot(scene) || tellsOfAStep(scene));

/** "Won't boiling water burn it?": what water does to the leaf, and nobody is hurt. */
export const burnsTheLeaf = ({ heard, words }: Scene): boolean =>
  burning.has(heard['answer'] ?? null) && leafBurns.test(words) && !ofSomebody.test(words);

/** 每次用蓋碗都燙到手指: how it is held is asked; the answer says what to do with a burn as well. */
export const holdsHotWare = (scene: Scene): boolean =>
  burning.has(scene.heard['answer'] ?? null) && says('holds-hot-ware')(scene);

const burning: ReadonlySet<Json> = new Set(['burn', 'burnt-mouth', 'gaiwan-hot', 'dripping', 'safety-general', null]);
const leafBurns =
  /\b(?:will|wont|would|wouldnt|does|doesnt|can|cant|could|might|not|to|without|avoid)\b(?: \w+){0,4} (?:burn|scorch|scald|cook|kill|ruin|damage)(?:ing)? (?:(?:the |my |your |green |white )*(?:tea|leaf|leaves|powder|matcha)|(?<=water .*)(?:it|them))\b[?!. ]*$/;
const ofSomebody =
  /\b(?:me|my (?!tea|leaf|leaves|green|white|matcha)|hand|finger|tongue|mouth|throat|skin|child|kid|baby|guest)/;

/** Heard of safety, and by no word of it. */
export const mayBeNoDanger = ({ kind = null, answer = null, isWarned = null }: Facts): boolean =>
  kind === 'safety' && answer === 'safety-general' && isWarned !== true;

function isUnsure({ answer }: Facts): boolean {
  return answer === 'safety-general';
}

/** Nor is a cold infusion that is yet to be made. */
function isStyleAlone({ heard, words, cues }: Scene): boolean {
  if (heard['style'] === null || words.includes('?')) return false;
  if (isUnsure(heard)) return cues.says('style-alone', words);
  return heard['answer'] === 'cold-brew-left-out' && heard['style'] === 'cold' && !cues.says('stood-about', words);
}

/** 睡前要不要撈茶葉, beside a plan: what to do with the leaf, and nothing of how one sleeps. */
export const handlesBeforeBed = ({ heard, words, flow }: Scene): boolean =>
  (flow === 'guide' || flow === 'brew') &&
  heard['answer'] === 'sleep' &&
  leafBeforeBed.test(words) &&
  !ofSleep.test(words);
const leafBeforeBed = /(?:睡前|睡觉前).{0,8}(?:捞|拿|取|倒|滤|隔|收|放(?:进|入|冰箱|到)).{0,6}/;
const ofSleep = /喝|睡不|失眠|睡得|影响|咖啡因/;

/** "Poured. Smells of cinnamon!": begins with what was done at the brew, and nothing of anybody's body. */
export const tellsOfAStep = ({ heard, words }: Scene): boolean =>
  isUnsure(heard) && heard['isWarned'] !== true && stepFirst.test(words) && !ofABody.test(words);

const stepFirst =
  /^(?:(?:ok|and|just|now|both|all|i|ive|we|have) )*(?:(?:poured|filled|strained|rinsed|topped)\b|(?:the )?(?:teas?|leafs?|leaves|waters?)(?: is| are)? in\b)/;
const ofABody =
  /[?？]|\b(?:on|over|hands?|arms?|fingers?|legs?|feet|foot|skin|burn\w*|hurt\w*|scald\w*|pain\w*|numb|itch\w*|feel\w*|sick|dizzy|swallow\w*|eyes?|lips?|mouth|tongue|throat|chest|heart|mou?ld\w*|bleach|soap|chemical\w*|glass|broke\w*|crack\w*|cat|dog|baby|kid|child)\b/;

/** "When can I drink it?", beside a plan, asks how long it draws. */
const asksWhenDrunk = ({ heard, words, flow }: Scene): boolean =>
  flow === 'brew' && isUnsure(heard) && heard['isWarned'] !== true && whenDrunk.test(words);
const whenDrunk =
  /^(?:(?:and|so|ok) )*when (?:can|do|should|could|may) (?:i|we|you) (?:start )?(?:to )?(?:drink(?:ing)?|have) (?:it|this|that|the tea|some)\b/;

const isHandsAtWork = ({ heard, words, cues, flow }: Scene): boolean =>
  (flow === 'guide' || flow === 'brew') && isUnsure(heard) && !words.includes('?') && cues.says('hands-at-work', words);

const isOfThisPot = ({ heard, words, cues, flow }: Scene): boolean =>
  flow === 'guide' && isUnsure(heard) && (cues.says('ready-yet', words) || cues.says('asks-drink', words));

/** "Can you help my mum, she wants an easy green tea": a tea is wished for, and nothing told of what a doctor is asked. */
export function helpsWith({ heard, words }: Scene): boolean {
  return mayBeNoDanger(heard) && (isTold(heard, 'tea') || isTold(heard, 'family')) && wishesTea.test(words);
}
const wishesTea = /\b(?:help|wants?|would like|looking for|fanc(?:y|ies)|make|brew)\b/;
