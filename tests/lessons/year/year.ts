/** A shop's year, thrown by dice: lessons planned, booked, given back, moved, cancelled; floods, failures, standstills. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { instantOf } from '../../../src/core/lessons/calendar.ts';
import type { LessonDraft } from '../../../src/core/lessons/lesson.ts';
import { isUnheard, type Roster } from '../../../src/core/lessons/roster.ts';
import type { Instant } from '../../../src/core/units.ts';
import type { Choice } from '../../../src/messages.ts';
import type { LessonChange } from '../../../src/store/lesson-contract.ts';
import { draft } from '../../core/lessons/lesson-drafts.ts';
import { does } from '../../store/lesson-samples.ts';
import { incoming } from '../../store/samples.ts';
import { diceOf, type Dice } from './dice.ts';
import { makePromises, type Promises } from './promises.ts';
import { listKeys, makeShop, purposeKeys, type Heard, type Shop } from './shop.ts';
import { isOfTable, takeTable } from './tables.ts';

export interface YearWish {
  readonly seed: number;
  readonly days: number;
  readonly students: number;
  readonly lessonsAWeek: number;
  readonly visitsADay: number;
}

export interface YearReport {
  readonly seed: number;
  readonly days: number;
  readonly lessons: number;
  readonly messagesIn: number;
  readonly messagesOut: number;
  readonly bookings: number;
  readonly moves: number;
  readonly cancellations: number;
  readonly resumed: number;
  readonly letters: number;
  readonly standstills: number;
  readonly floods: number;
  readonly tables: number;
  readonly reseated: number;
  readonly cutOffs: number;
  readonly reminders: number;
  readonly overtaken: number;
  readonly offers: number;
  readonly mornings: number;
  readonly listsChecked: number;
  readonly broken: readonly string[];
}

const zone = draft.zone;
/** So that a short play, too, goes through one change of the clocks or the other. */
const beginnings = ['2026-02-02', '2026-09-28'];
const minute = 60_000;
const hour = 60 * minute;
const dayMs = 24 * hour;
/** After a failed sending it is tried again within this. */
const longestWaitMs = 15 * minute;

export async function playYear(wish: YearWish): Promise<YearReport> {
  const folder = mkdtempSync(join(tmpdir(), 'shop-year-'));
  try {
    return await new Year(wish, folder).play();
  } finally {
    rmSync(folder, { recursive: true });
  }
}

interface Act {
  readonly at: Instant;
  readonly run: () => Promise<void>;
}

class Year {
  readonly #wish: YearWish;
  readonly #dice: Dice;
  /** Its own, so that the rest of a seed's year stays as it was. */
  readonly #networkDice: Dice;
  readonly #keeperDice: Dice;
  readonly #shop: Shop;
  readonly #promises: Promises;
  readonly #start: Instant;
  /** Whom each chat belongs to, as the lists know them. */
  readonly #persons = new Map<string, string>();
  /** What each student was last offered to tap. */
  readonly #choices = new Map<string, readonly Choice[]>();
  readonly #planned: LessonDraft[] = [];
  readonly #acts: Act[] = [];
  readonly #counts = {
    messagesIn: 0,
    messagesOut: 0,
    moves: 0,
    cancellations: 0,
    resumed: 0,
    letters: 0,
    standstills: 0,
    floods: 0,
    tables: 0,
    reseated: 0,
    cutOffs: 0,
  };
  readonly #broken: string[] = [];
  #bookings = 0;
  /** So long what could not be sent may stand before an answer in the same chat. */
  #blockedUntil = 0;

  constructor(wish: YearWish, folder: string) {
    this.#wish = wish;
    this.#dice = diceOf(wish.seed);
    this.#networkDice = diceOf(-1 - wish.seed);
    this.#keeperDice = diceOf(1_000_003 + wish.seed);
    this.#start = instantOf(`${beginnings[wish.seed % beginnings.length]}T00:00`, zone);
    this.#shop = makeShop(folder, this.#start);
    this.#promises = makePromises(zone, { from: this.#start, until: this.#start + wish.days * dayMs });
  }

  async play(): Promise<YearReport> {
    const { seed, days } = this.#wish;
    await this.#shop.open();
    for (let day = 0; day < days && this.#allBroken().length === 0; day++) {
      await this.#planDay(this.#start + day * dayMs, day);
      await this.#runUntil(this.#start + (day + 1) * dayMs);
      await this.#checkLists();
    }
    await this.#shop.close();
    const { lists, ...counts } = this.#promises.counts;
    return {
      seed,
      days,
      lessons: this.#planned.length,
      ...this.#counts,
      bookings: this.#bookings,
      ...counts,
      listsChecked: lists,
      broken: this.#allBroken(),
    };
  }

  #allBroken(): readonly string[] {
    return [...this.#broken, ...this.#promises.broken, ...this.#shop.troubles()];
  }

  async #planDay(from: Instant, day: number): Promise<void> {
    const { lessonsAWeek, visitsADay } = this.#wish;
    const at = (): Instant => from + this.#dice.whole(7 * 60, 23 * 60) * minute + this.#dice.whole(0, 59_999);
    if (day % 7 === 0) await this.#addLessons(from, lessonsAWeek);
    for (let i = 0; i < visitsADay; i++) this.#plan(at(), () => this.#visit());
    if (this.#dice.chance() < 0.1) this.#plan(at(), () => this.#moveOne());
    if (this.#dice.chance() < 0.05) this.#plan(at(), () => this.#cancelOne());
    if (this.#dice.chance() < 0.08) this.#plan(at(), () => this.#flood());
    if (this.#dice.chance() < 0.3) this.#plan(at(), () => this.#reseatOne());
    if (this.#dice.chance() < 0.15) this.#plan(at(), () => this.#takeTable());
    if (this.#dice.chance() < 0.06) this.#plan(at(), () => this.#standStill());
    if (this.#dice.chance() < 0.5) this.#plan(at(), async () => this.#shop.stumble());
    if (this.#keeperDice.chance() < 0.1)
      this.#plan(from + this.#keeperDice.whole(9, 22) * hour, () => this.#writeToAll());
    // So far apart that nothing fails for longer than a day, after which it is given up.
    if (day % 3 === 0 && this.#networkDice.chance() < 0.25) this.#cutOff(from);
  }

  /** From the afternoon or evening on nobody can be told anything unasked, for some hours. */
  #cutOff(dayStart: Instant): void {
    const from = dayStart + this.#networkDice.whole(15 * 60, 21 * 60) * minute;
    const until = from + this.#networkDice.whole(1, 14 * 60) * minute;
    this.#plan(from, async () => {
      this.#counts.cutOffs += 1;
      this.#shop.cutOff(until);
      this.#blockedUntil = until + longestWaitMs;
      this.#promises.stood({ from, until: until + longestWaitMs });
    });
  }

  #plan(at: Instant, run: () => Promise<void>): void {
    this.#acts.push({ at, run });
  }

  /** The clock goes from one thing to the next: what people do, and what falls due in the house. */
  async #runUntil(end: Instant): Promise<void> {
    const { clock, settled } = this.#shop;
    for (;;) {
      const next = this.#acts.toSorted((a, b) => a.at - b.at)[0];
      const due = await this.#shop.nextDue();
      const until = Math.min(next?.at ?? Infinity, due, end);
      await clock.leap(Math.max(until, clock.now()), settled);
      await this.#listen();
      if (next && next.at <= clock.now()) {
        this.#acts.splice(this.#acts.indexOf(next), 1);
        await next.run();
        await settled();
        await this.#listen();
      } else if (clock.now() >= end && due > end) return;
    }
  }

  async #addLessons(from: Instant, count: number): Promise<void> {
    const drafts = Array.from({ length: count }, (): LessonDraft => {
      const date = new Date(from + this.#dice.whole(9, 45) * dayMs).toISOString().slice(0, 10);
      const id = `lesson-${this.#planned.length + 1}`;
      this.#planned.push({ ...draft, id });
      const starts = `${date}T${this.#dice.of(['07:00', '10:30', '14:00', '19:00', '20:30', '22:00'])}`;
      const title = { en: id, 'zh-Hant': id, 'zh-Hans': id };
      return { ...draft, id, title, starts, seats: this.#dice.whole(1, 8), offerMinutes: this.#dice.whole(10, 600) };
    });
    this.#planned.splice(-count, count, ...drafts);
    const wrong = await this.#shop.store().putLessons(drafts, this.#shop.clock.now());
    if (wrong.length > 0) this.#broken.push(`lessons refused: ${JSON.stringify(wrong)}`);
  }

  #student(): string {
    return `student-${this.#dice.whole(1, this.#wish.students)}`;
  }

  async #toCome(): Promise<Roster | undefined> {
    const now = this.#shop.clock.now();
    const rosters = await this.#shop.store().rosters(now);
    return this.#dice.of(rosters.filter(({ lesson }) => lesson.status !== 'cancelled' && lesson.startsAt > now));
  }

  /** A student looks at a lesson and books, waits, or gives back. */
  async #visit(who = this.#student()): Promise<void> {
    const roster = await this.#toCome();
    if (!roster) return;
    await this.#say(who, { kind: 'open', payload: `lesson-${roster.lesson.id}` });
    if (await this.#tap(who, 'choice-lesson-enrol', 'choice-lesson-wait')) {
      await this.#tap(who, 'choice-lesson-seats');
      await this.#tap(who, 'choice-lesson-wait', 'choice-lesson-nameless');
      await this.#tap(who, 'choice-lesson-nameless');
    } else if (this.#dice.chance() < 0.3 && (await this.#tap(who, 'choice-lesson-leave'))) {
      await this.#tap(who, 'choice-lesson-give-back');
    }
  }

  /** Someone who booked wants more seats, or fewer. */
  async #reseatOne(): Promise<void> {
    const roster = await this.#toCome();
    const booking = this.#dice.of(roster?.bookings.filter((one) => one.standing !== 'left' && !isOfTable(one)) ?? []);
    const chat = [...this.#persons].find(([, person]) => person === booking?.person)?.[0];
    if (!roster || chat === undefined) return;
    const who = chat.replace('chat-of-', '');
    await this.#say(who, { kind: 'open', payload: `lesson-${roster.lesson.id}` });
    await this.#say(who, this.#dice.of(['one more', 'two more', 'just one', 'make it two']) ?? '');
    this.#promises.asked(booking?.person ?? '', roster.lesson.id, this.#shop.clock.now());
    if (await this.#tap(who, 'choice-lesson-reseat')) this.#counts.reseated += 1;
  }

  async #takeTable(): Promise<void> {
    const roster = await this.#toCome();
    if (!roster) return;
    this.#counts.tables += 1;
    const broken = await takeTable(this.#shop.store(), this.#dice, roster, this.#shop.clock.now());
    if (broken !== null) this.#broken.push(broken);
    await this.#checkLists();
  }

  /** Many want the same seats in the same instant, and tap as if it helped. */
  async #flood(): Promise<void> {
    const roster = await this.#toCome();
    if (!roster) return;
    this.#counts.floods += 1;
    const crowd = [...new Set(Array.from({ length: 12 }, () => this.#student()))];
    const payload = `lesson-${roster.lesson.id}`;
    await Promise.all(crowd.map((who) => this.#give(who, { kind: 'open', payload })));
    await this.#shop.settled();
    const answered = new Set((await this.#listen()).map(({ chat }) => chat));
    // The dice let one fail: it is tried again within a minute.
    await this.#shop.clock.pass(minute, this.#shop.settled);
    for (const { chat } of await this.#listen()) answered.add(chat);
    const isBlocked = this.#shop.clock.now() < this.#blockedUntil;
    if (answered.size < crowd.length && !isBlocked)
      this.#broken.push(`of ${crowd.length} at once ${answered.size} were answered`);
    for (const key of ['choice-lesson-enrol', 'choice-lesson-seats', 'choice-lesson-nameless']) {
      const taps = crowd.flatMap((who) => {
        const choice = this.#choices.get(who)?.find(({ label }) => label.includes(key));
        return choice ? Array.from({ length: 4 }, () => this.#give(who, { kind: 'tap', key: choice.key })) : [];
      });
      await Promise.all(taps);
      await this.#shop.settled();
      await this.#listen();
    }
    await this.#checkLists();
  }

  async #moveOne(): Promise<void> {
    const roster = await this.#toCome();
    if (!roster) return;
    const { lesson } = roster;
    const days = this.#dice.whole(1, 20);
    const date = new Date(Date.parse(`${lesson.starts}:00Z`) + days * dayMs).toISOString().slice(0, 10);
    const starts = `${date}T${this.#dice.of(['09:00', '18:30', '21:30'])}`;
    const change = { do: 'move-lesson', lesson: lesson.id, seen: lesson.revision, starts, minutes: null } as const;
    if (!(await this.#keeperDoes(change))) return;
    this.#counts.moves += 1;
    this.#promises.moved(lesson.id, this.#shop.clock.now());
    await this.#everyoneWasTold(roster, 'lesson-told-moved');
  }

  async #cancelOne(): Promise<void> {
    const roster = await this.#toCome();
    if (!roster) return;
    const { id: lesson, revision: seen } = roster.lesson;
    if (!(await this.#keeperDoes({ do: 'cancel-lesson', lesson, seen, reason: '' }))) return;
    this.#counts.cancellations += 1;
    await this.#everyoneWasTold(roster, 'lesson-told-cancelled');
    const later = this.#shop.clock.now() + this.#keeperDice.whole(1, 72 * 60) * minute;
    if (this.#keeperDice.chance() < 0.7) this.#plan(later, () => this.#resume(lesson));
  }

  async #rosterNow(id: string): Promise<Roster | undefined> {
    const rosters = await this.#shop.store().rosters(this.#shop.clock.now());
    return rosters.find(({ lesson }) => lesson.id === id);
  }

  /** It takes place after all. */
  async #resume(id: string): Promise<void> {
    const before = await this.#rosterNow(id);
    if (!before) return;
    const lessons = [{ lesson: id, seen: before.lesson.revision }];
    if (!(await this.#keeperDoes({ do: 'resume-lessons', lessons, series: [], days: null }))) return;
    this.#counts.resumed += 1;
    this.#promises.resumed(before, this.#shop.clock.now());
    const { lesson, bookings } = (await this.#rosterNow(id)) ?? before;
    const concerned = bookings.filter(({ standing }) => standing !== 'offered');
    await this.#everyoneWasTold({ lesson, bookings: concerned }, 'lesson-told-resumed');
  }

  /** To everybody with a seat in any of three lessons: each hears it once. */
  async #writeToAll(): Promise<void> {
    const now = this.#shop.clock.now();
    const rosters = (await this.#shop.store().rosters(now)).filter(({ lesson }) => lesson.status !== 'cancelled');
    const some = rosters.slice(0, 3);
    const lessons = some.map(({ lesson }) => lesson.id);
    if (some.length < 2 || !(await this.#keeperDoes({ do: 'write-to-lessons', lessons, text: 'a word' }))) return;
    this.#counts.letters += 1;
    await this.#shop.clock.pass(2 * minute, this.#shop.settled);
    const heard = (await this.#listen()).filter(({ keys }) => keys.includes('lesson-told-written-to-all'));
    const seated = some.flatMap(({ bookings }) => bookings.filter(({ standing }) => standing === 'seated'));
    const isBlocked = this.#shop.clock.now() < this.#blockedUntil;
    for (const person of new Set(seated.filter((one) => !isOfTable(one)).map((one) => one.person))) {
      const times = heard.filter(({ chat }) => this.#persons.get(chat) === person).length;
      if (times !== 1 && !(isBlocked && times === 0)) this.#broken.push(`${person} heard the letter ${times} times`);
    }
  }

  /** Bookings a seat is kept for that are not told so yet. */
  async #unheard(): Promise<readonly string[]> {
    const rosters = await this.#shop.store().rosters(this.#shop.clock.now());
    return rosters.flatMap(({ bookings }) => bookings.filter(isUnheard).map(({ id }) => id));
  }

  async #keeperDoes(change: LessonChange): Promise<boolean> {
    const { outcome } = await does(this.#shop.store(), 'keeper', () => change, this.#shop.clock.now());
    return outcome === 'done';
  }

  async #everyoneWasTold({ lesson, bookings }: Roster, key: string): Promise<void> {
    // The house hears of it at its next look.
    await this.#shop.clock.pass(2 * minute, this.#shop.settled);
    const heard = await this.#listen();
    const unheard = key === 'lesson-told-moved' ? await this.#unheard() : [];
    for (const { id, person, standing } of bookings) {
      if (standing === 'left' || isOfTable({ id }) || unheard.includes(id)) continue;
      const times = heard.filter(
        (one) => this.#persons.get(one.chat) === person && one.lesson === lesson.id && one.keys.includes(key),
      ).length;
      const isBlocked = this.#shop.clock.now() < this.#blockedUntil;
      if (times !== 1 && !(isBlocked && times === 0))
        this.#broken.push(`${person} was told ${times} times: ${key} of ${lesson.id}`);
    }
  }

  /** From a second to eight days; what falls due meanwhile is caught up with when it opens again. */
  async #standStill(): Promise<void> {
    const { clock } = this.#shop;
    const from = clock.now();
    const longest = this.#dice.of([1_000, 10 * minute, 5 * hour, dayMs, 8 * dayMs]) ?? 1_000;
    await this.#shop.close();
    this.#counts.standstills += 1;
    await clock.leap(from + this.#dice.whole(1_000, longest), this.#shop.settled);
    this.#promises.stood({ from, until: clock.now() });
    await this.#shop.open();
    const heard = await this.#listen();
    this.#noBurst(heard);
  }

  #noBurst(heard: readonly Heard[]): void {
    const of = heard.filter(({ keys }) => keys.some((key) => purposeKeys.test(key)));
    const each = new Set(of.map(({ chat, lesson }) => `${chat} ${lesson}`));
    if (each.size < of.length) this.#broken.push('after a standstill someone was told more than once of one lesson');
  }

  async #say(who: string, what: Parameters<typeof incoming>[1]): Promise<void> {
    await this.#give(who, what);
    await this.#shop.settled();
    const chat = `chat-of-${who}`;
    if ((await this.#listen()).some((one) => one.chat === chat)) return;
    // The dice let it fail once: it is tried again within a minute.
    await this.#shop.clock.pass(minute, this.#shop.settled);
    const isBlocked = this.#shop.clock.now() < this.#blockedUntil;
    if (!(await this.#listen()).some((one) => one.chat === chat) && !isBlocked)
      this.#broken.push(`${who} got no answer to ${JSON.stringify(what)}`);
  }

  async #give(who: string, what: Parameters<typeof incoming>[1]): Promise<void> {
    this.#counts.messagesIn += 1;
    await this.#shop.take(incoming(who, what, { receivedAt: this.#shop.clock.now() }));
  }

  /** Taps the first choice of these names that is offered; false when none is. */
  async #tap(who: string, ...names: readonly string[]): Promise<boolean> {
    const offered = this.#choices.get(who) ?? [];
    for (const name of names) {
      const choice = this.#dice.of(offered.filter(({ label }) => label.includes(`"${name}"`)));
      if (!choice) continue;
      await this.#say(who, { kind: 'tap', key: choice.key });
      return true;
    }
    return false;
  }

  async #listen(): Promise<readonly Heard[]> {
    const heard = this.#shop.heard();
    this.#counts.messagesOut += heard.length;
    for (const one of heard) await this.#hear(one);
    return heard;
  }

  async #hear(heard: Heard): Promise<void> {
    const { at, chat, keys, lesson, choices } = heard;
    const who = chat.replace('chat-of-', '');
    if (choices.length > 0) this.#choices.set(who, choices);
    const person = await this.#personOf(chat, who);
    if (lesson === null) return;
    if (keys.some((key) => key === 'lesson-told-enrolled' || key === 'lesson-told-did-accept')) {
      this.#bookings += 1;
      this.#promises.seated(person, lesson, at);
    }
    if (keys.some((key) => purposeKeys.test(key))) {
      const rosters = await this.#shop.store().rosters(at - 10 * dayMs);
      this.#promises.reminded(
        heard,
        person,
        rosters.filter((one) => one.lesson.id === lesson),
      );
      this.#answerLater(who, choices, ['choice-lesson-coming', 'choice-lesson-absent']);
    }
    if (keys.some((key) => listKeys.test(key))) {
      const rosters = await this.#shop.store().rosters(at - 10 * dayMs);
      this.#promises.ofList(
        heard,
        person,
        rosters.filter((one) => one.lesson.id === lesson),
      );
    }
    if (keys.includes('lesson-told-offer')) {
      this.#answerLater(who, choices, ['choice-lesson-accept', 'choice-lesson-accept', 'choice-lesson-decline']);
    }
  }

  /** Some answer, sooner or later; some never do. */
  #answerLater(who: string, choices: readonly Choice[], names: readonly string[]): void {
    const name = this.#dice.of(names) ?? '';
    const choice = choices.find(({ label }) => label.includes(`"${name}"`));
    if (!choice || this.#dice.chance() < 0.4) return;
    const at = this.#shop.clock.now() + this.#dice.whole(1, 300) * minute;
    this.#plan(at, () => this.#say(who, { kind: 'tap', key: choice.key }));
  }

  async #personOf(chat: string, who: string): Promise<string> {
    const known = this.#persons.get(chat);
    if (known !== undefined) return known;
    const person = String(await this.#shop.store().find('web', who));
    this.#persons.set(chat, person);
    return person;
  }

  async #checkLists(): Promise<void> {
    const now = this.#shop.clock.now();
    this.#promises.lists(await this.#shop.store().rosters(now - 12 * dayMs), now);
  }
}
