/** What was planned one after another in a talk, so that a change can be taken back. Keeps no state. */
import type { Calls } from '../../flow/book.ts';
import type { Facts } from '../../flow/flow.ts';
import { listOf } from '../values.ts';

export const plannedCallNames = ['keepPlanned', 'plannedBefore'] as const;

/** Further back nobody goes. Judgement. */
const mostPlanned = 6;

const isAlike = (a: Facts, b: Facts): boolean =>
  Object.keys({ ...a, ...b }).every((name) => (a[name] ?? null) === (b[name] ?? null));

export const plannedCalls: { readonly [name in (typeof plannedCallNames)[number]]: Calls[string] } = {
  /** The last one first; planned again as it was, it takes no place of its own. How high someone lives is no change of a plan. */
  keepPlanned: ({ planned = null, ...given }) => {
    const { elevationM: _, ...asked } = given;
    const before = listOf(planned);
    const isNew = before[0] === undefined || !isAlike(before[0], asked);
    return { gives: isNew ? [asked, ...before].slice(0, mostPlanned) : before };
  },
  /** The one before the last, with what was planned up to then. */
  plannedBefore: ({ planned = null }) => {
    const [, ...earlier] = listOf(planned);
    return { gives: earlier[0] === undefined ? null : { ...earlier[0], planned: earlier } };
  },
};
