/** Pictures drawn in a thread of their own, as they are built. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { projectRoot } from '../../src/places.ts';
import type { Ladder } from '../../src/messages.ts';
import type { DrawingRoom } from '../../src/pictures/drawing-room.ts';

const built = pathToFileURL(join(projectRoot, 'dist', 'pictures', 'drawing-room.js')).href;
const { makeDrawingRoom } = (await import(built)) as { readonly makeDrawingRoom: () => DrawingRoom };
const ladder: Ladder = { title: '沖泡', rungs: [{ n: 1, seconds: 6, label: '6 秒', length: 1, ink: 1 }] };

it('draws several at once, each its own, and fails alone', { timeout: 120_000 }, async () => {
  const room = makeDrawingRoom();
  const broken = { ...ladder, rungs: null } as unknown as Ladder;
  const [hant, hans, failed] = await Promise.allSettled([
    room.draw(ladder, 'zh-Hant'),
    room.draw({ ...ladder, title: '冲泡' }, 'zh-Hans'),
    room.draw(broken, 'en'),
  ]);
  const pngs = [hant, hans].map((one) => (one?.status === 'fulfilled' ? one.value : new Uint8Array()));
  for (const png of pngs) expect([...png.subarray(0, 4)]).toEqual([0x89, 0x50, 0x4e, 0x47]);
  expect(Buffer.compare(pngs[0]!, pngs[1]!)).not.toBe(0);
  expect(failed?.status).toBe('rejected');
  expect((await room.draw(ladder, 'en')).length).toBeGreaterThan(1000);
});
