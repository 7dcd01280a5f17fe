/** Every part of a flow with its path in the file, and where each place leads. Judges nothing. */
import type { ChoiceLine, Flow, Line, Place, SayPart, Target, Value, Values } from './book.ts';
import type { Expression } from './expression.ts';
import type { Path } from './parse.ts';

/** A line with where it is written and the place it belongs to, if any. */
export interface PlacedLine {
  readonly line: Line;
  readonly path: Path;
  readonly place: string | null;
}

export interface PlacedTarget {
  readonly target: Target;
  readonly path: Path;
  readonly place: string | null;
}

export function linesOf(flow: Flow): readonly PlacedLine[] {
  const front = flow.front;
  return [
    ...unfolded(flow.hears, ['hears'], null),
    ...wakeLines(flow.wakes, ['wakes'], null),
    ...(front
      ? [
          ...unfolded(front.notices, ['front', 'notices'], null),
          ...unfolded(front.always, ['front', 'always'], null),
          ...unfolded(front.otherwise, ['front', 'otherwise'], null),
        ]
      : []),
    ...Object.values(flow.places).flatMap(placeLines),
  ];
}

export function placeLines(place: Place): readonly PlacedLine[] {
  const path: Path = ['places', place.name];
  return [
    ...unfolded(place.lines, [...path, 'do'], place.name),
    ...unfolded(place.repeats ?? [], [...path, 'repeats'], place.name),
    ...place.choices.flatMap((choice, i) => oneUnfolded(choice.line, [...path, 'choices', i], place.name)),
    ...unfolded(place.hears, [...path, 'hears'], place.name),
    ...wakeLines(place.wakes, [...path, 'wakes'], place.name),
  ];
}

const unfolded = (lines: readonly Line[], path: Path, place: string | null): readonly PlacedLine[] =>
  lines.flatMap((line, i) => oneUnfolded(line, [...path, i], place));

const oneUnfolded = (line: Line, path: Path, place: string | null): readonly PlacedLine[] => [
  { line, path, place },
  ...unfolded(line.lines, [...path, 'do'], place),
];

const wakeLines = (wakes: Flow['wakes'], path: Path, place: string | null): readonly PlacedLine[] =>
  Object.entries(wakes).flatMap(([timer, lines]) => unfolded(lines, [...path, timer], place));

const here = (place: string): Target => ({ flow: null, place });

/** Names of all timers and later sayings a flow may set, as they are kept: with the flow's own before them. */
export const timersOf = (flow: Flow): readonly string[] => {
  const names = linesOf(flow).flatMap(({ line }) => [line.wake?.name ?? [], line.later?.name ?? []].flat());
  return [...new Set(names)].map((name) => `${flow.name}/${name}`);
};

export function targetsOf(flow: Flow): readonly PlacedTarget[] {
  return [
    { target: here(flow.starts), path: ['starts'], place: null },
    { target: here(flow.news), path: ['news'], place: null },
    ...linesOf(flow).flatMap(lineTargets),
    ...Object.values(flow.places).flatMap(({ name, needs, leads }) => [
      ...needs.map(({ fact, place }) => ({ target: here(place), path: ['places', name, 'needs', fact], place: name })),
      ...(leads ? [{ target: leads, path: ['places', name, 'leads'], place: name }] : []),
    ]),
  ];
}

function lineTargets({ line, path, place }: PlacedLine): readonly PlacedTarget[] {
  const wrong = Object.entries(line.call?.wrong ?? {});
  return [
    ...(line.go ? [{ target: line.go, path: [...path, 'go'], place }] : []),
    ...wrong.map(([code, target]) => ({ target, path: [...path, 'if-wrong', code], place })),
  ];
}

/** A sentence that is said or stands on a choice, with the values given beside it. */
export interface PlacedSentence {
  readonly key: string;
  readonly with: Values;
  readonly path: Path;
  readonly hasItem: boolean;
}

const spoken = (parts: readonly SayPart[], values: Values, path: Path): readonly PlacedSentence[] =>
  parts.flatMap((part) => ('key' in part ? [{ key: part.key, with: values, path, hasItem: false }] : []));

export function sentencesOf(flow: Flow): readonly PlacedSentence[] {
  const ofEngine = Object.values(flow.front?.sentences ?? {}).map((key: string) => ({
    key,
    // What waits its turn, told by the engine.
    with: { rest: { is: null } },
    path: ['front', 'sentences'],
    hasItem: false,
  }));
  return [
    ...ofEngine,
    ...linesOf(flow).flatMap(({ line, path }) => [
      ...spoken(line.say, line.with, [...path, 'say']),
      ...spoken(line.later?.say ?? [], line.with, [...path, 'later', 'say']),
    ]),
    ...choicesOf(flow).map(({ choice, path }) => ({
      key: choice.label,
      with: choice.with,
      path: [...path, 'label'],
      hasItem: choice.each !== null,
    })),
  ];
}

export const choicesOf = (flow: Flow): readonly { readonly choice: ChoiceLine; readonly path: Path }[] =>
  Object.values(flow.places).flatMap((place) =>
    place.choices.map((choice, i) => ({ choice, path: ['places', place.name, 'choices', i] })),
  );

export interface PlacedExpression {
  readonly expression: Expression;
  readonly path: Path;
  readonly hasItem: boolean;
}

const one = (expression: Expression | null, path: Path, hasItem = false): readonly PlacedExpression[] =>
  expression ? [{ expression, path, hasItem }] : [];

const said = (parts: readonly SayPart[], path: Path): readonly PlacedExpression[] =>
  parts.flatMap((part) => ('computed' in part ? one(part.computed, path) : []));

const inValues = (values: Values | null, path: Path, hasItem = false): readonly PlacedExpression[] =>
  Object.entries(values ?? {}).flatMap(([name, value]) => inValue(value, [...path, name], hasItem));

function inValue(value: Value, path: Path, hasItem: boolean): readonly PlacedExpression[] {
  if ('computed' in value) return one(value.computed, path, hasItem);
  if ('list' in value) return value.list.flatMap((item, i) => inValue(item, [...path, i], hasItem));
  return 'map' in value ? inValues(value.map, path, hasItem) : [];
}

export function expressionsOf(flow: Flow): readonly PlacedExpression[] {
  const ofLine = ({ line, path }: PlacedLine): readonly PlacedExpression[] => [
    ...one(line.when, [...path, 'when']),
    ...inValues(line.set, [...path, 'set']),
    ...inValues(line.with, [...path, 'with']),
    ...said(line.say, [...path, 'say']),
    ...inValues(line.show, [...path, 'show']),
    ...inValues(line.remember, [...path, 'remember']),
    ...(line.wake ? inValue(line.wake.at, [...path, 'wake', 'at'], false) : []),
    ...(line.later ? inValue(line.later.at, [...path, 'later', 'at'], false) : []),
    ...(line.later?.slot ? inValue(line.later.slot, [...path, 'later', 'slot'], false) : []),
    ...said(line.later?.say ?? [], [...path, 'later', 'say']),
  ];
  return [
    ...one(flow.underWay, ['under-way']),
    ...one(flow.noWayBack, ['no-way-back']),
    ...one(flow.listens.when, ['listens', 'when']),
    ...one(flow.front?.handsOn ?? null, ['front', 'hands-on']),
    ...linesOf(flow).flatMap(ofLine),
    ...Object.values(flow.places).flatMap(({ name, slot }) =>
      slot ? inValue(slot, ['places', name, 'slot'], false) : [],
    ),
    ...choicesOf(flow).flatMap(({ choice, path }) => [
      ...one(choice.when, [...path, 'when'], choice.each !== null),
      ...one(choice.each, [...path, 'each']),
      ...inValues(choice.with, [...path, 'with'], choice.each !== null),
      ...inValues(choice.gives, [...path, 'gives'], choice.each !== null),
    ]),
  ];
}

/** Every fact a flow may ever hold. */
export function factsOfFlow(flow: Flow): ReadonlySet<string> {
  return new Set([
    'mistake',
    ...flow.takes,
    ...Object.keys(flow.listens.facts),
    ...linesOf(flow).flatMap(({ line }) => [...Object.keys(line.set ?? {}), ...[line.call?.keep ?? []].flat()]),
    ...choicesOf(flow).flatMap(({ choice }) => Object.keys(choice.gives)),
  ]);
}

/** What lines of a flow remember of a person, by name. */
export const rememberedIn = (flow: Flow): readonly string[] =>
  linesOf(flow).flatMap(({ line }) => Object.keys(line.remember ?? {}));
