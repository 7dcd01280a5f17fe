/** A message owed, put into words: keys and values in, sentences in the person's language out. */
import type { Language } from '../core/units.ts';
import type { Countdown, Enclosure, Ladder, Outgoing, Phrase } from '../messages.ts';
import { choiceKey, type Owed } from '../store/contract.ts';
import { calendarOf, type CalendarEntry, type CalendarSurroundings, type Sign } from './calendar.ts';
import { saidTimes } from './said-times.ts';

/** Throws on an unknown key: a programmer's mistake. */
export type Say = (language: Language, phrase: Phrase) => string;

export function render(say: Say, owed: Owed, sign: Sign | null = null): Outgoing {
  const { id, address, language, saying } = owed;
  // A sentence said later may need to know how late it comes.
  const lateS = Math.max(0, Math.round((owed.claimedAt - owed.due) / 1000));
  const late = latenessOf(lateS);
  const tell = (phrase: Phrase): string =>
    say(language, { key: phrase.key, values: { lateS, late, ...phrase.values } });
  const paragraphs = saying.phrases.map(tell);
  const times = saidTimes(saying.phrases, paragraphs, tell);
  const choices = saying.choices.map((choice, i) => ({ key: choiceKey(id, i), label: tell(choice.label) }));
  const message: Draft = { id, channel: address.channel, chat: address.chat, language, paragraphs, choices };
  if (saying.subject !== undefined) message.subject = tell(saying.subject);
  if (saying.show) {
    const around = sign && { sign, language, tell, stampedAt: owed.claimedAt };
    Object.assign(message, shown(saying.show, tell), dated(saying.show, around));
  }
  if (times.length > 0) message.times = times;
  if (owed.replaces !== null) message.replaces = owed.replaces;
  if (owed.person === null) message.last = true;
  return message;
}

/**
 * What stands in the place of a message that cannot be said: one line, and of its choices those that can. Throws when not
 * even that line has words.
 */
export function renderWordless(say: Say, owed: Owed): Outgoing {
  const { choices } = owed.saying;
  const plain = { ...owed, saying: { phrases: [{ key: 'house-wordless', values: {} }], choices: [] } };
  const sayable = choices.flatMap(({ label }, i) => {
    const told = labelIn(say, owed.language, label);
    return told === null ? [] : [{ key: choiceKey(owed.id, i), label: told }];
  });
  return { ...render(say, plain), choices: sayable };
}

function labelIn(say: Say, language: Language, label: Phrase): string | null {
  try {
    return say(language, label);
  } catch {
    return null;
  }
}

type Draft = { -readonly [name in keyof Outgoing]: Outgoing[name] };

/** A person doesn't notice two seconds; after two minutes a call to act now would mislead: judgement. */
function latenessOf(lateS: number): 'no' | 'some' | 'long' {
  if (lateS < 2) return 'no';
  return lateS < 120 ? 'some' : 'long';
}

type Facts = Phrase['values'];
type Tell = (phrase: Phrase) => string;

function shown(show: Facts, tell: Tell): Pick<Outgoing, 'ladder' | 'countdown' | 'file'> {
  if (show['kind'] === 'ladder') return { ladder: ladder(show, tell) };
  if (show['kind'] === 'countdown') return { countdown: countdown(show, tell) };
  if (show['kind'] === 'file') return { file: file(show, tell) };
  return {};
}

/** Without a name to stand under, nothing is for a calendar. */
function dated(show: Facts, around: CalendarSurroundings | null): Pick<Outgoing, 'file'> {
  if (show['kind'] !== 'calendar' || around === null) return {};
  return { file: calendarOf(show['entry'] as unknown as CalendarEntry, around) };
}

function ladder(show: Facts, tell: Tell): Ladder {
  const rungs = (show['rungs'] ?? []) as readonly { n: number; seconds: number; strengthMgPerMl: number }[];
  const longest = Math.max(...rungs.map((rung) => rung.seconds), 1);
  const strongest = Math.max(...rungs.map((rung) => rung.strengthMgPerMl), 0.001);
  return {
    title: tell(show['title'] as unknown as Phrase),
    rungs: rungs.map(({ n, seconds, strengthMgPerMl }) => ({
      n,
      seconds,
      label: tell({ key: 'house-rung', values: { seconds } }),
      length: seconds / longest,
      ink: strengthMgPerMl / strongest,
    })),
  };
}

function countdown(show: Facts, tell: Tell): Countdown {
  return {
    startedAt: Number(show['startedAtMs']),
    endsAt: Number(show['endsAtMs']),
    label: tell(show['label'] as unknown as Phrase),
  };
}

function file(show: Facts, tell: Tell): Enclosure {
  const { name, mediaType, text, label } = show as unknown as Omit<Enclosure, 'label'> & { readonly label: Phrase };
  return { name, mediaType, text, label: tell(label) };
}
