/** Pictures drawn in a thread of their own, opened for the first and again after a failure. They wait as orders: one being drawn holds some 5 MB of pixels. */
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Language } from '../core/units.ts';
import { makeInTurn } from '../in-turn.ts';
import type { Ladder } from '../messages.ts';
import { builtFolder } from '../project-root.ts';

export interface DrawingRoom {
  /** A PNG. What was given up before its turn came is not drawn, and fails. */
  readonly draw: (ladder: Ladder, language: Language, givenUp?: AbortSignal) => Promise<Uint8Array>;
}

export interface Order {
  readonly id: number;
  readonly ladder: Ladder;
  readonly language: Language;
}

export type Drawn =
  { readonly id: number; readonly png: Uint8Array } | { readonly id: number; readonly failed: string };

interface Waiting {
  readonly resolve: (png: Uint8Array) => void;
  readonly reject: (error: Error) => void;
}

/** As it is built: a worker cannot be begun from a source. */
const script = join(builtFolder, 'pictures/picture-worker.js');

export function makeDrawingRoom(): DrawingRoom {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | null = null;
  let orders = 0;

  const answer = (drawn: Drawn): void => {
    const order = waiting.get(drawn.id);
    waiting.delete(drawn.id);
    if ('png' in drawn) order?.resolve(drawn.png);
    else order?.reject(new Error(drawn.failed));
  };
  const close = (error: Error): void => {
    worker = null;
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  const open = (): Worker => {
    const opened = new Worker(script);
    opened.on('message', answer).on('error', close);
    // A picture keeps nobody from stopping.
    opened.unref();
    return opened;
  };
  const order = (ladder: Ladder, language: Language): Promise<Uint8Array> =>
    new Promise((resolve, reject) => {
      const id = ++orders;
      waiting.set(id, { resolve, reject });
      worker ??= open();
      worker.postMessage({ id, ladder, language } satisfies Order, []);
    });
  const inTurn = makeInTurn();
  return {
    draw: (ladder, language, givenUp) =>
      inTurn(async () => {
        if (givenUp?.aborted === true) throw new Error('nobody waits for this picture any more');
        return order(ladder, language);
      }),
  };
}
