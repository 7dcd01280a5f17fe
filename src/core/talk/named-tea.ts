/** A tea told by its label or by its name, whatever else the words would be good for. */
import type { Facts, Json } from '../flow/flow.ts';
import { plainText } from '../teas/plain-text.ts';
import { isTold, type Scene } from './scene.ts';
import type { Span, TalkCues } from './talk-cues.ts';

/** As it is written: a name in Chinese ends with its characters, another may have spaces. */
const latinName = /^\s+["“']?(?<name>[\p{L}\d' -]{2,40})(?![\p{L}\d])/u;
const anyName = /^(?:\s*["“']?(?<han>\p{Script=Han}{2,12})|\s+["“']?(?<name>[\p{L}\d' -]{2,40})(?![\p{L}\d]))/u;
/** "The label says 85", "3 minutes": no tea; of four figures a cake is named. */
const figures = /^\d{1,3}(?!\d)/;
/** Where the name is over and the sentence goes on. */
const goesOn = /\s(?:or|here|from|which|that|is|it's|its|in|for|with|but|so|on|at|i|we|my|how|what|can|do)(?= |$).*$/iu;

/** One we have is known already; the name of another is kept as it was written, and a colour in it is no family. Null where none is told. */
export function teaByName(heard: Facts, text: string, cues: TalkCues): Facts | null {
  const { shown, plain } = plainText(text.replaceAll('’', "'"));
  const after = (span: Span | undefined): string | null => (span === undefined ? null : shown.slice(span.end));
  const called = after(cues.spans('is-called', plain)[0]);
  const labelled = after(cues.spans('label-says', plain)[0]);
  const name = nameIn(anyName, called) ?? nameIn(latinName, labelled);
  if (name === null && labelled === null) return null;
  if (heard['tea'] !== null || heard['teas'] !== null) return { kind: 'brew', answer: null, taste: null };
  return name === null ? {} : { kind: 'brew', answer: null, taste: null, family: null, unknownTea: name };
}

function nameIn(pattern: RegExp, text: string | null): Json {
  const { han, name } = pattern.exec(text ?? '')?.groups ?? {};
  const told = (han ?? name?.replace(goesOn, ''))?.trim() ?? null;
  return told === null || figures.test(told) ? null : told;
}

/** "The little white one that came with it", said of what it is brewed in. */
export function isOfTheWare({ heard, words, flow, asked = null }: Scene): boolean {
  const isOfVessel = flow === 'brew' && asked !== 'tea' && asked !== 'family';
  return isOfVessel && !isTold(heard, 'tea') && isTold(heard, 'family') && colouredWare.test(words);
}
const colouredWare =
  /\b(?:white|black|green|yellow|dark) (?:one|gaiwan|tea ?pot|pot|cup|mug|bowl|porcelain|glass|flask|jug|jar)\b/;
