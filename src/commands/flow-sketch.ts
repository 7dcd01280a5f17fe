/** What the picture of a flow shows: each place, what it says and where its lines lead. */
import type { Flow, Line, Place, Target } from '../core/flow/book.ts';
import { writeExpression } from '../core/flow/write-expression.ts';
import type { FlowSketch, SketchedExit, SketchedPlace } from '../pictures/flow-drawing.ts';

/** A sentence as the words file writes it. */
export type Sentence = (key: string) => string;

export const sketchOf = (flow: Flow, sentence: Sentence): FlowSketch => ({
  name: flow.name,
  about: flow.about,
  starts: flow.starts,
  places: [...Object.values(flow.places).map((place) => sketchPlace(place, flow, sentence)), ...everywhere(flow)],
});

/** The lines that count in every place, as a place of their own. */
function everywhere(flow: Flow): readonly SketchedPlace[] {
  const front = flow.front;
  const exits = [
    ...(front?.always ?? []).flatMap((line) => lineExits(line, flow, '')),
    ...flow.hears.flatMap((line) => lineExits(line, flow, 'hears ')),
    ...(front?.otherwise ?? []).flatMap((line) => lineExits(line, flow, 'otherwise, ')),
  ];
  return exits.length > 0 ? [{ name: '(in every place)', asks: null, says: [], exits }] : [];
}

function sketchPlace(place: Place, flow: Flow, sentence: Sentence): SketchedPlace {
  const onwards = place.leads ?? { flow: null, place: flow.news };
  const choices = place.choices.map(({ label, line }) => ({
    by: `· ${sentence(label)}`,
    to: shown(line.go ?? onwards, flow),
  }));
  return {
    name: place.name,
    asks: place.asks,
    says: place.lines.flatMap(({ say }) => say.flatMap((part) => ('key' in part ? [sentence(part.key)] : []))),
    exits: [
      ...place.needs.map(({ fact, place: to }) => ({ by: `needs ${fact}`, to })),
      ...place.lines.flatMap((line) => lineExits(line, flow, '')),
      ...choices,
      ...place.hears.flatMap((line) => lineExits(line, flow, 'hears ')),
      ...(place.asks === null ? [] : [{ by: 'when answered', to: shown(onwards, flow) }]),
    ],
  };
}

function lineExits(line: Line, flow: Flow, before: string): readonly SketchedExit[] {
  const condition = line.when === null ? 'then' : `when ${writeExpression(line.when)}`;
  const wrong = Object.entries(line.call?.wrong ?? {});
  return [
    ...wrong.map(([code, to]) => ({
      by: `${line.call?.name} answers ${code === 'any' ? 'a mistake' : code}`,
      to: shown(to, flow),
    })),
    ...line.lines.flatMap((inner) => lineExits(inner, flow, before)),
    ...(line.go ? [{ by: `${before}${condition}`, to: shown(line.go, flow) }] : []),
  ];
}

function shown(target: Target, flow: Flow): string {
  if ('move' in target) return `(${target.move})`;
  if (target.flow === null || target.flow === flow.name) return target.place ?? flow.starts;
  return `(${target.flow}${target.place === null ? '' : `: ${target.place}`})`;
}
