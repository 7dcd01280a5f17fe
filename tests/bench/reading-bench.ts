/**
 * Times finding a tea over catalogues of 41, 500 and 5,000 teas, and reading a message, long and odd ones too; prints CPU milliseconds a message.
 * Run compiled, or through any runner that takes TypeScript.
 */
import type { Tea } from '../../src/core/teas/tea.ts';
import { makeTeaFinder } from '../../src/core/teas/find.ts';
import { makeReader } from '../../src/core/reading/reading.ts';
import { answers, names, teas, words } from '../reading/content.ts';
import { catalogueOf } from './catalogue.ts';
import { readSentences } from '../reading/accuracy.ts';
import { hostileTexts } from '../reading/hostile-texts.ts';

function cpuMsOf(work: () => void): number {
  const started = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(started);
  return (user + system) / 1000;
}

const sentences = [...readSentences('sentences.txt'), ...readSentences('fresh.txt')].map((sentence) => sentence.text);
const eachSentence = (work: (text: string) => unknown): number =>
  cpuMsOf(() => {
    for (const text of sentences) work(text);
  }) / sentences.length;

function fresh(all: readonly Tea[]): { find: (text: string) => unknown; read: (text: string) => unknown } {
  const finder = makeTeaFinder(all, names);
  const read = makeReader({ finder, words, ordinary: names.ordinary, answers });
  return { find: (text) => finder.find(text), read: (text) => read(text, { language: null, asked: null }) };
}

/** Each sentence once, by a finder and a reader that have not seen it: they keep what they looked up. The code itself is warm. */
export function measureReading(): string[] {
  return [...[teas.length, 500, 5000].map(measureCatalogue), ...measureHostile()];
}

function measureCatalogue(size: number): string {
  return `${size} teas: find ${findMs(size).toFixed(3)} ms, read ${msOf(size, 'read').toFixed(3)} ms of CPU a message`;
}

/** CPU milliseconds to find the teas of a message among so many. */
export const findMs = (size: number): number => msOf(size, 'find');

function msOf(size: number, what: 'find' | 'read'): number {
  const all = catalogueOf(size);
  eachSentence(fresh(all)[what]);
  return eachSentence(fresh(all)[what]);
}

const rounds = 20;

function measureHostile(): string[] {
  const { read } = fresh(teas);
  const many = (text: string) => (): void => {
    for (let i = 0; i < rounds; i++) read(text);
  };
  return hostileTexts.map(([name, text]) => {
    many(text)();
    return `${name} (${text.length} characters): read ${(cpuMsOf(many(text)) / rounds).toFixed(2)} ms of CPU`;
  });
}
