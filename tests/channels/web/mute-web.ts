/** A web channel with nothing behind it: no past, no labels, its words their own keys. */
import { pageWordKeys } from '../../../src/channels/web/page/wire.ts';
import { makeWebChannel, type WebChannelDeps } from '../../../src/channels/web/web-channel.ts';
import { makeMarks } from '../../page/fake-house.ts';
import { systemClock } from '../../../src/clock.ts';

type Given = Pick<WebChannelDeps, 'log' | 'pageFolder' | 'limits'>;

export const muteWeb = (given: Given): ReturnType<typeof makeWebChannel> =>
  makeWebChannel({
    host: '127.0.0.1',
    port: 0,
    clock: systemClock,
    passed: () => Promise.resolve([]),
    lineOf: (updateId) => updateId,
    label: () => Promise.resolve(null),
    pageWords: () => Object.fromEntries(pageWordKeys.map((key) => [key, key])),
    marks: makeMarks(),
    secureCookies: false,
    publicOrigin: null,
    ...given,
  });
