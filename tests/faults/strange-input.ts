/** F21: updates and bodies of any shape, and texts nobody would write, through the whole house. */
import { join } from 'node:path';
import { makeApp } from '../../src/app.ts';
import { contentOf, sayIn, stepIn } from '../../src/own-content.ts';
import { incomingOf, tapIdOf } from '../../src/channels/telegram/incoming.ts';
import { makeWebhookHandler } from '../../src/channels/telegram/webhook.ts';
import { muteWeb } from '../channels/web/mute-web.ts';
import { systemClock } from '../../src/clock.ts';
import { readConfig } from '../../src/config.ts';
import type { Step } from '../../src/conversation/answer.ts';
import type { Channel, Incoming } from '../../src/messages.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { keptLog } from '../app/kettle.ts';
import { aboutPost, emptyPage, knock, newId, visit } from '../channels/web/knock.ts';
import type { Dice } from './counts.ts';
import { fakeChannel } from '../delivery/fake-channel.ts';
import { sideBySide, Tally, type Fault, type Trial } from './fault.ts';
import { spoiltJson, strangeText } from './strange.ts';

const secret = 'a-secret-of-the-fuzzing-trial';
const unlimited = { burst: 1e9, perSecond: 1e9 };
const longestStepMs = 50;

export const strangeInput: Fault = {
  id: 'F21',
  title: 'updates and bodies of any shape, texts nobody would write',
  unit: 'inputs',
  counts: { few: 600, usual: 20_000, long: 2_000_000 },
  seconds: 100,
  async run(trial) {
    const tally = new Tally();
    const house = await openHouse(trial);
    const heard = { taken: 0, refused: 0 };
    const count = (status: number): void => void (status < 300 ? heard.taken++ : heard.refused++);
    for (let done = 0; done < trial.count; done += 200) {
      await sideBySide(100, 8, async () => tally.add(await postStrange(house, trial.dice, count)));
      await sideBySide(100, 8, async () => tally.add(await updateStrange(house, trial.dice, count)));
      await house.app.settled();
    }
    const failed = house.log.lines.filter((line) => /failed|stumbled|no words|not handled|could not/.test(line));
    tally.wrong(
      failed.length > 0 &&
        `${failed.length} times something failed inside: ${[...new Set(failed)].slice(0, 3).join(' | ')}`,
    );
    const slowest = house.slowest();
    tally.wrong(
      slowest.ms > longestStepMs * trial.slack &&
        `a text of ${slowest.length} letters took ${Math.round(slowest.ms)} ms: ${slowest.start}`,
    );
    await house.app.stop();
    return tally.found({ ...heard, 'slowest answer worked out, ms': Math.round(slowest.ms * 10) / 10 });
  },
};

async function openHouse({ folder }: Trial) {
  const content = contentOf(readConfig({}));
  const log = keptLog();
  const timed = timedStep(stepIn(content));
  const web = muteWeb({
    log,
    pageFolder: emptyPage(),
    limits: { postsPerAddress: unlimited, postsPerSheet: unlimited, pagesPerAddress: unlimited },
  });
  const telegram = fakeChannel('telegram');
  const store = openSqliteStore(join(folder, 'shop.sqlite'));
  const channels: readonly Channel[] = [web, telegram];
  const app = makeApp({
    store,
    step: timed.step,
    say: sayIn(content),
    channels,
    clock: systemClock,
    log,
    keepDays: 90,
  });
  await app.start();
  const around = { now: Date.now(), says: () => null };
  const read = (update: unknown): Incoming | null => (tapIdOf(update), incomingOf(update, around));
  const handler = makeWebhookHandler({ secret, log, greet: () => {}, read, record: (one) => telegram.take(one) });
  return { app, log, address: web.address(), handler, slowest: timed.slowest };
}

type House = Awaited<ReturnType<typeof openHouse>>;

/** Only what is slow again and again is slow by itself, and not by its neighbours on this machine. */
function timedStep(step: Step) {
  const slow: { ms: number; again: () => number; text: string }[] = [];
  const timed = (...given: Parameters<Step>): number => {
    const began = performance.now();
    step(...given);
    return performance.now() - began;
  };
  return {
    step: (...given: Parameters<Step>) => {
      const began = performance.now();
      const turned = step(...given);
      const ms = performance.now() - began;
      const [, event] = given;
      slow.push({ ms, again: () => timed(...given), text: event.kind === 'text' ? event.text : event.kind });
      slow.sort((a, b) => b.ms - a.ms);
      slow.length = Math.min(slow.length, 5);
      return turned;
    },
    slowest: () => {
      const best = slow.map(({ ms, again, text }) => ({ ms: Math.min(ms, again(), again(), again()), text }));
      const { ms = 0, text = '' } = best.toSorted((a, b) => b.ms - a.ms)[0] ?? {};
      return { ms, length: text.length, start: JSON.stringify(text.slice(0, 80)) };
    },
  };
}

async function postStrange({ address }: House, dice: Dice, count: (status: number) => void): Promise<string | null> {
  const cookie = dice.below(20) === 0 ? `sheet=${strangeCookie(dice)}` : await visit(address);
  const what = dice.pick([
    { kind: 'text', text: strangeText(dice) },
    { kind: 'tap', key: strangeText(dice).slice(0, 40) },
    { kind: 'open', payload: `tea-${dice.below(1e6)}` },
  ]);
  const whole = { updateId: newId(), language: dice.pick(['en', 'zh-Hant', 'zh-Hans']), what };
  const body = dice.below(2) === 0 ? JSON.stringify(whole) : spoiltJson(whole, dice);
  const headers = aboutPost(address.replace(/\/$/, ''), cookie);
  const answer = await knock(address, '/sheet', { method: 'POST', headers, body }).catch((error: unknown) =>
    String(error),
  );
  if (typeof answer === 'string') return `the page's server: ${answer}`;
  count(answer.status);
  const known = [202, 400, 401, 413];
  return known.includes(answer.status) ? null : `${answer.status} for ${JSON.stringify(body.slice(0, 200))}`;
}

const strangeCookie = ({ below }: Dice): string =>
  Buffer.from(Array.from({ length: below(60) }, () => 33 + below(90)))
    .toString('latin1')
    .replaceAll(/[;,"\\]/g, '');

async function updateStrange({ handler }: House, dice: Dice, count: (status: number) => void): Promise<string | null> {
  const id = 1 + dice.below(5_000);
  const from = { id, is_bot: false, first_name: 'x', language_code: dice.pick(['en', 'zh-hans', 'zh-TW', 'xx']) };
  const chat = { id, type: 'private' };
  const message = { message_id: 1, date: 1, from, chat, text: dice.pick(['', '/', '/start ']) + strangeText(dice) };
  const update = {
    update_id: dice.below(1e9),
    ...dice.pick([
      { message },
      { edited_message: { ...message, edit_date: 5 } },
      { callback_query: { id: '1', from, message, data: strangeText(dice).slice(0, 64) } },
      {
        my_chat_member: {
          chat,
          from,
          date: 1,
          new_chat_member: { status: dice.pick(['member', 'kicked', 'left', 7]) },
        },
      },
      { message: { ...message, text: undefined, sticker: { emoji: strangeText(dice).slice(0, 8) } } },
    ]),
  };
  const body = dice.below(2) === 0 ? JSON.stringify(update) : spoiltJson(update, dice);
  try {
    const status = await handler(body, secret);
    count(status);
    return [200, 400, 413].includes(status) ? null : `${status} for ${body.slice(0, 200)}`;
  } catch (error) {
    return `thrown ${String(error)} for ${body.slice(0, 200)}`;
  }
}
