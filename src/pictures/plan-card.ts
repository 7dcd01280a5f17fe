/** The card of a plan, a page of a notebook with the ladder on it: as SVG that needs no font, and as PNG. */
import { renderAsync } from '@resvg/resvg-js';
import type { Language } from '../core/units.ts';
import type { Ladder, LadderRung } from '../messages.ts';
import { inkOf, inks, strokeOutline } from './brush.ts';
import { outlineOf, setLine, type SetLine, type Weight } from './lettering.ts';

/** User units. The margin line of the notebook is also the rail of the ladder. */
const page = { width: 420, margin: 58, right: 24, top: 26, bottom: 24 } as const;
const rung = { pitch: 30, thick: 13, labelGap: 12 } as const;
const title = { size: 21, leading: 29 } as const;
const lineSize = 14.5;
const room = page.width - page.margin - page.right;
/** A phone shows it as wide as itself, at two or three dots a unit. */
const dotsAUnit = 2.5;

/** As PNG: what the Telegram channel draws beside a plan. */
export async function drawPicture(ladder: Ladder, language: Language): Promise<Uint8Array> {
  const svg = await planCardSvg(ladder, language);
  const options = { fitTo: { mode: 'zoom', value: dotsAUnit }, font: { loadSystemFonts: false } } as const;
  // Beside the event loop: messages to others must not wait for a picture.
  return (await renderAsync(svg, options)).asPng();
}

export async function planCardSvg(ladder: Ladder, language: Language): Promise<string> {
  const write = (text: string, weight: Weight = 400): Promise<SetLine> => setLine(text, language, weight);
  const heads = await broken(ladder.title, { size: title.size, write: (text) => write(text, 600) });
  const rungs = await Promise.all(
    ladder.rungs.map(async (one) => ({ ...one, count: await write(String(one.n)), time: await write(one.label) })),
  );
  const rungsTop = page.top + heads.length * title.leading + 8;
  const height = rungsTop + rungs.length * rung.pitch + page.bottom;
  const reach = room - rung.labelGap - lineSize * Math.max(...rungs.map(({ time }) => time.width), 0);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${page.width}" height="${height}" viewBox="0 0 ${page.width} ${height}">`,
    `<rect width="100%" height="100%" fill="${inks.paper}"/>`,
    `<path d="M${page.margin} 0V${height}" stroke="${inks.rule}" stroke-width="1.5"/>`,
    ...heads.map((set, i) => letters(set, { y: page.top + title.size + i * title.leading - 4, size: title.size })),
    ...rungs.map((one, i) => rungSvg(one, rungsTop + (i + 0.5) * rung.pitch, reach)),
    '</svg>',
  ].join('');
}

interface SetRung extends LadderRung {
  readonly count: SetLine;
  readonly time: SetLine;
}

function rungSvg({ count, time, length, ink }: SetRung, y: number, reach: number): string {
  const long = Math.max(length * reach, rung.thick / 2);
  const stroke = strokeOutline({ x: page.margin, y, length: long, thick: rung.thick }, reach);
  const base = y + lineSize * 0.35;
  const countX = page.margin - 12 - count.width * lineSize;
  return [
    `<path d="${stroke}" fill="${inks.liquor}" fill-opacity="${inkOf(ink).toFixed(3)}" stroke="${inks.liquor}" stroke-width="1" stroke-linejoin="round"/>`,
    letters(count, { x: countX, y: base, size: lineSize, fill: inks.pencil }),
    letters(time, { x: page.margin + long + rung.labelGap, y: base, size: lineSize }),
  ].join('');
}

interface Place {
  readonly x?: number;
  readonly y: number;
  readonly size: number;
  readonly fill?: string;
}

function letters(set: SetLine, { x = page.margin + 14, y, size, fill = inks.ink }: Place): string {
  return `<path d="${outlineOf(set, { x, y, size })}" fill="${fill}"/>`;
}

interface Setting {
  readonly size: number;
  readonly write: (text: string) => Promise<SetLine>;
}

/** Lines no wider than the page, broken at spaces, and between any two characters of Chinese. */
async function broken(text: string, { size, write }: Setting): Promise<readonly SetLine[]> {
  const done: SetLine[] = [];
  let current = '';
  for (const part of text.match(
    /[\u3000-\u9fff\uff00-\uffef][，。；：、）]?|[^\s\u3000-\u9fff\uff00-\uffef]+\s*|\s+/gu,
  ) ?? []) {
    const longer = await write((current + part).trimEnd());
    if (current !== '' && longer.width * size > room - 14) {
      done.push(await write(current.trimEnd()));
      current = '';
    }
    current += part;
  }
  return [...done, await write(current.trimEnd())];
}
