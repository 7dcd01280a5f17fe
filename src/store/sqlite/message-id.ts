/** A message's id: the row's number, found fast, and a random tag, so that none can be guessed. */
import { randomBytes } from 'node:crypto';

const tagBytes = 6;
const tagsAtOnce = 256;

/** A tag nobody can guess. */
export type Tags = () => string;

/** Asking for six bytes costs nearly as much as asking for a thousand. */
export function makeTags(): Tags {
  let drawn = Buffer.alloc(0);
  let used = 0;
  return () => {
    if (used === drawn.length) [drawn, used] = [randomBytes(tagBytes * tagsAtOnce), 0];
    used += tagBytes;
    return drawn.toString('base64url', used - tagBytes, used);
  };
}

export interface IdParts {
  readonly seq: number;
  readonly tag: string;
}

export function messageId({ seq, tag }: IdParts): string {
  return `${seq}-${tag}`;
}

/** A malformed id names no row. */
export function idParts(id: string): IdParts {
  const [, seq = '0', tag = ''] = /^(\d{1,15})-([\w-]{1,20})$/.exec(id) ?? [];
  return { seq: Number(seq), tag };
}

/** The message and the place in its list of choices; null when malformed. */
export function choiceParts(key: string): (IdParts & { readonly index: number }) | null {
  const [, id = '', index = ''] = /^([\w-]{1,36})\.(\d{1,3})$/.exec(key) ?? [];
  const parts = idParts(id);
  return parts.tag === '' ? null : { ...parts, index: Number(index) };
}
