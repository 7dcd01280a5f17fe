/** The house with its real flows and a real store, several people in it, and a way to lose its power. */
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeApp, type App } from '../../src/app.ts';
import { sayIn, stepIn } from '../../src/own-content.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Outgoing, What } from '../../src/messages.ts';
import type { Keeper, Store } from '../../src/store/contract.ts';
import type { LessonPlan } from '../../src/store/lesson-contract.ts';
import type { Say } from '../../src/delivery/render.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { content } from '../the-content.ts';
import { keptLog, type KeptLog } from '../app/kettle.ts';
import { fakeChannel, wordsOf, type FakeChannel } from '../delivery/fake-channel.ts';
import { fakeClock, type FakeClock } from '../delivery/fake-clock.ts';
import { incoming, noon } from '../store/samples.ts';

export const keeper = (from: string): Keeper => ({ channel: 'web', from });

export class ShopHouse {
  readonly clock: FakeClock;
  readonly log: KeptLog = keptLog();
  readonly shopkeepers: Keeper[];
  readonly #folder = mkdtempSync(join(tmpdir(), 'tea-shop-'));
  #life = 0;
  readonly #hanging: (() => void)[] = [];
  web: FakeChannel = fakeChannel();
  /** The lessons the shop's files tell of. */
  lessons: LessonPlan = { lessons: [], series: [] };
  store!: Store;
  app!: App;
  /** What every chat has been sent, over all lives. */
  readonly sent: Outgoing[] = [];

  constructor(...shopkeepers: string[]) {
    this.shopkeepers = shopkeepers.map(keeper);
    this.clock = fakeClock(this.opens());
  }

  protected opens(): Instant {
    return noon;
  }

  /** How keys become sentences. */
  protected says(): Say {
    return sayIn(content);
  }

  get file(): string {
    return join(this.#folder, `${this.#life}.sqlite`);
  }

  async open(): Promise<this> {
    const { clock, log, shopkeepers, lessons } = this;
    this.store = openSqliteStore(this.file);
    this.web = fakeChannel();
    const { web, sent } = this;
    const channel = {
      ...web,
      send: (message: Outgoing) => web.send(message).then((outcome) => (sent.push(message), outcome)),
    };
    const parts = { step: stepIn(content), say: this.says(), clock, log, keepDays: 30, shopkeepers, lessons };
    this.app = makeApp({ store: this.store, channels: [channel], ...parts });
    await this.app.start();
    await this.app.settled();
    return this;
  }

  /** The next sending never ends, until the power goes. */
  hang(): void {
    this.web.outcomes.push(
      () => new Promise((resolve) => this.#hanging.push(() => resolve({ outcome: 'retry', why: 'the power went' }))),
    );
  }

  /** What is on the disk at this instant is all that is left. */
  async crash(): Promise<void> {
    const [before, { store }] = [this.file, this];
    this.#life += 1;
    for (const end of ['', '-wal']) if (existsSync(before + end)) copyFileSync(before + end, this.file + end);
    for (const end of this.#hanging.splice(0)) end();
    await this.app.stop();
    await store.close().catch(() => {});
    await this.open();
    await this.clock.pass(1);
    await this.app.settled();
  }

  /** Closed for so long, and opened again; what is told within two seconds of that. */
  async sleep(ms: number): Promise<readonly Outgoing[]> {
    await this.app.stop();
    await this.clock.pass(ms);
    const before = this.sent.length;
    await this.open();
    await this.clock.pass(2_000);
    await this.app.settled();
    return this.sent.slice(before);
  }

  async end(): Promise<void> {
    for (const end of this.#hanging.splice(0)) end();
    await this.app.stop();
    rmSync(this.#folder, { recursive: true });
  }

  /** Someone does this; what their chat is told meanwhile. */
  async does(who: string, what: string | What): Promise<string> {
    const before = this.sent.length;
    await this.web.take(incoming(who, what, { receivedAt: this.clock.now() }));
    await this.app.settled();
    return this.told(who, before);
  }

  /** Taps the choice with this label, in the last message of that chat or of another's. */
  tap(who: string, label: string, of = who): Promise<string> {
    return this.does(who, { kind: 'tap', key: this.key(of, label) });
  }

  key(who: string, label: string): string {
    const shown = this.messages(who).flatMap(({ choices }) => choices);
    const choice = shown.findLast((one) => one.label === label);
    if (!choice) throw new Error(`${who} was shown no "${label}": ${JSON.stringify(shown.map((one) => one.label))}`);
    return choice.key;
  }

  messages(who: string): readonly Outgoing[] {
    return this.sent.filter(({ chat }) => chat === `chat-of-${who}`);
  }

  told(who: string, since = 0): string {
    return wordsOf(this.sent.slice(since).filter(({ chat }) => chat === `chat-of-${who}`)).join('\n');
  }

  /** Every byte the house has on the disk. */
  bytes(): string {
    return ['', '-wal']
      .map((end) => (existsSync(this.file + end) ? readFileSync(this.file + end, 'latin1') : ''))
      .join('');
  }

  /** A customer asks the shop. */
  async asks(who: string, question: string): Promise<string> {
    await this.does(who, 'talk to the shop');
    return this.does(who, question);
  }
}
