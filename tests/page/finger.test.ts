/** A touch that comes twice: only the same finger on the same spot at once is not meant. */
import { expect, it } from 'vitest';
import { makeFinger } from '../../src/channels/web/page/finger.ts';

/** When, where, and the browser's own count, which is 0 for a key. */
type Touch = readonly [atMs: number, x: number, y: number, detail?: number];

it.each<[string, readonly Touch[], readonly boolean[]]>([
  ['one touch', [[1_000, 50, 50]], [false]],
  [
    'twice at once',
    [
      [1_000, 50, 50],
      [1_120, 53, 49],
    ],
    [false, true],
  ],
  [
    'three times at once',
    [
      [0, 50, 50],
      [300, 50, 50],
      [600, 50, 50],
    ],
    [false, true, true],
  ],
  [
    'twice, in one’s own time',
    [
      [1_000, 50, 50],
      [1_500, 50, 50],
    ],
    [false, false],
  ],
  [
    'at once, on the next thing',
    [
      [1_000, 50, 50],
      [1_120, 50, 90],
    ],
    [false, false],
  ],
  [
    'a key after a touch',
    [
      [1_000, 50, 50],
      [1_050, 0, 0, 0],
    ],
    [false, false],
  ],
  [
    'a key twice',
    [
      [1_000, 0, 0, 0],
      [1_050, 0, 0, 0],
    ],
    [false, false],
  ],
  [
    'a touch, a key, the touch again',
    [
      [1_000, 50, 50],
      [1_050, 0, 0, 0],
      [1_100, 50, 50],
    ],
    [false, false, true],
  ],
])('%s', (_, touches, same) => {
  const isSame = makeFinger();
  const told = touches.map(([timeStamp, clientX, clientY, detail = 1]) =>
    isSame({ timeStamp, clientX, clientY, detail }),
  );
  expect(told).toEqual(same);
});
