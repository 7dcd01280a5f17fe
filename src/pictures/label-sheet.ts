/** The sheet of labels as a PDF: each label's face on its place, crop marks between, every letter embedded. */
import PdfPaper from 'pdfkit';
import type { Instant } from '../core/units.ts';
import { faceOf, type Label, type LabelFace, type PlacedText, type Unfit } from './label-sheet-face.ts';
import { cropMarks, labelsAPage, papers, placeOf, type LabelSize, type Mark } from './label-sheet-size.ts';

export interface LabelSheet {
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly printed: number;
  /** Left out; the others have closed up. */
  readonly unfit: readonly Unfit[];
}

export interface SheetRequest {
  readonly labels: readonly Label[];
  readonly size: LabelSize;
  readonly title: string;
  readonly now: Instant;
}

const points = 72 / 25.4;
const inks = { text: '#000000', pencil: '#6b6b6b', rail: '#8d867b', liquor: [138, 67, 18] } as const;
const hairlineMm = 0.1;

export async function labelSheet({ labels, size, title, now }: SheetRequest): Promise<LabelSheet> {
  const tried = await Promise.all(labels.map((label) => faceOf(label, size)));
  const faces = tried.filter((one) => 'texts' in one);
  const sheet = openSheet(size, { title, now });
  const pages = Math.ceil(faces.length / labelsAPage(size));
  for (let page = 0; page < pages; page++) drawPage(sheet.paper, size, faces.slice(...partOf(page, labelsAPage(size))));
  return { pdf: await sheet.close(), pages, printed: faces.length, unfit: tried.filter((one) => 'why' in one) };
}

const partOf = (page: number, length: number): [number, number] => [page * length, (page + 1) * length];

type Paper = InstanceType<typeof PdfPaper>;

function openSheet({ paper: name }: LabelSize, { title, now }: { title: string; now: Instant }) {
  const { width, height } = papers[name];
  const paper = new PdfPaper({
    size: [width * points, height * points],
    margin: 0,
    autoFirstPage: false,
    info: { Title: title, Creator: 'Ninthpour', CreationDate: new Date(now) },
  });
  const chunks: Uint8Array[] = [];
  const whole = new Promise<Uint8Array>((resolve, reject) => {
    paper.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    paper.on('end', () => resolve(Buffer.concat(chunks)));
    paper.on('error', reject);
  });
  const close = (): Promise<Uint8Array> => {
    paper.end();
    return whole;
  };
  return { paper, close };
}

/** In millimetres from here on. */
function drawPage(paper: Paper, size: LabelSize, faces: readonly LabelFace[]): void {
  paper.addPage();
  paper.scale(points);
  drawMarks(paper, cropMarks(size));
  for (const [i, face] of faces.entries()) {
    const { x, y } = placeOf(size, i);
    paper.save().translate(x, y);
    drawFace(paper, face);
    paper.restore();
  }
}

function drawMarks(paper: Paper, marks: readonly Mark[]): void {
  paper.lineWidth(hairlineMm).strokeColor(inks.pencil);
  for (const { from, to } of marks) paper.moveTo(from.x, from.y).lineTo(to.x, to.y);
  paper.stroke();
}

function drawFace(paper: Paper, { texts, rail, strokes, code }: LabelFace): void {
  paper.lineWidth(2 * hairlineMm).strokeColor(inks.rail);
  paper.moveTo(rail.from.x, rail.from.y).lineTo(rail.to.x, rail.to.y).stroke();
  for (const { outline, ink } of strokes) paper.path(outline).fill(tint(ink));
  const { at, squareMm, runs } = code;
  for (const { x, y, length } of runs) {
    paper.rect(at.x + x * squareMm, at.y + y * squareMm, length * squareMm, squareMm);
  }
  paper.fill(inks.text);
  for (const text of texts) write(paper, text);
}

/** Mixed with the white of the paper: what is see-through prints differently from printer to printer. */
function tint(ink: number): [number, number, number] {
  const [red, green, blue] = inks.liquor;
  const mix = (channel: number): number => Math.round(255 - ink * (255 - channel));
  return [mix(red), mix(green), mix(blue)];
}

function write(paper: Paper, { line, at, sizeMm }: PlacedText): void {
  let { x } = at;
  paper.fillColor(inks.text);
  for (const { face, text, width } of line.pieces) {
    paper.registerFont(face.name, face.bytes);
    paper.font(face.name).fontSize(sizeMm).text(text, x, at.y, { lineBreak: false, baseline: 'alphabetic' });
    x += width * sizeMm;
  }
}
