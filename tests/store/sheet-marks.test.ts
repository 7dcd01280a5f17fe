/** Names that are there or not: once added, on the disk. */
import { expect, test } from 'vitest';
import type { Store } from '../../src/store/contract.ts';
import { marksIn } from '../../src/store/sheet-marks.ts';
import { noon } from './samples.ts';

test('a name is added only once it is on the disk', async () => {
  const done: string[] = [];
  const store: Pick<Store, 'record' | 'synced' | 'find'> = {
    async record() {
      done.push('kept');
      return { handled: null, taken: null, outcome: 'new', person: 1 };
    },
    async synced() {
      done.push('synced');
    },
    find: async () => 1,
  };
  const marks = marksIn(store, () => noon);
  await marks.add('away d').then(() => done.push('added'));
  expect(done).toEqual(['kept', 'synced', 'added']);
});
