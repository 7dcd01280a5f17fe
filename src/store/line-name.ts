/** The name of what arrived: from the channel's own update id, which may carry a chat's name and cannot be read out of it. */
import { createHash } from 'node:crypto';
import type { Incoming } from '../messages.ts';

export function lineOf({ channel, updateId }: Pick<Incoming, 'channel' | 'updateId'>): string {
  return createHash('sha256').update(`${channel} ${updateId}`).digest().subarray(0, 16).toString('base64url');
}
