/** Figures as lines a person reads. */
import { isReached, type Figure } from './figure.ts';

export interface Measured {
  readonly name: string;
  readonly about: string;
  readonly figures: readonly Figure[];
}

export function lines({ name, about, figures }: Measured): readonly string[] {
  return [`${name}: ${about}`, ...figures.map((figure) => `  ${lineOf(figure)}`)];
}

function lineOf(figure: Figure): string {
  const parts = [mark(figure), figure.what.padEnd(46), ours(figure).padStart(18), beside(figure), reach(figure)];
  return parts.join('  ').trimEnd();
}

const mark = (figure: Figure): string => ({ true: '+', false: '-', null: ' ' })[`${isReached(figure)}`];

export const ours = ({ ours: value, unit }: Figure): string => `${number(value)} ${unit}`;

export const beside = (figure: Figure): string => {
  if (!figure.beside) return '';
  const ratio = figure.ratio === undefined ? '' : `${number(figure.ratio)} × `;
  return `${ratio}${figure.beside.who}: ${number(figure.beside.value)}`;
};

export const reach = ({ reach: to }: Figure): string => {
  if (!to) return '';
  return 'atLeast' in to ? `(reach ≥ ${number(to.atLeast)})` : `(reach ≤ ${number(to.atMost)})`;
};

/** Three digits that count. */
export function number(value: number): string {
  return value >= 100 ? Math.round(value).toLocaleString('en') : Number(value.toPrecision(3)).toString();
}
