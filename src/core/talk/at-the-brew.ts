/** What hands have done, where the brew shall go and what is asked of it, as far as a message tells. */
import type { Facts, Json } from '../flow/flow.ts';
import { isTold, type Scene } from './scene.ts';
import { coldAsked } from './cold.ts';
import { tellsOfAStep } from './harmless.ts';
import { numberPattern, readCount, secondsSaid, shortTimes } from './count.ts';
import { asks, skippedTo, steered } from './steering.ts';
import { boiledAgoS, coolingAsked, countedTo, kettleC, lateBy, pouredAgoS, stepDone, type Step } from './steps.ts';

/** In the midst of a brew, and before it, beside a plan. */
const brewing: ReadonlySet<Json> = new Set(['guide', 'brew']);

/** Whoever has done this has begun, whatever was asked of them. */
const begun: ReadonlySet<Step> = new Set(['leaf-in', 'filled', 'poured']);

/** No name of a tea where hands tell of a step, and nothing where somebody may be hurt. */
export function atTheBrew(scene: Scene): Facts {
  const { heard, words, cues, flow, asked = null } = scene;
  const boiledAgo = heard['kind'] === 'safety' ? null : boiledAgoS(words, cues);
  const hands = mayBeHurt(scene) || boiledAgo !== null ? null : handsOf(scene);
  const isDrawing = flow === 'guide';
  const pouredAgo = isDrawing ? pouredAgoS(words, cues) : null;
  const few = fewEnough(scene);
  const guestsMore = brewing.has(flow) ? moreGuests(scene, isDrawing) : null;
  const isOnTop = guestsMore !== null && !isDrawing;
  const steers = steered(words, cues);
  const unknownTea = hands === null && steers === null ? (heard['unknownTea'] ?? null) : null;
  if (asked !== null && !isDrawing) {
    // "Let's start", said to a question, wishes for no more of them.
    const asksOwnBrews = asks('asks-own-brews', words, cues) || null;
    return {
      ...coolingAsked(heard, words, cues),
      kettleC: kettleC(words, cues),
      unknownTea,
      hands: flow === 'brew' && hands !== null && begun.has(hands) ? hands : null,
      pouredAgo,
      guestsMore,
      asksOwnBrews,
      steers: flow === 'brew' && steers === 'begin' ? steers : null,
    };
  }
  const late = lateBy(words, cues);
  return {
    ...coolingAsked(heard, words, cues),
    kettleC: kettleC(words, cues),
    unknownTea,
    pouredAgo,
    heldS: asked === 'heldS' ? heldSaid(words) : null,
    guestsMore,
    ...(isOnTop ? { guests: null } : {}),
    few,
    stepsOn: (isDrawing && cues.says('steps-on', words)) || null,
    stopsIt: (isDrawing && cues.says('stops-it', words)) || null,
    isLastOne: isDrawing && cues.says('last-one', words) ? true : null,
    hands,
    mayBeWater: hands === 'poured' && cues.says('may-be-water', words) ? true : null,
    poursNow: (hands === 'poured' && cues.says('pours-now', words)) || null,
    waterOn: cues.says('water-on', words) || null,
    wasBoiling:
      (isDrawing || flow === 'taste') && !words.includes('?') && cues.says('was-boiling', words) ? true : null,
    ofNext: cues.says('of-next', words) || null,
    isLate: late === null ? null : true,
    lateS: late === 'unsaid' ? null : late,
    countedTo: isDrawing ? countedTo(words, cues) : null,
    steers: steers === 'remind' && !brewing.has(flow) ? null : steers,
    coldAsk: mayBeCold(heard) ? coldAsked(words, cues) : null,
    asksRefill: asks('asks-refill', words, cues) || null,
    asksDrink: (isDrawing && asks('asks-drink', words, cues)) || null,
    asksOwnBrews: asks('asks-own-brews', words, cues) || null,
    asksOwnTaste: asks('asks-own-taste', words, cues) || null,
    asksAdvice: cues.says('asks-advice', words) || null,
    justPoured: (hands === 'poured' && cues.says('just-poured', words)) || null,
    asksWhich:
      (heard['kind'] !== 'safety' &&
        heard['kind'] !== 'lesson' &&
        !isTold(heard, 'tea') &&
        isTold(heard, 'family') &&
        cues.says('asks-which', words)) ||
      null,
    boiledAgoS: boiledAgo,
    asksLeft: asks('asks-left', words, cues) || null,
    forgotRinse:
      (heard['kind'] !== 'safety' || heard['answer'] === 'safety-general') && cues.says('forgot-rinse', words)
        ? true
        : null,
    asksWhere: asks('where-it-stands', words, cues) || null,
    skipTo: steers === 'skip' ? skippedTo(words, cues) : null,
  };
}

/** Where nothing draws yet, what was poured just now is the water; and 放了兩匙 泡五分鐘 tells of a cup that was drunk. */
function handsOf({ words, cues, flow }: Scene): Step | null {
  const step = stepDone(words, cues);
  if (flow !== 'guide' && step === 'leaf-in' && cues.says('told-of-a-cup', words)) return null;
  return step === 'poured' && flow !== 'guide' && cues.says('just-now', words) ? 'filled' : step;
}

/** "燙過了", and no more than that, may be of hands. */
const longestUnsure = 20;
const mayBeHurt = (scene: Scene): boolean => {
  const { heard, words } = scene;
  const isUnsure = heard['answer'] === 'safety-general' && words.length <= longestUnsure;
  return heard['kind'] === 'safety' && !isUnsure && !tellsOfAStep(scene);
};

/** Where a word on safety is of the jar's own. */
const ofTheJar: ReadonlySet<Json> = new Set(['safety-general', 'cold-brew-left-out', null]);
const mayBeCold = ({ kind, answer = null }: Facts): boolean => kind !== 'safety' || ofTheJar.has(answer);

const numberAlone = new RegExp(
  `^(?:about|around|maybe|roughly|like|i think|大概|大约|差不多|可能|有)*\\s*(?<n>${numberPattern})[\\s.!。！]*$`,
);
/** A smaller one is the number of a choice. */
const leastAlone = 7;

/** How long it stood, where that is asked: in any unit, or a number of seconds. */
function heldSaid(words: string): number | null {
  const told = secondsSaid(words, shortTimes);
  if (told !== null) return told;
  const count = readCount(numberAlone.exec(words)?.groups?.['n'] ?? '');
  return count !== null && count >= leastAlone ? count : null;
}

/** How many infusions will do. */
const fewEnough = ({ words, cues }: Scene): Json =>
  cues.says('few-enough', words) ? cues.numberIn('few-enough', words) : null;

/** How many drink on top of who drinks already. Beside a plan a number told is how many there are. */
function moreGuests({ heard, words, cues }: Scene, isDrawing: boolean): Json {
  const guests = heard['guests'] ?? null;
  const isOnTop = isDrawing || cues.says('more-coming', words);
  if (guests !== null && (!isOnTop || cues.says('in-all-now', words))) return null;
  if (guests !== null && cues.says('more-guests', words)) return guests;
  if (isDrawing && cues.says('one-less', words)) return -1;
  return cues.says('one-more', words) ? (cues.numberIn('one-more', words) ?? 1) : null;
}
