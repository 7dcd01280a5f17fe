/** The name of what arrived: from the channel's own update id, which may carry a chat's name and cannot be read out of it. */
import { hash } from 'node:crypto';
import type { Incoming } from '../messages.ts';

type Named = Pick<Incoming, 'channel' | 'updateId'>;

export const lineOf = (named: Named): string => lineDigest(named).toString('base64url');

/** 16 bytes. By way of a string: a digest that comes as bytes takes a piece of memory of its own. */
export function lineDigest({ channel, updateId }: Named): Buffer {
  return Buffer.from(hash('sha256', `${channel} ${updateId}`).slice(0, 32), 'hex');
}
