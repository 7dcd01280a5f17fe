/** What a flow tells of the shopkeeper's own side, as changes; and what anyone's flow counts. */
import type { Facts } from '../core/flow/flow.ts';
import type { Language } from '../core/units.ts';
import type { Turn } from '../store/contract.ts';
import { countedThings, type DeskChange } from '../store/desk-contract.ts';
import { bookingId, numberOf, oneOf, optionalText, textOf, whenDone } from './task-values.ts';

/** How long a one-time code is worth something. */
export const codeMinutes = 10;

/** Null when the task is about something else. */
export function deskWork(task: string, values: Facts, { turn, language }: Asked): readonly DeskChange[] | null {
  const change = makers[task];
  return change ? [change(values, turn, language)] : null;
}

interface Asked {
  readonly turn: Turn;
  readonly language: Language;
}

const makers: { readonly [task: string]: (values: Facts, turn: Turn, language: Language) => DeskChange } = {
  count: (values) => ({ do: 'count', what: oneOf(values, 'what', countedThings), item: textOf(values, 'item') }),
  'enrol-guest': (values, turn, language) => ({
    do: 'enrol-guest',
    booking: bookingId(turn),
    lesson: textOf(values, 'lesson'),
    seats: numberOf(values, 'seats'),
    to: oneOf(values, 'to', ['seated', 'waiting']),
    name: textOf(values, 'name'),
    mail: optionalText(values, 'mail'),
    // Nobody asked the guest: most likely they speak as the shopkeeper does.
    language,
    at: whenDone(turn),
  }),
  'release-guest': (values, turn) => ({
    do: 'release-guest',
    booking: textOf(values, 'booking'),
    at: whenDone(turn),
  }),
  'put-back-guest': (values, turn) => ({
    do: 'put-back-guest',
    booking: textOf(values, 'booking'),
    id: bookingId(turn),
    to: oneOf(values, 'to', ['seated', 'waiting']),
    at: whenDone(turn),
  }),
  'reseat-guest': (values, turn) => ({
    do: 'reseat-guest',
    booking: textOf(values, 'booking'),
    seats: numberOf(values, 'seats'),
    was: numberOf(values, 'was'),
    at: whenDone(turn),
  }),
  'transfer-guest': (values, turn) => ({
    do: 'transfer-guest',
    booking: textOf(values, 'booking'),
    lesson: textOf(values, 'lesson'),
    id: bookingId(turn),
    at: whenDone(turn),
  }),
  'write-to-guest': (values) => ({
    do: 'write-to-guest',
    booking: textOf(values, 'booking'),
    text: textOf(values, 'text'),
  }),
  'offer-code': (values, turn) => ({
    do: 'offer-code',
    code: textOf(values, 'code'),
    until: whenDone(turn) + codeMinutes * 60_000,
  }),
  'seen-undelivered': (values) => ({ do: 'seen-undelivered', upTo: numberOf(values, 'upTo') }),
};
