/** Our reference of what was sent, "t12" or "p12.t13": the messages of Telegram behind one of ours, and whether each is a text or a picture. */

export interface SentPiece {
  readonly kind: 'text' | 'picture';
  readonly messageId: number;
}

export function makeReference(pieces: readonly SentPiece[]): string {
  return pieces.map(({ kind, messageId }) => `${kind === 'text' ? 't' : 'p'}${messageId}`).join('.');
}

/** Empty for what is no reference of ours. */
export function parseReference(reference: string): readonly SentPiece[] {
  if (!/^[tp]\d{1,15}(\.[tp]\d{1,15})*$/.test(reference)) return [];
  return reference.split('.').map((part) => ({
    kind: part.startsWith('t') ? 'text' : 'picture',
    messageId: Number(part.slice(1)),
  }));
}
