/** What the stand-in knows of the world behind the server: people, chats, messages, taps, and how the bot presents itself. */
import type { BotCommand, Chat, InlineKeyboardMarkup, Message, MessageEntity, User } from 'grammy/types';
import type { UploadedFile } from './call-arguments.ts';
import { badRequest, Refusal } from './refusal.ts';
import type { StandInClock } from './stand-in-clock.ts';

export interface Person {
  readonly user: User;
  /** Nobody may be written to who has not spoken first. */
  started: boolean;
  blocked: boolean;
  deactivated: boolean;
}

export interface KeptMessage {
  readonly id: number;
  readonly fromBot: boolean;
  readonly date: number;
  readonly kind: 'text' | 'photo' | 'document';
  text: string;
  entities: readonly MessageEntity[];
  markup: InlineKeyboardMarkup | null;
  edits: number;
  readonly photo?: Buffer;
  readonly document?: UploadedFile;
}

export interface Tap {
  readonly id: string;
  readonly from: number;
  readonly data: string;
  readonly at: number;
  answeredAt: number | null;
}

export interface Setting {
  name: string;
  description: string;
  about: string;
  commands: readonly BotCommand[];
}

export const bot = { id: 7_000_000_001, is_bot: true, first_name: 'Stand-in', username: 'stand_in_bot' } as const;

export class World {
  readonly people = new Map<number, Person>();
  /** Groups that have become supergroups, and where they went. */
  readonly movedGroups = new Map<number, number>();
  readonly chats = new Map<number, Map<number, KeptMessage>>();
  readonly taps = new Map<string, Tap>();
  readonly settings = new Map<string, Setting>();
  menuButton: unknown = { type: 'default' };
  readonly #nextMessage = new Map<number, number>();
  readonly #clock: StandInClock;

  constructor(clock: StandInClock) {
    this.#clock = clock;
  }

  person(id: number, languageCode?: string): Person {
    const known = this.people.get(id);
    if (known) return known;
    const language = languageCode === undefined ? {} : { language_code: languageCode };
    const user: User = { id, is_bot: false, first_name: `Person ${id}`, ...language };
    const person: Person = { user, started: false, blocked: false, deactivated: false };
    this.people.set(id, person);
    return person;
  }

  setting(language: string): Setting {
    const set = this.settings.get(language) ?? { name: '', description: '', about: '', commands: [] };
    this.settings.set(language, set);
    return set;
  }

  messages(chat: number): Map<number, KeptMessage> {
    const kept = this.chats.get(chat) ?? new Map<number, KeptMessage>();
    this.chats.set(chat, kept);
    return kept;
  }

  keep(chat: number, message: Omit<KeptMessage, 'id' | 'date' | 'edits'>): KeptMessage {
    const id = (this.#nextMessage.get(chat) ?? 0) + 1;
    this.#nextMessage.set(chat, id);
    const kept = { ...message, id, date: this.#clock.seconds(), edits: 0 };
    this.messages(chat).set(id, kept);
    return kept;
  }

  /** The chat a call may write to, or the server's refusal. */
  writable(chatId: string): number {
    if (chatId === '') throw badRequest('chat_id is empty');
    const id = /^-?\d+$/.test(chatId) ? Number(chatId) : 0;
    const moved = this.movedGroups.get(id);
    if (moved !== undefined) {
      throw new Refusal(400, 'Bad Request: group chat was upgraded to a supergroup chat', {
        migrate_to_chat_id: moved,
      });
    }
    if ([...this.movedGroups.values()].includes(id)) return id;
    const person = this.people.get(id);
    if (person?.deactivated) throw new Refusal(403, 'Forbidden: user is deactivated');
    if (person?.blocked) throw new Refusal(403, 'Forbidden: bot was blocked by the user');
    if (!person?.started) throw badRequest('chat not found');
    return id;
  }

  /** As the Bot API shows it. */
  shown(chat: number, message: KeptMessage): Message {
    const person = this.people.get(chat);
    const where = person
      ? { id: chat, type: 'private', first_name: person.user.first_name }
      : { id: chat, type: 'supergroup', title: 'Group' };
    const words = message.kind === 'text' ? ['text', 'entities'] : ['caption', 'caption_entities'];
    return {
      message_id: message.id,
      date: message.date,
      chat: where as Chat,
      from: message.fromBot ? bot : person!.user,
      ...(message.text === '' ? {} : { [words[0]!]: message.text }),
      ...(message.entities.length > 0 ? { [words[1]!]: message.entities } : {}),
      ...(message.markup ? { reply_markup: message.markup } : {}),
      ...(message.edits > 0 ? { edit_date: this.#clock.seconds() } : {}),
      ...(message.photo
        ? { photo: [{ file_id: `photo-${message.id}`, file_unique_id: `${message.id}`, width: 1, height: 1 }] }
        : {}),
      ...(message.document
        ? {
            document: {
              file_id: `document-${message.id}`,
              file_unique_id: `${message.id}`,
              file_name: message.document.filename,
              file_size: message.document.bytes.length,
            },
          }
        : {}),
    };
  }
}
