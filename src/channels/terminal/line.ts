/** A message drawn in lines, and a line read back: a number or a label shown is a tap, anything else is text. */
import type { Choice, Ladder, Outgoing, What } from '../../messages.ts';

export type DrawLadder = (ladder: Ladder) => readonly string[];

export function drawn(message: Outgoing, drawLadder: DrawLadder): readonly string[] {
  const { paragraphs, ladder, countdown, file, choices } = message;
  return [
    ...paragraphs.flatMap((paragraph) => paragraph.split('\n')),
    ...(ladder ? drawLadder(ladder) : []),
    ...(countdown ? [countdown.label] : []),
    ...(file ? [`  → ${file.label}: ${file.name}`] : []),
    ...choices.map(({ label }, i) => `  [${i + 1}] ${label}`),
  ];
}

export function readLine(line: string, shown: readonly Choice[]): What {
  const text = line.trim();
  const byNumber = /^\d{1,2}$/.test(text) ? shown[Number(text) - 1] : undefined;
  const choice = byNumber ?? shown.find(({ label }) => label.toLowerCase() === text.toLowerCase());
  return choice ? { kind: 'tap', key: choice.key } : { kind: 'text', text: line };
}
