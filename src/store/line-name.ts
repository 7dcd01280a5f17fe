/** The name of what arrived: from the channel's own update id, which may carry a chat's name and cannot be read out of it. */
import { hash } from 'node:crypto';
import type { Incoming } from '../messages.ts';

type Named = Pick<Incoming, 'channel' | 'updateId'>;

export const lineOf = (named: Named): string => lineDigest(named).toString('base64url');

/** 16 bytes. */
export function lineDigest({ channel, updateId }: Named): Buffer {
  return hash('sha256', `${channel} ${updateId}`, 'buffer').subarray(0, 16);
}
