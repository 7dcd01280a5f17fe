/** Letters in every script: finds the piece of a typeface that holds a character, and sets a text as outlines or for a PDF. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { create, type Font } from 'fontkit';
import subsetFont from 'subset-font';
import type { Language } from '../core/units.ts';

export type Weight = 400 | 600;

/** One piece of a typeface at one weight, as a font of its own. */
export interface Face {
  readonly name: string;
  /** TrueType. */
  readonly bytes: Buffer;
  readonly font: Font;
}

export interface SetPiece {
  readonly face: Face;
  readonly text: string;
  /** In ems. */
  readonly width: number;
}

export interface SetLine {
  readonly pieces: readonly SetPiece[];
  /** In ems. */
  readonly width: number;
  /** Characters no typeface of ours has. */
  readonly missing: readonly string[];
}

const require = createRequire(import.meta.url);

interface Typeface {
  readonly id: string;
  readonly folder: string;
  /** The characters each piece is said to have. */
  readonly pieces: ReadonlyMap<string, string>;
  /** The pieces that are said to have a character. */
  readonly homes: ReadonlyMap<string, readonly string[]>;
}

/** One design, drawn by the habits of each script. */
const traditional = typefaceAt('noto-serif-tc', require.resolve('@fontsource-variable/noto-serif-tc/unicode.json'));
const simplified = typefaceAt('noto-serif-sc', require.resolve('@fontsource-variable/noto-serif-sc/unicode.json'));
const habits: { readonly [language in Language]: readonly (() => Typeface)[] } = {
  en: [traditional, simplified],
  'zh-Hant': [traditional, simplified],
  'zh-Hans': [simplified, traditional],
};

/** Widths and shapes of a text. The first text in a script takes some tens of milliseconds a piece, later ones next to none. */
export async function setLine(text: string, language: Language, weight: Weight = 400): Promise<SetLine> {
  const parts: { text: string; face: Face }[] = [];
  const missing: string[] = [];
  for (const character of Array.from(text)) {
    const found = await faceWith(character, language, weight);
    if (found === null) missing.push(character);
    // What nobody has is set as the empty box.
    const face = found ?? (await faceOf({ typeface: traditional(), piece: 'latin' }, weight));
    const last = parts.at(-1);
    // Neighbours in one face are set together, so that they keep their distances.
    if (last?.face === face) last.text += character;
    else parts.push({ text: character, face });
  }
  const pieces = parts.map(({ text: part, face }) => setPiece(face, part));
  return { pieces, width: pieces.reduce((sum, { width }) => sum + width, 0), missing };
}

/** The outlines of a line as the data of an SVG path; `x` and `y` are where its baseline begins. */
export function outlineOf(line: SetLine, { x, y, size }: { x: number; y: number; size: number }): string {
  let pen = x;
  return line.pieces
    .map(({ face: { font }, text }) => {
      const scale = size / font.unitsPerEm;
      const { glyphs, positions } = font.layout(text);
      return glyphs
        .map((glyph, i) => {
          const at = positions[i];
          const outline = glyph.path
            .scale(scale, -scale)
            .translate(pen + (at?.xOffset ?? 0) * scale, y - (at?.yOffset ?? 0) * scale)
            .toSVG();
          pen += (at?.xAdvance ?? 0) * scale;
          return outline;
        })
        .join('');
    })
    .join('');
}

interface Home {
  readonly typeface: Typeface;
  readonly piece: string;
}

function setPiece(face: Face, text: string): SetPiece {
  return { face, text, width: face.font.layout(text).advanceWidth / face.font.unitsPerEm };
}

async function faceWith(character: string, language: Language, weight: Weight): Promise<Face | null> {
  for (const home of homesOf(character, language)) {
    const face = await faceOf(home, weight);
    // The ranges also list characters that are not there.
    if (face.font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0)) return face;
  }
  return null;
}

function homesOf(character: string, language: Language): readonly Home[] {
  return habits[language].flatMap((open) => {
    const typeface = open();
    return (typeface.homes.get(character) ?? []).map((piece) => ({ typeface, piece }));
  });
}

const faces = new Map<string, Promise<Face>>();

function faceOf({ typeface, piece }: Home, weight: Weight): Promise<Face> {
  const name = `${typeface.id}-${piece}-${weight}`;
  const known = faces.get(name) ?? cutFace(typeface, { name, piece, weight });
  faces.set(name, known);
  return known;
}

/** The packages hold all weights in one file a piece; a PDF wants one weight in one. */
async function cutFace({ id, folder, pieces }: Typeface, want: { name: string; piece: string; weight: Weight }) {
  const file = readFileSync(join(folder, 'files', `${id}-${want.piece}-wght-normal.woff2`));
  const options = { targetFormat: 'truetype', variationAxes: { wght: want.weight } };
  const bytes = await subsetFont(file, pieces.get(want.piece) ?? '', options);
  return { name: want.name, bytes, font: create(bytes) as Font };
}

/** Opened at the first use: who never draws never reads it. */
function typefaceAt(id: string, index: string): () => Typeface {
  let known: Typeface | undefined;
  return () => (known ??= readTypeface(id, index));
}

/** Letters first: they then share one font, whatever else holds a digit or a dot. */
const rank = (name: string): number => (name === 'latin' ? 0 : name.startsWith('latin') ? 1 : 2);

function readTypeface(id: string, index: string): Typeface {
  const listed = JSON.parse(readFileSync(index, 'utf8')) as Record<string, string>;
  const pieces = new Map(
    Object.entries(listed)
      .map(([name, ranges]) => [name.replace(/[[\]]/g, ''), ranges.split(',').map(charactersOf).join('')] as const)
      .toSorted(([a], [b]) => rank(a) - rank(b)),
  );
  const homes = new Map<string, string[]>();
  for (const [name, characters] of pieces) {
    for (const character of characters) homes.set(character, [...(homes.get(character) ?? []), name]);
  }
  return { id, folder: dirname(index), pieces, homes };
}

/** "U+4e00-4e0b" or "U+b7". */
function charactersOf(range: string): string {
  const [first = 0, last = first] = range
    .trim()
    .slice(2)
    .split('-')
    .map((digits) => Number.parseInt(digits, 16));
  return Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');
}
