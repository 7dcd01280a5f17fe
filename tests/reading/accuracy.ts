/** Reads labelled sentences and counts where the reader says something else than the label does. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Language } from '../../src/core/units.ts';
import type { Reader, Reading } from '../../src/core/reading/reading.ts';
import { teaInItself, type TeaFinder } from '../../src/core/teas/find.ts';

const fields = ['tea', 'family', 'vessel', 'volumeMl', 'leafG', 'guests', 'tempC', 'elevationM', 'style'] as const;
type Field = (typeof fields)[number];

export interface Sentence {
  readonly line: number;
  readonly text: string;
  readonly language: Language;
  readonly kind: string;
  readonly slip: boolean;
  readonly facts: { readonly [field in Field]?: string | number };
  /** The standing answers any of which is right, where that is labelled. */
  readonly answers: readonly string[];
}

export interface Miss {
  readonly sentence: Sentence;
  readonly field: string;
  readonly expected: string | number | null;
  readonly read: string | number | null;
}

/** What each file is for stands at its head. */
export function readSentences(file: string): Sentence[] {
  const lines = readFileSync(join(import.meta.dirname, file), 'utf8').split('\n');
  return lines.flatMap((text, i) => (text.trim() === '' || text.startsWith('#') ? [] : [sentenceOf(text, i + 1)]));
}

function sentenceOf(row: string, line: number): Sentence {
  const [head = '', text = '', labels = ''] = row.split('|').map((part) => part.trim());
  const [language = 'en', named = ''] = head.split(' ');
  const told = labels.split(/\s+/).filter((label) => label !== '');
  const facts = Object.fromEntries(told.filter((label) => !label.startsWith('answer=')).map(labelOf));
  const answers = told.flatMap((label) => (label.startsWith('answer=') ? label.slice(7).split('/') : []));
  return {
    line,
    text,
    language: language as Language,
    kind: named.replace('~', ''),
    slip: named.startsWith('~'),
    facts,
    answers,
  };
}

function labelOf(label: string): [Field, string | number] {
  const [field = '', value = ''] = label.split('=');
  const known = fields.find((f) => f === field);
  if (known === undefined) throw new Error(`no such label: ${label}`);
  return [known, /^[\d.]+$/.test(value) ? Number(value) : value];
}

export function missesOf(sentence: Sentence, reading: Reading, finder: TeaFinder): Miss[] {
  const { facts } = sentence;
  const family = facts.family ?? (facts.tea === undefined ? null : finder.byId(String(facts.tea))?.family) ?? null;
  const expected: { [name: string]: string | number | null } = { kind: sentence.kind, language: sentence.language };
  for (const field of fields) expected[field] = field === 'family' ? family : (facts[field] ?? null);
  const read: { [name: string]: unknown } = { ...reading, tea: teaInItself(finder, reading.tea) };
  return Object.entries(expected).flatMap(([field, value]) => {
    const got = read[field] as string | number | null;
    const same = typeof value === 'number' && typeof got === 'number' ? Math.abs(value - got) <= 1 : value === got;
    return same ? [] : [{ sentence, field, expected: value, read: got }];
  });
}

export interface Accuracy {
  readonly sentences: number;
  readonly misses: readonly Miss[];
  /** 0…1, of all sentences. */
  of(field: string): number;
  /** A tea said to be another, or one where none is. */
  readonly wrongTeas: readonly Miss[];
}

export function accuracyOf(sentences: readonly Sentence[], read: Reader, finder: TeaFinder): Accuracy {
  const misses = sentences.flatMap((sentence) =>
    missesOf(sentence, read(sentence.text, { language: null, asked: null }), finder),
  );
  return {
    sentences: sentences.length,
    misses,
    of: (field) => 1 - misses.filter((miss) => miss.field === field).length / sentences.length,
    wrongTeas: misses.filter((miss) => miss.field === 'tea' && miss.read !== null),
  };
}

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

interface Answered {
  /** Sentences that say which answers fit. */
  readonly of: number;
  readonly right: number;
}

/** How many get a standing answer that fits; `near` counts those as well that may be meant where nothing else is understood. */
export function answered(sentences: readonly Sentence[], read: Reader, near: 'near' | 'sure'): Answered {
  const labelled = sentences.filter(({ answers }) => answers.length > 0);
  const right = labelled.filter(({ text, answers }) => {
    const { answer, nearAnswer } = read(text, { language: null, asked: null });
    return answers.includes(answer ?? (near === 'near' ? nearAnswer : null) ?? '');
  });
  return { of: labelled.length, right: right.length };
}

/** Lines a person reads: one a field, one a language and kind, then what went wrong. */
export function report(accuracy: Accuracy, sentences: readonly Sentence[], showMisses: boolean): string {
  const lines = ['kind', 'language', ...fields].map((field) => `${field.padEnd(12)} ${percent(accuracy.of(field))}`);
  const group = (name: string, of: (sentence: Sentence) => string): void => {
    for (const value of new Set(sentences.map(of))) {
      const all = sentences.filter((sentence) => of(sentence) === value);
      const wrong = accuracy.misses.filter((miss) => miss.field === 'kind' && of(miss.sentence) === value);
      lines.push(`kind, ${name} ${value}: ${percent(1 - wrong.length / all.length)} of ${all.length}`);
    }
  };
  group('language', (sentence) => sentence.language);
  group('kind', (sentence) => sentence.kind);
  group('slip', (sentence) => String(sentence.slip));
  lines.push(`taken for: ${confusions(accuracy.misses)}`);
  lines.push(`wrong teas: ${accuracy.wrongTeas.length}`);
  if (showMisses) {
    for (const { sentence, field, expected, read } of accuracy.misses) {
      lines.push(`${sentence.line} ${field}: ${String(expected)} read as ${String(read)} | ${sentence.text}`);
    }
  }
  return lines.join('\n');
}

/** "shop for brew 3, …", the most frequent first. */
function confusions(misses: readonly Miss[]): string {
  const counts = new Map<string, number>();
  for (const { field, expected, read } of misses) {
    if (field !== 'kind') continue;
    const pair = `${String(expected)} for ${String(read)}`;
    counts.set(pair, (counts.get(pair) ?? 0) + 1);
  }
  const pairs = [...counts].toSorted((a, b) => b[1] - a[1]);
  return pairs.map(([pair, count]) => `${pair} ${count}`).join(', ');
}
