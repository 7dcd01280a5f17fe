/** The program as it is built, into one file: what works in its parts must work in the whole, with the libraries it holds. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startStandIn, type StandIn } from '../channels/telegram/bot-api/server.ts';
import { mailSide } from '../faults/mail-side.ts';
import { pageSide, type Side } from '../faults/sides.ts';
import { startService, type Service } from './service.ts';

const folder = mkdtempSync(join(tmpdir(), 'ninthpour-built-'));
const page = pageSide();
let mail: Side;
let telegram: StandIn;
let service: Service;
let address: string;

beforeAll(async () => {
  telegram = await startStandIn();
  mail = await mailSide(join(folder, 'ninthpour.sqlite'));
  await mail.write('', 1);
  const reached = { TELEGRAM_TOKEN: telegram.token, TELEGRAM_API_ROOT: telegram.root, ...mail.env };
  service = startService({ env: { NINTHPOUR_FOLDER: folder, ...reached } });
  address = await service.ready;
});

afterAll(async () => {
  service.child.kill('SIGTERM');
  expect((await service.ended).code).toBe(0);
  mail.end();
  await telegram.close();
  rmSync(folder, { recursive: true });
});

const answeredOn = async (side: Side): Promise<void> => {
  await expect.poll(() => side.unanswered(address), { timeout: 30_000 }).toEqual([]);
};

test('answers on the page', { timeout: 60_000 }, async () => {
  await page.write(address, 1);
  await answeredOn(page);
});

test('writes letters', { timeout: 60_000 }, async () => {
  await answeredOn(mail);
});

const pictured = (): boolean => telegram.seenBy(7).some(({ text, photo }) => photo && text.includes('110 ml'));

test('answers on Telegram, with the picture a worker draws', { timeout: 60_000 }, async () => {
  // A worker that is still loading its fonts draws nothing within the two seconds an answer waits: then it is asked again.
  for (let tries = 0; tries < 5 && !pictured(); tries++) {
    telegram.people.say(7, 'tieguanyin in a 110 ml gaiwan');
    await expect
      .poll(pictured, { timeout: 8_000 })
      .toBe(true)
      .catch(() => null);
  }
  expect(pictured()).toBe(true);
});
