/** What a text names and measures, before anybody asks what kind of question it is. */
import type { Language } from '../units.ts';
import type { Found, Meaning, TeaFinder } from '../teas/find.ts';
import type { Mention } from '../teas/name-index.ts';
import { plainText } from '../teas/plain-text.ts';
import { readAct, readWantedLanguage, type Act } from './acts.ts';
import { makeWithoutCourtesies } from './typed/courtesies.ts';
import { makeSigns, type Signs } from './amounts/beside-number.ts';
import { cueText, makeCues, type Cues } from './cues/cues.ts';
import { saysOnlyHowMany, makeGuestReader } from './amounts/guests.ts';
import { rightHan } from './typed/han-slips.ts';
import { lazily } from '../lazily.ts';
import { readLanguage } from './typed/language.ts';
import { leafByRatio, readLeaf } from './amounts/leaf.ts';
import { makeMender, spelledOut } from './typed/mending.ts';
import { makeHanJoiner } from './typed/parted-han.ts';
import { withPlainMarks } from './typed/marks.ts';
import { findMeasures, type Measure } from './amounts/measures.ts';
import { isDenied, isUsedUp, stillMeant } from './nearby.ts';
import { findNumbers } from './amounts/numbers.ts';
import { makePlaceFinder } from './amounts/places.ts';
import { slipWordsOf, type SlipSources } from './typed/slip-words.ts';
import type { Sieve } from './cues/sieve.ts';
import { makeSlipMender } from './typed/slips.ts';
import { within, type Checked } from './amounts/ranges.ts';
import { makeKnownSizes } from './amounts/known-sizes.ts';
import { guessedSize } from './amounts/size-guessed.ts';
import type { ReadingWords } from './reading-words.ts';
import { unknownTea } from './unknown-tea.ts';
import { concludeVessel, jarFor, makeVesselFinder, type FoundVessel, type VesselMention } from './vessel.ts';
import { cupsTold } from './amounts/cups-told.ts';
import { readVolume, type QuantityScene } from './amounts/volume.ts';
import { readElevation, readTemperature } from './amounts/warmth.ts';

export interface Hint {
  /** The person's language so far. */
  readonly language: Language | null;
  /** The fact asked just now, by its name in Reading: "350" or "big" is read as that. */
  readonly asked: string | null;
}

export interface Quantities {
  readonly volumeMl: Checked;
  readonly leafG: Checked;
  readonly tempC: Checked;
  readonly elevationM: Checked;
  readonly guests: Checked;
}

export interface Observation {
  readonly shown: string;
  readonly plain: string;
  /** The plain text with the courtesies around it. */
  readonly written: string;
  /** cueText of the plain text, with slips in cue words put right. */
  readonly words: string;
  readonly asked: string | null;
  readonly language: Language;
  readonly languageSure: boolean;
  readonly wants: Language | null;
  readonly act: Act | null;
  readonly cues: Cues;
  readonly signs: Signs;
  /** Puts slips in everyday words right. */
  readonly mended: (text: string) => string;
  readonly teas: readonly Mention<Meaning>[];
  readonly tea: Found;
  readonly vessels: readonly VesselMention[];
  readonly vessel: FoundVessel;
  readonly measures: readonly Measure[];
  readonly quantities: Quantities;
  /** Only by its width, or by something as big. */
  readonly sizeGuessed: boolean;
  /** How many drink is all that is said. */
  readonly onlyGuests: boolean;
  readonly leafSpoons: number | null;
  /** The words that look like a tea nobody here knows, as they were written. */
  readonly strangeTea: string | null;
}

export type Observer = (text: string, hint: Hint) => Observation;

/** What a person wants is said in so many characters; it bounds the cost. Names and numbers are looked for in all that is read. */
const longestCued = 600;

export interface ObserverContent {
  readonly finder: TeaFinder;
  readonly words: ReadingWords;
  readonly ordinary: ReadonlySet<string>;
  readonly answers: SlipSources['answers'];
  readonly sieve: Sieve;
}

export function makeObserver({ finder, words, ordinary, answers, sieve }: ObserverContent): Observer {
  const slipsOnce = lazily(() => makeSlipMender(slipWordsOf({ words, names: finder.words(), ordinary, answers })));
  const cuesOnce = lazily(() => makeCues(words.cues, ordinary, sieve));
  const vesselsIn = lazily(() => makeVesselFinder(words, ordinary));
  const mendOnce = lazily(() => makeMender(words.common, everyday()));
  const signsOnce = lazily(() => makeSigns(words.besideNumbers, sieve));
  const sizesOnce = lazily(() => makeKnownSizes(words.knownSizes));
  const placesIn = lazily(() => makePlaceFinder(words.places));
  const guestsIn = lazily(() => makeGuestReader(words.people));
  const withoutCourtesies = makeWithoutCourtesies(words.courtesies);
  const joinedHan = makeHanJoiner((plain) => [...finder.mentions(plain), ...vesselsIn()(plain)]);
  const everyday = lazily(() => new Set([...ordinary, ...cueWords(words)]));

  return (written, { language: before, asked }) => {
    const cues = cuesOnce();
    const signs = signsOnce();
    const sizes = sizesOnce();
    const whole = joinedHan(slipsOnce()(withPlainMarks(plainText(written))));
    const said = plainText(withoutCourtesies(whole.shown));
    const { shown } = said;
    const plain = rightHan(said.plain);
    const cued = cues.mended(spelledOut(cueText(plain.slice(0, longestCued))));
    const { language, sure } = readLanguage(whole.shown, before);
    const wants = readWantedLanguage(cued, cues, language);
    const act = readAct(cued, cues, wants);
    const mentions = stillMeant(
      plain,
      finder.mentions(plain).filter((m) => !isDenied(plain, m.start) && !isUsedUp(plain, m.start, m.end)),
    );
    // "a cup and a half" is how much it holds, not another vessel.
    const isSize = cupsTold({ plain, asked, sizes }) !== null || (asked === 'volumeMl' && likeAnother.test(plain));
    const named = isSize ? [] : stillMeant(plain, vesselsIn()(plain));
    const teas = mentions.filter((m) => m.meaning.is !== 'nothing');
    const numbers = findNumbers(plain);
    const found = [...findMeasures(plain, numbers, language === 'zh-Hans'), ...placesIn()(plain)];
    const guests = guestsIn()({ plain, signs, numbers, measures: found, asked });
    const measures = asked === 'guests' ? found : found.filter((m) => !isOfGuests(m, guests));
    const vessels = named.filter((vessel) => !isMeasured(vessel, measures));
    const scene: QuantityScene = {
      plain,
      signs,
      sizes,
      measures,
      vessels: vessels.filter((m) => m.meaning.is === 'vessel'),
      teas,
      corrected: act === 'correct',
      asked,
    };
    const leaf = readLeaf(scene, cues);
    const tea = withAsked(finder.conclude(plain, mentions), plain, asked, finder);
    const vessel = jarFor(concludeVessel(plain, vessels), cued);
    const told = readVolume(scene);
    const guessed = told === null ? guessedSize({ plain, measures: found, sizes }, vessel.vessel) : null;
    return {
      shown,
      plain,
      written: whole.plain,
      words: cued,
      asked,
      language,
      languageSure: sure,
      wants,
      act,
      cues,
      signs,
      mended: (some) => mendOnce()(some),
      teas,
      tea,
      vessels,
      vessel,
      measures: scene.measures,
      quantities: {
        volumeMl: within('volumeMl', told ?? guessed),
        leafG: within('leafG', leaf.grams ?? leafByRatio(plain, told)),
        tempC: within('tempC', readTemperature(scene, cues, cued)),
        elevationM: within('elevationM', readElevation(scene, cues, cued)),
        guests: within('guests', guests),
      },
      sizeGuessed: guessed !== null || (asked === 'volumeMl' && sizes.ofThing(plain) !== null),
      onlyGuests: guests !== null && saysOnlyHowMany(plain, guests),
      leafSpoons: leaf.spoons?.value ?? null,
      strangeTea:
        teas.length === 0
          ? unknownTea(shown, plain, everyday(), asked === 'tea')
          : tea.other && shown.slice(tea.other.start, tea.other.end),
    };
  };
}

/** The two of "for two" are no millilitres. */
const isOfGuests = ({ dimension, start, end }: Measure, guests: Measure | null): boolean =>
  dimension === 'bare' && guests !== null && guests.start <= start && end <= guests.end;

/** "like a small teacup", asked how much it holds. */
export const likeAnother =
  /^(?:its |it is |it's |dunno |about |maybe |sort of |kind of |just |[ ,])*(?:like|as big as|(?:about |around )?the size of|bigger than|smaller than) (?:an? |the |my |one )|^(?:差不多|大概|好似|好像|就)?(?:像|似|跟|同).{1,8}(?:差不多|咁|一样|那么|大小)/;

/** The cup of "a three cup pot" is how much it holds. */
const isMeasured = ({ start, end }: VesselMention, measures: readonly Measure[]): boolean =>
  measures.some((m) => m.dimension === 'volume' && m.start <= start && end <= m.end);

/** "the ripe one", asked which tea: a word that tells a kind tells the tea, though its family isn't named. */
function withAsked(found: Found, plain: string, asked: string | null, finder: TeaFinder): Found {
  if (found.best || found.family !== null || found.other) return found;
  const bare =
    /^(?:no[, ]+)?(?:the )?(ripe|raw|cooked|shou|sheng|shu)(?: one| kind| puer)?(?: please| then)?(?:, not the [a-z]+(?: one)?)?[.!?]?$|^(?:(?:唔系|不是|不要|唔要)(?:[生熟](?:的|嘅|个|那个|嗰个|那款|嗰款|茶|款)?)?[,，、 ]*)?(?:要|是|系)?(熟|生)(?:的|嘅|个|那个|嗰个|那款|嗰款|茶|款)?[。！]?$/.exec(
      plain.trim(),
    );
  const meant = asked === 'tea' || /one|kind|的|嘅|个|款|^no/.test(plain);
  return bare && meant ? finder.find(`puer ${bare[1] ?? ''}${bare[2] ? ` 普洱${bare[2]}` : ''}`) : found;
}

/** Minutes and money are talked of everywhere. */
const tellsNoKind: ReadonlySet<Measure['dimension']> = new Set(['other', 'time']);

export interface Named {
  readonly start: number;
  readonly end: number;
  /** What stands in the name's place, in capitals. */
  readonly token: string;
}

/** What is named, as the evidence has it: which tea or vessel it is tells nothing of the kind. */
export function namedIn({ teas, vessels, measures }: Observation): Named[] {
  const span = (token: string, { start, end }: Pick<Named, 'start' | 'end'>): Named => ({ start, end, token });
  return [
    ...teas.map((m) => span('TEA', m)),
    ...vessels.flatMap((m) => (m.meaning.is === 'vessel' ? [span(m.meaning.faint ? 'CUP' : 'POT', m)] : [])),
    ...measures.flatMap((m) => (tellsNoKind.has(m.dimension) ? [] : [span(m.dimension.toUpperCase(), m)])),
  ];
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
