/** The menu's words fit what Telegram takes. */
import { describe, expect, it } from 'vitest';
import { menuCommands, profilesOf } from '../../../src/channels/telegram/menu.ts';
import { bothScripts } from '../../../src/channels/telegram/profile.ts';
import { languages } from '../../../src/core/units.ts';
import { content } from '../../the-content.ts';
import { pointsIn } from './bot-api/limits.ts';

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
