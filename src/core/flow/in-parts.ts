/** Two things asked or told in one message, answered one after the other: what asks back comes last, and only one thing is asked. */
import { frontRules } from './lookup.ts';
import type { Turn } from './turn.ts';

/** `inOrder`: the first changes what the second is of. */
export interface Parts {
  readonly first: string;
  readonly second: string;
  readonly inOrder: boolean;
}

/** `begun` gives the turn as it was before anything was heard. */
export function inParts(
  { first, second, inOrder }: Parts,
  begun: () => Turn,
  answer: (turn: Turn, part: string) => void,
): Turn {
  const after = (turn: Turn, part: string): Turn => {
    turn.restHere();
    answer(turn, part);
    return turn;
  };
  const alone = after(begun(), first);
  if (inOrder && asksBack(alone, begun()) < asksForFact) return after(alone, second);
  const [here, there] = [asksBack(alone, begun()), asksBack(after(begun(), second), begun())];
  if (here === asksForFact && there === asksForFact) {
    alone.say({ key: frontRules(alone.book).sentences.oneAtATime }, { rest: { is: second } });
    return alone;
  }
  return here <= there ? after(alone, second) : after(after(begun(), second), first);
}

const asksForFact = 2;

/** How much the place waits for an answer where it came to rest: for a fact, for a yes or no, for nothing that was not asked before. */
function asksBack({ place, spot }: Turn, { spot: before }: Turn): number {
  if (spot.flow === before.flow && spot.place === before.place) return 0;
  return place.asks === null ? Math.min(place.hears.length, 1) : asksForFact;
}
