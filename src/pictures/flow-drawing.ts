/**
 * Draws a flow as a page of a notebook: its places down the page, set in by how far they are from the start, and in the
 * margin one thread for each place, which every line that leads there is tied to. Takes a sketch, gives SVG.
 */

export interface FlowSketch {
  readonly name: string;
  readonly about: string;
  readonly starts: string;
  readonly places: readonly SketchedPlace[];
}

export interface SketchedPlace {
  readonly name: string;
  readonly asks: string | null;
  readonly says: readonly string[];
  readonly exits: readonly SketchedExit[];
}

export interface SketchedExit {
  readonly by: string;
  /** A place of this flow, or in brackets a place elsewhere. */
  readonly to: string;
}

interface Row {
  readonly text: string;
  readonly kind: 'title' | 'says' | 'exit';
  readonly x: number;
  readonly y: number;
  readonly place: string;
  readonly to: string | null;
}

interface Thread {
  readonly to: string;
  readonly top: number;
  readonly bottom: number;
}

const ink = '#2b2a27';
const pencil = '#8b8577';
const paper = '#fbf8f0';
const rule = '#e7e0d0';
const rowHeight = 22;
const indent = 26;
const margin = 48;
const textWidth = 640;
const threadGap = 15;
const longestText = 74;

export function drawFlow(sketch: FlowSketch): string {
  const rows = rowsOf(sketch);
  const threads = tracksOf(threadsOf(rows));
  const width = margin + textWidth + 40 + threads.length * threadGap + margin;
  const height = (rows.at(-1)?.y ?? 0) + 60;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="Georgia, 'Noto Serif', serif" font-size="14">`,
    `<title>${escaped(sketch.about)}</title>`,
    `<rect width="${width}" height="${height}" fill="${paper}"/>`,
    ...ruledLines(width, height),
    `<text x="${margin}" y="44" font-size="22" fill="${ink}">${escaped(sketch.name)}</text>`,
    `<text x="${margin}" y="64" font-style="italic" fill="${pencil}">${escaped(sketch.about)}</text>`,
    ...threads.flatMap((thread, lane) => drawThread(thread, laneX(lane), rows)),
    ...rows.map(drawRow),
    '</svg>',
    '',
  ].join('\n');
}

const laneX = (lane: number): number => margin + textWidth + 40 + lane * threadGap;

function ruledLines(width: number, height: number): readonly string[] {
  const count = Math.floor((height - 84) / rowHeight);
  return Array.from({ length: count }, (_, i) => {
    const y = 84 + i * rowHeight + 6;
    return `<path d="M0 ${y}H${width}" stroke="${rule}" stroke-width="1"/>`;
  });
}

function rowsOf(sketch: FlowSketch): readonly Row[] {
  const depths = depthsOf(sketch);
  const ordered = [...depths.keys()].flatMap((name) => sketch.places.filter((place) => place.name === name));
  const rows: Row[] = [];
  let y = 106;
  const add = (place: SketchedPlace, row: Pick<Row, 'text' | 'kind' | 'to'>): void => {
    const inset = row.kind === 'title' ? 0 : 18;
    rows.push({ ...row, place: place.name, x: margin + (depths.get(place.name) ?? 0) * indent + inset, y });
    y += rowHeight;
  };
  for (const place of ordered) {
    if (rows.length > 0) y += rowHeight;
    add(place, {
      kind: 'title',
      text: place.asks === null ? place.name : `${place.name} – asks for ${place.asks}`,
      to: null,
    });
    for (const said of place.says) add(place, { kind: 'says', text: `“${said}”`, to: null });
    for (const { by, to } of place.exits) add(place, { kind: 'exit', text: by, to });
  }
  return rows;
}

/** How many steps each place is from the start, in the order they are met; places only others lead to come last. */
function depthsOf({ starts, places }: FlowSketch): ReadonlyMap<string, number> {
  const depths = new Map<string, number>([[starts, 0]]);
  for (const [name, depth] of depths) {
    for (const { to } of places.find((place) => place.name === name)?.exits ?? []) {
      if (!depths.has(to) && places.some((place) => place.name === to)) depths.set(to, depth + 1);
    }
  }
  for (const { name } of places) if (!depths.has(name)) depths.set(name, 0);
  return depths;
}

function threadsOf(rows: readonly Row[]): readonly Thread[] {
  return rows
    .filter((row) => row.kind === 'title')
    .flatMap((title) => {
      const ends = rows.filter((row) => row.to === title.place).map((row) => row.y);
      if (ends.length === 0) return [];
      return [{ to: title.place, top: Math.min(title.y, ...ends), bottom: Math.max(title.y, ...ends) }];
    });
}

/** Short threads lie near the text. */
const tracksOf = (threads: readonly Thread[]): readonly Thread[] =>
  threads.toSorted((a, b) => a.bottom - a.top - (b.bottom - b.top));

function drawThread(thread: Thread, x: number, rows: readonly Row[]): readonly string[] {
  const title = rows.find((row) => row.kind === 'title' && row.place === thread.to);
  const from = rows.filter((row) => row.to === thread.to);
  const y = (title?.y ?? 0) - 5;
  const start = title ? textEnd(title) + 8 : 0;
  return [
    `<path d="M${x} ${thread.top - 5}V${thread.bottom - 5}" stroke="${ink}" stroke-width="1.1" fill="none"/>`,
    `<path d="M${x} ${y}H${start}m7 -4l-7 4l7 4" stroke="${ink}" stroke-width="1.1" fill="none"/>`,
    ...from.map((row) => {
      const end = textEnd(row) + 8;
      return `<path d="M${end} ${row.y - 5}H${x}" stroke="${pencil}" stroke-width="0.8" stroke-dasharray="1 4" fill="none"/><circle cx="${x}" cy="${row.y - 5}" r="2.4" fill="${ink}"/>`;
    }),
  ];
}

/** About where a text of this serif ends; Chinese characters are twice as wide. */
function textEnd(row: Row): number {
  const text = shownText(row);
  const wide = text.match(/[\u2e80-\u9fff]/g)?.length ?? 0;
  return row.x + (text.length + wide) * 7.1 * (row.kind === 'title' ? 1.12 : 1);
}

/** Where a line leads outside this flow stands in brackets; within it, a thread shows it. */
const shownText = ({ text, to }: Row): string =>
  to?.startsWith('(') === true ? `${shortened(text)}  ${to}` : shortened(text);

const styles = {
  title: `fill="${ink}" font-weight="bold"`,
  says: `fill="${pencil}" font-style="italic"`,
  exit: `fill="${ink}"`,
} as const;

const drawRow = (row: Row): string =>
  `<text x="${row.x}" y="${row.y}" ${styles[row.kind]}>${escaped(shownText(row))}</text>`;

const shortened = (text: string): string => (text.length > longestText ? `${text.slice(0, longestText - 1)}…` : text);

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
