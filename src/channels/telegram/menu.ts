/** Which commands the menu offers, and where the words of the profile come from. */
import type { Outgoing } from '../../messages.ts';
import type { CommandWords, Profiles, ProfileWords } from './profile.ts';

/** Each stands for a sentence that anyone could write as well (`telegram-says-…`). */
export const menuCommands = ['brew', 'my_tea', 'lessons', 'shop', 'language', 'back', 'start_over'] as const;

type Language = Outgoing['language'];

/** `say` gives the sentence of a key, which all begin with "telegram-". */
export function profilesOf(say: (language: Language, key: string) => string): Profiles {
  const commandIn = (language: Language, command: string): CommandWords => ({
    command,
    description: say(language, `telegram-command-${command.replaceAll('_', '-')}`),
    says: say(language, `telegram-says-${command.replaceAll('_', '-')}`),
  });
  const profileIn = (language: Language): ProfileWords => ({
    name: say(language, 'telegram-name'),
    description: say(language, 'telegram-description'),
    about: say(language, 'telegram-about'),
    commands: menuCommands.map((command) => commandIn(language, command)),
  });
  return { en: profileIn('en'), 'zh-Hant': profileIn('zh-Hant'), 'zh-Hans': profileIn('zh-Hans') };
}
