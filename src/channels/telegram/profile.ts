/** What Telegram shows of us before a word is said: names, descriptions, the menu of commands. Set only where it differs. */
import type { BotCommand, Opts } from 'grammy/types';
import type { Log } from '../../log.ts';
import type { BotApi, CallLimits, Method, Result } from './bot-api.ts';
import { meaningOf } from './fault.ts';

export interface ProfileWords {
  /** At most 64 characters. */
  readonly name: string;
  /** Shown in an empty chat; at most 512 characters. */
  readonly description: string;
  /** Shown on the profile and in shared links; at most 120 characters. */
  readonly about: string;
  readonly commands: readonly CommandWords[];
}

export interface CommandWords {
  /** [a-z0-9_], at most 32. */
  readonly command: string;
  /** At most 256 characters. */
  readonly description: string;
  /** The sentence a tap on it stands for, as if the person had written it. */
  readonly says: string;
}

export interface Profiles {
  readonly en: ProfileWords;
  readonly 'zh-Hant': ProfileWords;
  readonly 'zh-Hans': ProfileWords;
}

type Put = { [M in Method]: { readonly method: M; readonly payload: Opts<M> } }[Method];

type Asked = { readonly api: BotApi; readonly limits: CallLimits };

export interface ProfileSetting {
  readonly log: Log;
  readonly limits: CallLimits;
}

interface Item {
  /** Whether what is set is what is wanted; null when that could not be learnt. */
  readonly isSet: () => Promise<boolean | null>;
  readonly put: Put;
}

/** Returns how many settings were changed. A refusal is logged and left for the next start: names may be changed seldom. */
export async function setProfile(api: BotApi, words: Profiles, { log, limits }: ProfileSetting): Promise<number> {
  const asked: Asked = { api, limits };
  const items = [...itemsOf(asked, words.en, ''), ...itemsOf(asked, bothScripts(words), 'zh'), menuItem(asked)];
  let changed = 0;
  for (const { isSet, put } of items) {
    if ((await isSet()) !== false) continue;
    const answer = await api.call(put.method, put.payload, limits);
    if (answer.ok) changed++;
    else log.warn('a setting of the profile was refused', { method: put.method, why: meaningOf(answer.fault).why });
  }
  return changed;
}

/**
 * Telegram tells languages apart by two letters, so one text serves both scripts. The shorter settings have no room
 * to say it twice where the scripts agree.
 */
export function bothScripts({ 'zh-Hant': hant, 'zh-Hans': hans }: Profiles): ProfileWords {
  return {
    name: joined(hant.name, hans.name, ' · '),
    description: joined(hant.description, hans.description, '\n\n'),
    about: joined(hant.about, hans.about, '\n'),
    commands: hant.commands.map((command, i) => ({
      ...command,
      description: joined(command.description, hans.commands[i]?.description ?? command.description, ' · '),
    })),
  };
}

function joined(a: string, b: string, between: string): string {
  return a === b ? a : `${a}${between}${b}`;
}

function itemsOf({ api, limits }: Asked, words: ProfileWords, code: '' | 'zh'): readonly Item[] {
  const language = code === '' ? {} : { language_code: code };
  const commands = words.commands.map(({ command, description }): BotCommand => ({ command, description }));
  const is = async <M extends Method>(method: M, payload: Opts<M>, wanted: (now: Result<M>) => boolean) => {
    const answer = await api.call(method, payload, limits);
    return answer.ok ? wanted(answer.result) : null;
  };
  return [
    {
      isSet: () => is('getMyName', language, (now) => now.name === words.name),
      put: { method: 'setMyName', payload: { ...language, name: words.name } },
    },
    {
      isSet: () => is('getMyDescription', language, (now) => now.description === words.description),
      put: { method: 'setMyDescription', payload: { ...language, description: words.description } },
    },
    {
      isSet: () => is('getMyShortDescription', language, (now) => now.short_description === words.about),
      put: { method: 'setMyShortDescription', payload: { ...language, short_description: words.about } },
    },
    {
      isSet: () => is('getMyCommands', language, (now) => sameCommands(now, commands)),
      put: { method: 'setMyCommands', payload: { ...language, commands } },
    },
  ];
}

function menuItem({ api, limits }: Asked): Item {
  return {
    async isSet() {
      const answer = await api.call('getChatMenuButton', {}, limits);
      return answer.ok ? answer.result.type === 'commands' : null;
    },
    put: { method: 'setChatMenuButton', payload: { menu_button: { type: 'commands' } } },
  };
}

function sameCommands(now: readonly BotCommand[], wanted: readonly BotCommand[]): boolean {
  return (
    now.length === wanted.length &&
    now.every((one, i) => one.command === wanted[i]?.command && one.description === wanted[i]?.description)
  );
}
