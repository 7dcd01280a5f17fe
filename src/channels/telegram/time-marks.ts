/** Times as the Bot API marks them: a person's own device then shows them in its zone and language. */
import type { MessageEntity } from 'grammy/types';
import type { SaidTime } from '../../messages.ts';

/** Weekday, long date, short time; what isn't in the words is not to appear on the device either. (Bot API 9.5) */
const formats = { day: 'wD', time: 't', 'day-and-time': 'wDt' } as const satisfies Record<SaidTime['shows'], string>;

export function timeMarks(times: readonly SaidTime[]): readonly MessageEntity[] {
  return times.map(({ offset, length, at, shows }) => ({
    type: 'date_time',
    offset,
    length,
    unix_time: Math.floor(at / 1000),
    date_time_format: formats[shows],
  }));
}
