/** An expression as a flow file would write it; reading it back gives the same tree. */
import type { Expression } from './expression.ts';

export function writeExpression(expression: Expression): string {
  switch (expression.op) {
    case 'value':
      return typeof expression.value === 'string' ? `'${expression.value}'` : String(expression.value);
    case 'name':
      return expression.path.join('.');
    case 'list':
      return `[${expression.items.map(writeExpression).join(', ')}]`;
    case 'count':
      return `count(${writeExpression(expression.of)})`;
    case 'minus':
      return `-${bracketed(expression.of)}`;
    case 'not':
      return writeNegation(expression.of);
    case 'known':
    case 'empty':
      return `${bracketed(expression.of)} is ${expression.op}`;
    case 'two':
      return `${bracketed(expression.left)} ${expression.by} ${bracketed(expression.right)}`;
    default:
      return expression satisfies never;
  }
}

function writeNegation(of: Expression): string {
  if (of.op === 'known') return `${bracketed(of.of)} is unknown`;
  if (of.op === 'empty') return `${bracketed(of.of)} is not empty`;
  if (of.op === 'two' && of.by === 'is') return `${bracketed(of.left)} is not ${bracketed(of.right)}`;
  return `not ${bracketed(of)}`;
}

const bracketed = (part: Expression): string =>
  ['value', 'name', 'list', 'count'].includes(part.op) ? writeExpression(part) : `(${writeExpression(part)})`;
