import { describe, expect, it } from 'vitest';
import { meaningOf, outcomeOf, type Fault } from '../../../src/channels/telegram/fault.ts';

const answered = (
  code: number,
  description: string,
  more: Partial<Extract<Fault, { kind: 'answered' }>> = {},
): Fault => ({
  kind: 'answered',
  code,
  description,
  retryAfterS: null,
  movedTo: null,
  ...more,
});

describe('the table of faults', () => {
  it.each<[Fault, string, string]>([
    [answered(403, 'Forbidden: bot was blocked by the user'), 'unreachable', 'blocked'],
    [answered(403, 'Forbidden: user is deactivated'), 'unreachable', 'deactivated'],
    [answered(403, 'Forbidden: bot was kicked from the supergroup chat'), 'unreachable', 'removed'],
    [answered(403, "Forbidden: bot can't initiate conversation with a user"), 'unreachable', 'never-started'],
    [answered(403, 'Forbidden: something new'), 'unreachable', 'forbidden'],
    [answered(400, 'Bad Request: chat not found'), 'unreachable', 'no-such-chat'],
    [answered(400, 'Bad Request: PEER_ID_INVALID'), 'unreachable', 'no-such-chat'],
    [answered(400, 'Bad Request: group chat was upgraded to a supergroup chat'), 'refused', 'moved'],
    [answered(400, 'Bad Request: message text is empty'), 'refused', 'text-empty'],
    [answered(400, 'Bad Request: message is too long'), 'refused', 'text-too-long'],
    [answered(400, 'Bad Request: BUTTON_DATA_INVALID'), 'refused', 'choice-key-wrong'],
    [answered(400, 'Bad Request: PHOTO_INVALID_DIMENSIONS'), 'refused', 'bad-request PHOTO_INVALID_DIMENSIONS'],
    [answered(413, 'Request Entity Too Large'), 'refused', 'too-large'],
    [answered(401, 'Unauthorized'), 'retry', 'token-refused'],
    [answered(404, 'Not Found'), 'retry', 'token-refused'],
    [answered(429, 'Too Many Requests: retry after 7', { retryAfterS: 7 }), 'retry', 'too-many'],
    [answered(500, 'Internal Server Error: restart'), 'unknown', 'answer-500'],
    [answered(502, 'Bad Gateway'), 'unknown', 'answer-502'],
    [answered(504, 'Gateway Timeout'), 'unknown', 'answer-504'],
    [{ kind: 'unreached', why: 'ECONNREFUSED' }, 'retry', 'ECONNREFUSED'],
    [{ kind: 'lost', why: 'timeout' }, 'unknown', 'timeout'],
    [{ kind: 'stopped' }, 'unknown', 'stopped'],
  ])('%o is %s', (fault, outcome, why) => {
    expect(outcomeOf(fault, 1000, false)).toMatchObject({ outcome, why });
  });

  it('waits as long as a 429 asks, and a second when it does not say', () => {
    const asked = outcomeOf(answered(429, 'Too Many Requests', { retryAfterS: 7 }), 1000, false);
    expect(asked).toMatchObject({ notBefore: 8000 });
    expect(outcomeOf(answered(429, 'Too Many Requests'), 1000, false)).toMatchObject({ notBefore: 2000 });
  });

  it('tries again freely what may be done twice', () => {
    expect(outcomeOf({ kind: 'lost', why: 'timeout' }, 0, true)).toEqual({ outcome: 'retry', why: 'timeout' });
  });

  it.each(['message is not modified: x', 'message to edit not found', "message can't be edited"])(
    'knows an edit that is none: %s',
    (words) => {
      expect(['unchanged', 'not-editable']).toContain(meaningOf(answered(400, `Bad Request: ${words}`)).meaning);
    },
  );

  it('never repeats what the server says beyond a code in capitals', () => {
    for (const words of ['my secret text', 'MY secret', "can't parse entities: my secret text", 'A'.repeat(60)]) {
      expect(meaningOf(answered(400, `Bad Request: ${words}`)).why).not.toMatch(/secret|AAAA/);
    }
  });
});
