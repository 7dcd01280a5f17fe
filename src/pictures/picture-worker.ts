/** The thread in which pictures are drawn: fonts take a second to load, in which nobody else is to wait. */
import { parentPort } from 'node:worker_threads';
import type { Drawn, Order } from './drawing-room.ts';
import { drawPicture } from './plan-card.ts';

async function drawn({ id, ladder, language }: Order): Promise<Drawn> {
  try {
    return { id, png: await drawPicture(ladder, language) };
  } catch (error) {
    return { id, failed: error instanceof Error ? error.message : 'unknown' };
  }
}

parentPort?.on('message', (order: Order) => {
  void drawn(order).then((answer) => parentPort?.postMessage(answer, []));
});
