/** The worker behind `alarm.ts`: gives back each number it is told, after the time it is told with it. */
self.addEventListener('message', (event: MessageEvent<{ readonly id: number; readonly inMs: number }>) => {
  const { id, inMs } = event.data;
  setTimeout(() => self.postMessage(id, { transfer: [] }), inMs);
});
