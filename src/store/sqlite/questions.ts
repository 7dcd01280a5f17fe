/** What the shop was asked, what it answered, and what it keeps as a standing answer. */
import type { Database, Statement } from 'better-sqlite3';
import type { Instant, Language } from '../../core/units.ts';
import type { Address, PersonId } from '../contract.ts';
import type { Quote } from '../quote.ts';
import type { AnsweredQuestion, KeptAnswer, Question, QuestionId } from '../desk-contract.ts';

export interface NewQuestion extends Address {
  readonly id: QuestionId;
  readonly person: PersonId;
  readonly language: Language;
  readonly text: string;
  readonly now: Instant;
}

export interface Questions {
  add(question: NewQuestion): void;
  /** Who asked, and where; null when it is answered already, or gone. */
  answer(id: QuestionId, answer: { readonly text: string; readonly by: PersonId; readonly now: Instant }): Asker | null;
  /** Another text in the place of this one, also where it was kept. Who asked; null when it reads otherwise by now, or is gone. */
  correct(
    id: QuestionId,
    news: { readonly before: string; readonly text: string; readonly by: PersonId; readonly now: Instant },
  ): Asker | null;
  waiting(): readonly Question[];
  waitingCount(): number;
  waitingOf(person: PersonId): number;
  answered(): readonly AnsweredQuestion[];
  quoted(id: Quote['quoteOf'], part: Quote['part']): string | null;
  /** False when there is no such answer any more. */
  keep(id: QuestionId, question: string | null, now: Instant): boolean;
  drop(id: number): boolean;
  standing(): readonly KeptAnswer[];
  /** Those kept may have changed otherwise. */
  lookAgain(): void;
  prune(before: Instant): number;
}

export type Asker = Address & { readonly person: PersonId; readonly reachable: 0 | 1 };

/** Whether the house can say something where this was asked. */
const reachable = `NOT EXISTS (SELECT 1 FROM handle h WHERE h.channel = question.channel AND h.chat = question.chat
  AND h.reachable = 0) AS reachable`;

export function makeQuestions(db: Database): Questions {
  const add = db.prepare(
    `INSERT INTO question (id, person, channel, chat, language, text, asked_at)
     VALUES (@id, @person, @channel, @chat, @language, @text, @now)`,
  );
  const answer = db.prepare<unknown[], Asker>(
    `UPDATE question SET answer = @text, answered_at = @now, answered_by = @by WHERE id = @id AND answer IS NULL
     RETURNING person, channel, chat, ${reachable}`,
  );
  const correct = db.prepare<unknown[], Asker>(
    `UPDATE question SET answer = @text, answered_at = @now, answered_by = @by WHERE id = @id AND answer = @before
     RETURNING person, channel, chat, ${reachable}`,
  );
  const correctKept = db.prepare('UPDATE standing_answer SET answer = @text WHERE of_question = @id');
  const columns = `id, person, language, text, asked_at AS askedAt, ${reachable}`;
  const waiting = db.prepare<[], Question>(`SELECT ${columns} FROM question WHERE answer IS NULL ORDER BY id LIMIT 50`);
  const waitingCount = db.prepare<[], { n: number }>('SELECT count(*) AS n FROM question WHERE answer IS NULL');
  const waitingOf = db.prepare<[PersonId], { n: number }>(
    'SELECT count(*) AS n FROM question WHERE answer IS NULL AND person = ?',
  );
  const answered = db.prepare<[], AnsweredQuestion>(
    `SELECT ${columns}, answer, answered_at AS answeredAt, answered_by AS answeredBy FROM question WHERE answer IS NOT NULL ORDER BY id DESC LIMIT 200`,
  );
  const quoted: { readonly [part in Quote['part']]: Statement<[number], { text: string | null }> } = {
    question: db.prepare('SELECT text FROM question WHERE id = ?'),
    answer: db.prepare('SELECT answer AS text FROM question WHERE id = ?'),
    'kept-question': db.prepare('SELECT question AS text FROM standing_answer WHERE id = ?'),
    'kept-answer': db.prepare('SELECT answer AS text FROM standing_answer WHERE id = ?'),
    name: db.prepare(`SELECT json_extract(value, '$') AS text FROM memory WHERE person = ? AND name = 'name'`),
  };
  const keep = db.prepare(
    `INSERT INTO standing_answer (question, answer, person, kept_at, of_question)
     SELECT coalesce(@question, text), answer, iif(@question IS NULL, person, NULL), @now, id FROM question
     WHERE id = @id AND answer IS NOT NULL`,
  );
  const drop = db.prepare<[number]>('DELETE FROM standing_answer WHERE id = ?');
  const standing = db.prepare<[], KeptAnswer>(
    'SELECT id, question, answer, of_question AS ofQuestion FROM standing_answer ORDER BY id',
  );
  const prune = db.prepare<[Instant]>('DELETE FROM question WHERE answered_at < ?');
  let known: readonly KeptAnswer[] | null = null;
  const changed = (changes: number): boolean => {
    known = null;
    return changes > 0;
  };

  return {
    add: (question) => void add.run(question),
    answer: (id, given) => answer.get({ id, ...given }) ?? null,
    correct(id, news) {
      const asker = correct.get({ id, ...news }) ?? null;
      if (asker) changed(correctKept.run({ id, text: news.text }).changes);
      return asker;
    },
    waiting: () => waiting.all(),
    waitingCount: () => waitingCount.get()?.n ?? 0,
    waitingOf: (person) => waitingOf.get(person)?.n ?? 0,
    answered: () => answered.all(),
    quoted: (id, part) => quoted[part].get(id)?.text ?? null,
    keep: (id, question, now) => changed(keep.run({ id, question, now }).changes),
    drop: (id) => changed(drop.run(id).changes),
    standing: () => (known ??= standing.all()),
    lookAgain: () => void changed(0),
    prune: (before) => prune.run(before).changes,
  };
}
