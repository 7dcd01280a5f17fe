/** What people do in their own app, turned into updates. */
import type { CallbackQuery, InlineKeyboardButton, Message } from 'grammy/types';
import type { Behind } from './methods.ts';
import { bot, type KeptMessage } from './world.ts';

export class People {
  readonly #behind: Behind;
  #taps = 0;

  constructor(behind: Behind) {
    this.#behind = behind;
  }

  /** Writes to the bot; the update id, or null when it asks for no messages. */
  say(id: number, text: string, languageCode?: string): number | null {
    const message = this.#write(id, text, languageCode);
    return this.#push('message', { ...message, text, ...marksOf(text) });
  }

  /** Sends something that is no text. */
  show(id: number, content: Readonly<Record<string, unknown>>): number | null {
    const { text: _, ...message } = this.#write(id, '', undefined);
    return this.#push('message', { ...message, ...content });
  }

  /** Changes what was written. */
  amend(id: number, messageId: number, text: string, afterSeconds = 5): number | null {
    const { world, clock } = this.#behind;
    const kept = world.messages(id).get(messageId)!;
    kept.text = text;
    return this.#push('edited_message', { ...world.shown(id, kept), edit_date: clock.seconds() + afterSeconds });
  }

  /** Taps the button with this label or this key, under the newest message that has it. */
  tap(id: number, button: string): number | null {
    const { world } = this.#behind;
    const shown = [...world.messages(id).values()].toReversed();
    for (const message of shown) {
      const found = (message.markup?.inline_keyboard ?? [])
        .flat()
        .find((b) => b.text === button || dataOf(b) === button);
      if (found) return this.forge(id, dataOf(found), message);
    }
    throw new Error(`person ${id} sees no button "${button}"`);
  }

  /** Taps with data of one's own making. */
  forge(id: number, data: string, under?: KeptMessage): number | null {
    const { world, clock } = this.#behind;
    const tapId = String(4_000_000_000_000 + ++this.#taps);
    world.taps.set(tapId, { id: tapId, from: id, data, at: clock.now(), answeredAt: null });
    const message = under ?? world.keep(id, { fromBot: true, kind: 'text', text: 'older', entities: [], markup: null });
    const tap = { id: tapId, from: world.person(id).user, chat_instance: '1', message: world.shown(id, message), data };
    return this.#push('callback_query', tap satisfies Partial<CallbackQuery>);
  }

  block(id: number): number | null {
    return this.#reach(id, true);
  }

  unblock(id: number): number | null {
    return this.#reach(id, false);
  }

  deactivate(id: number): void {
    this.#behind.world.person(id).deactivated = true;
  }

  /** Any update at all, well formed or not. */
  bring(kind: string, content: unknown): number | null {
    return this.#push(kind, content);
  }

  #reach(id: number, blocked: boolean): number | null {
    const { world, clock } = this.#behind;
    const person = world.person(id);
    const change = { old_chat_member: memberAs(person.blocked), new_chat_member: memberAs(blocked) };
    person.blocked = blocked;
    person.started = true;
    const where = { id, type: 'private', first_name: person.user.first_name };
    return this.#push('my_chat_member', { chat: where, from: person.user, date: clock.seconds(), ...change });
  }

  #write(id: number, text: string, languageCode: string | undefined): Message {
    const { world } = this.#behind;
    world.person(id, languageCode).started = true;
    return world.shown(id, world.keep(id, { fromBot: false, kind: 'text', text, entities: [], markup: null }));
  }

  #push(kind: string, content: unknown): number | null {
    return this.#behind.queue.push(kind as Parameters<Behind['queue']['push']>[0], content);
  }
}

function marksOf(text: string): object {
  const command = /^\/\w+/.exec(text)?.[0];
  return command === undefined ? {} : { entities: [{ type: 'bot_command', offset: 0, length: command.length }] };
}

function dataOf(button: InlineKeyboardButton): string {
  return 'callback_data' in button ? button.callback_data : '';
}

function memberAs(blocked: boolean): object {
  return blocked ? { user: bot, status: 'kicked', until_date: 0 } : { user: bot, status: 'member' };
}
