/**
 * The six questions with grammY and its conversations plugin: an update is handled by the bot, its answer handed to an API
 * that does nothing, and the conversation's data written to SQLite with a sync. Left out: the network, and whether an answer arrived.
 */
import { join } from 'node:path';
import Database from 'better-sqlite3';
import {
  conversations,
  createConversation,
  type Conversation,
  type ConversationData,
  type ConversationFlavor,
  type VersionedState,
} from '@grammyjs/conversations';
import { Bot, type Context } from 'grammy';
import { closing, facts, questions, type OpenTalk } from './questions.ts';

type Talking = ConversationFlavor<Context>;

async function sixQuestions(conversation: Conversation<Talking>, ctx: Context): Promise<void> {
  const answers: string[] = [];
  for (const fact of facts) {
    await ctx.reply(questions[fact]);
    const next = await conversation.waitFor(':text');
    answers.push(next.msg.text ?? '');
  }
  await ctx.reply(`${closing} ${answers.join(', ')}`);
}

const me = { id: 1, is_bot: true, first_name: 'Six', username: 'six_bot' } as const;

export const openGrammy: OpenTalk = async (folder) => {
  let said = 0;
  // In the place of the network, where the bot and the clients its conversations make for themselves both pass.
  const transport = (_: unknown, { body }: { readonly body: unknown }): Promise<Response> => {
    said += 1;
    const sent = { message_id: said, date: 0, chat: { id: 1, type: 'private', first_name: 'p' }, text: body ? '' : '' };
    return Promise.resolve({ json: () => Promise.resolve({ ok: true, result: sent }) } as Response);
  };
  const bot = new Bot<Talking>('1:x', { botInfo: { ...me } as never, client: { fetch: transport as never } });
  const { adapter, close } = sqliteSessions(join(folder, 'sessions.sqlite'));
  bot.use(conversations({ storage: { type: 'key', adapter } }));
  bot.use(createConversation<Talking, Context>(sixQuestions as never, 'six'));
  bot.hears('hello', (ctx) => ctx.conversation.enter('six'));
  await bot.init();

  let updates = 0;
  return {
    tell: (person, text) => {
      const chat = { id: person + 1, type: 'private', first_name: 'p' } as const;
      const from = { id: person + 1, is_bot: false, first_name: 'p' };
      updates += 1;
      return bot.handleUpdate({ update_id: updates, message: { message_id: updates, date: 0, chat, from, text } });
    },
    settled: () => Promise.resolve(),
    said: () => said,
    close: () => Promise.resolve(close()),
  };
};

function sqliteSessions(file: string) {
  const db = new Database(file);
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.exec('CREATE TABLE session (key TEXT PRIMARY KEY, state TEXT NOT NULL) STRICT, WITHOUT ROWID');
  const read = db.prepare<[string], { state: string }>('SELECT state FROM session WHERE key = ?');
  const write = db.prepare<[string, string]>(
    'INSERT INTO session VALUES (?, ?) ON CONFLICT DO UPDATE SET state = excluded.state',
  );
  const drop = db.prepare<[string]>('DELETE FROM session WHERE key = ?');
  type State = VersionedState<ConversationData>;
  const adapter = {
    read: (key: string) => {
      const row = read.get(key);
      return row && (JSON.parse(row.state) as State);
    },
    write: (key: string, state: State) => void write.run(key, JSON.stringify(state)),
    delete: (key: string) => void drop.run(key),
  };
  return { adapter, close: () => void db.close() };
}
