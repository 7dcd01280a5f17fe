/** Choices laid out as buttons under a message, side by side where their labels leave room. */
import type { InlineKeyboardMarkup } from 'grammy/types';
import type { Choice } from '../../messages.ts';

/** Columns a phone held upright shows across one message, and what a button's edges take. Common practice, no source. */
const rowColumns = 38;
const edgeColumns = 4;
const mostInRow = 4;

/** The Bot API's limit for callback_data. */
export const keyLimitBytes = 64;

/** Null when there is nothing to choose: an edit then takes the old buttons away. */
export function keyboardOf(choices: readonly Choice[]): InlineKeyboardMarkup | null {
  if (choices.length === 0) return null;
  return { inline_keyboard: rowsOf(choices).map((row) => row.map(buttonOf)) };
}

function buttonOf({ label, key }: Choice) {
  return { text: label, callback_data: key };
}

/** In their order. Buttons of a row are equally wide, so the widest label decides. */
export function rowsOf(choices: readonly Choice[]): readonly (readonly Choice[])[] {
  const rows: Choice[][] = [];
  for (const choice of choices) {
    const row = rows.at(-1);
    if (row && fits([...row, choice])) row.push(choice);
    else rows.push([choice]);
  }
  return rows;
}

function fits(row: readonly Choice[]): boolean {
  const widest = Math.max(...row.map(({ label }) => columnsOf(label)));
  return row.length <= mostInRow && row.length * (widest + edgeColumns) <= rowColumns;
}

const wide =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe4f\uff00-\uff60\u{1f300}-\u{1faff}\u{20000}-\u{3fffd}]/u;

/** Han characters and pictures are two columns wide. */
function columnsOf(label: string): number {
  let columns = 0;
  for (const character of label) columns += wide.test(character) ? 2 : 1;
  return columns;
}
