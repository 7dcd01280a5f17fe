/** What stands on one label and where: texts fitted within bounds, the small ladder, the code. It draws nothing itself. */
import type { Language } from '../core/units.ts';
import { inkOf, strokeOutline } from './brush.ts';
import { quietSquares, squareCode, type SquareCode } from './label-sheet-code.ts';
import type { Corner, LabelSize } from './label-sheet-size.ts';
import { setLine, type SetLine, type Weight } from './lettering.ts';

export interface Label {
  readonly id: string;
  readonly names: { readonly [language in Language]: string };
  /** Of the texts below. */
  readonly language: Language;
  readonly vessel: string;
  readonly plan: string;
  readonly scan: string;
  /** What the code opens. */
  readonly address: string;
  /** A second way in, in letters. */
  readonly link?: string;
  /** 0…1 of the longest infusion and of the strongest cup. */
  readonly rungs: readonly { readonly length: number; readonly ink: number }[];
}

/** Lengths in millimetres from the label's upper left corner. */
export interface LabelFace {
  readonly texts: readonly PlacedText[];
  readonly rail: { readonly from: Corner; readonly to: Corner };
  readonly strokes: readonly { readonly outline: string; readonly ink: number }[];
  readonly code: SquareCode & { readonly at: Corner; readonly squareMm: number };
}

export interface PlacedText {
  readonly line: SetLine;
  /** Where the baseline begins. */
  readonly at: Corner;
  readonly sizeMm: number;
}

/** What of a label cannot be printed: too long at its least size, or with a character we have no letter for. */
export interface Unfit {
  readonly id: string;
  readonly text: string;
  readonly why: 'long' | 'letters';
}

const pointMm = 25.4 / 72;

/** Lengths in millimetres for a label of 70 × 37; others are scaled from it. */
const model = {
  width: 70,
  height: 37,
  padding: 4.2,
  code: 20,
  codeWithLink: 17.4,
  /** From the padding down to baselines, and to the ladder's upper end. */
  name: 4.3,
  under: 9.4,
  ladder: 11.5,
  /** From one thing up to the next. */
  link: 2.9,
  overPlan: 3.8,
  underLadder: 3.3,
} as const;
/** In points. */
const sizes = {
  name: { most: 13, least: 7.5 },
  under: { most: 11.5, least: 8 },
  line: { most: 7.6, least: 5.8 },
  small: { most: 6.4, least: 5 },
} as const;

/** Smaller squares run together on an office printer, and phones read them badly; common practice, no source. */
const leastSquareMm = 0.38;

/** Everything in place, or what does not fit. */
export async function faceOf(label: Label, size: LabelSize): Promise<LabelFace | Unfit> {
  const scale = Math.min(size.width / model.width, size.height / model.height);
  const code = squareCode(label.address);
  const codeMm = (label.link === undefined ? model.code : model.codeWithLink) * scale;
  const squareMm = codeMm / code.side;
  if (squareMm < leastSquareMm) return { id: label.id, text: label.address, why: 'long' };
  const pad = model.padding * scale;
  const room = size.width - 2 * pad;
  const column = room - codeMm - quietSquares * squareMm;
  const plan = size.height - pad - scale * (0.4 + (label.link === undefined ? 0 : model.link));
  const fitted = await Promise.all(
    rowsOf(label, { scale, pad, room, column, plan }).map((row) => fit(label.id, row, scale)),
  );
  const unfit = fitted.find((one) => 'why' in one);
  if (unfit) return unfit;
  const ladder = { x: pad, y: pad + model.ladder * scale, width: column - scale };
  return {
    texts: fitted.filter((one) => 'line' in one),
    ...ladderIn(
      { ...ladder, height: plan - (model.overPlan + model.underLadder) * scale - ladder.y, scale },
      label.rungs,
    ),
    code: { ...code, squareMm, at: { x: size.width - pad - codeMm, y: pad } },
  };
}

interface Row {
  readonly parts: readonly (readonly [text: string, language: Language])[];
  readonly size: keyof typeof sizes;
  readonly weight?: Weight;
  /** Of the baseline. */
  readonly y: number;
  readonly left: number;
  readonly room: number;
  readonly toTheRight?: boolean;
}

interface Frame {
  readonly scale: number;
  readonly pad: number;
  readonly room: number;
  /** Left of the code. */
  readonly column: number;
  /** The plan's baseline. */
  readonly plan: number;
}

/** The plan has a line to itself; above it the vessel to the left and what the code is for to the right. */
function rowsOf(label: Label, { scale, pad, room, column, plan }: Frame): readonly Row[] {
  const { language, link } = label;
  const [head, under] = namesOf(label);
  const [left, over] = [pad, plan - model.overPlan * scale];
  const scan = { left: pad + room * 0.42, room: room * 0.58 };
  return [
    { parts: head, size: 'name', weight: 600, y: pad + model.name * scale, left, room: column },
    { parts: under, size: 'under', y: pad + model.under * scale, left, room: column },
    { parts: [[label.vessel, language]], size: 'line', y: over, left, room: room * 0.4 },
    { parts: [[label.scan, language]], size: 'small', y: over, ...scan, toTheRight: true },
    { parts: [[label.plan, language]], size: 'line', weight: 600, y: plan, left, room },
    ...(link === undefined
      ? []
      : ([{ parts: [[link, 'en']], size: 'small', y: plan + model.link * scale, left, room }] as const)),
  ];
}

/** In the shop's own writing first. A name both scripts write alike stands once. */
function namesOf({ names, language }: Label): readonly [head: Row['parts'], under: Row['parts']] {
  const [own, other] = language === 'zh-Hans' ? (['zh-Hans', 'zh-Hant'] as const) : (['zh-Hant', 'zh-Hans'] as const);
  const han: Row['parts'] =
    names[own] === names[other]
      ? [[names[own], own]]
      : [
          [`${names[own]}\u3000`, own],
          [names[other], other],
        ];
  const latin: Row['parts'] = [[names.en, 'en']];
  return language === 'en' ? [latin, han] : [han, latin];
}

/** As large as it may be and fits. */
async function fit(id: string, row: Row, scale: number): Promise<PlacedText | Unfit> {
  const set = await Promise.all(row.parts.map(([text, language]) => setLine(text, language, row.weight)));
  const text = row.parts.map(([part]) => part).join('');
  if (set.some(({ missing }) => missing.length > 0)) return { id, text, why: 'letters' };
  const width = set.reduce((sum, line) => sum + line.width, 0);
  const { most, least } = sizes[row.size];
  const sizeMm = Math.min(most * pointMm * scale, row.room / width);
  if (sizeMm < least * pointMm) return { id, text, why: 'long' };
  const x = row.toTheRight ? row.left + row.room - width * sizeMm : row.left;
  return { line: { pieces: set.flatMap(({ pieces }) => pieces), width, missing: [] }, at: { x, y: row.y }, sizeMm };
}

interface LadderRoom extends Corner {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
}

const widestPitch = 1.9;

function ladderIn(room: LadderRoom, rungs: Label['rungs']): Pick<LabelFace, 'rail' | 'strokes'> {
  const { x, y, width, height, scale } = room;
  const pitch = Math.min(height / rungs.length, widestPitch * scale);
  const strokes = rungs.map(({ length, ink }, i) => {
    const stroke = { x, y: y + (i + 0.5) * pitch, length: Math.max(length * width, 0.4 * scale), thick: pitch * 0.66 };
    return { outline: strokeOutline(stroke, width), ink: inkOf(ink) };
  });
  return { rail: { from: { x, y }, to: { x, y: y + rungs.length * pitch } }, strokes };
}
