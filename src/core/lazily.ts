/** Puts work off until it is first needed, and does it once: a start stays short, and so do tests. */
export function lazily<T extends object>(make: () => T): () => T {
  let made: T | null = null;
  return () => (made ??= make());
}
