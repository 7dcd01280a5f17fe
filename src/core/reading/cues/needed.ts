/** What a text must hold for a pattern to be found in it: most texts lack it, and need no search for it. */

/** What is known of a piece of a pattern. */
interface Piece {
  /** Each text it can be, where they are few. */
  readonly texts: readonly string[] | null;
  /** Texts of which every match holds one. */
  readonly needed: readonly string[] | null;
}

const nothing: Piece = { texts: [''], needed: null };
const anything: Piece = { texts: null, needed: null };
const mostTexts = 24;

const fewTexts = (texts: readonly string[]): Piece =>
  texts.length > mostTexts ? { texts: null, needed: better(null, texts) } : { texts, needed: better(null, texts) };

const shortest = (texts: readonly string[] | null): number => (texts ? Math.min(...texts.map((one) => one.length)) : 0);

/** The one whose shortest text is longer tells more. */
function better(before: readonly string[] | null, texts: readonly string[] | null): readonly string[] | null {
  return shortest(texts) > shortest(before) ? texts : before;
}

const plainly = /[^\\()[\]{}|.*+?^$]+/y;

/** Reads a pattern from left to right. */
class Reader {
  private at = 0;

  constructor(private readonly source: string) {}

  /** Alternatives, up to the end of their group. */
  read(): Piece {
    const all = [this.sequence()];
    while (this.take('|')) all.push(this.sequence());
    const texts = all.every((one) => one.texts !== null) ? all.flatMap((one) => one.texts ?? []) : null;
    const needed = all.every((one) => one.needed !== null) ? all.flatMap((one) => one.needed ?? []) : null;
    return { texts: texts && texts.length <= mostTexts ? texts : null, needed };
  }

  private sequence(): Piece {
    let run: readonly string[] = [''];
    let isWhole = true;
    let needed: readonly string[] | null = null;
    while (this.at < this.source.length && !this.sees('|') && !this.sees(')')) {
      const letters = this.letters();
      if (letters !== '') {
        run = run.map((head) => head + letters);
        continue;
      }
      const piece = this.repeated();
      const { texts } = piece;
      if (texts !== null && run.length * texts.length <= mostTexts) {
        run = run.flatMap((head) => texts.map((tail) => head + tail));
        continue;
      }
      needed = better(better(needed, run), piece.needed);
      run = texts ?? [''];
      isWhole = false;
    }
    return { texts: isWhole ? run : null, needed: better(needed, run) };
  }

  /** As many as stand for themselves; the last of them may belong to what tells how often. */
  private letters(): string {
    plainly.lastIndex = this.at;
    const [found = ''] = plainly.exec(this.source) ?? [];
    const isCounted = '?*+{'.includes(this.source[this.at + found.length] ?? ' ');
    const letters = isCounted ? found.slice(0, -1) : found;
    this.at += letters.length;
    return letters;
  }

  /** A piece, and how often it may stand. */
  private repeated(): Piece {
    const once = this.single();
    if (!'?*+{'.includes(this.source[this.at] ?? ' ')) return once;
    const often = /^(?:[?*+]|\{(\d+)(,?)(\d*)\})/.exec(this.source.slice(this.at, this.at + 12));
    if (!often) return once;
    this.at += often[0].length;
    this.take('?');
    const mayBeNone = often[0] === '?' || often[0] === '*' || often[1] === '0';
    if (often[0] === '?') return { texts: once.texts && ['', ...once.texts], needed: null };
    return mayBeNone ? anything : { texts: null, needed: once.needed };
  }

  private single(): Piece {
    const char = this.source[this.at++] ?? '';
    if (char === '(') return this.group();
    if (char === '[') return this.charClass();
    if (char === '\\') return this.escaped();
    if (char === '.') return anything;
    return char === '^' || char === '$' ? nothing : fewTexts([char]);
  }

  private group(): Piece {
    const [opening = ''] = /^(?:\?(?:<?[=!]|:|<\w+>))?/.exec(this.source.slice(this.at)) ?? [];
    this.at += opening.length;
    const within = this.read();
    this.take(')');
    return /[=!]$/.test(opening) ? nothing : within;
  }

  /** A few characters by name; of ranges and of what is shut out nothing is told. */
  private charClass(): Piece {
    const [whole = '', within = ''] = /^((?:[^\]\\]|\\.)*)\]/.exec(this.source.slice(this.at)) ?? [];
    this.at += whole.length;
    return /[-\\^]/.test(within) ? anything : fewTexts(Array.from(within));
  }

  private escaped(): Piece {
    const char = this.source[this.at++] ?? '';
    if (/[bB]/.test(char)) return nothing;
    return /[a-zA-Z0-9]/.test(char) ? anything : fewTexts([char]);
  }

  private sees(char: string): boolean {
    return this.source[this.at] === char;
  }

  private take(char: string): boolean {
    if (!this.sees(char)) return false;
    this.at++;
    return true;
  }
}

/** Texts of which each match of one of these patterns holds one, or null where nothing can be told. Patterns are as `sourceOf` makes them. */
export function neededBy(sources: readonly string[]): readonly string[] | null {
  const needed = sources.length === 0 ? [] : new Reader(sources.join('|')).read().needed;
  return needed && shortened(needed);
}

/** What holds "brewing" holds "brew". */
function shortened(needed: readonly string[]): readonly string[] {
  const told: string[] = [];
  for (const one of [...new Set(needed)].toSorted((a, b) => a.length - b.length)) {
    if (!told.some((shorter) => one.includes(shorter))) told.push(one);
  }
  return told;
}
