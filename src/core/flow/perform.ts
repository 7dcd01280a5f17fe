/** Does the lines of a flow file, in the order of their parts. Where a line leads is the turn's affair. */
import type { CallLine, Line, Values } from './book.ts';
import { shownChoices } from './choices.ts';
import { factsOf, holds, valueOf } from './evaluate.ts';
import type { Json } from './flow.ts';
import { spoken } from './phrases.ts';
import { slotted } from './scope.ts';
import type { Turn } from './turn.ts';

/** Does every line whose condition holds; true as soon as one led elsewhere. */
export function perform(turn: Turn, lines: readonly Line[]): boolean {
  return lines.some((line) => holds(line.when, turn.lookup) && performLine(turn, line));
}

/** Does the first line that fits; the conversation stays where it is unless the line leads on. */
export function performFirst(turn: Turn, lines: readonly Line[]): boolean {
  const line = lines.find((l) => holds(l.when, turn.lookup));
  if (line) performLine(turn, line);
  return line !== undefined;
}

function performLine(turn: Turn, line: Line): boolean {
  if (line.set) turn.setFacts(factsOf(line.set, turn.lookup));
  if (line.call && performCall(turn, line.call)) return true;
  for (const part of line.say) turn.say(part, line.with);
  if (line.show) turn.show = factsOf(line.show, turn.lookup);
  remember(turn, line.remember);
  if (line.tellShop) {
    turn.add({ do: 'task', task: line.tellShop.task, values: factsOf(line.tellShop.values, turn.lookup) });
  }
  schedule(turn, line);
  if (perform(turn, line.lines)) return true;
  if (line.go) turn.go(line.go);
  return line.go !== null;
}

function performCall(turn: Turn, line: CallLine): boolean {
  const outcome = turn.call(line.name, factsOf(line.with, turn.lookup));
  if ('gives' in outcome) {
    if (line.keep !== null) turn.setFacts({ [line.keep]: outcome.gives });
    return false;
  }
  const { wrong, field, values } = outcome;
  const target = line.wrong[wrong] ?? line.wrong['any'];
  if (!target) throw new Error(`${whereIs(turn)}: ${line.name} answers "${wrong}", which leads nowhere`);
  turn.setFacts({ mistake: { code: wrong, field, key: `mistake-${wrong}`, values } });
  turn.go(target);
  return true;
}

function remember(turn: Turn, values: Values | null): void {
  for (const [name, value] of Object.entries(factsOf(values ?? {}, turn.lookup))) turn.remember(name, value);
}

/** Names of timers and later sayings carry their flow, so that a parked flow is found by them. */
function schedule(turn: Turn, line: Line): void {
  const { flow } = turn.spot;
  for (const name of line.withdraw) turn.add({ do: 'withdraw', name: `${flow}/${name}` });
  if (line.wake) {
    const { name, at } = line.wake;
    turn.add({ do: 'wake', name: `${flow}/${name}`, atMs: instant(turn, valueOf(at, turn.lookup), name) });
  }
  if (line.later) {
    const { name, at, say, slot, offers } = line.later;
    const later = { name: `${flow}/${name}`, atMs: instant(turn, valueOf(at, turn.lookup), name) };
    const phrases = say.flatMap((part) => spoken(turn.book.words, part, line.with, turn.lookup));
    const choices = offers ? shownChoices(turn.openChoices()) : [];
    turn.add({ do: 'say', saying: { phrases, choices, later, ...slotted(turn, slot) } });
  }
}

function instant(turn: Turn, value: Json, name: string): number {
  if (typeof value !== 'number') throw new Error(`${whereIs(turn)}: the time of "${name}" is not a number`);
  return Math.round(value);
}

const whereIs = ({ spot }: Turn): string => `${spot.flow}/${spot.place}`;
