/** Reads the sentences of every language and refuses what is broken, missing in a language, or differs in its values. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { languages, type Language } from '../core/units.ts';
import { variablesOf } from '../core/words/pattern.ts';
import { readWordsSource, type WordsSource } from '../core/words/source-check.ts';
import { wordFunctions, type WordsSources } from '../core/words/words.ts';
import { noteTogether, rightTogether } from './kept.ts';

export interface WordFiles {
  readonly sources: WordsSources;
  readonly problems: readonly string[];
  /** Every key of any language, terms aside. */
  readonly keys: readonly string[];
  /** The values a sentence needs, in any of its languages. */
  variables(key: string): readonly string[];
  /** "flows/words/en.ftl:12:1" of a key. */
  at(language: Language, key: string): string;
}

/** Reads flows/words/{en,zh-Hant,zh-Hans}.ftl; a missing file is a problem like any other. */
export function readWordFiles(flowsDir: string): WordFiles {
  const file = (language: Language): string => join(flowsDir, 'words', `${language}.ftl`);
  const shown = (language: Language): string => relative(process.cwd(), file(language));
  const missing: string[] = [];
  const strange = strangeFiles(join(flowsDir, 'words'));
  const texts = languages.map((language) => {
    try {
      return [language, readFileSync(file(language), 'utf8')] as const;
    } catch {
      missing.push(`${shown(language)}:1:1 expected this file, but it cannot be read`);
      return [language, ''] as const;
    }
  });
  const all = texts.map(([, text]) => text);
  const wasRight = rightTogether(all);
  const functions = wasRight ? null : wordFunctions;
  const parsed = new Map(texts.map(([language, text]) => [language, readWordsSource(text, functions)] as const));
  const at = (language: Language, key: string): string =>
    `${shown(language)}:${parsed.get(language)?.lines.get(key) ?? 1}:1`;
  const broken = [...parsed].flatMap(([language, { problems }]) =>
    problems.map((p) => `${shown(language)}:${p.line}:${p.column} expected ${p.expected}`),
  );
  const unlike = wasRight ? [] : differences(parsed, at);
  const problems = missing.length > 0 ? missing : [...strange, ...broken, ...unlike];
  if (problems.length === 0) noteTogether(all);
  const entries = [...parsed.values()].map((source) => source.entries);
  const keys = new Set(entries.flatMap((one) => [...one.keys()].filter((id) => !id.startsWith('-'))));
  return {
    sources: Object.fromEntries(parsed) as WordsSources,
    problems,
    keys: [...keys],
    variables: (key) => [...new Set(entries.flatMap((one) => [...variablesOf(key, one)]))],
    at,
  };
}

/** A language is more than its sentences: one that the program does not know would never be spoken. */
function strangeFiles(wordsDir: string): readonly string[] {
  const known = languages.map((language) => `${language}.ftl`);
  if (!existsSync(wordsDir)) return [];
  return readdirSync(wordsDir)
    .filter((name) => name.endsWith('.ftl') && !known.includes(name))
    .map((name) => {
      const shown = relative(process.cwd(), join(wordsDir, name));
      return `${shown}:1:1 expected one of the languages of src/core/units.ts (${languages.join(', ')})`;
    });
}

const valuesNamed = (names = ''): string => (names === '' ? 'no value' : `$${names}`);

/** Every language must have every sentence, with the same values. */
function differences(
  parsed: ReadonlyMap<Language, WordsSource>,
  at: (language: Language, key: string) => string,
): readonly string[] {
  const everyKey = new Set([...parsed.values()].flatMap(({ lines }) => [...lines.keys()]));
  const problems: string[] = [];
  for (const key of everyKey) {
    const holders = [...parsed].filter(([, { lines }]) => lines.has(key));
    const [first] = holders;
    for (const [language, source] of parsed) {
      if (!source.lines.has(key))
        problems.push(`${at(language, key)} expected a sentence "${key}", as ${at(first![0], key)} has`);
    }
    for (const [language, source] of holders.slice(1)) {
      const [wanted, found] = [first![1], source].map((s) => [...variablesOf(key, s.entries)].toSorted().join(' $'));
      if (wanted !== found)
        problems.push(
          `${at(language, key)} expected "${key}" to use ${valuesNamed(wanted)} as ${at(first![0], key)}, not ${valuesNamed(found)}`,
        );
    }
  }
  return problems;
}
