/** Our reference of what was sent, "t12" or "p12.t13": the messages of Telegram behind one of ours, and what each is. */

export interface SentPiece {
  readonly kind: 'text' | 'picture' | 'file';
  readonly messageId: number;
}

const kinds: { readonly [letter: string]: SentPiece['kind'] } = { t: 'text', p: 'picture', f: 'file' };

export function makeReference(pieces: readonly SentPiece[]): string {
  return pieces.map(({ kind, messageId }) => `${kind[0]}${messageId}`).join('.');
}

/** Empty for what is no reference of ours. */
export function parseReference(reference: string): readonly SentPiece[] {
  if (!/^[tpf]\d{1,15}(\.[tpf]\d{1,15})*$/.test(reference)) return [];
  return reference.split('.').map((part) => ({ kind: kinds[part[0]!]!, messageId: Number(part.slice(1)) }));
}
