/** What is wrong with flows that can be read: everything that would strand a person or an author. Changes nothing. */
import type { Flow, Place } from './book.ts';
import { namesIn } from './expression.ts';
import {
  choicesOf,
  expressionsOf,
  factsOfFlow,
  linesOf,
  placeLines,
  sentencesOf,
  targetsOf,
  type PlacedTarget,
} from './outline.ts';
import type { FlowProblem, Path } from './parse.ts';
import { toldAtDelivery } from './phrases.ts';
import { toldNames } from './scope.ts';

export interface CheckAgainst {
  readonly flows: { readonly [name: string]: Flow };
  /** Flows that are there and cannot be read: nothing is said of what leads to them or from them. */
  readonly unread: ReadonlySet<string>;
  readonly front: string;
  /** Names of the functions there are. */
  readonly calls: ReadonlySet<string>;
  /** What the reader of messages may hear. */
  readonly heard: ReadonlySet<string>;
  /** What the house may tell. */
  readonly house: ReadonlySet<string>;
  /** What may be remembered of a person. */
  readonly memory: ReadonlySet<string>;
  readonly hasSentence: (key: string) => boolean;
  readonly variables: (key: string) => readonly string[];
}

/** All problems of one flow at once. */
export function checkFlow(flow: Flow, against: CheckAgainst): readonly FlowProblem[] {
  return [
    ...wrongTargets(flow, against),
    ...wrongCalls(flow, against),
    ...wrongSentences(flow, against),
    ...wrongNames(flow, against),
    ...unreachable(flow, against),
    ...Object.values(flow.places).flatMap((place) => wrongPlace(place, flow, against)),
    ...(flow.name === against.front ? noWayOut(flow) : []),
  ];
}

const problem = (path: Path, expected: string): FlowProblem => ({ path, expected });
const oneOf = (names: Iterable<string>): string => [...names].join(', ');

function wrongTargets(flow: Flow, { flows, unread }: CheckAgainst): readonly FlowProblem[] {
  return targetsOf(flow).flatMap(({ target, path }) => {
    if ('move' in target || unread.has(target.flow ?? flow.name)) return [];
    const there = target.flow === null ? flow : flows[target.flow];
    if (!there) return [problem(path, `one of the flows ${oneOf(Object.keys(flows))}, not "${target.flow}"`)];
    if (target.place === null || there.places[target.place]) return [];
    return [problem(path, `a place of ${there.name} (${oneOf(Object.keys(there.places))}), not "${target.place}"`)];
  });
}

function wrongCalls(flow: Flow, { calls }: CheckAgainst): readonly FlowProblem[] {
  const fromFront = flow.front
    ? (['reads', 'opens', 'parts'] as const).flatMap((word) => {
        const name = flow.front![word];
        return name === null ? [] : [{ name, path: ['front', word] as Path }];
      })
    : [];
  const inLines = linesOf(flow).flatMap(({ line, path }) =>
    line.call ? [{ name: line.call.name, path: [...path, 'call'] }] : [],
  );
  return [...fromFront, ...inLines]
    .filter(({ name }) => !calls.has(name))
    .map(({ name, path }) => problem(path, `one of the functions ${oneOf(calls)}, not "${name}"`));
}

function wrongSentences(flow: Flow, against: CheckAgainst): readonly FlowProblem[] {
  const { hasSentence, variables } = against;
  const known = knownNames(flow, against);
  return sentencesOf(flow).flatMap(({ key, with: given, path, hasItem }) => {
    if (!hasSentence(key)) return [problem(path, `a sentence "${key}" in flows/words, in every language`)];
    return variables(key)
      .filter(
        (v) =>
          !toldAtDelivery.includes(v) &&
          !(v in given) &&
          !known(v.split('-')) &&
          !(hasItem && v.split('-')[0] === 'item'),
      )
      .map((v) => problem(path, `"${v}", which the sentence "${key}" needs, to be a fact or given in "with"`));
  });
}

/** Whether a name can ever stand for something: what was heard, what the engine tells, or a fact of the flow. */
function knownNames(flow: Flow, { heard, house, memory, unread }: CheckAgainst): (path: readonly string[]) => boolean {
  const facts = new Set([...factsOfFlow(flow), ...toldNames]);
  return ([head = '', second = '']) => {
    if (head === 'heard') return second === 'text' || heard.has(second);
    if (head === 'house') return second === '' || house.has(second);
    if (head === 'memory') return second === '' || memory.has(second) || unread.size > 0;
    return facts.has(head);
  };
}

function wrongNames(flow: Flow, against: CheckAgainst): readonly FlowProblem[] {
  const known = knownNames(flow, against);
  return expressionsOf(flow).flatMap(({ expression, path, hasItem }) =>
    namesIn(expression)
      .filter((name) => !known(name) && !(hasItem && name[0] === 'item'))
      .map((name) => problem(path, `a known fact, not "${name.join('.')}"`)),
  );
}

/** Places that nothing leads to, from any flow. */
function unreachable(flow: Flow, { flows, unread }: CheckAgainst): readonly FlowProblem[] {
  if (unread.size > 0) return [];
  const all = targetsOf(flow);
  const outside = Object.values(flows)
    .filter((other) => other !== flow)
    .flatMap((other) => targetsOf(other).filter(({ target }) => 'flow' in target && target.flow === flow.name));
  const reached = new Set<string>();
  const visit = ({ target }: PlacedTarget): void => {
    if ('move' in target || (target.flow !== null && target.flow !== flow.name)) return;
    const name = target.place ?? flow.starts;
    if (reached.has(name)) return;
    reached.add(name);
    all.filter(({ place }) => place === name).forEach(visit);
  };
  [...all.filter(({ place }) => place === null), ...outside].forEach(visit);
  return Object.keys(flow.places)
    .filter((name) => !reached.has(name))
    .map((name) => problem(['places', name], `something that leads to "${name}"`));
}

function wrongPlace(place: Place, flow: Flow, against: CheckAgainst): readonly FlowProblem[] {
  const path: Path = ['places', place.name];
  return [...deadEnd(place, path), ...unanswerable(place, flow, against), ...unmetNeeds(place, flow)];
}

/** Whether the conversation comes to rest here: no line leads on whatever the facts. */
export const rests = (place: Place): boolean => !place.lines.some((line) => line.go !== null && line.when === null);

function deadEnd(place: Place, path: Path): readonly FlowProblem[] {
  const leadsOn = placeLines(place).some(({ line }) => line.go !== null);
  const isOpen = place.asks !== null || place.choices.length > 0 || Object.keys(place.wakes).length > 0 || leadsOn;
  return rests(place) && !isOpen ? [problem(path, 'a way on: choices, a question (asks), or a line that goes on')] : [];
}

/** A question must be answerable by typing: the fact is one that is heard, or a choice gives it, whose label can be typed. */
function unanswerable(place: Place, flow: Flow, { heard }: CheckAgainst): readonly FlowProblem[] {
  const { asks, name } = place;
  if (asks === null) return [];
  const byText = asks in flow.listens.facts && heard.has(asks);
  const byChoice = place.choices.some((choice) => asks in choice.gives || choice.line.go !== null);
  if (byText || byChoice || place.hears.length > 0) return [];
  return [
    problem(['places', name, 'asks'], `"${asks}" to be answerable: listened for, given by a choice, or heard here`),
  ];
}

/** What a place needs must be asked where it sends people, or they would go round in a circle. */
function unmetNeeds(place: Place, flow: Flow): readonly FlowProblem[] {
  return place.needs.flatMap(({ fact, place: where }) => {
    const asked = flow.places[where];
    const gives = choicesOf(flow).some(({ choice, path }) => path[1] === where && fact in choice.gives);
    if (!asked || asked.asks === fact || gives) return [];
    return [problem(['places', place.name, 'needs', fact], `"${where}" to ask for "${fact}"`)];
  });
}

/** From everywhere a person must be able to go back and to start over. */
function noWayOut(front: Flow): readonly FlowProblem[] {
  const offered = front.front?.always.map(({ go }) => (go && 'move' in go ? go.move : null)) ?? [];
  return (['back', 'start'] as const)
    .filter((move) => !offered.includes(move))
    .map((move) => problem(['front', 'always'], `a line with "go: ${move}", so that no place is without a way out`));
}
