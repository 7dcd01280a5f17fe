/** The kind of question: what the evidence weighs, leaning to what was just asked and to caution. */
import type { Act } from '../acts.ts';
import type { AnswerFinder } from '../answers.ts';
import type { Cues } from '../cues/cues.ts';
import type { Kind } from './kind.ts';
import { isOrder } from './order.ts';
import type { Danger } from '../cues/cue-names.ts';
import { weigh, type Leaning, type Weighed, type Weights } from './weights.ts';

export interface KindScene {
  readonly evidence: readonly string[];
  /** It talks of what a doctor is asked. */
  readonly warned: boolean;
  /** It tells of something that can't wait. */
  readonly danger: Danger | null;
  readonly cues: Cues;
  /** cueText of what was written. */
  readonly words: string;
  /** Something was asked just now, and this may be the answer. */
  readonly answering: boolean;
  readonly act: Act | null;
}

/** In the weights' own measure, natural logarithms: an answer to what was asked is about e⁴ times likelier than anything else. */
const answeringLean = 4;
/** With a word of danger in the text, so small a share is enough: a question of safety missed is worse than one too many. */
const leastWithWarning = 0.2;
/** The shop's own question word by word counts for more than the weights do, unless they are surer than this. */
const sureShare = 0.9;
const sureLikeness = 0.8;
/** "My rota is wrong again": so surely about something else, a word of correction in it is no act. Judgement. */
const surelyElsewhere = 0.8;
/** "Why is the sky blue": a why asks for the plan's reasons only where little else is in it. Judgement. */
const whyElsewhere = 0.6;

/** What a standing answer may be asked as, and be taken for. */
const standingKinds: ReadonlySet<Kind> = new Set(['care', 'safety', 'shop', 'offtopic']);

export function settleKind(scene: KindScene, weights: Weights, answerFor: AnswerFinder): Kind {
  // Nothing is asked first and nothing weighed of who may be choking.
  if (scene.danger !== null) return 'safety';
  if (isOrder(scene.words)) return 'offtopic';
  if (scene.act === 'about') return 'offtopic';
  if (scene.act === 'ask-shop' || scene.act === 'shop-desk') return 'shop';
  const { kind, share } = weighedKind(scene, weights, answerFor);
  if (scene.act === 'no' && !scene.answering && kind !== 'safety' && !warns(scene)) return 'greeting';
  const enough = scene.act === 'why' ? whyElsewhere : surelyElsewhere;
  return kind === 'offtopic' && share < enough ? kindOfAct(scene.act) : kind;
}

/** What a person does to the conversation is of no kind of its own; some acts tell one. */
function kindOfAct(act: Act | null): Kind {
  if (act === null) return 'offtopic';
  return act === 'thanks' || act === 'yes' || act === 'no' || act === 'language' ? 'greeting' : 'brew';
}

const warns = ({ cues, words, warned }: KindScene): boolean => warned || cues.has('safety', words);

function weighedKind(scene: KindScene, weights: Weights, answerFor: AnswerFinder): Weighed {
  const leaning: Leaning = scene.answering && !warns(scene) ? { brew: answeringLean } : {};
  const weighed = weigh(weights, scene.evidence, leaning);
  const [first] = weighed;
  const safety = weighed.find(({ kind }) => kind === 'safety')?.share ?? 0;
  if (safety >= leastWithWarning && warns(scene)) return { kind: 'safety', share: safety };
  if (!first) return { kind: 'offtopic', share: 0 };
  if (first.share >= sureShare || scene.answering || !standingKinds.has(first.kind)) return first;
  const standing = answerFor(scene.words, null);
  const alike = standing !== null && standing.likeness >= sureLikeness;
  return alike ? { kind: standing.kind, share: standing.likeness } : first;
}
