/** Free text → facts and the kind of question. It answers nothing, remembers nothing and never changes what was said. */
import type { Language, Mistake } from '../units.ts';
import type { Found, TeaFinder } from '../teas/find.ts';
import { plainText } from '../teas/plain-text.ts';
import { readAct, readInfusion, readWantedLanguage, type Act } from './acts.ts';
import { makeAnswerFinder, type StandingAnswer } from './answers.ts';
import { cueText, makeCues, type Cues } from './cues.ts';
import { makeGuestReader } from './guests.ts';
import { readKind, wordCount, type Kind, type Taste } from './kind.ts';
import { makeKindSettler } from './settle-kind.ts';
import { readStrength, readStyle, readWarmed, type ReadStyle } from './wishes.ts';
import { readLanguage } from './language.ts';
import { readLeaf } from './leaf.ts';
import { findMeasures } from './measures.ts';
import { isDenied } from './nearby.ts';
import { within, type Checked } from './ranges.ts';
import type { ReadingWords } from './reading-words.ts';
import { unknownTea } from './unknown-tea.ts';
import { concludeVessel, makeVesselFinder } from './vessel.ts';
import { readVolume, type QuantityScene } from './volume.ts';
import { readElevation, readTemperature } from './warmth.ts';

export interface Reading {
  readonly language: Language;
  /** False where the text fits any language ("300ml", "ok"). */
  readonly languageSure: boolean;
  readonly kind: Kind;
  readonly tea: string | null;
  /** When several fit. */
  readonly teas: readonly string[];
  readonly family: string | null;
  readonly vessel: string | null;
  /** When several fit. */
  readonly vessels: readonly string[];
  readonly material: string | null;
  readonly volumeMl: number | null;
  readonly leafG: number | null;
  /** Level teaspoons of leaf; what they weigh depends on the leaf. */
  readonly leafSpoons: number | null;
  readonly guests: number | null;
  readonly tempC: number | null;
  readonly noThermometer: boolean;
  readonly noScale: boolean;
  readonly elevationM: number | null;
  readonly style: ReadStyle | null;
  readonly strength: number | null;
  readonly warmed: boolean | null;
  readonly taste: Taste | null;
  readonly act: Act | null;
  /** The language asked for. */
  readonly wants: Language | null;
  /** "and the second?" */
  readonly infusion: number | null;
  /** The words that look like the name of a tea that isn't ours. */
  readonly unknownTea: string | null;
  readonly mistakes: readonly Mistake[];
  /** Of tea, vessel and volumeMl, what a plan still lacks; nothing when it isn't about brewing. */
  readonly missing: readonly string[];
  /** The standing answer that fits, when the kind is care, safety or shop. */
  readonly answer: string | null;
}

export interface ReaderContent {
  readonly finder: TeaFinder;
  readonly words: ReadingWords;
  /** Everyday words that are never a misspelt name. */
  readonly ordinary: readonly string[];
  readonly answers: readonly StandingAnswer[];
}

export interface Hint {
  /** The person's language so far. */
  readonly language: Language | null;
  /** The fact asked just now, by its name in Reading: "350" or "big" is read as that. */
  readonly asked: string | null;
}

export type Reader = (text: string, hint: Hint) => Reading;

export function makeReader(content: ReaderContent): Reader {
  const { finder } = content;
  const ordinary = new Set(content.ordinary);
  const cues = makeCues(content.words.cues, ordinary);
  const vesselsIn = makeVesselFinder(content.words, ordinary);
  const readGuests = makeGuestReader(content.words.people);
  const answerFor = makeAnswerFinder(content.answers);
  const strangerTo = new Set([...ordinary, ...cueWords(content.words)]);

  const settleKind = makeKindSettler(content.words.examples, content.answers, answerFor);

  return (text, hint) => {
    const { shown, plain } = plainText(text);
    const words = cues.mended(cueText(plain));
    const { language, sure } = readLanguage(shown, hint.language);
    const wants = readWantedLanguage(words, cues, language);
    const act = readAct(words, cues, wants);
    const teaMentions = finder.mentions(plain).filter((m) => !isDenied(plain, m.start));
    const found = withAsked(finder.conclude(plain, teaMentions), plain, hint, finder);
    const named = teaMentions.filter((m) => m.meaning.is !== 'nothing');
    const vesselMentions = vesselsIn(plain);
    const vessel = concludeVessel(plain, vesselMentions);
    const scene: QuantityScene = {
      plain,
      measures: findMeasures(plain),
      vessels: vesselMentions.filter((m) => m.meaning.is === 'vessel'),
      teas: named,
      corrected: act === 'correct',
      asked: hint.asked,
    };
    const leaf = readLeaf(scene, cues);
    const read = {
      volumeMl: within('volumeMl', readVolume(scene)),
      leafG: within('leafG', leaf.grams),
      tempC: within('tempC', readTemperature(scene)),
      elevationM: within('elevationM', readElevation(scene, cues, words)),
      guests: within('guests', readGuests(plain, scene.measures, hint.asked)),
    };
    const told = readStyle(cues, words);
    const other = found.other ? shown.slice(found.other.start, found.other.end) : null;
    const stranger = named.length > 0 ? other : unknownTea(shown, plain, strangerTo, hint.asked === 'tea');
    const {
      kind: ruled,
      taste,
      told: byCue,
    } = readKind({
      text: words,
      cues,
      namesTea: named.length > 0 || found.best !== null || (hint.asked === 'tea' && stranger !== null),
      namesVessel: scene.vessels.length > 0,
      hasVolume: read.volumeMl.value !== null || read.volumeMl.mistake !== null,
      hasOther:
        read.leafG.value !== null ||
        read.tempC.value !== null ||
        read.elevationM.value !== null ||
        told !== null ||
        read.guests.value !== null ||
        leaf.spoons !== null ||
        read.tempC.mistake !== null,
      asked: hint.asked !== null,
    });
    const clear =
      byCue ||
      hint.asked !== null ||
      act !== null ||
      (named.length > 0 && scene.vessels.length > 0) ||
      isClearlyBrew(words, cues, scene.vessels.length > 0, read.volumeMl);
    const kind = settleKind(ruled, words, clear);
    const facts = {
      tea: found.best?.id ?? null,
      vessel: kind === 'offtopic' ? null : vessel.vessel,
      volumeMl: read.volumeMl.value,
    };
    const settled = act === 'ask-shop' ? 'shop' : act !== null && kind === 'offtopic' ? kindOfAct(act) : kind;
    return {
      language,
      languageSure: sure,
      kind: settled,
      ...facts,
      teas: found.best ? [] : found.candidates.map((tea) => tea.id),
      family: found.family,
      vessels: vessel.several,
      material: vessel.material,
      leafG: settled === 'shop' && !saysDose(plain) ? null : read.leafG.value,
      leafSpoons: leaf.spoons?.value ?? null,
      guests: read.guests.value,
      tempC: read.tempC.value,
      noThermometer: cues.has('no-thermometer', words),
      noScale: cues.has('no-scale', words),
      elevationM: read.elevationM.value,
      style: told ?? (settled === 'brew' && cues.has('fridge', words) ? 'cold' : null),
      strength: settled === 'brew' ? readStrength(cues, words) : null,
      warmed: readWarmed(cues, words),
      taste,
      act,
      wants,
      infusion: readInfusion(words),
      unknownTea: settled === 'offtopic' || settled === 'greeting' ? null : stranger,
      mistakes: [
        ...Object.values(read).flatMap((r) => (r.mistake ? [r.mistake] : [])),
        ...vague(cues, words, hint.asked, facts.volumeMl),
      ],
      missing:
        settled === 'brew' ? (['tea', 'vessel', 'volumeMl'] as const).filter((fact) => facts[fact] === null) : [],
      answer:
        settled === 'care' || settled === 'safety' || settled === 'shop'
          ? (answerFor(words, settled)?.id ?? null)
          : null,
    };
  };
}

/** "the ripe one", asked which tea: a word that tells a kind tells the tea, though its family isn't named. */
function withAsked(found: Found, plain: string, hint: Hint, finder: TeaFinder): Found {
  if (found.best || found.family !== null || found.other) return found;
  const bare =
    /^(?:no[, ]+)?(?:the )?(ripe|raw|cooked|shou|sheng|shu)(?: one| kind| puer)?(?: please| then)?[.!?]?$|^(?:唔系[,，]?|不是[,，]?)?(?:要)?(熟|生)(?:的|嘅|个|那个|嗰个|那款|嗰款|茶|款)?[。！]?$/.exec(
      plain.trim(),
    );
  const asked = hint.asked === 'tea' || /one|kind|的|嘅|个|款|^no/.test(plain);
  return bare && asked ? finder.find(`puer ${bare[1] ?? ''}${bare[2] ? ` 普洱${bare[2]}` : ''}`) : found;
}

function saysDose(plain: string): boolean {
  return /\b(?:use|using|left|brew|steep|put)\b|泡|冲|剩|放/.test(plain);
}

/** "big", where a number was asked. */
function vague(cues: Cues, words: string, asked: string | null, volumeMl: number | null): Mistake[] {
  const numbers = ['volumeMl', 'leafG', 'tempC', 'guests', 'elevationM'];
  if (asked === null || !numbers.includes(asked) || wordCount(words) > 4 || /\d/.test(words)) return [];
  if (asked === 'volumeMl' && volumeMl !== null) return [];
  return cues.has('big', words) ? [{ code: 'number-expected', field: asked, values: {} }] : [];
}

function kindOfAct(act: Act): Kind {
  if (act === 'ask-shop') return 'shop';
  return act === 'thanks' || act === 'yes' || act === 'no' || act === 'language' ? 'greeting' : 'brew';
}

function cueWords(words: ReadingWords): string[] {
  const lists = [
    ...Object.values(words.cues).flat(),
    ...Object.values(words.people).flat(),
    ...words.notVessels,
    ...words.vessels.flatMap((v) => v.words),
  ];
  return lists.flatMap((text) => text.toLowerCase().match(/[a-z]{2,}/g) ?? []);
}

/** A size, or how to brew in so many words: nothing else needs to be weighed. */
function isClearlyBrew(words: string, cues: Cues, namesVessel: boolean, volume: Checked): boolean {
  return (
    volume.value !== null ||
    volume.mistake !== null ||
    (cues.has('asks-brewing', words) && (namesVessel || wordCount(words) <= 12))
  );
}
