/** The menu's words fit what Telegram takes, and a tap on a command is understood as it is meant. */
import { describe, expect, it } from 'vitest';
import { menuCommands, profilesOf } from '../../../src/channels/telegram/menu.ts';
import { bothScripts } from '../../../src/channels/telegram/profile.ts';
import { readContent } from '../../../src/content.ts';
import { languages } from '../../../src/core/units.ts';
import { pointsIn } from './bot-api/limits.ts';

const content = readContent({ flowsDir: 'flows', dataDir: 'data', shopDir: 'data/shop' });
const profiles = profilesOf((language, key) => content.words.say(language, { key, values: {} }));

describe('the profile', () => {
  it.each([
    ...languages.map((language) => [language, profiles[language]] as const),
    ['both scripts', bothScripts(profiles)] as const,
  ])('fits in %s', (_language, words) => {
    expect(pointsIn(words.name)).toBeLessThanOrEqual(64);
    expect(pointsIn(words.description)).toBeLessThanOrEqual(512);
    expect(pointsIn(words.about)).toBeLessThanOrEqual(120);
    for (const { description } of words.commands) expect(pointsIn(description)).toBeLessThanOrEqual(256);
  });

  it('offers commands the Bot API takes', () => {
    for (const command of menuCommands) expect(command).toMatch(/^[a-z0-9_]{1,32}$/);
  });
});

describe('a tap on a command', () => {
  const meant: Readonly<Record<string, object>> = {
    brew: { kind: 'brew', act: null },
    lessons: { kind: 'lesson' },
    shop: { act: 'ask-shop' },
    back: { act: 'back' },
    start_over: { act: 'start-over' },
  };
  it.each(languages.flatMap((language) => menuCommands.map((command) => [command, language] as const)))(
    '%s in %s is understood',
    (command, language) => {
      const says = profiles[language].commands.find((one) => one.command === command)!.says;
      expect(content.read(says, { language, asked: null })).toMatchObject(meant[command]!);
    },
  );
});
