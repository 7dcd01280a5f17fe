import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { makeBotApi } from '../../../src/channels/telegram/bot-api.ts';
import { bothScripts, setProfile } from '../../../src/channels/telegram/profile.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { keepLog, testProfiles } from './harness.ts';

let server: StandIn;
beforeEach(async () => {
  server = await startStandIn();
});
afterEach(() => server.close());

const limits = { timeoutMs: 10_000 };

const setCalls = (): readonly string[] =>
  server.record.calls.map(({ method }) => method).filter((name) => name.startsWith('set'));

describe('the profile', () => {
  it('is set once, and again only where it differs', async () => {
    const api = makeBotApi({ token: server.token, apiRoot: server.root });
    const log = keepLog();
    expect(await setProfile(api, testProfiles, { log, limits })).toBe(9);
    expect(server.world.setting('').commands).toHaveLength(2);
    expect(server.world.setting('zh').name).toBe('茶室');
    expect(server.world.menuButton).toEqual({ type: 'commands' });
    expect(await setProfile(api, testProfiles, { log, limits })).toBe(0);
    expect(setCalls()).toHaveLength(9);
    const renamed = { ...testProfiles, en: { ...testProfiles.en, about: 'New' } };
    expect(await setProfile(api, renamed, { log, limits })).toBe(1);
    expect(log.lines).toEqual([]);
  });

  it('leaves for another day what the server refuses now', async () => {
    const log = keepLog();
    server.faults.add({
      method: 'setMyName',
      trouble: {
        kind: 'refuse',
        code: 429,
        description: 'Too Many Requests: retry after 9000',
        parameters: { retry_after: 9000 },
      },
    });
    expect(
      await setProfile(makeBotApi({ token: server.token, apiRoot: server.root }), testProfiles, { log, limits }),
    ).toBe(8);
    expect(log.lines).toEqual(['warn a setting of the profile was refused {"method":"setMyName","why":"too-many"}']);
  });

  it('serves both scripts with one Chinese text', () => {
    const both = bothScripts(testProfiles);
    expect(both.name).toBe('茶室');
    const apart = bothScripts({ ...testProfiles, 'zh-Hant': { ...testProfiles['zh-Hant'], about: '問店家' } });
    expect(apart.about).toBe('問店家\n茶室: about');
  });
});
