/** A line between a browser and a house that can be cut: a browser that plays at being offline still lets through what outlives its page. */
import { connect, createServer, type AddressInfo, type Socket } from 'node:net';

export interface Cable {
  readonly url: string;
  cut(): void;
  mend(): void;
  end(): Promise<void>;
}

export async function layCable(address: string): Promise<Cable> {
  const port = Number(new URL(address).port);
  const open = new Set<Socket>();
  let isWhole = true;
  const both = (near: Socket, far: Socket): void => {
    for (const [one, other] of [
      [near, far],
      [far, near],
    ] as const) {
      open.add(one);
      one.on('error', () => other.destroy());
      one.on('close', () => {
        open.delete(one);
        other.destroy();
      });
    }
    near.pipe(far).pipe(near);
  };
  const server = createServer((near) => (isWhole ? both(near, connect(port, '127.0.0.1')) : near.destroy()));
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const drop = (): void => open.forEach((socket) => socket.destroy());
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    cut() {
      isWhole = false;
      drop();
    },
    mend() {
      isWhole = true;
    },
    async end() {
      drop();
      await new Promise((ended) => server.close(ended));
    },
  };
}
